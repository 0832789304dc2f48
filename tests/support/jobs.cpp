#include "tests/support/jobs.h"

#include "climate/shop_air.h"

namespace coatday::tests {

namespace {

using finish::Method;
using finish::Product;
using finish::Stage;
using finish::Step;
using finish::StepKind;

Product clear() {
  Product p;
  p.id = p.family = "clear";
  p.name = "clear";
  p.base = finish::Base::water;
  p.role = finish::Role::topcoat;
  p.mechanism = finish::Mechanism::water;
  finish::StageRow row;
  row.hours[Stage::tack_free] = Hours(0.5);
  row.hours[Stage::handle] = Hours(2);
  row.hours[Stage::sand] = Hours(3);
  row.hours[Stage::recoat] = Hours(3);
  row.hours[Stage::recoat_close] = Hours(24);
  row.hours[Stage::pack] = Hours(48);
  row.hours[Stage::light_use] = Hours(72);
  row.hours[Stage::full_cure] = Hours(240);
  p.rows = {row};
  p.limits.hold = Hours(24);
  p.stated_spreading_rate = SquareMetresPerLitre(10);
  p.work_rates = {{Method::brush, SquareMetresPerHour(6)}};
  p.set_up = Hours(Minutes(10));
  p.clean_up = Hours(Minutes(10));
  p.first_coat_factor = 1.3;
  p.end_grain_factor = 2;
  p.cans = {{Litres(0.25), {}}, {Litres(1), {}}};
  return p;
}

Step dry(std::string id, StepKind kind, int grit, double rate) {
  Step step;
  step.id = step.name = std::move(id);
  step.kind = kind;
  step.grit = grit;
  step.work_rate = SquareMetresPerHour(rate);
  step.dusty = true;
  return step;
}

Step coat(std::string id) {
  Step step;
  step.id = step.name = std::move(id);
  step.kind = StepKind::topcoat;
  step.product = "clear";
  return step;
}

finish::Schedule two_coats(bool scuff) {
  finish::Schedule schedule;
  schedule.id = "two-coats";
  schedule.name = "two coats";
  schedule.steps = {dry("sand", StepKind::prepare, 180, 3), coat("clear 1")};
  if (scuff) schedule.steps.push_back(dry("scuff", StepKind::scuff, 320, 8));
  schedule.steps.push_back(coat("clear 2"));
  return schedule;
}

piece::Part part(std::string name, piece::Shape shape, int count, piece::Support support) {
  piece::Part part;
  part.id = part.name = std::move(name);
  part.shape = std::move(shape);
  part.count = count;
  part.species = "walnut-black";
  part.schedule = "two-coats";
  part.support = support;
  return part;
}

job::OrderPiece table(int number, int doors) {
  job::OrderPiece order;
  order.piece.id = "table-" + std::to_string(number);
  order.piece.name = "table " + std::to_string(number);
  order.piece.parts = {part("top", piece::Board{Metres(1.2), Metres(0.6), Metres(0.025)}, 1, piece::Support::points),
                       part("leg", piece::TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.03)}, 4, piece::Support::hooks)};
  if (doors > 0) {
    order.piece.parts.push_back(
        part("door", piece::Door{Metres(0.4), Metres(0.6), Metres(0.02), Metres(0.06), Metres(0.006)}, doors, piece::Support::laid));
  }
  return order;
}

shop::Shop make_shop(const JobKnobs& knobs) {
  shop::Shop shop;
  shop.name = "test shop";
  shop.people = knobs.people;
  for (unsigned day = 1; day <= 5; ++day) {
    shop.week.push_back({weekday(day), Minutes(8 * 60), Minutes(12 * 60)});
    shop.week.push_back({weekday(day), Minutes(13 * 60), Minutes(17 * 60)});
  }
  shop.closed = knobs.closed;
  shop.places = {{"points", shop::PlaceKind::points, knobs.points, Metres(2), Metres(1), {}},
                 {"hook", shop::PlaceKind::hooks, 8, Metres(1.5), {}, {}},
                 {"rack", shop::PlaceKind::rack, knobs.racks, Metres(0.8), Metres(0.5), {}}};
  shop.methods = {"brush"};
  shop.light_dust_settles = Hours(0.5);
  shop.heavy_dust_settles = Hours(12);
  shop.both_faces_within = knobs.both_faces_within;
  shop.handling = Minutes(1);
  shop.turning = Minutes(5);
  return shop;
}

}  // namespace

job::Job make_job(const JobKnobs& knobs) {
  job::Job job;
  job.shop = make_shop(knobs);
  job.catalogue.products.emplace("clear", clear());
  job.catalogue.schedules.emplace("two-coats", two_coats(knobs.scuff_step));
  job.order.name = "test order";
  for (int n = 1; n <= knobs.pieces; ++n) job.order.pieces.push_back(table(n, n == 1 ? knobs.doors : 0));
  job.air = [air = knobs.air](Instant, Instant) { return std::make_unique<climate::ConstantAir>(air); };
  return job;
}

Instant monday() { return date::sys_days(date::year(2027) / 1 / 11) + std::chrono::hours(8); }

}  // namespace coatday::tests
