#include "job/compare.h"

#include <algorithm>

namespace coatday::job {
namespace {

void compare_coats(const Plan& before, const Plan& after, Comparison& result) {
  std::map<std::string, Instant> starts;
  for (const Event& event : before.events) {
    if (is_coat(event.kind)) starts.emplace(by_first_item(event.id), event.start);
  }
  std::size_t known = 0;
  for (std::size_t i = 0; i < after.events.size(); ++i) {
    const Event& event = after.events[i];
    if (!is_coat(event.kind)) continue;
    const auto was = starts.find(by_first_item(event.id));
    if (was == starts.end()) {
      ++result.added;
      continue;
    }
    ++known;
    if (was->second == event.start) ++result.stayed;
    if (was->second != event.start) result.moved.push_back({i, was->second});
  }
  result.gone = starts.size() - known;
}

void compare_air(const Plan& before, const Plan& after, Comparison& result) {
  result.air_from = std::max(before.from, after.from);
  result.air_until = std::max(before.ready.value_or(before.from), after.ready.value_or(after.from));
  for (const climate::AirRow& row : after.air.rows()) {
    if (row.from < result.air_from || row.from >= result.air_until) continue;
    if (row.from < before.air.begin() || row.from >= before.air.end()) continue;
    const double more = (row.air.temperature - before.air.at(row.from).air.temperature).value();
    const Hours span(climate::AirSeries::step);
    (more > 0 ? result.warmer : result.cooler) += std::abs(more) * span.count();
    constexpr double same = 0.01;  // K
    if (std::abs(more) > same) result.differs += span;
  }
}

}  // namespace

std::optional<Heat> heat_used(const Plan& plan, Instant from, Instant until) {
  if (!plan.shop.heating) return std::nullopt;
  Hours full_output{0};
  for (std::size_t r = 0; r < plan.air.rows().size(); ++r) {
    const Instant at = plan.air.rows()[r].from;
    if (at < from || at >= until) continue;
    const auto work = plan.air.work(r);
    if (!work) return std::nullopt;
    full_output += work->heating;
  }
  Heat heat{plan.shop.heating->power.value() * full_output.count(), {}};
  if (plan.shop.heating->energy) heat.cost = *plan.shop.heating->energy * heat.kilowatt_hours;
  return heat;
}

Comparison compare(const Plan& before, const Plan& after) {
  Comparison result;
  if (before.status != Status::planned || after.status != Status::planned) return result;
  compare_coats(before, after, result);
  compare_air(before, after, result);
  result.heat_before = heat_used(before, result.air_from, result.air_until);
  result.heat_after = heat_used(after, result.air_from, result.air_until);
  return result;
}

Cost cost_of(const Plan& plan) {
  Cost cost;
  for (const Purchase& row : plan.purchase) {
    if (row.cost) {
      cost.sum += *row.cost;
    } else if (!row.buy.empty()) {
      ++cost.unpriced;
    }
  }
  return cost;
}

std::optional<Money> dearer(const Plan& before, const Plan& after) {
  const Cost was = cost_of(before), now = cost_of(after);
  if (was.unpriced > 0 || now.unpriced > 0 || after.shop.currency.empty()) return std::nullopt;
  return now.sum - was.sum;
}

std::vector<BuyChange> buy_changes(const Plan& before, const Plan& after) {
  std::map<std::string, BuyChange> all;
  const auto gather = [&all](const Plan& plan, std::vector<Bought> BuyChange::*side) {
    for (const Purchase& row : plan.purchase) {
      if (row.buy.empty()) continue;
      const auto product = plan.products.find(row.product);
      const std::string name = product == plan.products.end() ? row.product : product->second.name;
      BuyChange& one = all[row.part.empty() ? name : name + ", " + row.part];
      one.product = row.product;
      one.*side = row.buy;
    }
  };
  gather(before, &BuyChange::was);
  gather(after, &BuyChange::now);
  const auto same = [](const Bought& a, const Bought& b) { return a.size == b.size && a.count == b.count; };
  std::vector<BuyChange> changes;
  for (auto& [name, one] : all) {
    if (std::equal(one.was.begin(), one.was.end(), one.now.begin(), one.now.end(), same)) continue;
    one.name = name;
    changes.push_back(std::move(one));
  }
  return changes;
}

}  // namespace coatday::job
