// What follows from the small plan's events, by hand formulas.
#include <algorithm>
#include <map>

#include "tests/checker/small_plan.h"
#include "tests/support/visits.h"

namespace coatday::checker::test {

using finish::Stage;

namespace {

/// Litres by brush at 10 m²/l: 1.3 times as much for a first coat, twice that on end grain, and 5 % stay in the brush.
Litres brushed(const job::Plan& plan, const job::Event& coat) {
  double area = 0;
  for (const std::size_t face : coat.faces) {
    const double first = coat.coat == 1 ? 1.3 * (plan.faces[face].end_grain ? 2 : 1) : 1;
    area += plan.faces[face].area.value() * first;
  }
  return Litres(area / 9.5);
}

/// Elapsed time in reference air; 1.4 times as long by the slow clock, and as short by the fast one.
void settle_stages(job::Event& coat, const finish::Product& product) {
  for (std::size_t s = 0; s < finish::stage_count; ++s) {
    const auto stage = static_cast<Stage>(s);
    const auto hours = product.reference().hours[stage];
    coat.stages.expected[stage] = coat.stages.slow[stage] = coat.stages.fast[stage] = std::nullopt;
    if (!hours) continue;
    coat.stages.expected[stage] = later(coat.end, *hours);
    coat.stages.slow[stage] = later(coat.end, *hours * 1.4);
    coat.stages.fast[stage] = later(coat.end, *hours / 1.4);
  }
}

/// 762 kg/m3 x 1619 J/(kg K) x 0.13 m2K/W x 10 mm of the top, 12.5 mm of a leg: 1604 s and 2005 s. A litre can, 18.1 mm of water: 9814 s.
/// To the minute.
void settle_bodies(job::Plan& plan, const climate::AirSeries& air) {
  const Hours top(Minutes(27)), leg(Minutes(33)), can(Minutes(164));
  for (job::Event& e : plan.events) {
    if (!e.product.empty()) e.bodies = {plan.faces[e.faces.front()].part_id == "top" ? top : leg};
  }
  for (const Hours body : {top, leg, can}) plan.surfaces[body] = climate::Surface(air, body, plan.air.begin());
}

using ThreeMoments = finish::PerEstimate<job::StageInstants>;

job::HandOver dates(const job::Plan& plan, job::StageInstants ThreeMoments::*estimate) {
  std::map<Stage, Instant> last;
  for (const job::Event& e : plan.events) {
    if (e.product.empty()) continue;
    for (const Stage stage : {Stage::handle, Stage::pack, Stage::light_use, Stage::full_cure}) {
      last[stage] = std::max(last[stage], *(e.stages.*estimate)[stage]);
    }
  }
  return {last[Stage::handle], last[Stage::pack], last[Stage::pack], last[Stage::light_use], last[Stage::full_cure]};
}

}  // namespace

void Small::settle() {
  for (job::FaceEntry& face : plan.faces) face.coats = 0;
  job::Purchase row;
  row.product = "clear";
  for (job::Event& e : plan.events) {
    if (e.product.empty()) continue;
    for (const std::size_t face : e.faces) ++plan.faces[face].coats;
    e.volume = brushed(plan, e);
    row.need += *e.volume;
    settle_stages(e, product());
  }
  settle_bodies(plan, plan.air);
  row.buy = {{Litres(1), 1, Money(30)}};
  row.left_over = Litres(1) - row.need;
  plan.purchase = {row};
  job::PieceResult& result = plan.pieces.front();
  result.ready.expected = dates(plan, &ThreeMoments::expected);
  result.ready.slow = dates(plan, &ThreeMoments::slow);
  result.ready.fast = dates(plan, &ThreeMoments::fast);
  result.ready.fast.deliver.reset();
  const auto delivery = std::find_if(plan.events.begin(), plan.events.end(), [](const job::Event& e) { return e.delivers; });
  if (delivery != plan.events.end()) result.ready.slow.deliver = delivery->start;
  result.slack = *result.due - (delivery != plan.events.end() ? delivery->end : *result.ready.slow.deliver);
  count_visits();
}

void Small::count_visits() { plan.visits.resize(coatday::test::visits_by_the_minute(plan, job)); }

}  // namespace coatday::checker::test
