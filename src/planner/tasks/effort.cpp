#include "planner/tasks/effort.h"

#include <algorithm>
#include <cmath>

#include "job/step_id.h"
#include "job/time_step.h"

namespace coatday::planner {

finish::Step scuff_step(const finish::Step& coat) {
  finish::Step step;
  step.id = job::scuff_before(coat.id);
  step.name = "scuff before " + coat.name;
  step.kind = finish::StepKind::scuff;
  step.grit = 320;                          // common practice, no source
  step.work_rate = SquareMetresPerHour(6);  // common practice, no source
  step.dusty = true;
  step.where = coat.where;
  return step;
}

std::optional<finish::Method> method_of(const finish::Step& step, const finish::Product& product, const shop::Shop& shop) {
  if (step.method) return step.method;
  for (const std::string& have : shop.methods) {
    for (const auto& [method, rate] : product.work_rates) {
      if (finish::word(method) == have) return method;
    }
  }
  return std::nullopt;
}

Mixing as_recorded(const finish::Product& product) {
  return {product.pot_life.value_or(Hours(0)), product.two_part ? product.two_part->induction : Hours(0)};
}

Effort coat_effort(const finish::Product& product, finish::Method method, SquareMetres area, int items, const shop::Shop& shop,
                   const Mixing& mixing, Hours at_least) {
  const auto rate = product.work_rates.find(method);
  const Hours by_hand(rate == product.work_rates.end() ? 0 : area.value() / rate->second.value());
  const Hours applying = std::max(at_least, by_hand + Hours(shop.handling) * items);
  Effort effort;
  constexpr double most_mixes = 10'000;  // far more than fit a shift
  if (product.pot_life) effort.mixes = static_cast<int>(std::clamp(std::ceil(applying / mixing.pot_life - 1e-9), 1.0, most_mixes));
  effort.hands_on = job::in_whole_steps(applying + product.stand.value_or(Hours(0)));
  const Hours set_up = (product.set_up + mixing.induction) * std::max(1, effort.mixes);
  effort.set_up = job::whole_steps(set_up) * job::time_step;
  effort.clean_up = job::whole_steps(product.clean_up) * job::time_step;
  return effort;
}

Effort dry_effort(const finish::Step& step, SquareMetres area, int items, const shop::Shop& shop) {
  Hours time(0);
  if (step.work_rate) time += Hours(area.value() / step.work_rate->value());
  if (step.takes) time += *step.takes * items;
  for (const finish::BakeStage& stage : step.bake) time += stage.duration;
  Effort effort;
  effort.hands_on = job::in_whole_steps(time + Hours(shop.handling) * items);
  return effort;
}

}  // namespace coatday::planner
