#include "tests/checker/small_plan.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace coatday::checker::test {

void identify(job::Event& event, std::string id) {
  event.step_id = job::parse_step_id(id).value_or(job::StepId{});
  event.id = std::move(id);
}

namespace {

using finish::Stage;

class SameAir final : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant) const override { return finish::reference_air; }
  [[nodiscard]] std::string describe(Units) const override { return "reference air"; }
};

finish::Product clear() {
  finish::Product p;
  p.id = p.name = p.family = "clear";
  p.mechanism = finish::Mechanism::water;
  p.flash = finish::FlashClass::category_3;
  p.stated_spreading_rate = SquareMetresPerLitre(10);
  p.first_coat_factor = 1.3;
  p.end_grain_factor = 2;
  p.cans = {{Litres(1), Money(30)}};
  p.work_rates = {{finish::Method::brush, SquareMetresPerHour(6)}};
  p.set_up = p.clean_up = Minutes(10);
  finish::StageHours hours;
  hours.values = {Hours(0.5), Hours(1), Hours(2), Hours(2), Hours(24), Hours(48), Hours(72), Hours(168)};
  p.rows = {{finish::reference_air, hours}};
  return p;
}

finish::Step step_of(std::string id, std::string name, finish::StepKind kind) {
  finish::Step step;
  step.id = std::move(id);
  step.name = std::move(name);
  step.kind = kind;
  return step;
}

finish::Schedule two_coats() {
  finish::Step sand = step_of("sand", "sand to 180", finish::StepKind::prepare);
  sand.work_rate = SquareMetresPerHour(6);
  sand.dusty = true;
  finish::Step first = step_of("clear-1", "clear coat 1", finish::StepKind::topcoat);
  finish::Step second = step_of("clear-2", "clear coat 2", finish::StepKind::topcoat);
  first.product = second.product = "clear";
  second.wait = Hours(2);
  second.within = Hours(12);
  finish::Schedule schedule;
  schedule.id = schedule.name = "two-coats";
  schedule.steps = {sand, first, second};
  return schedule;
}

piece::Part part(std::string id, piece::Shape shape, int count, piece::Support support) {
  piece::Part p;
  p.id = p.name = std::move(id);
  p.shape = std::move(shape);
  p.count = count;
  p.species = "walnut";
  p.schedule = "two-coats";
  p.support = support;
  return p;
}

shop::Work work(std::string id, Hours takes) {
  shop::Work w;
  w.id = w.name = std::move(id);
  w.takes = takes;
  return w;
}

shop::Shop shop_of_two() {
  shop::Shop shop;
  shop.name = "Mill Lane";
  shop.people = 2;
  for (unsigned day = 1; day <= 5; ++day) {
    shop.week.push_back({weekday(day), std::chrono::hours(8), std::chrono::hours(12)});
    shop.week.push_back({weekday(day), std::chrono::hours(13), std::chrono::hours(18)});
  }
  shop.places = {{.name = "points", .kind = shop::PlaceKind::points, .count = 2, .length = Metres(2), .width = Metres(1.2), .where = {}},
                 {.name = "rail", .kind = shop::PlaceKind::hooks, .count = 4, .length = Metres(1), .width = {}, .where = {}},
                 {.name = "rack", .kind = shop::PlaceKind::rack, .count = 1, .length = {}, .width = {}, .where = {}}};
  shop.methods = {"brush"};
  shop.light_dust_settles = Hours(0.25);
  shop.heavy_dust_settles = Hours(12);
  shop.both_faces_within = Hours(4);
  shop.handling = Minutes(1);
  shop.turning = Minutes(5);
  shop::Work mill = work("mill", Hours(2));
  mill.start = at(2, 8);
  mill.dust = shop::Dust::heavy;
  shop::Work weld = work("weld", Hours(1));
  weld.not_before = at(0, 8);
  weld.not_after = at(2, 18);
  weld.hot = true;
  shop::Work count = work("stocktaking", Hours(2));
  count.not_before = at(1, 8);
  count.not_after = at(1, 18);
  count.may_pause = true;
  shop.work = {mill, weld, count};
  return shop;
}

job::OrderWork order_work_of(shop::Work work, job::OrderWork::When when) {
  job::OrderWork ordered;
  ordered.work = std::move(work);
  ordered.when = when;
  return ordered;
}

job::OrderPiece table() {
  job::OrderPiece ordered;
  ordered.piece.id = ordered.piece.name = "table";
  piece::Part leg = part("leg", piece::TaperedLeg{Metres(0.7), Metres(0.05), Metres(0.03)}, 2, piece::Support::hooks);
  leg.exceptions = {{"top end", 0, "glue face", {}}};
  ordered.piece.parts = {part("top", piece::Board{Metres(1), Metres(0.5), Metres(0.02)}, 1, piece::Support::points), leg};
  job::OrderWork glue = order_work_of(work("glue-up", Hours(1)), job::OrderWork::When::before_finishing);
  glue.parts = {"top"};
  glue.work.rest = Hours(0.5);
  job::OrderWork join = order_work_of(work("assembly", Hours(1)), job::OrderWork::When::after_finishing);
  join.stage = Stage::handle;
  join.work.people = 2;
  job::OrderWork deliver = order_work_of(work("delivery", Hours(1)), job::OrderWork::When::after_finishing);
  deliver.delivery = true;
  ordered.work = {glue, join, deliver};
  ordered.promised = at(4, 18);
  return ordered;
}

void add_faces(job::Plan& plan, const piece::Part& part, const std::string& label) {
  const std::size_t begin = plan.faces.size();
  const auto faces = piece::faces_of(part);
  for (const piece::PartFace& face : faces) {
    job::FaceEntry entry;
    entry.id = "table/" + part.id + "/" + face.face.name;
    entry.part = label;
    entry.part_id = part.id;
    entry.face = face.face.name;
    entry.material = "walnut";
    entry.area = face.coated * part.count;
    entry.end_grain = face.face.end_grain;
    entry.exception = face.exception;
    for (std::size_t b = 0; b < faces.size(); ++b) {
      if (faces[b].face.name == face.face.opposite) entry.opposite = begin + b;
    }
    plan.faces.push_back(entry);
  }
}

/// The faces of a part, of one pass or all; coats leave out the excepted end.
std::vector<std::size_t> faces_for(const job::Plan& plan, const piece::Part& part, std::optional<piece::Pass> pass, bool coat) {
  const auto faces = piece::faces_of(part);
  std::vector<std::size_t> result;
  for (std::size_t f = 0; f < plan.faces.size(); ++f) {
    if (plan.faces[f].part_id != part.id || (coat && plan.faces[f].exception)) continue;
    const auto face = std::find_if(faces.begin(), faces.end(), [&](const auto& x) { return x.face.name == plan.faces[f].face; });
    if (!pass || face->face.pass == *pass) result.push_back(f);
  }
  return result;
}

struct Row {
  std::string id;
  Instant start, end;
  std::optional<piece::Pass> pass;
};

job::Event event_of(std::string id, Instant start, Instant end) {
  job::Event event;
  identify(event, std::move(id));
  event.start = start;
  event.end = end;
  return event;
}

job::Event step_event(const job::Plan& plan, const job::Job& job, const Row& row) {
  const auto slash = row.id.find('/', 6);  // after "table/"
  const std::string part_id = row.id.substr(6, slash - 6);
  const std::string step = row.id.substr(slash + 1, row.id.find('/', slash + 1) - slash - 1);
  const auto& parts = job.order.pieces[0].piece.parts;
  const piece::Part& part = part_id == "top" ? parts[0] : parts[1];
  job::Event event = event_of(row.id, row.start, row.end);
  event.name = event.step = step;
  event.piece = 0;
  event.load = part_id == "top" ? "top" : "leg x2";
  if (row.id.find("turn") != std::string::npos) {
    event.kind = job::EventKind::turn;
    return event;
  }
  const bool coat = step != "sand";
  event.kind = coat ? job::EventKind::topcoat : job::EventKind::prepare;
  event.faces = faces_for(plan, part, row.pass, coat);
  event.dust = coat ? shop::Dust::none : shop::Dust::light;
  if (!coat) return event;
  event.product = "clear";
  event.coat = step == "clear-1" ? 1 : 2;
  event.film = true;
  event.set_up = event.clean_up = Minutes(10);
  event.method = finish::Method::brush;
  event.support = part.support;
  return event;
}

void add_steps(job::Plan& plan, const job::Job& job) {
  using piece::Pass;
  const std::vector<Row> rows{
      {"table/leg.1-2/sand", at(0, 8), at(0, 8, 30), {}},
      {"table/top/sand", at(0, 9, 30), at(0, 10), {}},
      {"table/leg.1-2/clear-1", at(0, 10, 30), at(0, 11, 10), {}},
      {"table/top/clear-1/first", at(0, 10, 30), at(0, 11), Pass::first},
      {"table/top/clear-1/turn", at(0, 13), at(0, 13, 5), {}},
      {"table/top/clear-1/second", at(0, 13, 5), at(0, 13, 35), Pass::second},
      {"table/leg.1-2/clear-2", at(0, 14), at(0, 14, 40), {}},
      {"table/top/clear-2/turn-back", at(0, 15, 30), at(0, 15, 35), {}},
      {"table/top/clear-2/first", at(0, 15, 35), at(0, 16, 5), Pass::first},
      {"table/top/clear-2/turn", at(0, 16, 35), at(0, 16, 40), {}},
      {"table/top/clear-2/second", at(0, 16, 40), at(0, 17, 10), Pass::second},
  };
  for (const Row& row : rows) plan.events.push_back(step_event(plan, job, row));
}

job::Event work_event(std::string id, std::optional<std::size_t> piece, Instant start, Instant end) {
  job::Event event = event_of(std::move(id), start, end);
  event.piece = piece;
  event.name = event.id.substr(event.id.find('/') + 1);
  return event;
}

void add_works(job::Plan& plan) {
  plan.events.push_back(work_event("table/glue-up", 0, at(0, 8), at(0, 9)));
  plan.events.push_back(work_event("shop/weld", {}, at(1, 8), at(1, 9)));
  plan.events.back().hot = true;
  plan.events.push_back(work_event("table/assembly", 0, at(1, 9), at(1, 10)));
  plan.events.back().people = 2;
  plan.events.push_back(work_event("shop/stocktaking", {}, at(1, 11), at(1, 14)));
  plan.events.back().may_pause = true;
  plan.events.push_back(work_event("shop/mill", {}, at(2, 8), at(2, 10)));
  plan.events.back().dust = shop::Dust::heavy;
  plan.events.back().fixed = true;
  plan.events.push_back(work_event("table/delivery", 0, at(3, 13), at(3, 14)));
  plan.events.back().delivers = true;
}

void add_places(Small& small) {
  const auto hold = [&](std::string_view event, std::string place, Instant from, Instant until) {
    const bool top = place.starts_with("points");
    shop::Laid lies{1, 1, {}, {}, Metres(0.7), Metres(0.05)};
    if (top) lies = {0, 1, Metres(0), Metres(0), Metres(1), Metres(0.5)};
    small.plan.places.push_back({small.index(event), std::move(place), from, until, false, {lies}});
  };
  for (const char* hook : {"rail 1", "rail 2"}) {
    hold("table/leg.1-2/clear-1", hook, at(0, 10, 30), at(0, 14));
    hold("table/leg.1-2/clear-2", hook, at(0, 14), at(1, 9));
  }
  hold("table/top/clear-1/first", "points 1", at(0, 10, 30), at(0, 13, 5));
  hold("table/top/clear-1/second", "points 1", at(0, 13, 5), at(0, 15, 30));
  hold("table/top/clear-2/first", "points 1", at(0, 15, 35), at(0, 16, 40));
  hold("table/top/clear-2/second", "points 1", at(0, 16, 40), at(1, 9));
}

}  // namespace

Instant at(int day, int hour, int minute) {
  using namespace date::literals;
  return date::sys_days(2027_y / 1 / 11) + date::days(day) + std::chrono::hours(hour) + Minutes(minute);
}

climate::AirSeries reference_air(Instant from, Instant until) { return {SameAir(), from, until}; }

template <class List, class Match>
auto& found(List& list, Match match) {
  const auto it = std::find_if(list.begin(), list.end(), match);
  if (it == list.end()) throw std::logic_error("the small plan has no such thing");
  return *it;
}

std::size_t Small::index(std::string_view id) const {
  return static_cast<std::size_t>(&found(plan.events, [&](const job::Event& e) { return e.id == id; }) - plan.events.data());
}
job::Event& Small::event(std::string_view id) { return plan.events[index(id)]; }
std::size_t Small::face(std::string_view part, std::string_view name) const {
  return static_cast<std::size_t>(&found(plan.faces, [&](const job::FaceEntry& f) { return f.part_id == part && f.face == name; }) -
                                  plan.faces.data());
}
finish::Product& Small::product() { return job.catalogue.products.at("clear"); }
finish::Step& Small::step(std::string_view id) {
  return found(job.catalogue.schedules.at("two-coats").steps, [&](const finish::Step& s) { return s.id == id; });
}
shop::Work& Small::shop_work(std::string_view id) {
  return found(job.shop.work, [&](const shop::Work& w) { return w.id == id; });
}
job::OrderWork& Small::order_work(std::string_view id) {
  return found(job.order.pieces[0].work, [&](const job::OrderWork& w) { return w.work.id == id; });
}

void Small::erase(std::string_view id) {
  const std::size_t gone = index(id);
  plan.events.erase(plan.events.begin() + static_cast<std::ptrdiff_t>(gone));
  auto& uses = plan.places;
  uses.erase(std::remove_if(uses.begin(), uses.end(), [&](const job::PlaceUse& use) { return use.event == gone; }), uses.end());
  for (job::PlaceUse& use : uses) use.event -= use.event > gone ? 1 : 0;
}

job::Event& Small::add_like(std::string_view id, std::string new_id) {
  plan.events.push_back(event(id));
  identify(plan.events.back(), std::move(new_id));
  return plan.events.back();
}

void Small::move(std::string_view id, Instant start) {
  const std::size_t i = index(id);
  const auto lasts = plan.events[i].end - plan.events[i].start;
  plan.events[i].start = start;
  plan.events[i].end = start + lasts;
  for (job::PlaceUse& use : plan.places) {
    if (use.event == i) use.from = start;
  }
}

Small small_plan() {
  Small small;
  small.job.shop = shop_of_two();
  small.job.catalogue.products = {{"clear", clear()}};
  small.job.catalogue.schedules = {{"two-coats", two_coats()}};
  small.job.order.pieces = {table()};
  small.plan.from = at(0, 8);
  small.plan.until = at(40, 0);
  small.plan.air = reference_air(at(0, 0), small.plan.until);
  add_faces(small.plan, small.job.order.pieces[0].piece.parts[0], "top");
  add_faces(small.plan, small.job.order.pieces[0].piece.parts[1], "leg x2");
  add_steps(small.plan, small.job);
  add_works(small.plan);
  add_places(small);
  job::PieceResult result;
  result.id = result.name = "table";
  result.due = at(4, 18);
  small.plan.pieces = {result};
  small.settle();
  return small;
}

}  // namespace coatday::checker::test
