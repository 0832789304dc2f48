#include "tests/report/sample_plan.h"

#include <algorithm>

namespace coatday::report::sample {
namespace {

using finish::Stage;

Zone zone() { return Zone::find("America/Chicago").value(); }

/// Warm by day, cooler at night.
class DayAndNight : public climate::AirSource {
 public:
  [[nodiscard]] climate::Air at(Instant t) const override {
    const auto hour = std::chrono::floor<std::chrono::hours>(t - std::chrono::floor<std::chrono::days>(t)).count();
    const bool day = hour >= 14 && hour < 23;  // 08:00 to 17:00 in Chicago's winter
    return day ? climate::Air{Celsius(20), RelativeHumidity(0.32)} : climate::Air{Celsius(12), RelativeHumidity(0.45)};
  }
  [[nodiscard]] std::string describe(Units) const override { return "20 by day, 12 by night"; }
};

finish::Product product(const std::string& id, const std::string& name, finish::Role role, bool film) {
  finish::Product p;
  p.id = id;
  p.name = name;
  p.role = role;
  p.base = film ? finish::Base::water : finish::Base::white_spirit;
  p.mechanism = film ? finish::Mechanism::water : finish::Mechanism::oxidative;
  p.film = film;
  finish::StageRow row;
  row.hours[Stage::tack_free] = Hours(1);
  row.hours[Stage::recoat] = Hours(3);
  row.hours[Stage::full_cure] = Hours(24 * 21);
  p.rows = {row};
  p.stated_spreading_rate = SquareMetresPerLitre(10);
  p.sources["recoat"] = "common practice, no source";
  return p;
}

job::FaceEntry face(const std::string& part, const std::string& name, double area, std::optional<std::size_t> opposite, bool end_grain) {
  job::FaceEntry f;
  f.id = "table/" + part + "/" + name;
  f.part = f.part_id = part;
  f.face = name;
  f.material = "walnut";
  f.area = SquareMetres(area);
  f.opposite = opposite;
  f.end_grain = end_grain;
  f.coats = 2;
  return f;
}

// 0 to 5 the top's, 6 and 7 the legs'.
std::vector<job::FaceEntry> faces() {
  std::vector<job::FaceEntry> all{face("top", "face", 1.28, 1, false),         face("top", "underside", 1.28, 0, false),
                                  face("top", "front edge", 0.06, 3, false),   face("top", "back edge", 0.06, 2, false),
                                  face("top", "left end", 0.03, {}, true),     face("top", "right end", 0.03, {}, true),
                                  face("leg x4", "all round", 0.6, {}, false), face("leg x4", "top end", 0.01, {}, true)};
  all[7].exception = piece::Exception{"top end", 0, "hidden under the top", {}};
  return all;
}

job::Event event(const std::string& id, job::EventKind kind, const std::string& name, Instant start, int minutes) {
  job::Event e;
  e.id = id;
  e.kind = kind;
  e.name = name;
  e.piece = 0;
  e.start = start;
  e.end = start + Minutes(minutes);
  e.why = "as soon as it may be: nothing before it to wait for";
  return e;
}

job::Event coat(const std::string& id, job::EventKind kind, const std::string& name, const std::string& product, Instant start, int minutes,
                std::vector<std::size_t> faces) {
  job::Event e = event(id, kind, name, start, minutes);
  e.faces = std::move(faces);
  e.load = e.load_name = e.faces.front() < 6 ? "top" : "leg x4";
  e.step = id.find("/clear-2") != std::string::npos ? "clear-2" : id.find("/clear-1") != std::string::npos ? "clear-1" : "stain";
  e.product = product;
  e.film = product == "clear";
  e.method = finish::Method::brush;
  e.volume = Litres(0.105);
  e.support = piece::Support::points;
  e.coat = 1;
  e.stages.expected[Stage::tack_free] = e.end + Minutes(70);
  e.stages.expected[Stage::recoat] = e.end + Minutes(240);
  e.stages.slow[Stage::recoat] = e.end + Minutes(336);
  e.stages.fast[Stage::recoat] = e.end + Minutes(171);
  return e;
}

void wait(job::Event& next, const job::Event& first, Stage stage, Instant earliest) {
  next.after.push_back({first.id, stage, earliest, "dry to recoat"});
}

std::vector<job::Event> events() {
  using job::EventKind;
  job::Event glue = event("table/glue-up", EventKind::other, "glue up", at(11, 8), 120);
  glue.load = glue.load_name = "leg x4";
  glue.people = 2;
  job::Event sand = event("table/top/sand", EventKind::prepare, "sand to 180", at(11, 10), 50);
  sand.faces = {0, 1, 2, 3, 4, 5};
  sand.load = sand.load_name = "top";
  sand.grit = 180;
  sand.dust = shop::Dust::light;
  sand.cautions = {"sanding-dust"};
  job::Event stain = coat("table/top/stain", EventKind::stain, "oil stain", "stain", at(11, 13), 30, {0, 1, 2, 3, 4, 5});
  stain.wipe_by = at(11, 13, 25);
  stain.cautions = {"oily-rags"};
  job::Event under1 = coat("table/top/clear-1/first", EventKind::topcoat, "clear coat 1", "clear", at(12, 13, 10), 35, {1});
  wait(under1, stain, Stage::recoat, at(12, 13, 10));
  job::Event turn = event("table/top/clear-1/turn", EventKind::turn, "turn onto points", at(12, 15), 5);
  turn.faces = under1.faces;
  turn.load = turn.load_name = "top";
  turn.after.push_back({under1.id, Stage::handle, at(12, 14, 50), "dry to handle"});
  job::Event face1 = coat("table/top/clear-1", EventKind::topcoat, "clear coat 1", "clear", at(12, 15, 5), 40, {0, 2, 3, 4, 5});
  face1.after.push_back({turn.id, {}, at(12, 15, 5), ""});
  job::Event legs = coat("table/leg/clear-1", EventKind::topcoat, "clear coat 1", "clear", at(12, 16), 40, {6});
  job::Event under2 = coat("table/top/clear-2/first", EventKind::topcoat, "clear coat 2", "clear", at(15, 9), 30, {1});
  wait(under2, under1, Stage::recoat, at(12, 17, 45));
  job::Event face2 = coat("table/top/clear-2", EventKind::topcoat, "clear coat 2", "clear", at(15, 11), 30, {0, 2, 3, 4, 5});
  wait(face2, face1, Stage::recoat, at(12, 19, 45));
  face2.before.push_back({face1.id, Stage::recoat_close, at(16, 9), "the recoat window closes"});
  job::Event legs2 = coat("table/leg/clear-2", EventKind::topcoat, "clear coat 2", "clear", at(15, 11, 30), 30, {6});
  legs2.stages.expected[Stage::pack] = at(18, 8);
  job::Event delivery = event("table/delivery", EventKind::other, "delivery", at(18, 9), 90);
  delivery.after.push_back({legs2.id, Stage::pack, at(18, 8), "print-free"});
  return {glue, sand, stain, under1, turn, face1, legs, under2, face2, legs2, delivery};
}

std::vector<shop::WorkingTime> working() {
  std::vector<shop::WorkingTime> shifts;
  for (const int day : {11, 12, 13, 14, 15, 18, 19}) {
    shifts.push_back({at(day, 8), at(day, 12)});
    shifts.push_back({at(day, 13), at(day, 17)});
  }
  return shifts;
}

job::PieceResult result() {
  job::PieceResult r{"table", "library table", "", at(22, 17), {}, Hours(71)};
  r.ready.expected = {at(16, 9), at(18, 8), at(18, 9), at(25, 9), {}};
  r.ready.slow = {at(16, 20), at(19, 18), at(19, 18), at(29, 9), {}};
  r.ready.fast = {at(16, 6), at(17, 8), {}, at(22, 9), {}};
  return r;
}

}  // namespace

Instant at(int day, int hour, int minute) {
  return zone().to_instant(LocalTime(LocalDay(date::year(2027) / 1 / day)) + std::chrono::hours(hour) + Minutes(minute));
}

job::Plan table() {
  job::Plan p;
  p.from = at(11, 8);
  p.until = at(30, 8);
  p.shop.name = "sample shop";
  p.shop.zone = zone();
  p.shop.currency = "USD";
  p.shop.people = 2;
  p.shop.air_description = "heated from 08:00 to 17:00, off at night";
  p.working = working();
  p.air = climate::AirSeries(DayAndNight(), p.from, p.until);
  p.products["stain"] = product("stain", "oil stain", finish::Role::stain, false);
  p.products["clear"] = product("clear", "water-based clear", finish::Role::topcoat, true);
  p.pieces = {result()};
  p.faces = faces();
  p.events = events();
  p.places = {{3, "trestle 1", at(12, 13, 10), at(12, 15), false, {}}};
  p.purchase = {{"stain", "", SquareMetres(2.74), Litres(0.28), Litres(0.25), {{Litres(0.25), 1, Money(14)}}, Litres(0.22), {}, Money(14)},
                {"clear", "", SquareMetres(6.68), Litres(0.71), Litres(0), {{Litres(1), 1, Money(41.5)}}, Litres(0.29), {}, Money(41.5)}};
  p.sundries = {{"abrasive sheets, grit 180", 4, "sheets", "common practice, no source"}};
  p.findings = {{"cold-night",
                 job::Severity::warning,
                 "the night falls to 12 °C, below the 13 °C that the label wants",
                 "clear coat 1",
                 {"order.yaml", 14, 11}}};
  p.cautions = {{"oily-rags", "Oily rags can catch fire by themselves: spread them flat outdoors until hard."},
                {"sanding-dust", "Sanding dust: extraction and a dust mask."}};
  p.ready = at(18, 9);
  p.ready_bound = at(18, 8);
  return p;
}

job::Plan impossible() {
  job::Plan p = table();
  p.status = job::Status::impossible;
  p.events.clear();
  p.places.clear();
  p.purchase.clear();
  p.sundries.clear();
  p.cautions.clear();
  p.ready.reset();
  p.ready_bound.reset();
  p.contradiction = {"clear coat 1 needs 13 °C for 24 h after it", "the heater is off from 17:00 to 08:00"};
  return p;
}

job::Plan with_hole() {
  job::Plan p = table();
  std::erase_if(p.events, [](const job::Event& e) { return e.id == "table/top/clear-2/first"; });
  return p;
}

job::Plan hostile(const std::string& evil) {
  job::Plan p = table();
  p.shop.currency = p.shop.air_description = evil;
  for (auto& piece : p.pieces) piece.name = evil;
  for (auto& entry : p.faces) {
    entry.part = entry.face = entry.material = evil;
    if (entry.exception) entry.exception->reason = evil;
  }
  for (auto& e : p.events) {
    e.name = e.load = e.load_name = e.note = e.why = evil;
    for (auto& a : e.after) a.reason = evil;
    for (auto& b : e.before) b.reason = evil;
    if (!e.cautions.empty()) e.cautions = {evil};
  }
  for (auto& use : p.places) use.place = evil;
  for (auto& [id, pr] : p.products) pr.name = evil;
  for (auto& row : p.purchase) row.part = evil;
  p.sundries = {{evil, 1, evil, evil}};
  p.findings = {{evil, job::Severity::error, evil, evil, {evil, 1, 1}}};
  p.cautions = {{evil, evil}};
  p.contradiction = {evil};
  return p;
}

}  // namespace coatday::report::sample
