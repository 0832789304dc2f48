#include "solver/heuristic/branch_passes.h"

namespace coatday::solver {
namespace {

constexpr int passes_to_find = 4;  // with the same branches
constexpr int passes_to_improve = 10;
constexpr std::size_t most_reduced = 32;  // reduced problems kept in memory
constexpr int most_idle = 20;             // turns without a pass before it gives up

}  // namespace

Problem with_branches(Problem problem, const std::vector<int>& taken) {
  for (std::size_t f = 0; f < problem.alternatives.size(); ++f) {
    for (const Branch& branch : problem.alternatives[f].branches) {
      for (const int a : branch) problem.activities[at(a)].optional = true;
    }
    for (const int a : problem.alternatives[f].branches[at(taken[f])]) problem.activities[at(a)].optional = false;
  }
  problem.alternatives.clear();
  return problem;
}

std::vector<int> taken_branches(const Problem& problem, const Schedule& schedule) {
  std::vector<int> taken;
  for (const Alternative& alternative : problem.alternatives) taken.push_back(taken_branch(alternative, schedule));
  return taken;
}

BranchPasses::Reduced::Reduced(const Network& all, const Taken& taken, const Bounds& of_all, Budget& budget, Incumbent& incumbent)
    : problem(with_branches(all.problem, taken)), network(problem), bounds(network) {
  for (int a = 0; a < network.size; ++a) {
    if (network.activity(a).optional) continue;
    bounds.start_from(a, of_all.earliest(a));
    bounds.start_by(a, of_all.latest(a));
  }
  if (bounds.propagate()) passes.emplace(network, bounds, budget, incumbent);
}

BranchPasses::BranchPasses(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent)
    : network_(network), bounds_(bounds), budget_(budget), incumbent_(incumbent), random_(budget.limits().seed + 2) {
  if (network.problem.alternatives.empty()) plain_.emplace(network, bounds, budget, incumbent);
}

void BranchPasses::find() {
  if (plain_) return plain_->find();
  const auto taken = [this](int turn) { return turn == 0 ? first() : varied(first()); };
  turns(false, unreachable, taken, [](Improvement& passes) { passes.find(passes_to_find); });
}

void BranchPasses::improve(int most) {
  if (plain_) return plain_->improve(most);
  const auto taken = [this](int turn) { return turn == 1 ? last() : turn % 3 == 0 ? best() : varied(best()); };
  turns(true, most, taken, [](Improvement& passes) { passes.improve(passes_to_improve); });
}

// Goes on until there is a schedule, or with one until the limits are used up, or until turns make no more passes.
template <typename Branches, typename Work>
void BranchPasses::turns(bool with_one, int most, const Branches& branches, const Work& work) {
  const long begin = budget_.work();
  if (!budget_.extended()) most = budget_.limits().passes;
  const auto may_go_on = [&] { return budget_.work() - begin < most && !(budget_.extended() ? budget_.share_spent() : budget_.guarded()); };
  int idle = 0;
  for (int turn = 0; incumbent_.best().has_value() == with_one && may_go_on() && idle < most_idle; ++turn) {
    const long before = budget_.work();
    if (auto& reduced = of(branches(turn))) work(*reduced);
    idle = budget_.work() == before ? idle + 1 : 0;
  }
}

BranchPasses::Taken BranchPasses::first() const {
  Taken taken;
  for (std::size_t f = 0; f < network_.problem.alternatives.size(); ++f) {
    int branch = network_.first_branch[f];
    while (branch + 1 < network_.first_branch[f + 1] && !bounds_.open(branch)) ++branch;
    taken.push_back(branch - network_.first_branch[f]);
  }
  return taken;
}

BranchPasses::Taken BranchPasses::last() const {
  Taken taken;
  for (std::size_t f = 0; f < network_.problem.alternatives.size(); ++f) {
    int branch = network_.first_branch[f + 1] - 1;
    while (branch > network_.first_branch[f] && !bounds_.open(branch)) --branch;
    taken.push_back(branch - network_.first_branch[f]);
  }
  return taken;
}

BranchPasses::Taken BranchPasses::best() const { return taken_branches(network_.problem, incumbent_.best()->schedule); }

// Takes other open branches of some alternatives, mostly of few.
BranchPasses::Taken BranchPasses::varied(Taken taken) {
  do {
    const std::size_t f = random_.below(taken.size());
    std::vector<int> others;
    for (int branch = network_.first_branch[f]; branch < network_.first_branch[f + 1]; ++branch) {
      if (bounds_.open(branch) && branch - network_.first_branch[f] != taken[f]) others.push_back(branch - network_.first_branch[f]);
    }
    if (!others.empty()) taken[f] = others[random_.below(others.size())];
  } while (random_.chance(0.5));
  return taken;
}

std::optional<Improvement>& BranchPasses::of(const Taken& taken) {
  auto found = reduced_.find(taken);
  if (found == reduced_.end()) {
    if (reduced_.size() >= most_reduced) reduced_.clear();
    found = reduced_.emplace(taken, std::make_unique<Reduced>(network_, taken, bounds_, budget_, incumbent_)).first;
    budget_.count();
  }
  return found->second->passes;
}

const FailureCounts& BranchPasses::failure_counts() const {
  if (plain_) return plain_->failure_counts();
  for (const auto& [taken, reduced] : reduced_) {
    if (reduced->passes) return reduced->passes->failure_counts();
  }
  return failure_counts_;
}

}  // namespace coatday::solver
