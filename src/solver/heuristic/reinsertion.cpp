#include "solver/heuristic/reinsertion.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr long most_in_vain = 400;
constexpr int most_neighbours = 2;

}  // namespace

Reinsertion::Reinsertion(const Network& network, const Bounds& bounds, const Budget& budget, const Schedule& schedule)
    : network_(network),
      bounds_(bounds),
      random_(budget.limits().seed + 5),
      urgency_(urgency(network, bounds)),
      job_of_(jobs(network, urgency_)),
      work_(network, bounds, schedule, budget),
      score_(score(network.problem, schedule)) {
  for (int a = 0; a < network.size; ++a) {
    if (at(job_of_[at(a)]) >= jobs_.size()) jobs_.resize(at(job_of_[at(a)]) + 1);
    if (bounds.earliest(a) < bounds.latest(a) && !network.activity(a).optional) jobs_[at(job_of_[at(a)])].activities.push_back(a);
  }
  for (int g = 0; g < static_cast<int>(network.problem.goals.size()); ++g)
    jobs_[at(job_of_[at(network.problem.goals[at(g)].activity)])].goals.push_back(g);
  for (Job& job : jobs_) measure(job);
}

Schedule Reinsertion::run(long tries) {
  long in_vain = 0;
  for (long n = 0; n < tries && in_vain < most_in_vain && (score_.lateness > 0 || score_.waits > 0); ++n)
    in_vain = try_once() ? 0 : in_vain + 1;
  return work_.schedule();
}

// True: better than before.
bool Reinsertion::try_once() {
  const std::vector<int> turn = with_neighbours(urgent_job());
  if (!work_.change(wishes(turn), {false, random_.chance(0.5)})) return false;
  const Score now = reached();
  const bool better = now < score_;
  if (!better && now != score_) {
    work_.undo();
    return false;
  }
  std::vector<int> moved;
  for (const auto& [a, was] : work_.before()) moved.push_back(job_of_[at(a)]);
  work_.accept();
  score_ = now;
  for (const int job : moved) measure(jobs_[at(job)]);
  return better;
}

void Reinsertion::measure(Job& job) const {
  job.begin = unreachable;
  job.end = -unreachable;
  for (const int a : job.activities) {
    if (!work_.placed(a)) continue;
    job.begin = std::min(job.begin, work_.run(a).start);
    job.end = std::max(job.end, work_.run(a).end);
  }
}

// As score.cpp has it, over the goals alone.
Score Reinsertion::reached() const {
  Score all = score_;
  all.lateness = all.waits = all.total = 0;
  all.ready = -unreachable;
  for (const Goal& goal : network_.problem.goals) {
    if (!work_.placed(goal.activity)) continue;
    add_goal(goal, work_.run(goal.activity).start, all);
  }
  return all;
}

double Reinsertion::want(int g) const {
  const Goal& goal = network_.problem.goals[at(g)];
  if (!work_.placed(goal.activity)) return 0;
  Score own;
  add_goal(goal, work_.run(goal.activity).start, own);
  return score_.lateness > 0 ? own.lateness : own.waits;
}

int Reinsertion::urgent_job() {
  const auto goals = static_cast<int>(network_.problem.goals.size());
  double sum = 0;
  for (int g = 0; g < goals; ++g) sum += want(g);
  double left = sum * random_.unit();
  for (int g = 0; g < goals; ++g) {
    left -= want(g);
    if (left < 0) return job_of_[at(network_.problem.goals[at(g)].activity)];
  }
  return job_of_[at(network_.problem.goals.back().activity)];
}

// Those that are under way at the same time may hold what it waits for.
std::vector<int> Reinsertion::with_neighbours(int job) {
  std::vector<int> beside;
  for (int other = 0; other < static_cast<int>(jobs_.size()); ++other) {
    if (other != job && !jobs_[at(other)].activities.empty() && jobs_[at(other)].begin < jobs_[at(job)].end &&
        jobs_[at(other)].end > bounds_.earliest(jobs_[at(job)].activities.empty() ? 0 : jobs_[at(job)].activities.front()))
      beside.push_back(other);
  }
  std::vector<int> turn{job};
  for (std::size_t more = 1 + random_.below(most_neighbours); more > 0 && !beside.empty(); --more) {
    const std::size_t next = random_.below(beside.size());
    turn.push_back(beside[next]);
    beside.erase(beside.begin() + static_cast<std::ptrdiff_t>(next));
  }
  if (turn.size() > 1 && random_.chance(0.2)) std::swap(turn[0], turn[1]);
  return turn;
}

std::vector<Wish> Reinsertion::wishes(const std::vector<int>& turn) const {
  const double breadth = 4.0 * std::max(Time(1), network_.problem.horizon);
  std::vector<Wish> all;
  for (std::size_t i = 0; i < turn.size(); ++i) {
    for (const int a : jobs_[at(turn[i])].activities) {
      if (work_.placed(a)) all.push_back({a, bounds_.earliest(a), urgency_[at(a)] - breadth * static_cast<double>(turn.size() - i)});
    }
  }
  return all;
}

}  // namespace coatday::solver
