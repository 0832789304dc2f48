#include "planner/make/make_plan.h"

#include <algorithm>
#include <array>

#include <fmt/core.h>

#include "job/stages.h"
#include "planner/buy/buying.h"
#include "planner/make/horizon.h"
#include "planner/make/search.h"
#include "planner/make/variants.h"
#include "planner/model/crews.h"
#include "planner/model/hands_bound.h"
#include "planner/model/plan_air.h"
#include "planner/model/ready_bound.h"
#include "planner/model/set_aside.h"
#include "planner/model/unplaceable.h"
#include "planner/result/bounds.h"
#include "planner/result/changes.h"
#include "planner/result/condensation.h"
#include "planner/result/deliver_early.h"
#include "planner/result/events.h"
#include "planner/result/explain.h"
#include "planner/result/past_limits.h"
#include "planner/result/requirement_text.h"
#include "planner/result/set_aside.h"
#include "planner/result/time_spent.h"
#include "planner/result/visits.h"
#include "planner/result/waits.h"
#include "planner/result/warnings.h"
#include "planner/tasks/expired_limits.h"
#include "planner/tasks/history.h"
#include "planner/tasks/mixing.h"
#include "planner/tasks/validate.h"
#include "solver/solve.h"

namespace coatday::planner {

namespace {

using date::days;

/// A horizon that is not enough grows by this factor.
constexpr int further = 4;
/// A refusal counts only where the plan looked so far ahead: air that suits may be a season away.
constexpr days all_seasons{400};
/// A plan that is only compared with others would be of no use so late.
constexpr days half_a_year{182};
/// So often a longer horizon may give another reason.
constexpr int most_refusals = 2;
/// The air reaches so far past the last coat, because a cure goes on. Where the first span is too short the next is taken.
constexpr std::array<days, 3> cures{days(60), days(240), days(730)};

/// So often the room to stand aside counts for less, until what stands there fits.
constexpr int most_tightened = 6;

/// Beyond this a plan would take minutes.
constexpr std::size_t most_loads = 1500;

class Planner {
 public:
  Planner(const job::Job& job, const job::Request& request, Purpose purpose, const Variant& variant)
      : job_(job), request_(request), purpose_(purpose), variant_(variant), grid_(request.from) {
    plan_.from = grid_.instant(0);
    plan_.shop = job.shop;
    plan_.findings = validate(job);
  }

  job::Plan run() {
    plan_.faces = take_off(job_);
    if (!is_refused()) {
      loads_ = make_loads(job_, variant_.batching);
      if (!too_large()) {
        air_.add_surfaces(loads_);
        air_.extend_to(plan_.from + cures.front());
        make_graph(plan_.from + cures.front());
        if (never_rests(graph_.wood) || refused_by_history()) return std::move(plan_);
        // Nobody can undo what is done. A limit that began with it is dropped before the whole plan is given up.
        if (!plan_ahead() && missed_further()) {
          forgiving_ = true;
          plan_ahead();
        }
      }
    }
    plan_.seconds_spent = search_.spent();
    return std::move(plan_);
  }

 private:
  bool is_refused() {
    for (const job::Finding& finding : plan_.findings) {
      if (finding.severity != job::Severity::error) continue;
      plan_.status = job::Status::impossible;
      plan_.contradiction.push_back(finding.message);
    }
    return plan_.status == job::Status::impossible;
  }

  bool too_large() {
    if (loads_.loads.size() <= most_loads) return false;
    plan_.status = job::Status::not_found;
    plan_.contradiction = {
        fmt::format("the order makes {} batches of parts, more than can be planned at once ({}); plan it in several orders",
                    loads_.loads.size(), most_loads)};
    return true;
  }

  bool never_rests(const WoodCare& wood) {
    plan_.contradiction = never_at_rest(job_, wood);
    if (plan_.contradiction.empty()) return false;
    plan_.status = job::Status::impossible;
    return true;
  }

  bool refused_by_history() {
    for (const auto& found : {validate_history(job_, graph_), work_whose_hour_is_over(job_, graph_, plan_.from)})
      plan_.findings.insert(plan_.findings.end(), found.begin(), found.end());
    return is_refused();
  }

  void note_earlier_starts() {
    if (!request_.earlier_starts) return;
    job::Starts by_item;
    for (const auto& [event, start] : *request_.earlier_starts) by_item.emplace(job::by_first_item(event), start);
    for (Task& task : graph_.tasks) {
      const auto earlier = by_item.find(job::by_first_item(task.id));
      if (earlier != by_item.end()) task.earlier_start = earlier->second;
    }
  }

  /// What the wood asks is known for as long as the plan looks ahead.
  void make_graph(Instant until) {
    if (!graph_.tasks.empty() && until <= wood_until_) return;
    wood_until_ = until;
    graph_ = make_tasks(job_, loads_, mixings_in(job_, plan_.air, plan_.from), variant_.sides, wood_care(job_, plan_.from, until));
    note_earlier_starts();
    missed_ = remove_expired_limits(graph_, plan_.from);
    if (forgiving_) missed_further();
  }

  /// A refusal counts only where a longer horizon gives the same one.
  bool plan_ahead() {
    const bool follows = purpose_ == Purpose::follow;
    const days nearest = first_horizon(job_, loads_, graph_, plan_.from), last = last_horizon(plan_.from);
    const days furthest = follows ? last : std::min(last, std::max(nearest, half_a_year));
    Refusal before;
    int refused = 0;
    for (days horizon = nearest;; horizon = std::max(horizon * further, all_seasons)) {
      const days here = std::min(horizon, furthest);
      air_.extend_to(plan_.from + here + cures.front());
      make_graph(plan_.from + here);
      if (attempt(here, false)) return true;
      const bool again = here >= all_seasons && (refusal_ == before || ++refused == most_refusals);
      if (again || here == furthest) {
        const bool open = refusal_.status == job::Status::not_found;
        if (open && (attempt(nearest, true) || (is_usual(variant_) && attempt(here, true)))) return true;
        if (!again && follows)
          plan_.contradiction.insert(plan_.contradiction.begin(), fmt::format("no plan ends before the end of {}", last_year));
        return false;
      }
      before = refusal_;
    }
  }

  bool missed_further() {
    const std::vector<Before> more = remove_expired_limits(graph_, std::nullopt);
    missed_.insert(missed_.end(), more.begin(), more.end());
    return !more.empty();
  }

  bool attempt(days horizon, bool insists) {
    const auto steps = static_cast<solver::Time>(horizon / job::time_step);
    air_.extend_to(plan_.from + horizon + cures.front());
    plan_.until = plan_.from + horizon;
    const Calendar calendar(job_.shop, grid_, grid_.down(air_.begin()), steps);
    Model model = make_model(job_, loads_, graph_, air_.clocks(), calendar, grid_, Scope::whole);
    const std::optional<solver::Tag> misfit = unplaceable(model.problem);
    solver::Outcome outcome = misfit ? solver::Contradiction{{*misfit}, -1} : search_within_room(model, insists);
    if (auto* found = std::get_if<solver::Found>(&outcome)) {
      plan_.search_cut_off = found->cut_off;
      fix_crews(graph_, model, found->schedule);
      deliver_early(graph_, model.problem, found->schedule);
      const std::vector<PlaceAssignment> places = place_loads(graph_, found->schedule, model);
      crowd_ = crowd(graph_, found->schedule, places);
      if (purpose_ == Purpose::follow) plan_.ready_bound = ready_bound(job_, loads_, graph_, air_.clocks(), calendar, grid_);
      write(*found, places, model, calendar);
      write_bounds(plan_, *found, grid_);
      plan_.days_late_bound = days_late_bound(job_, graph_, calendar, grid_, days_late_alone(plan_, *found, grid_));
      return true;
    }
    refuse(outcome, model);
    return false;
  }

  void refuse(const solver::Outcome& outcome, const Model& model) {
    const auto* contradiction = std::get_if<solver::Contradiction>(&outcome);
    plan_.status = contradiction != nullptr ? job::Status::impossible : job::Status::not_found;
    if (contradiction != nullptr && contradiction->tags.empty()) return;  // as before
    refusal_ = {plan_.status, {}};
    if (contradiction != nullptr) {
      for (const solver::Tag tag : contradiction->tags) refusal_.by.push_back(model.requirements[static_cast<std::size_t>(tag)]);
    }
    if (purpose_ != Purpose::follow) return;
    plan_.contradiction = reasons(outcome, model);
    plan_.in_short =
        contradiction == nullptr ? "" : requirement_in_short(contradiction->tags, job_, loads_, graph_, model, air_.clocks(), grid_);
  }

  [[nodiscard]] std::vector<std::string> reasons(const solver::Outcome& outcome, const Model& model) {
    if (const auto* contradiction = std::get_if<solver::Contradiction>(&outcome))
      return requirement_text(contradiction->tags, job_, loads_, graph_, model, air_.clocks(), grid_);
    const auto& none = std::get<solver::NotFound>(outcome);
    return blocker_text(none.activity, none.blockers, job_, loads_, graph_, model, air_.clocks(), grid_);
  }

  /// Where more parts would stand aside than there is room for, the room counts for less, as long as there is a plan then.
  solver::Outcome search_within_room(Model& model, bool insists) {
    const Search::Aim aim{insists, refusal_.by.empty()};  // reasons once are enough
    solver::Outcome outcome = search_.run(model.problem, aim);
    const solver::Outcome proofs = outcome;
    for (int again = 0; model.room && again < most_tightened; ++again) {
      const auto* found = std::get_if<solver::Found>(&outcome);
      const auto over = found != nullptr ? crowd_of(model, found->schedule) : std::nullopt;
      if (!over || !tighten(model, over->not_packed - 1)) break;
      solver::Outcome tighter = search_.run(model.problem, aim);
      if (!std::holds_alternative<solver::Found>(tighter)) break;
      outcome = proven_by(proofs, std::move(tighter));
    }
    return outcome;
  }

  /// What was proven of less room than there is says nothing of the plan.
  static solver::Outcome proven_by(const solver::Outcome& whole, solver::Outcome tighter) {
    const auto& before = std::get<solver::Found>(whole);
    auto& found = std::get<solver::Found>(tighter);
    found.proven = before.proven && found.score.lateness <= before.score.lateness && found.score.ready <= before.score.ready;
    found.ready_bound = before.ready_bound;
    found.goals_from = before.goals_from;
    return tighter;
  }

  [[nodiscard]] std::optional<Crowd> crowd_of(Model model, solver::Schedule schedule) {
    TaskGraph graph = graph_;
    fix_crews(graph, model, schedule);
    const std::vector<PlaceAssignment> places = place_loads(graph, schedule, model);
    return crowd(graph, schedule, places);
  }

  [[nodiscard]] std::optional<Crowd> crowd(const TaskGraph& graph, const solver::Schedule& schedule,
                                           const std::vector<PlaceAssignment>& places) {
    if (job_.shop.set_aside.value_or(0) == 0) return std::nullopt;
    return crowd_aside(job_.shop, loads_, graph, schedule, places, packed_at(graph, schedule, air_.clocks(), grid_), air_.clocks(), grid_);
  }

  /// Places as they suit best, else as the schedule has them.
  std::vector<PlaceAssignment> place_loads(const TaskGraph& graph, const solver::Schedule& schedule, const Model& model) const {
    const std::vector<solver::Time> packed = packed_at(graph, schedule, air_.clocks(), grid_);
    if (auto places = assign_places(job_.shop.gap, loads_, graph, model, schedule, packed)) return std::move(*places);
    return places_as_laid_out(job_.shop.gap, loads_, graph, model, schedule, packed);
  }

  void write(const solver::Found& found, const std::vector<PlaceAssignment>& places, const Model& model, const Calendar& calendar) {
    plan_.contradiction.clear();
    plan_.in_short.clear();
    plan_.status = job::Status::planned;
    Instant end = plan_.from;
    for (std::size_t t = 0; t < graph_.tasks.size(); ++t) {
      if (found.schedule.activities[t].present) end = std::max(end, grid_.instant(found.schedule.activities[t].end));
    }
    plan_.working = shop::working_time(job_.shop, plan_.from, std::max(end, plan_.from + days(1)));
    const std::vector<job::Finding> findings = plan_.findings;
    for (const days cure : cures) {
      plan_.findings = findings;
      plan_.until = end + cure;
      air_.extend_to(plan_.until);
      write_events(plan_, job_, loads_, graph_, found.schedule, places, air_.clocks(), grid_);
      if (cured(plan_)) break;
    }
    if (request_.earlier_starts) plan_.changes = changes_since(*request_.earlier_starts, plan_);
    plan_.visits = visits_in(plan_);
    if (purpose_ == Purpose::follow) {
      explain_starts(plan_, graph_, model, found.schedule, air_.clocks(), grid_);
      plan_.time_spent = time_spent(job_, graph_, model, found.schedule, calendar, grid_);
    }
    write_purchase(plan_, job_);
    write_warnings(plan_, air_.clocks());
    write_condensation(plan_);
    if (crowd_) plan_.findings.push_back(set_aside_full(*crowd_, job_.shop, grid_));
    write_past_limits(plan_);
    const std::vector<job::Finding> missed = missed_limits(missed_, graph_, plan_.events);
    plan_.findings.insert(plan_.findings.end(), missed.begin(), missed.end());
    for (const Delivery& delivery : graph_.deliveries) {
      const Instant ready = grid_.instant(found.schedule.activities[delivery.work.value_or(delivery.safe)].start);
      plan_.ready = plan_.ready ? std::max(*plan_.ready, ready) : ready;
    }
  }

  const job::Job& job_;
  const job::Request& request_;
  Purpose purpose_;
  const Variant& variant_;
  Grid grid_;
  Search search_{request_, purpose_, grid_};
  job::Plan plan_;
  PlanAir air_{job_, plan_};
  Loads loads_;
  TaskGraph graph_;
  Instant wood_until_;
  std::vector<Before> missed_;  // time limits that the plan need not keep
  std::optional<Crowd> crowd_;  // of what stands aside
  bool forgiving_ = false;      // of limits that began with what is done

  struct Refusal {
    job::Status status = job::Status::planned;
    std::vector<Requirement> by;  // of a contradiction
    bool operator==(const Refusal&) const = default;
  };
  Refusal refusal_;
};

}  // namespace

job::Plan make_plan(const job::Job& job, const job::Request& request, Purpose purpose) {
  job::Plan plan = best_variant(job, request, purpose, [&](const job::Request& one, const Variant& variant, Purpose why) {
    return Planner(job, one, why, variant).run();
  });
  if (purpose == Purpose::follow) plan.waits = waits_in(job, plan);
  return plan;
}

}  // namespace coatday::planner
