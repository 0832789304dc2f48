#include "planner/buy/buying.h"

#include <algorithm>
#include <map>
#include <set>

#include "planner/buy/purchase.h"
#include "planner/buy/sundries.h"
#include "planner/tasks/loads.h"

namespace coatday::planner {

namespace {

bool wiped(finish::Method method) { return method == finish::Method::wipe || method == finish::Method::pad; }

SquareMetres area_of(const job::Plan& plan, const job::Event& event) {
  SquareMetres sum;
  for (const std::size_t face : event.faces) sum += plan.faces[face].area;
  return sum;
}

std::vector<Need> needs(const job::Plan& plan) {
  std::vector<Need> result;
  std::map<std::pair<std::string, finish::Method>, std::size_t> index;
  for (const job::Event& event : plan.events) {
    if (!event.volume || event.done) continue;
    const finish::Method method = event.method.value_or(finish::Method::brush);
    const auto [at, is_new] = index.try_emplace({event.product, method}, result.size());
    if (is_new) result.push_back({event.product, method, {}, {}, 0, day_of(plan.shop.zone.to_local(event.start))});
    Need& need = result[at->second];
    need.area += area_of(plan, event);
    need.litres += *event.volume;
    const bool shared = event.set_up == Minutes(0) && event.clean_up == Minutes(0);
    need.sessions += shared && need.sessions > 0 ? 0 : 1;
  }
  return result;
}

std::vector<job::Sundry> sundries(const job::Plan& plan, const job::Job& job) {
  std::vector<DryWork> dry;
  std::set<std::pair<std::optional<std::size_t>, std::string>> coated;
  int wiping = 0;
  for (const job::Event& event : plan.events) {
    if (event.done) continue;
    if (!event.product.empty()) coated.insert({event.piece, event.load});
    if (event.grit) dry.push_back({*event.grit, area_of(plan, event), coated.count({event.piece, event.load}) != 0});
    if (!event.product.empty() && (event.wipe_by || (event.method && wiped(*event.method)))) ++wiping;
  }
  std::vector<job::Sundry> result = abrasives(dry, plan.shop.units);
  if (const auto cloths = rags(wiping)) result.push_back(*cloths);
  std::vector<OnPoints> resting;
  for (const job::OrderPiece& piece : job.order.pieces) {
    for (const piece::Part& part : piece.piece.parts) {
      if (part.support == piece::Support::points) resting.push_back({piece::footprint(part.shape).length, part.count});
    }
  }
  if (const auto stands = points(resting, plan.shop.units)) result.push_back(*stands);
  return result;
}

}  // namespace

void write_purchase(job::Plan& plan, const job::Job& job) {
  plan.purchase = purchase(needs(plan), plan.products, plan.shop);
  plan.sundries = sundries(plan, job);
}

}  // namespace coatday::planner
