#include "planner/make/search.h"

#include <algorithm>

namespace coatday::planner {

namespace {

/// The quick search may find nothing. Then so many conflicts and passes go into a plan, or into the proof that there is none.
constexpr long search_for_any = 3000;
/// So many go into a better plan, until none is ready on an earlier day; for so few tasks that takes a moment. A plan that is only compared is
/// one of many, and gets less.
constexpr long search_to_follow = 3000, search_to_compare = 500;
constexpr std::size_t few_tasks = 300, few_to_compare = 40;
/// With more there are so many passes, fewer the more tasks there are: a second.
constexpr int passes_for_many = 600;
/// And so many tries to put whole orders back in another turn.
constexpr long reinsertions = 2000;
/// At least this part of the seconds that the request gives goes into the search.
constexpr double least_search = 0.2;
/// The first passes over a large plan, and gathering, may each take as long as this part of them, but never less than so many seconds.
constexpr double share = 0.3, least_share = 1;

/// The longer search may end with less than the quick one found, and still knows the better bound.
solver::Outcome better(solver::Outcome quick, solver::Outcome longer) {
  auto* before = std::get_if<solver::Found>(&quick);
  auto* after = std::get_if<solver::Found>(&longer);
  if (before == nullptr || (after != nullptr && !(before->score < after->score))) return longer;
  if (after != nullptr) {
    before->ready_bound = std::max(before->ready_bound, after->ready_bound);
    before->goals_from = std::move(after->goals_from);
    before->cut_off = after->cut_off;
  }
  return quick;
}

}  // namespace

solver::Outcome Search::run(const solver::Problem& problem, Aim aim) const {
  solver::Outcome outcome = find(problem, aim);
  if (auto* found = std::get_if<solver::Found>(&outcome); found != nullptr && purpose_ == Purpose::follow) {
    solver::Limits gathering;
    gathering.guard = request_.seconds > 0 ? a_share() : guard();
    solver::gather_visits(problem, gathering, *found);
    found->cut_off = found->cut_off || (request_.seconds <= 0 && guard_.left() <= 0);
  }
  return outcome;
}

solver::Outcome Search::find(const solver::Problem& problem, Aim aim) const {
  const bool follows = purpose_ == Purpose::follow;
  solver::Limits quick;
  quick.guard = guard();
  quick.reinsertions = follows ? reinsertions : 0;
  quick.reasons = aim.reasons;
  if (follows && problem.activities.size() > few_tasks) {
    quick.passes = passes_for_many;
    if (request_.seconds > 0) quick.guard = a_share();
  }
  solver::Outcome outcome = solver::solve(problem, quick);
  const auto* found = std::get_if<solver::Found>(&outcome);
  if (request_.seconds > 0)
    return found != nullptr || aim.insists ? better(std::move(outcome), solver::solve(problem, in_seconds())) : outcome;
  solver::Limits more;
  more.guard = guard();
  more.reasons = aim.reasons;
  more.work = request_.work;
  if (found == nullptr && aim.insists && follows) {
    more.work = search_for_any;
    return solver::solve(problem, more);
  }
  const std::size_t most = follows ? few_tasks : purpose_ == Purpose::compare ? few_to_compare : 0;
  if (found == nullptr || found->proven || problem.activities.size() > most) return outcome;
  more.work = std::max(follows ? search_to_follow : search_to_compare, more.work);
  return better(std::move(outcome), solver::solve(problem, more));
}

/// What is left of it; every search gets a moment.
double Search::guard() const {
  constexpr double least = 0.05;
  return request_.seconds > 0 ? 0 : std::max(least, guard_.left());
}

double Search::a_share() const { return std::max(least_share, share * request_.seconds); }

solver::Limits Search::in_seconds() const {
  solver::Limits limits;
  const double before = std::chrono::duration<double>(spent()).count();  // what follows the search takes about twice as long
  limits.reinsertions = reinsertions;
  limits.seconds = std::max(least_search * request_.seconds, request_.seconds - 3 * before);
  limits.stop = request_.stop;
  if (request_.progress) {
    limits.progress = [this](const solver::Progress& progress) {
      request_.progress(
          {grid_.instant(progress.best.ready), grid_.instant(progress.ready_bound), std::chrono::duration<double>(spent()).count()});
    };
  }
  return limits;
}

}  // namespace coatday::planner
