#include "planner/result/visits.h"

#include <algorithm>

#include "planner/model/presence.h"

namespace coatday::planner {
namespace {

/// Hands on one event without a break.
struct AtWork {
  Instant begin, end;
  Instant stays_until;  ///< people wipe down after light dust
  std::size_t event;
};

bool brings_somebody(const job::Event& event) { return !event.done && !event.delivers && event.kind != job::EventKind::bake; }

class Counter {
 public:
  explicit Counter(const job::Plan& plan) : plan_(plan), working_(shop::cut_by_day(plan.shop.zone, plan.working)) {}

  std::vector<job::Visit> run() {
    Instant stays_until;
    for (const AtWork& stretch : stretches()) {
      if (all_.empty() || !goes_on(all_.back(), stays_until, stretch.begin)) {
        close();
        all_.push_back({stretch.begin, stretch.begin, Minutes(0), {}});
        stays_until = stretch.begin;
      }
      job::Visit& visit = all_.back();
      work_ += std::max(std::chrono::seconds(0), stretch.end - std::max(visit.until, stretch.begin));
      visit.until = std::max(visit.until, stretch.end);
      stays_until = std::max(stays_until, stretch.stays_until);
      const bool own = plan_.events[stretch.event].piece.has_value();
      if (own && std::find(visit.events.begin(), visit.events.end(), stretch.event) == visit.events.end())
        visit.events.push_back(stretch.event);
    }
    close();
    return all_;
  }

 private:
  /// Nobody leaves before the end of what goes on after a break.
  [[nodiscard]] std::chrono::seconds tidying() const {
    return std::chrono::duration_cast<std::chrono::seconds>(std::min(plan_.shop.light_dust_settles, Hours(most_tidying)));
  }

  [[nodiscard]] std::vector<AtWork> stretches() const {
    std::vector<AtWork> all;
    for (std::size_t i = 0; i < plan_.events.size(); ++i) {
      const job::Event& event = plan_.events[i];
      if (!brings_somebody(event)) continue;
      for (const shop::WorkingTime& hours : working_) {
        const Instant begin = std::max(event.start, hours.begin), end = std::min(event.end, hours.end);
        if (begin >= end) continue;
        all.push_back({begin, end, event.dust == shop::Dust::light ? event.end + tidying() : end, i});
      }
    }
    std::stable_sort(all.begin(), all.end(), [](const AtWork& a, const AtWork& b) { return a.begin < b.begin; });
    return all;
  }

  [[nodiscard]] bool goes_on(const job::Visit& visit, Instant stays_until, Instant next) const {
    if (day_of(plan_.shop.zone.to_local(visit.from)) != day_of(plan_.shop.zone.to_local(next))) return false;
    std::chrono::seconds open{0};
    for (const shop::WorkingTime& hours : working_) {
      const Instant from = std::max(stays_until, hours.begin), until = std::min(next, hours.end);
      if (from < until) open += until - from;
    }
    return open <= visit_gap;
  }

  /// The shop's own work alone is no visit: whoever mills here is here.
  void close() {
    if (all_.empty()) return;
    all_.back().work = std::chrono::duration_cast<Minutes>(work_);
    work_ = std::chrono::seconds(0);
    if (all_.back().events.empty()) all_.pop_back();
  }

  const job::Plan& plan_;
  std::vector<shop::WorkingTime> working_;
  std::vector<job::Visit> all_;
  std::chrono::seconds work_{0};
};

}  // namespace

std::vector<job::Visit> visits_in(const job::Plan& plan) { return Counter(plan).run(); }

}  // namespace coatday::planner
