// A plan that waits for air: which single change helps most.
#include <algorithm>
#include <memory>

#include "climate/shop_air.h"
#include "plan/check.h"
#include "plan/propose.h"
#include "plan/propose/levers.h"

namespace coatday::plan {

namespace {

constexpr std::size_t most_faces = 150;  // beyond, planning again and again would keep people waiting
constexpr int most_plans = 40;

class Adviser {
 public:
  Adviser(const Job& job, const Request& request, const Plan& plan) : job_(job), request_(request), plan_(plan) {}

  Advice run() {
    Advice advice;
    const auto ideal = attempt(change([](Job& job, Instant&) { job.air = always(); }, ""));
    if (!ideal) return advice;
    advice.waits_for_air = std::max(Hours(0), ideal->sooner);
    if (ideal->sooner < noticeable) return advice;
    std::vector<Lever> levers{warmth(job_, plan_, Heated::at_night), warmth(job_, plan_, Heated::throughout), dryness(job_, plan_)};
    for (Lever& lever : another_product(job_)) levers.push_back(std::move(lever));
    for (const Lever& lever : levers) {
      if (const auto help = best(lever)) advice.helps.push_back(*help);
    }
    for (const Help& help : advice.helps)
      advice.waits_for_air = std::max(*advice.waits_for_air, help.sooner);  // quick plans are not the best
    if (const auto later = latest_start()) advice.helps.push_back(*later);
    std::stable_sort(advice.helps.begin(), advice.helps.end(), [](const Help& a, const Help& b) { return a.sooner > b.sooner; });
    return advice;
  }

 private:
  static AirMaker always() {
    return [](Instant, Instant) { return std::make_unique<climate::ConstantAir>(finish::reference_air); };
  }

  /// The plan with the change made. Nothing where that gives no sound plan, or no more may be made.
  std::optional<Help> attempt(const Change& change) {
    if (++made_ > most_plans) return std::nullopt;
    Job job = job_;
    Instant from = request_.from;
    change.make(job, from);
    const Plan plan = make_plan(job, {from, false});
    if (plan.status != Status::feasible || !plan.ready || !check(plan, job).empty()) return std::nullopt;
    return Help{change.words(plan), from, *plan.ready, Hours(*plan_.ready - *plan.ready)};
  }

  /// What makes it ready soonest; of those within an hour the smallest.
  std::optional<Help> best(const Lever& lever) {
    std::vector<Help> helps;
    for (const Change& change : lever) {
      auto help = attempt(change);
      if (help && help->sooner >= Hours(1)) helps.push_back(*std::move(help));
    }
    const auto most = std::max_element(helps.begin(), helps.end(), [](const Help& a, const Help& b) { return a.sooner < b.sooner; });
    if (most == helps.end()) return std::nullopt;
    return *std::find_if(helps.begin(), helps.end(), [&](const Help& help) { return help.sooner >= most->sooner - Hours(1); });
  }

  /// The last start of those that are tried after which nothing is ready later.
  std::optional<Help> latest_start() {
    std::optional<Help> last;
    for (const Change& change : later_start(job_, request_)) {
      auto help = attempt(change);
      if (!help || help->sooner < Hours(0)) break;
      last = std::move(help);
    }
    return last;
  }

  const Job& job_;
  const Request& request_;
  const Plan& plan_;
  int made_ = 0;
};

}  // namespace

Advice advise(const Job& job, const Request& request, const Plan& plan) {
  if (plan.status != Status::feasible || !plan.ready || plan.faces.size() > most_faces) return {};
  return Adviser(job, request, plan).run();
}

}  // namespace coatday::plan
