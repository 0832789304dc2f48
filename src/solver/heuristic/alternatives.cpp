#include "solver/heuristic/alternatives.h"

namespace coatday::solver {
namespace {

constexpr int passes_to_find = 4;  // with the same ways
constexpr int passes_to_improve = 10;
constexpr std::size_t most_variants = 32;  // kept in memory
constexpr int most_idle = 20;              // turns

std::size_t at(int i) { return static_cast<std::size_t>(i); }

}  // namespace

Problem taking(Problem problem, const std::vector<int>& taken) {
  for (std::size_t f = 0; f < problem.forks.size(); ++f) {
    for (const Way& way : problem.forks[f].ways) {
      for (const int a : way) problem.activities[at(a)].optional = true;
    }
    for (const int a : problem.forks[f].ways[at(taken[f])]) problem.activities[at(a)].optional = false;
  }
  problem.forks.clear();
  return problem;
}

std::vector<int> ways_taken(const Problem& problem, const Schedule& schedule) {
  std::vector<int> taken;
  for (const Fork& fork : problem.forks) taken.push_back(way_taken(fork, schedule));
  return taken;
}

Variants::Variant::Variant(const Network& all, const Taken& taken, const Bounds& of_all, Budget& budget, Incumbent& incumbent)
    : problem(taking(all.problem, taken)), network(problem), bounds(network) {
  for (int a = 0; a < network.size; ++a) {
    if (network.activity(a).optional) continue;
    bounds.start_from(a, of_all.earliest(a));
    bounds.start_by(a, of_all.latest(a));
  }
  if (bounds.propagate()) passes.emplace(network, bounds, budget, incumbent);
}

Variants::Variants(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent)
    : network_(network), bounds_(bounds), budget_(budget), incumbent_(incumbent), random_(budget.limits().seed + 2) {
  if (network.problem.forks.empty()) plain_.emplace(network, bounds, budget, incumbent);
}

void Variants::find() {
  if (plain_) return plain_->find();
  const auto taken = [this](int turn) { return turn == 0 ? first() : varied(first()); };
  turns(false, never, taken, [](Improvement& passes) { passes.find(passes_to_find); });
}

void Variants::improve(int most) {
  if (plain_) return plain_->improve(most);
  const auto taken = [this](int turn) { return turn == 1 ? last() : turn % 3 == 0 ? best() : varied(best()); };
  turns(true, most, taken, [](Improvement& passes) { passes.improve(passes_to_improve); });
}

// Until there is a schedule (or, with one, for the rest of the limits), or nothing more comes of it.
template <typename Ways, typename Work>
void Variants::turns(bool with_one, int most, const Ways& ways, const Work& work) {
  const long begin = budget_.work();
  if (!budget_.extended()) most = budget_.limits().passes;
  const auto may_go_on = [&] { return budget_.work() - begin < most && (!budget_.extended() || !budget_.share_spent()); };
  int idle = 0;
  for (int turn = 0; incumbent_.best().has_value() == with_one && may_go_on() && idle < most_idle; ++turn) {
    const long before = budget_.work();
    if (auto& variant = of(ways(turn))) work(*variant);
    idle = budget_.work() == before ? idle + 1 : 0;
  }
}

Variants::Taken Variants::first() const {
  Taken taken;
  for (std::size_t f = 0; f < network_.problem.forks.size(); ++f) {
    int way = network_.first_way[f];
    while (way + 1 < network_.first_way[f + 1] && !bounds_.open(way)) ++way;
    taken.push_back(way - network_.first_way[f]);
  }
  return taken;
}

Variants::Taken Variants::last() const {
  Taken taken;
  for (std::size_t f = 0; f < network_.problem.forks.size(); ++f) {
    int way = network_.first_way[f + 1] - 1;
    while (way > network_.first_way[f] && !bounds_.open(way)) --way;
    taken.push_back(way - network_.first_way[f]);
  }
  return taken;
}

Variants::Taken Variants::best() const { return ways_taken(network_.problem, incumbent_.best()->schedule); }

// Other ways that are open for some forks, mostly few.
Variants::Taken Variants::varied(Taken taken) {
  do {
    const std::size_t f = random_.below(taken.size());
    std::vector<int> others;
    for (int way = network_.first_way[f]; way < network_.first_way[f + 1]; ++way) {
      if (bounds_.open(way) && way - network_.first_way[f] != taken[f]) others.push_back(way - network_.first_way[f]);
    }
    if (!others.empty()) taken[f] = others[random_.below(others.size())];
  } while (random_.chance(0.5));
  return taken;
}

std::optional<Improvement>& Variants::of(const Taken& taken) {
  auto found = variants_.find(taken);
  if (found == variants_.end()) {
    if (variants_.size() >= most_variants) variants_.clear();
    found = variants_.emplace(taken, std::make_unique<Variant>(network_, taken, bounds_, budget_, incumbent_)).first;
    budget_.count();
  }
  return found->second->passes;
}

const Troubles& Variants::troubles() const {
  if (plain_) return plain_->troubles();
  for (const auto& [taken, variant] : variants_) {
    if (variant->passes) return variant->passes->troubles();
  }
  return troubles_;
}

}  // namespace coatday::solver
