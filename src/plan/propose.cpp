#include "plan/propose.h"

#include <algorithm>
#include <functional>
#include <set>

#include <fmt/core.h>

#include "climate/psychrometrics.h"
#include "plan/check.h"

namespace coatday::plan {

namespace {

using date::days;

/// Beyond this planning again for each change would keep people waiting.
constexpr std::size_t most_faces = 150;

/// The shop's air, warmed with its moisture in it to a temperature at least, and dried to a humidity at most.
class Conditioned : public climate::AirSource {
 public:
  Conditioned(std::unique_ptr<climate::AirSource> source, Celsius floor, RelativeHumidity ceiling)
      : source_(std::move(source)), floor_(floor), ceiling_(ceiling) {}

  [[nodiscard]] climate::Air at(Instant t) const override {
    climate::Air air = source_->at(t);
    if (air.temperature < floor_) air = {floor_, climate::relative_humidity(floor_, climate::humidity_ratio(air))};
    air.humidity = std::min(air.humidity, ceiling_);
    return air;
  }
  [[nodiscard]] std::string describe(Units units) const override { return source_->describe(units); }

 private:
  std::unique_ptr<climate::AirSource> source_;
  Celsius floor_;
  RelativeHumidity ceiling_;
};

/// How late the whole order is, on the late side; nothing where a piece never gets ready.
std::optional<Hours> lateness(const Plan& plan) {
  if (plan.status != Status::feasible) return std::nullopt;
  Hours worst(0);
  for (const PieceResult& piece : plan.pieces) {
    if (!piece.ready_late.deliver) return std::nullopt;
    if (piece.slack) worst = std::max(worst, -*piece.slack);
  }
  return worst;
}

/// One change of a job; `words` may look at the plan that it leads to.
struct Change {
  std::function<void(Job&, Instant& from)> make;
  std::function<std::string(const Plan&)> words;
};
Change change(std::function<void(Job&, Instant&)> make, std::string words) {
  return {std::move(make), [words = std::move(words)](const Plan&) { return words; }};
}
/// Of one kind, the smallest first.
using Lever = std::vector<Change>;

/// How long more people are at work than there are now.
Hours beyond(const Plan& plan, int people) {
  std::set<Instant> edges;
  for (const Event& event : plan.events) edges.insert({event.start, event.end});
  Hours sum(0);
  for (auto edge = edges.begin(); edge != edges.end() && std::next(edge) != edges.end(); ++edge) {
    int busy = 0;
    for (const Event& event : plan.events) busy += event.start <= *edge && *edge < event.end ? event.people : 0;
    if (busy > people) sum += Hours(*std::next(edge) - *edge);
  }
  return sum;
}

class Levers {
 public:
  Levers(const Job& job, const Request& request, const Plan& plan) : job_(job), request_(request), plan_(plan) {}

  [[nodiscard]] std::vector<Lever> all() const {
    std::vector<Lever> levers{start_later(), warm_up(), dry(), more_hands(), another_day()};
    for (std::size_t p = 0; p < job_.shop.places.size(); ++p) levers.push_back(more_places(p));
    return levers;
  }

 private:
  /// Only where nothing fits at all: what stands in the way may pass.
  [[nodiscard]] Lever start_later() const {
    Lever lever;
    if (plan_.status == Status::feasible) return lever;
    for (const int wait : {1, 2, 3, 5, 7, 10, 14, 21, 28}) {
      const Instant later = request_.from + days(wait);
      lever.push_back(change(
          [later](Job& job, Instant& from) {
            from = later;
            if (job.order.start) job.order.start = std::max(*job.order.start, from);
          },
          "start on " + day_and_time(job_.shop.zone.to_local(later))));
    }
    return lever;
  }

  [[nodiscard]] Lever warm_up() const {
    Celsius coldest(100);
    for (const climate::AirRow& row : plan_.air.rows()) coldest = std::min(coldest, row.air.temperature);
    Lever lever;
    for (const double degrees : {10, 13, 16, 18, 20, 22}) {
      const Celsius floor(degrees);
      if (floor <= coldest) continue;
      lever.push_back(change([floor](Job& job, Instant&) { condition(job, floor, RelativeHumidity(1)); },
                             fmt::format("keep the shop at {} or warmer, nights too", format_temperature(floor, job_.shop.units))));
    }
    return lever;
  }

  [[nodiscard]] Lever dry() const {
    RelativeHumidity dampest;
    for (const climate::AirRow& row : plan_.air.rows()) dampest = std::max(dampest, row.air.humidity);
    Lever lever;
    for (const double percent : {80, 70, 60, 50, 40}) {
      const RelativeHumidity ceiling(percent / 100);
      if (ceiling >= dampest) continue;
      lever.push_back(change([ceiling](Job& job, Instant&) { condition(job, Celsius(-100), ceiling); },
                             fmt::format("keep the shop's air at {:.0f} % RH or drier, nights too", percent)));
    }
    return lever;
  }

  static void condition(Job& job, Celsius floor, RelativeHumidity ceiling) {
    job.air = [make = job.air, floor, ceiling](Instant from, Instant until) {
      return std::make_unique<Conditioned>(make(from, until), floor, ceiling);
    };
  }

  [[nodiscard]] Lever more_hands() const {
    Lever lever;
    for (const int more : {1, 2}) {
      lever.push_back({[more](Job& job, Instant&) { job.shop.people += more; },
                       [people = job_.shop.people, more](const Plan& plan) {
                         return fmt::format("{} in the shop, needed for {} in all", more == 1 ? "one more person" : "two more people",
                                            format_span(beyond(plan, people)));
                       }});
    }
    return lever;
  }

  [[nodiscard]] Lever more_places(std::size_t p) const {
    const shop::DryingPlace& place = job_.shop.places[p];
    Lever lever;
    for (const int more : std::set<int>{1, place.count, 3 * place.count}) {
      lever.push_back(change([p, more](Job& job, Instant&) { job.shop.places[p].count += more; },
                             fmt::format("{} more '{}' to dry on", more, place.name)));
    }
    return lever;
  }

  /// Friday's hours on a Saturday or a Sunday that has none.
  [[nodiscard]] Lever another_day() const {
    Lever lever;
    for (const auto& [day, name] : {std::pair(date::Saturday, "Saturdays"), std::pair(date::Sunday, "Sundays")}) {
      const std::vector<shop::Shift>& week = job_.shop.week;
      const auto on = [&week](date::weekday wanted) {
        return std::any_of(week.begin(), week.end(), [wanted](const shop::Shift& shift) { return shift.day == wanted; });
      };
      if (on(day) || !on(date::Friday)) continue;
      lever.push_back(change(
          [added = day](Job& job, Instant&) {
            const std::vector<shop::Shift> before = job.shop.week;
            for (const shop::Shift& shift : before) {
              if (shift.day == date::Friday) job.shop.week.push_back({added, shift.from, shift.until});
            }
          },
          fmt::format("work on {} as on Fridays", name)));
    }
    return lever;
  }

  const Job& job_;
  const Request& request_;
  const Plan& plan_;
};

class Proposer {
 public:
  Proposer(const Job& job, const Request& request, const Plan& plan) : job_(job), request_(request), plan_(plan), late_(lateness(plan)) {}

  std::vector<std::string> run() {
    if (late_ && *late_ <= Hours(0)) return {};
    for (const Lever& lever : Levers(job_, request_, plan_).all()) pull(lever);
    std::vector<std::string> result = std::move(enough_.empty() ? helpful_ : enough_);
    if (late_) result.push_back(later_date());
    return result;
  }

 private:
  /// The smallest change that is enough; else the smallest that helps, and the one that helps most.
  void pull(const Lever& lever) {
    std::vector<std::string> helps;
    std::optional<Hours> best = late_;
    for (const Change& change : lever) {
      Job job = job_;
      Instant from = request_.from;
      change.make(job, from);
      const Plan plan = make_plan(job, {from, false});
      const std::optional<Hours> late = lateness(plan);
      if (!late || !check(plan, job).empty()) continue;
      if (*late <= Hours(0)) return enough_.push_back(change.words(plan));
      if (best && *late > *best - Hours(1)) continue;
      best = late;
      if (helps.size() == 2) helps.pop_back();
      helps.push_back(fmt::format("{} (then {} late)", change.words(plan), format_span(*late)));
    }
    helpful_.insert(helpful_.end(), helps.begin(), helps.end());
  }

  [[nodiscard]] std::string later_date() const {
    std::string words;
    for (const PieceResult& piece : plan_.pieces) {
      if (!piece.slack || *piece.slack >= Hours(0)) continue;
      words += fmt::format("{} {} for {}", words.empty() ? "promise" : ",", piece.name,
                           day_and_time(job_.shop.zone.to_local(*piece.ready_late.deliver)));
    }
    return words;
  }

  const Job& job_;
  const Request& request_;
  const Plan& plan_;
  std::optional<Hours> late_;
  std::vector<std::string> enough_, helpful_;
};

}  // namespace

std::vector<std::string> propose(const Job& job, const Request& request, const Plan& plan) {
  const auto refused = [](const Finding& finding) { return finding.severity == Severity::error; };
  if (plan.faces.size() > most_faces || std::any_of(plan.findings.begin(), plan.findings.end(), refused)) return {};
  return Proposer(job, request, plan).run();
}

}  // namespace coatday::plan
