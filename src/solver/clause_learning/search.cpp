#include "solver/clause_learning/search.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "solver/base/layout.h"
#include "solver/base/result.h"
#include "solver/base/violations.h"
#include "solver/clause_learning/solver.h"

namespace coatday::solver {
namespace {

using clause_learning::Literal;
using clause_learning::Solver;
using clause_learning::Var;

constexpr double most_cells = 1 << 26;  // of the table of resources over time
constexpr double most_pairs = 20'000;   // in families and exclusions
constexpr long most_moves = 1'000'000;  // of bounds, while probing orders
constexpr long quick = 100;             // conflicts to look at one bound

// The number of pairs in which either may go first: within a family, or by an exclusion.
double pairs(const Problem& problem) {
  std::map<int, double> families;
  for (const Activity& a : problem.activities) {
    if (a.family >= 0) ++families[a.family];
  }
  double sum = 0;
  for (const auto& [family, members] : families) sum += members * members;
  for (const Exclusion& e : problem.exclusions) sum += static_cast<double>(e.left.size()) * static_cast<double>(e.right.size());
  return sum;
}

}  // namespace

class Search::Inside {
 public:
  explicit Inside(const Problem& problem) : problem_(problem), solver_(problem) {}

  SearchResult improve(const std::optional<Score>& best, const Schedule* hint, const SearchLimits& limits, const Neighbourhood& near);
  void ready_from(Time t) {
    if (solver_.model.objective().ready >= 0) solver_.require(clause_learning::at_least(solver_.model.objective().ready, t));
  }
  void on_learned(std::function<void(const std::vector<StartBound>&)>);
  Solver& solver() { return solver_; }

 private:
  enum class Stage { any, lateness, ready };
  bool run(Stage, const std::vector<Literal>& near, long conflicts);
  void tighten();
  [[nodiscard]] std::vector<Literal> assumptions(Stage, const std::vector<Literal>& near) const;
  [[nodiscard]] std::vector<Literal> near(const Neighbourhood&);
  bool accept(Stage);
  void report_bounds();
  [[nodiscard]] bool stopped() const;
  [[nodiscard]] long left() const { return limits_.conflicts > 0 ? limits_.conflicts - result_.conflicts : unreachable; }

  const Problem& problem_;
  Solver solver_;
  bool tightened_ = false;
  bool broken_ = false;  ///< it has found an unsound schedule: its proofs are worth nothing
  SearchLimits limits_;
  Stopwatch stopwatch_{Clock::wall};
  std::optional<Score> best_;
  SearchResult result_;
};

SearchResult Search::Inside::improve(const std::optional<Score>& best, const Schedule* hint, const SearchLimits& limits,
                                     const Neighbourhood& neighbourhood) {
  limits_ = limits;
  stopwatch_ = Stopwatch(limits.clock);
  best_ = best;
  result_ = {};
  if (hint != nullptr) solver_.branching.prefer(*hint);
  const std::vector<Literal> near = this->near(neighbourhood);
  bool exhausted = false;
  if (near.empty() && !tightened_) tighten();
  if (!best_) exhausted = run(Stage::any, near, left());
  if (best_) {
    const bool least = solver_.model.objective().lateness < 0 || run(Stage::lateness, near, left() / 2);
    exhausted = (solver_.model.objective().ready < 0 || run(Stage::ready, near, left())) && least;
  }
  report_bounds();
  result_.exhausted = exhausted && !broken_;
  return std::move(result_);
}

// Raises the bound on the ready time by halving: each step must be refuted with few conflicts.
void Search::Inside::tighten() {
  tightened_ = true;
  if (solver_.model.objective().ready < 0 || solver_.dead()) return;
  const clause_learning::Trail& trail = solver_.model.engine.trail;
  const Var ready = solver_.model.objective().ready;
  solver_.probe(most_moves, [this] { return stopped(); });
  Time high = best_ ? best_->ready : trail.high(ready);
  while (!solver_.dead() && trail.low(ready) < high && !stopped()) {
    const Time middle = trail.low(ready) + (high - trail.low(ready)) / 2;
    const long before = solver_.conflicts();
    const auto answer = solver_.solve({clause_learning::at_most(ready, middle)}, Solver::Aim::prove, std::min(quick, left() / 20),
                                      [this] { return stopped(); });
    result_.conflicts += solver_.conflicts() - before;
    if (answer == Solver::Answer::none) {
      ready_from(middle + 1);
    } else {
      high = middle;
    }
  }
}

// Finds better and better schedules of a stage. True when none is left.
bool Search::Inside::run(Stage stage, const std::vector<Literal>& near, long conflicts) {
  const long last = result_.conflicts + conflicts;
  const auto aim = best_ && near.empty() ? Solver::Aim::prove : Solver::Aim::find;
  while (result_.conflicts < last || result_.conflicts == 0) {
    const long before = solver_.conflicts();
    const auto answer = solver_.solve(assumptions(stage, near), aim, last - result_.conflicts, [this] { return stopped(); });
    result_.conflicts += solver_.conflicts() - before;
    if (answer != Solver::Answer::found) return answer == Solver::Answer::none;
    if (!accept(stage)) return false;
    if (stage == Stage::any) return false;
  }
  return false;
}

std::vector<Literal> Search::Inside::assumptions(Stage stage, const std::vector<Literal>& near) const {
  std::vector<Literal> result;
  const clause_learning::Model& model = solver_.model;
  if (stage != Stage::any && model.objective().lateness >= 0) {
    const double units = best_->lateness / model.objective().lateness_unit;
    const double most = model.objective().exact_lateness ? std::round(units) : std::ceil(units);
    const double less = stage == Stage::lateness ? most - 1 : most;
    result.push_back(clause_learning::at_most(model.objective().lateness, static_cast<Time>(std::min<double>(less, unreachable))));
  }
  if (stage == Stage::ready) result.push_back(clause_learning::at_most(model.objective().ready, best_->ready - 1));
  result.insert(result.end(), near.begin(), near.end());
  return result;
}

std::vector<Literal> Search::Inside::near(const Neighbourhood& neighbourhood) {
  std::vector<Literal> result;
  for (const auto& [activity, within] : neighbourhood.starts) {
    result.push_back(clause_learning::at_least(solver_.model.run(activity).start, within.begin));
    result.push_back(clause_learning::at_most(solver_.model.run(activity).start, within.end - 1));
  }
  for (const auto& [alternative, branch] : neighbourhood.branches)
    result.push_back(clause_learning::yes(solver_.model.branch(alternative, branch)));
  for (const auto& [before, after] : neighbourhood.orders) result.push_back(solver_.model.orders().precedence(before, after));
  return result;
}

bool Search::Inside::accept(Stage stage) {
  Schedule schedule = solver_.schedule();
  if (auto stretches = lay_out(problem_, schedule)) schedule.hold_stretch = std::move(*stretches);
  if (!violations(problem_, schedule).empty()) {
    broken_ = true;
    return false;
  }
  const Score reached = score(problem_, schedule);
  const bool better =
      stage == Stage::any || reached.lateness < best_->lateness || (reached.lateness <= best_->lateness && reached.ready < best_->ready);
  if (!better) return false;
  best_ = reached;
  result_.schedule = schedule;
  solver_.branching.prefer(schedule);
  return true;
}

void Search::Inside::report_bounds() {
  const clause_learning::Model& model = solver_.model;
  if (broken_) return;
  result_.infeasible = solver_.dead();
  if (model.objective().ready >= 0) result_.ready_bound = solver_.dead() ? unreachable : model.engine.trail.low(model.objective().ready);
  if (model.objective().lateness >= 0)
    result_.lateness_bound = model.engine.trail.low(model.objective().lateness) * model.objective().lateness_unit;
}

bool Search::Inside::stopped() const {
  if (limits_.stop != nullptr && limits_.stop->load(std::memory_order_relaxed)) return true;
  return limits_.seconds > 0 && stopwatch_.has_run(limits_.seconds);
}

void Search::Inside::on_learned(std::function<void(const std::vector<StartBound>&)> tell) {
  std::vector<int> activity_of(at(solver_.model.engine.trail.variables()), -1);
  for (int i = 0; i < solver_.model.runs(); ++i) activity_of[at(solver_.model.run(i).start)] = i;
  solver_.on_learned = [tell = std::move(tell), activity_of = std::move(activity_of)](const std::vector<Literal>& clause) {
    std::vector<StartBound> bounds;
    for (const Literal l : clause) {
      const std::size_t x = at(clause_learning::variable(l));
      if (x >= activity_of.size() || activity_of[x] < 0) return;
      const bool up = (l.bound_var & 1) == 0;
      bounds.push_back({activity_of[x], up, up ? l.value : -l.value});
    }
    tell(bounds);
  };
}

Search::Search(const Problem& problem) : inside_(std::make_unique<Inside>(problem)) {}
Search::~Search() = default;

bool Search::supports(const Problem& problem) {
  Time first = unreachable;
  for (const Activity& a : problem.activities) {
    if (!a.starts.empty()) first = std::min(first, a.starts.front().begin);
  }
  const double cells = static_cast<double>(problem.resources.size()) * (static_cast<double>(problem.horizon) - first + 1);
  const bool weights = std::all_of(problem.goals.begin(), problem.goals.end(), [](const Goal& g) { return g.weight >= 0; });
  const bool required =
      std::any_of(problem.goals.begin(), problem.goals.end(), [&](const Goal& g) { return !problem.activities[at(g.activity)].optional; });
  return cells <= most_cells && pairs(problem) <= most_pairs && weights && (required || problem.goals.empty());
}

SearchResult Search::improve(const std::optional<Score>& best, const Schedule* hint, const SearchLimits& limits,
                             const Neighbourhood& near) {
  return inside_->improve(best, hint, limits, near);
}

void Search::ready_from(Time t) { inside_->ready_from(t); }

void Search::on_learned(std::function<void(const std::vector<StartBound>&)> tell) { inside_->on_learned(std::move(tell)); }

clause_learning::Solver& Search::solver() { return inside_->solver(); }

}  // namespace coatday::solver
