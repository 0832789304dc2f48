#include "planner/make/variants.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <set>

#include <fmt/core.h>

#include "planner/tasks/validate.h"

namespace coatday::planner {

namespace {

/// Beyond this one way takes all the time there is.
constexpr std::size_t most_loads = 40;
/// Of the seconds, what the usual way may use.
constexpr double usual_share = 0.7;

const char* words(const Ways& ways) {
  if (ways.sides == Sides::show_first) return "the side that shows first";
  return ways.split == Split::apart ? "each part by itself" : ways.split == Split::halves ? "in twice as many batches" : "as usual";
}

/// Steps of the history, and of the earlier plan, that are none of this way.
std::pair<std::size_t, std::size_t> unknown(const job::Job& job, const job::Request& request, const Ways& ways) {
  const Loads loads = make_loads(job, ways.split);
  std::set<std::string> known;
  for (const Task& task : make_tasks(job, loads, {}, ways.sides).tasks) known.insert(task.id);
  std::pair<std::size_t, std::size_t> count;
  for (const job::Done& done : job.order.history) count.first += 1 - known.count(done.event);
  if (!request.earlier_starts) return count;
  for (const auto& [event, start] : *request.earlier_starts) count.second += 1 - known.count(event);
  return count;
}

Ways begun(const job::Job& job, const job::Request& request) {
  Ways best;
  auto least = unknown(job, request, best);
  if (least == decltype(least){}) return best;
  for (const Split split : {Split::to_fit, Split::apart, Split::halves}) {
    for (const Sides sides : {Sides::hidden_first, Sides::show_first}) {
      const auto count = unknown(job, request, {split, sides});
      if (count >= least) continue;
      least = count;
      best = {split, sides};
    }
  }
  return best;
}

bool refused(const std::vector<job::Finding>& findings) {
  return std::any_of(findings.begin(), findings.end(), [](const job::Finding& f) { return f.severity == job::Severity::error; });
}

bool lies(const Load& load) { return load.support != piece::Support::hooks; }

/// Those that differ from the usual one.
std::vector<Ways> others(const job::Job& job) {
  const Loads usual = make_loads(job, Split::to_fit);
  if (usual.loads.size() > most_loads) return {};
  std::vector<Ways> result;
  const std::size_t apart = make_loads(job, Split::apart).loads.size();
  if (apart != usual.loads.size()) result.push_back({Split::apart, Sides::hidden_first});
  if (make_loads(job, Split::halves).loads.size() != apart) result.push_back({Split::halves, Sides::hidden_first});
  if (std::any_of(usual.loads.begin(), usual.loads.end(), lies)) result.push_back({Split::to_fit, Sides::show_first});
  return result;
}

/// Another way has its price (more loads to handle, marks on the side that shows): it has to gain so much. Judgement.
constexpr Hours worth_it{1};

double lateness(const job::Job& job, const job::Plan& plan) {
  double sum = 0;
  for (std::size_t p = 0; p < plan.pieces.size(); ++p) {
    const std::optional<Hours>& slack = plan.pieces[p].slack;
    if (slack && *slack < Hours(0)) sum -= slack->count() * job.order.pieces[p].importance;
  }
  return sum;
}

bool better(const job::Job& job, const job::Plan& a, const job::Plan& b) {
  if (a.status != job::Status::feasible || b.status != job::Status::feasible)
    return a.status == job::Status::feasible && b.status != job::Status::feasible;
  const double gained = lateness(job, b) - lateness(job, a);
  constexpr double rounding = 1e-6;
  if (std::abs(gained) > rounding) return gained >= worth_it.count();
  return *a.ready + std::chrono::duration_cast<Instant::duration>(worth_it) <= *b.ready;
}

class AllWays {
 public:
  AllWays(const job::Job& job, const job::Request& request, Purpose purpose, const PlanOneWay& plan)
      : job_(job), request_(request), purpose_(purpose), plan_(plan) {}

  job::Plan run() {
    const bool starts_anew = job_.order.history.empty() && !request_.earlier_starts;
    if (!starts_anew) return plan_(request_, refused(validate(job_)) ? Ways{} : begun(job_, request_));
    const std::vector<Ways> more = purpose_ == Purpose::follow ? others(job_) : std::vector<Ways>{};
    job::Request usual = request_;
    if (!more.empty()) usual.seconds *= usual_share;
    job::Plan best = plan_(usual, {});
    const bool has_plan = best.status == job::Status::feasible;
    if (refused(best.findings) || (has_plan && request_.seconds <= 0)) return best;
    usual_took_ = taken_so_far();
    Ways taken;
    std::string tried;
    for (std::size_t i = 0; i < more.size() && !stopped() && (has_plan || best.status != job::Status::feasible); ++i) {
      job::Plan other = plan_(with_share(more.size() - i), more[i]);
      const bool wins = better(job_, other, best);
      const char* told = words(wins ? taken : more[i]);
      tried += (tried.empty() ? "" : "; ") + std::string(told);
      if (!wins) continue;
      best = std::move(other);
      taken = more[i];
    }
    best.seconds_spent = std::chrono::steady_clock::now() - begun_;
    if (!tried.empty() && best.status == job::Status::feasible) tell(best, taken, has_plan ? tried : "");
    return best;
  }

 private:
  [[nodiscard]] bool stopped() const { return (request_.stop != nullptr && *request_.stop) || (request_.seconds > 0 && left() <= 0); }
  [[nodiscard]] double taken_so_far() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count(); }
  [[nodiscard]] double left() const { return request_.seconds - taken_so_far(); }

  /// An even share of the time that is left, but not more than the usual way took; nobody is told of plans that may not be taken.
  [[nodiscard]] job::Request with_share(std::size_t ways) const {
    job::Request request = request_;
    request.progress = nullptr;
    if (request_.seconds > 0) request.seconds = std::min(left() / static_cast<double>(ways), std::max(1.0, usual_took_));
    return request;
  }

  static void tell(job::Plan& best, const Ways& taken, const std::string& tried) {
    const bool usual = taken.split == Split::to_fit && taken.sides == Sides::hidden_first;
    const std::string message = tried.empty() ? fmt::format("planned {}; there is no plan the usual way", words(taken))
                                : usual
                                    ? "also tried, and none gains an hour: " + tried
                                    : fmt::format("planned {}, an hour or more less late or earlier ready than {}", words(taken), tried);
    best.findings.push_back({"ways-tried", job::Severity::note, message, "gathering of parts, order of sides", {}});
  }

  const job::Job& job_;
  const job::Request& request_;
  Purpose purpose_;
  const PlanOneWay& plan_;
  std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
  double usual_took_ = 0;
};

}  // namespace

job::Plan best_of_ways(const job::Job& job, const job::Request& request, Purpose purpose, const PlanOneWay& plan) {
  return AllWays(job, request, purpose, plan).run();
}

}  // namespace coatday::planner
