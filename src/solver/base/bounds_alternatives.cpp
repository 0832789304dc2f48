// What bounds make of alternatives.

#include <algorithm>

#include "solver/base/bounds.h"

namespace coatday::solver {
bool Bounds::gone(int a) const {
  const int alternative = network_->alternative[at(a)];
  if (alternative < 0) return false;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    if (open(w) && stands_in(a, network_->branches[at(w)])) return false;
  }
  return true;
}

// No branch in which the activity stands can be taken. What follows from the others is to be seen anew.
void Bounds::close(int a, int because) {
  const int alternative = network_->alternative[at(a)];
  bool news = false, any_open = false;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    if (open(w) && stands_in(a, network_->branches[at(w)])) {
      closed_[at(w)] = because;
      news = true;
    }
    any_open = any_open || open(w);
  }
  if (!any_open && counts(network_->problem.alternatives[at(alternative)].tag)) crossed_ = a;
  if (!news || !any_open) return;
  for (const Branch& branch : network_->branches_of(alternative)) {
    for (const int other : branch) {
      enqueue(earliest_side, other);
      enqueue(latest_side, other);
    }
  }
}

void Bounds::close_what_has_no_room(int a) {
  const std::vector<Resource>& resources = network_->problem.resources;
  const auto too_much = [&](const Demand& d) {
    const Resource& r = resources[at(d.resource)];
    return d.amount > r.capacity && counts(r.tag);
  };
  for (const Demand& demand : network_->demands[a]) {
    if (too_much(demand)) return close(a, note({-1, resources[at(demand.resource)].tag, -1}));
  }
  for (const int h : network_->holds[a]) {
    const Hold& hold = network_->hold(h);
    if (hold.first != a || !counts(hold.tag) || !std::all_of(hold.choices.begin(), hold.choices.end(), too_much)) continue;
    int because = note({-1, hold.tag, -1});
    for (const Demand& choice : hold.choices) because = note({because, resources[at(choice.resource)].tag, -1});
    return close(a, because);
  }
}

// The tightest bound that the branch's activities give.
std::optional<Bounds::Pull> Bounds::strongest(Side side, int to, const Branch& branch) const {
  const bool up = side == earliest_side;
  std::optional<Pull> result;
  const auto consider = [&](const auto& lag, int from) {
    if (!counts(lag.tag) || !stands_in(from, branch)) return;
    const Time value = by(side, lag);
    if (!result || (up ? value > result->value : value < result->value)) result = Pull{value, lag.tag, from};
  };
  for (const int i : up ? network_->min_in[to] : network_->min_out[to]) {
    const MinimumLag& lag = network_->min_lag(i);
    consider(lag, up ? lag.from.activity : lag.to);
  }
  for (const int i : up ? network_->max_out[to] : network_->max_in[to]) {
    const MaximumLag& lag = network_->max_lag(i);
    if (network_->force[at(i)] == Force::hard) consider(lag, up ? lag.to : lag.from.activity);
  }
  return result;
}

// The weakest of what the open branches give, those in which `to` itself can take part.
void Bounds::give_by_branches(Side side, int to, int alternative) {
  const Tag tag = network_->problem.alternatives[at(alternative)].tag;
  if (!counts(tag)) return;
  std::vector<Pull> pulls;
  std::optional<Time> weakest;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    const Branch& branch = network_->branches[at(w)];
    if (!open(w) || (network_->alternative[at(to)] == alternative && !stands_in(to, branch))) continue;
    const std::optional<Pull> pull = strongest(side, to, branch);
    if (!pull) return;
    pulls.push_back(*pull);
    weakest = !weakest ? pull->value : side == earliest_side ? std::min(*weakest, pull->value) : std::max(*weakest, pull->value);
  }
  if (!weakest || (side == earliest_side ? *weakest <= earliest(to) : *weakest >= latest(to))) return;
  int because = -1;
  for (int w = network_->first_branch[at(alternative)]; w < network_->first_branch[at(alternative) + 1]; ++w) {
    if (!open(w)) because = note({closed_[at(w)], -1, -1, because});
  }
  for (const Pull& pull : pulls) because = note({reason_[side][at(pull.from)], pull.tag, -1, because});
  set(side, to, *weakest, tag, because);
}

}  // namespace coatday::solver
