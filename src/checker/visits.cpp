// How often somebody comes to the finishing room, counted anew on a clock that runs in working hours alone.

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;

constexpr minutes longest_pause{15};
constexpr minutes longest_tidying{30};

/// Somebody is there, from so much working time after the day began.
struct Stay {
  seconds begin, end;
  bool own = false;  ///< for the order's work
};

class Visits {
 public:
  explicit Visits(const PlanFacts& facts) : facts_(facts) {
    for (const shop::WorkingTime& hours : shop::cut_by_day(facts.job.shop.zone, facts.working)) hours_[day(hours.begin)].push_back(hours);
    for (std::size_t i = 0; i < facts.events.size(); ++i) {
      if (comes_for(i)) stay(i);
    }
  }

  [[nodiscard]] std::size_t count() {
    std::size_t visits = 0;
    for (auto& [day, stays] : stays_) visits += visits_among(stays);
    return visits;
  }

 private:
  [[nodiscard]] LocalDay day(Instant t) const { return day_of(facts_.job.shop.zone.to_local(t)); }

  [[nodiscard]] bool comes_for(std::size_t i) const {
    const job::Event& event = facts_.event(i);
    const auto delivers = [i](const OrderWorkFacts& one) { return one.event == i && one.work->delivery; };
    return !event.done && event.kind != job::EventKind::bake && std::none_of(facts_.order_work.begin(), facts_.order_work.end(), delivers);
  }

  [[nodiscard]] static seconds worked(const std::vector<shop::WorkingTime>& day, Instant until) {
    seconds sum{0};
    for (const shop::WorkingTime& hours : day) sum += std::max(seconds(0), std::min(hours.end, until) - hours.begin);
    return sum;
  }

  void stay(std::size_t i) {
    const job::Event& event = facts_.event(i);
    const Hours settles = std::min(facts_.job.shop.light_dust_settles, Hours(longest_tidying));
    const seconds tidying = facts_.events[i].dust == shop::Dust::light ? std::chrono::duration_cast<seconds>(settles) : seconds(0);
    for (auto at = hours_.lower_bound(day(event.start)); at != hours_.end() && at->first <= day(event.end); ++at) {
      const seconds begin = worked(at->second, event.start);
      if (begin < worked(at->second, event.end))
        stays_[at->first].push_back({begin, worked(at->second, event.end + tidying), event.piece.has_value()});
    }
  }

  static std::size_t visits_among(std::vector<Stay>& day) {
    std::sort(day.begin(), day.end(), [](const Stay& a, const Stay& b) { return a.begin < b.begin; });
    std::size_t visits = 0;
    std::optional<seconds> end;
    bool own = false;
    for (const Stay& stay : day) {
      if (!end || stay.begin - *end > longest_pause) {
        own = false;
        end = stay.end;
      }
      end = std::max(*end, stay.end);
      if (stay.own && !own) ++visits;
      own = own || stay.own;
    }
    return visits;
  }

  const PlanFacts& facts_;
  std::map<LocalDay, std::vector<shop::WorkingTime>> hours_;
  std::map<LocalDay, std::vector<Stay>> stays_;
};

}  // namespace

void check_visits(const PlanFacts& facts, Breaches& out) {
  const std::size_t counted = Visits(facts).count();
  if (counted == facts.plan.visits.size()) return;
  out.push_back({"visits-differ", fmt::format("the plan counts {} visits, the check {}", facts.plan.visits.size(), counted)});
}

}  // namespace coatday::checker
