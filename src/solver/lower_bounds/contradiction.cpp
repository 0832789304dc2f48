#include "solver/lower_bounds/contradiction.h"

#include <algorithm>

namespace coatday::solver {
namespace {

constexpr long patience = 20'000'000;  // moves of bounds

void tell(Tags& tags, Tag tag) {
  if (tag >= 0 && std::find(tags.begin(), tags.end(), tag) == tags.end()) tags.push_back(tag);
}

}  // namespace

std::optional<Contradiction> over_capacity(const Network& network) {
  const std::vector<Resource>& resources = network.problem.resources;
  const auto fits = [&](const Demand& d) { return d.amount <= resources[at(d.resource)].capacity; };
  for (int a = 0; a < network.size; ++a) {
    if (!network.certain(a)) continue;
    for (const Demand& demand : network.demands[a]) {
      if (fits(demand)) continue;
      Contradiction result{{}, a};
      tell(result.tags, network.activity(a).tag);
      tell(result.tags, resources[at(demand.resource)].tag);
      return result;
    }
  }
  for (const Hold& hold : network.problem.holds) {
    if (!network.certain(hold.first) || std::any_of(hold.choices.begin(), hold.choices.end(), fits)) continue;
    Contradiction result{{}, hold.first};
    tell(result.tags, hold.tag);
    for (const Demand& choice : hold.choices) tell(result.tags, resources[at(choice.resource)].tag);
    return result;
  }
  return std::nullopt;
}

// Leaves out runs of tags, shorter and shorter ones. A single tag is needed if the bounds do not cross without it.
Contradiction explain(const Network& network, const Bounds& crossed) {
  Contradiction result{crossed.reasons(), crossed.crossed()};
  Tags needed;
  long work = 0;
  for (std::size_t run = result.tags.size(); work < patience;) {
    Tags undecided;
    for (const Tag tag : result.tags) {
      if (std::find(needed.begin(), needed.end(), tag) == needed.end()) undecided.push_back(tag);
    }
    if (undecided.empty()) break;
    run = std::min(run, undecided.size());
    Tags kept = result.tags;
    const Tags left_out(undecided.begin(), undecided.begin() + static_cast<std::ptrdiff_t>(run));
    std::erase_if(kept, [&](Tag tag) { return std::find(left_out.begin(), left_out.end(), tag) != left_out.end(); });
    Bounds without(network, std::move(kept));
    const bool holds = !without.propagate();
    work += without.work() + network.size;
    if (holds) {
      result = {without.reasons(), without.crossed()};
    } else if (run == 1) {
      needed.push_back(left_out.front());
      run = undecided.size() / 2 + 1;
    } else {
      run /= 2;
    }
  }
  return result;
}

}  // namespace coatday::solver
