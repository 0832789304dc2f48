#include "solver/gather/moves.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr double whole_visits = 0.45, single_steps = 0.3;
constexpr double back_first = 0.4;
constexpr int most_shifted = 6;  // gaps between visits

int count_of(const std::vector<Visit>& visits) { return static_cast<int>(visits.size()); }

}  // namespace

std::vector<Wish> Moves::any() {
  if (visits_.empty()) return {};
  if (keeps_ && random_.chance(back_first)) return back_to_kept();
  const double kind = random_.unit();
  return kind < whole_visits ? visit_to_neighbour() : kind < whole_visits + single_steps ? step_to_step() : shifted();
}

int Moves::small_visit() {
  int best = static_cast<int>(random_.below(visits_.size()));
  for (int more = 0; more < 2; ++more) {
    const int other = static_cast<int>(random_.below(visits_.size()));
    if (visits_[at(other)].work < visits_[at(best)].work) best = other;
  }
  return best;
}

int Moves::neighbour(int visit, int most) {
  const int away = 1 + static_cast<int>(random_.below(at(most)));
  const int other = random_.chance(0.5) ? visit + away : visit - away;
  return other < 0 || other >= count_of(visits_) ? -1 : other;
}

// One to three steps that follow each other.
std::vector<Wish> Moves::back_to_kept() {
  std::vector<std::pair<Time, int>> away;
  for (int a = 0; a < network_.size; ++a) {
    const std::optional<Time>& kept = network_.activity(a).kept;
    if (kept && work_.placed(a) && work_.run(a).start != *kept && movable(a)) away.emplace_back(*kept, a);
  }
  if (away.empty()) return {};
  std::sort(away.begin(), away.end());
  const std::size_t first = random_.below(away.size()), last = std::min(away.size(), first + 1 + random_.below(3));
  std::vector<Wish> wishes;
  for (std::size_t i = first; i < last; ++i) wishes.push_back({away[i].second, away[i].first});
  return wishes;
}

std::vector<Wish> Moves::visit_to_neighbour() {
  const int from = small_visit(), to = neighbour(from, 2);
  if (to < 0) return {};
  const Visit& target = visits_[at(to)];
  const Time start = random_.chance(0.5) ? target.until : target.begin - visits_[at(from)].work;
  std::vector<Wish> wishes;
  for (const int a : visits_[at(from)].activities) {
    if (movable(a)) wishes.push_back({a, start});
  }
  return wishes;
}

std::vector<Wish> Moves::step_to_step() {
  const int from = small_visit(), to = neighbour(from, 3);
  if (to < 0) return {};
  const auto one_of = [this](int visit) {
    const std::vector<int>& all = visits_[at(visit)].activities;
    return all[random_.below(all.size())];
  };
  const int a = one_of(from), other = one_of(to);
  if (!movable(a)) return {};
  const Time lasts = work_.run(a).end - work_.run(a).start;
  return {{a, random_.chance(0.5) ? work_.run(other).end : work_.run(other).start - lasts}};
}

std::vector<Wish> Moves::shifted() {
  const int first = small_visit(), last = std::min(count_of(visits_) - 1, first + static_cast<int>(random_.below(3)));
  const Time most = most_shifted * std::max(Time(1), network_.problem.presence->gap);
  const Time by = 1 + static_cast<Time>(random_.below(at(most)));
  const Time shift = random_.chance(0.5) ? by : -by;
  std::vector<Wish> wishes;
  for (int visit = first; visit <= last; ++visit) {
    for (const int a : visits_[at(visit)].activities) {
      if (movable(a)) wishes.push_back({a, work_.run(a).start + shift});
    }
  }
  return wishes;
}

std::vector<Time> Moves::before_next(int a) const {
  const Time lasts = work_.run(a).end - work_.run(a).start;
  Time next = unreachable;
  for (const int i : network_.min_out[a]) {
    const int follower = network_.min_lag(i).to;
    if (work_.placed(follower)) next = std::min(next, work_.run(follower).start);
  }
  if (next == unreachable) return {};
  std::vector<Time> starts;
  const auto with_next = std::find_if(visits_.rbegin(), visits_.rend(), [&](const Visit& visit) { return visit.begin <= next; });
  if (with_next == visits_.rend()) return {};
  const bool together = with_next->begin <= work_.run(a).start;
  if (together) return {next - lasts};
  for (auto visit = with_next; visit != visits_.rend() && visit->until > work_.run(a).start; ++visit) {
    if (visit != with_next) starts.push_back(visit->until);
  }
  starts.push_back(next - lasts);
  return starts;
}

}  // namespace coatday::solver
