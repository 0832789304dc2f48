#include "planner/make/variants.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <set>

#include <fmt/core.h>

#include "planner/make/guard.h"
#include "planner/tasks/history.h"
#include "planner/tasks/validate.h"

namespace coatday::planner {

namespace {

/// With more loads one variant takes all the time there is.
constexpr std::size_t most_loads_of_variants = 40;
/// With more steps the program looks at the others only where the request gives time for them.
constexpr std::size_t few_steps = 100;
/// The usual variant may use this part of the seconds.
constexpr double usual_share = 0.7;

const char* text(const Variant& variant) {
  if (variant.sides == Sides::show_first) return "the side that shows first";
  return variant.batching == Batching::one_part ? "each part by itself"
         : variant.batching == Batching::half   ? "in twice as many batches"
                                                : "as usual";
}

/// Counts the steps of the history, and of the earlier plan, that this variant does not have.
std::pair<std::size_t, std::size_t> unknown(const job::Job& job, const job::Request& request, const Variant& variant) {
  const Loads loads = make_loads(job, variant.batching);
  const std::vector<Task> tasks = make_tasks(job, loads, {}, variant.sides).tasks;
  std::set<std::string> known;
  for (const Task& task : tasks) known.insert(task.id);
  std::pair<std::size_t, std::size_t> count;
  for (const job::Done& done : job.order.history) {
    const RecordedStep recorded(done.event);
    count.first += std::none_of(tasks.begin(), tasks.end(), [&](const Task& task) { return recorded.covers(task); }) ? 1U : 0U;
  }
  if (!request.earlier_starts) return count;
  for (const auto& [event, start] : *request.earlier_starts) count.second += 1 - known.count(event);
  return count;
}

bool refused(const std::vector<job::Finding>& findings) {
  return std::any_of(findings.begin(), findings.end(), [](const job::Finding& f) { return f.severity == job::Severity::error; });
}

bool lies(const Load& load) { return load.support != piece::Support::hooks; }

/// Those that differ from the usual one.
std::vector<Variant> others(const job::Job& job) {
  const Loads usual = make_loads(job, Batching::fit);
  if (usual.loads.size() > most_loads_of_variants) return {};
  std::vector<Variant> result;
  const std::size_t apart = make_loads(job, Batching::one_part).loads.size();
  if (apart != usual.loads.size()) result.push_back({Batching::one_part, Sides::hidden_first});
  if (make_loads(job, Batching::half).loads.size() != apart) result.push_back({Batching::half, Sides::hidden_first});
  if (std::any_of(usual.loads.begin(), usual.loads.end(), lies)) result.push_back({Batching::fit, Sides::show_first});
  return result;
}

/// Another variant has its price: more loads to handle, or marks on the side that shows. It has to gain so much. Judgement.
constexpr Hours worth_it{1}, worth_it_unasked{24};

double lateness(const job::Job& job, const job::Plan& plan) {
  double sum = 0;
  for (std::size_t p = 0; p < plan.pieces.size(); ++p) {
    const std::optional<Hours>& slack = plan.pieces[p].slack;
    if (slack && *slack < Hours(0)) sum -= slack->count() * job.order.pieces[p].importance;
  }
  return sum;
}

bool better(const job::Job& job, const job::Plan& a, const job::Plan& b, Hours least) {
  if (a.status != job::Status::planned || b.status != job::Status::planned)
    return a.status == job::Status::planned && b.status != job::Status::planned;
  const double gained = lateness(job, b) - lateness(job, a);
  constexpr double rounding = 1e-6;
  if (std::abs(gained) > rounding) return gained >= least.count();
  return *a.ready + std::chrono::duration_cast<Instant::duration>(least) <= *b.ready;
}

/// Whether the bounds leave room for a better day.
bool may_be_better(const job::Plan& plan) {
  const auto day = [&](Instant t) { return std::chrono::floor<date::days>(plan.shop.zone.to_local(t)); };
  int late = 0;
  for (const job::PieceResult& piece : plan.pieces) late += job::days_late(plan, piece);
  return late > 0 || (plan.ready && plan.ready_bound && day(*plan.ready_bound) < day(*plan.ready));
}

class VariantSearch {
 public:
  VariantSearch(const job::Job& job, const job::Request& request, Purpose purpose, const PlanVariant& plan)
      : job_(job), request_(request), purpose_(purpose), plan_(plan) {}

  job::Plan run() {
    const bool starts_anew = job_.order.history.empty() && !request_.earlier_starts;
    if (!starts_anew) return plan_(request_, refused(validate(job_)) ? Variant{} : begun_variant(job_, request_), purpose_);
    const std::vector<Variant> more = purpose_ == Purpose::follow ? others(job_) : std::vector<Variant>{};
    job::Request usual = request_;
    if (!more.empty()) usual.seconds *= usual_share;
    job::Plan best = plan_(usual, {}, purpose_);
    const bool has_plan = best.status == job::Status::planned;
    if (refused(best.findings)) return best;
    if (has_plan && request_.seconds <= 0) return best.events.size() > few_steps ? std::move(best) : glance_at(more, std::move(best));
    usual_took_ = taken_so_far();
    Variant taken;
    std::string tried;
    for (std::size_t i = 0; i < more.size() && !stopped() && (has_plan || best.status != job::Status::planned); ++i) {
      job::Plan other = plan_(with_share(more.size() - i), more[i], purpose_);
      const bool wins = better(job_, other, best, worth_it);
      const char* name = text(wins ? taken : more[i]);
      tried += (tried.empty() ? "" : "; ") + std::string(name);
      if (!wins) continue;
      best = std::move(other);
      taken = more[i];
    }
    best.seconds_spent = std::chrono::steady_clock::now() - begun_;
    if (!tried.empty() && best.status == job::Status::planned) report(best, taken, has_plan ? tried : "");
    return best;
  }

 private:
  /// Where a glance shows a day's gain, that variant is planned as it would be followed.
  [[nodiscard]] job::Plan glance_at(const std::vector<Variant>& others, job::Plan best) const {
    for (const Variant& variant : others) {
      if (stopped() || !may_be_better(best)) break;
      if (!better(job_, plan_(with_share(1), variant, Purpose::glance), best, worth_it_unasked)) continue;
      job::Plan other = plan_(with_share(1), variant, purpose_);
      if (!better(job_, other, best, worth_it_unasked)) continue;
      best = std::move(other);
      note(best, fmt::format("planned {}, a day or more less late or earlier ready than as usual", text(variant)));
    }
    best.seconds_spent = std::chrono::steady_clock::now() - begun_;
    return best;
  }

  [[nodiscard]] bool stopped() const {
    return (request_.stop != nullptr && *request_.stop) || (request_.seconds > 0 ? left() <= 0 : guard_.left() <= 0);
  }
  [[nodiscard]] double taken_so_far() const { return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count(); }
  [[nodiscard]] double left() const { return request_.seconds - taken_so_far(); }

  /// An even share of the time that is left, but not more than the usual variant took. It reports no progress, since its plan may not be taken.
  [[nodiscard]] job::Request with_share(std::size_t variants) const {
    job::Request request = request_;
    request.progress = nullptr;
    if (request_.seconds > 0) request.seconds = std::min(left() / static_cast<double>(variants), std::max(1.0, usual_took_));
    request.guard = guard_.left();
    return request;
  }

  static void report(job::Plan& best, const Variant& taken, const std::string& tried) {
    const bool usual = is_usual(taken);
    const std::string message = tried.empty() ? fmt::format("planned {}; there is no plan the usual way", text(taken))
                                : usual       ? "also tried, and none gains an hour: " + tried
                                        : fmt::format("planned {}, an hour or more less late or earlier ready than {}", text(taken), tried);
    note(best, message);
  }

  static void note(job::Plan& best, const std::string& message) {
    best.findings.push_back({"ways-tried", job::Severity::note, message, "gathering of parts, order of sides", {}});
  }

  const job::Job& job_;
  const job::Request& request_;
  Purpose purpose_;
  const PlanVariant& plan_;
  std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
  Guard guard_{request_.guard};
  double usual_took_ = 0;
};

}  // namespace

Variant begun_variant(const job::Job& job, const job::Request& request) {
  Variant best;
  auto least = unknown(job, request, best);
  if (least == decltype(least){}) return best;
  for (const Batching batching : {Batching::fit, Batching::one_part, Batching::half}) {
    for (const Sides sides : {Sides::hidden_first, Sides::show_first}) {
      const auto count = unknown(job, request, {batching, sides});
      if (count >= least) continue;
      least = count;
      best = {batching, sides};
    }
  }
  return best;
}

job::Plan best_variant(const job::Job& job, const job::Request& request, Purpose purpose, const PlanVariant& plan) {
  return VariantSearch(job, request, purpose, plan).run();
}

}  // namespace coatday::planner
