#include "checker/plan_facts.h"

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/core.h>

#include "climate/psychrometrics.h"

namespace coatday::checker {

namespace {

const piece::Part* find_part(const job::Job& job, const job::FaceEntry& entry) {
  for (const piece::Part& part : job.order.pieces[entry.piece].piece.parts) {
    if (part.id == entry.part_id) return &part;
  }
  return nullptr;
}

const finish::Step* find_step(const finish::Schedule& schedule, const std::string& id) {
  const auto found = std::find_if(schedule.steps.begin(), schedule.steps.end(), [&](const finish::Step& s) { return s.id == id; });
  return found == schedule.steps.end() ? nullptr : &*found;
}

}  // namespace

PlanFacts::PlanFacts(const job::Plan& p, const job::Job& j) : plan(p), job(j), clocks(p.air) {
  look_up_faces();
  look_up_events();
  gather_loads();
  find_work();
  compute_surfaces();
  time_events();
}

void PlanFacts::look_up_faces() {
  for (const job::FaceEntry& entry : plan.faces) {
    FaceFacts facts;
    facts.part = find_part(job, entry);
    facts.schedule = job.catalogue.schedule(facts.part->schedule);
    for (piece::PartFace& face : piece::faces_of(*facts.part)) {
      if (face.face.name == entry.face) facts.face = std::move(face);
    }
    const double one = facts.face.coated.value();
    if (one > 0) facts.items = static_cast<int>(std::lround(entry.area.value() / one));
    faces.push_back(std::move(facts));
  }
  for (std::size_t a = 0; a < faces.size(); ++a) {
    for (std::size_t b = 0; b < faces.size(); ++b) {
      const bool same =
          plan.faces[a].piece == plan.faces[b].piece && faces[a].part == faces[b].part && plan.faces[a].part == plan.faces[b].part;
      if (same && faces[a].face.face.opposite == plan.faces[b].face) faces[a].opposite = b;
    }
  }
}

void PlanFacts::look_up_events() {
  for (std::size_t i = 0; i < plan.events.size(); ++i) {
    const job::Event& e = plan.events[i];
    EventFacts facts;
    facts.load = job::load_key(e.step_id);
    facts.dust = e.dust;
    facts.hot = e.hot;
    if (!e.product.empty()) facts.product = job.catalogue.product(e.product);
    if (e.kind != job::EventKind::turn && !e.faces.empty() && !e.step.empty())
      facts.step = find_step(*faces[e.faces.front()].schedule, e.step);
    if (facts.step != nullptr) {
      facts.dust = std::max(facts.dust, facts.step->dusty ? shop::Dust::light : shop::Dust::none);
      facts.hot = facts.hot || facts.step->hot;
    }
    if (e.kind != job::EventKind::turn && !e.step.empty()) {
      for (const std::size_t face : e.faces) faces[face].events.push_back(i);
    }
    events.push_back(std::move(facts));
  }
  for (FaceFacts& face : faces) {
    std::stable_sort(face.events.begin(), face.events.end(), [&](auto a, auto b) { return event(a).start < event(b).start; });
  }
}

void PlanFacts::gather_loads() {
  for (std::size_t i = 0; i < events.size(); ++i) {
    if (events[i].load.empty()) continue;
    LoadFacts& load = loads[events[i].load];
    load.events.push_back(i);
    for (const std::size_t face : event(i).faces) {
      if (std::find(load.faces.begin(), load.faces.end(), face) != load.faces.end()) continue;
      if (load.faces.empty()) load.support = faces[face].part->support;
      load.mixed = load.mixed || load.support != faces[face].part->support;
      load.faces.push_back(face);
    }
  }
  for (auto& [id, load] : loads) {
    std::stable_sort(load.events.begin(), load.events.end(), [&](auto a, auto b) { return event(a).start < event(b).start; });
    std::map<const piece::Part*, std::map<std::string, int>> entries;  // an entry's faces all say how many items it has
    for (const std::size_t face : load.faces) {
      int& items = entries[faces[face].part][plan.faces[face].part];
      items = std::max(items, faces[face].items);
    }
    for (const auto& [part, labels] : entries) {
      for (const auto& [label, items] : labels) load.items[part] += items;
    }
  }
}

void PlanFacts::find_work() {
  const auto find = [&](std::optional<std::size_t> piece, const shop::Work& work) -> std::optional<std::size_t> {
    for (std::size_t i = 0; i < events.size(); ++i) {
      const job::Event& e = event(i);
      if (e.piece != piece || !events[i].load.empty() || e.step_id.step != work.id || events[i].work != nullptr) continue;
      events[i].work = &work;
      events[i].dust = std::max(events[i].dust, work.dust);
      events[i].hot = events[i].hot || work.hot;
      return i;
    }
    return std::nullopt;
  };
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    for (const job::OrderWork& work : job.order.pieces[p].work) order_work.push_back({p, &work, find(p, work.work)});
  }
  for (const shop::Work& work : job.shop.work) shop_work.push_back(find(std::nullopt, work));
}

void PlanFacts::compute_surfaces() {
  for (std::size_t i = 0; i < events.size(); ++i) {
    if (!coat(i)) continue;
    std::set<Hours> own;
    for (const std::size_t face : event(i).faces) own.insert(own_time_constant(*faces[face].part));
    events[i].bodies = {own.begin(), own.end()};
    own.insert(own_time_constant(*events[i].product));
    for (const Hours body : own) {
      if (body > Hours(0)) surfaces.emplace(body, ThermalBody({}, body, {}));
    }
  }
  if (surfaces.empty()) return;
  const Instant begin = plan.air.begin();
  const Instant before = begin - std::chrono::ceil<std::chrono::hours>(std::max(Hours(24), 12 * surfaces.rbegin()->first));
  std::vector<climate::AirRow> rows;
  if (job.air) {
    const climate::AirSeries earlier(*job.air(before, begin + climate::AirSeries::step), before, begin);
    rows.assign(earlier.rows().begin(), earlier.rows().end());
  }
  rows.insert(rows.end(), plan.air.rows().begin(), plan.air.rows().end());
  const climate::AirSeries air(std::move(rows));
  const std::vector<Pascals> vapour = climate::vapour_pressures(plan.air);
  for (auto& [time_constant, body] : surfaces) {
    body = ThermalBody(air, time_constant, begin);
    const auto said = plan.surfaces.find(time_constant);
    std::vector<Celsius> there = body.means();
    if (said != plan.surfaces.end() && !first_off(said->second.air(), there)) {
      for (std::size_t r = 0; r < there.size(); ++r) there[r] = said->second.air().rows()[r].air.temperature;
    }
    lagging.emplace(time_constant, Clocks(surface_air.emplace(time_constant, at_temperatures(plan.air, vapour, there)).first->second));
  }
}

std::optional<Instant> PlanFacts::clock(std::size_t i, finish::Stage stage, Estimate estimate) const {
  const bool closes = stage == finish::Stage::recoat_close;
  std::optional<Instant> all, any;
  for (const Hours body : events[i].bodies) {
    const auto here = clocks_on(body).reached(*events[i].product, stage, event(i).end, estimate, film(i).drying(estimate));
    if (!here && !closes) return std::nullopt;
    if (!here) continue;
    all = std::max(all.value_or(*here), *here);
    any = std::min(any.value_or(*here), *here);
  }
  return closes ? any : all;
}

std::optional<Instant> PlanFacts::dried(std::size_t i, Hours hours, Estimate estimate) const {
  Instant all = event(i).end;
  for (const Hours body : events[i].bodies) {
    const auto here = clocks_on(body).dried(*events[i].product, hours * film(i).drying(estimate), event(i).end, estimate);
    if (!here) return std::nullopt;
    all = std::max(all, *here);
  }
  return all;
}

void PlanFacts::time_events() {
  Instant first = plan.from;
  Instant last = plan.from;
  for (std::size_t i = 0; i < events.size(); ++i) {
    const job::Event& e = event(i);
    first = std::min(first, e.start);
    last = std::max(last, e.end);
    if (!coat(i)) continue;
    events[i].own_clock = e.end >= plan.air.begin();
    if (!events[i].own_clock) {
      events[i].stages = e.stages.expected;
      events[i].slow = e.stages.slow;
      events[i].fast = e.stages.fast;
      continue;
    }
    for (std::size_t s = 0; s < finish::stage_count; ++s) {
      const auto stage = static_cast<finish::Stage>(s);
      events[i].stages[stage] = clock(i, stage, Estimate::expected);
      events[i].slow[stage] = clock(i, stage, Estimate::slow);
      events[i].fast[stage] = clock(i, stage, Estimate::fast);
    }
  }
  working = shop::working_time(job.shop, first - std::chrono::hours(24), last + std::chrono::hours(24));
}

Instant PlanFacts::reached(std::size_t coat, std::initializer_list<finish::Stage> stages, Estimate estimate) const {
  const EventFacts& of = events[coat];
  const job::StageInstants& at = estimate == Estimate::expected ? of.stages : estimate == Estimate::slow ? of.slow : of.fast;
  const finish::StageHours& has = events[coat].product->reference().hours;
  for (const finish::Stage stage : stages) {
    if (has[stage]) return at[stage].value_or(never);
  }
  return event(coat).end;
}

std::optional<std::size_t> PlanFacts::coat_below(std::size_t face, std::size_t above) const {
  std::optional<std::size_t> below;
  for (const std::size_t i : faces[face].events) {
    if (i == above) break;
    if (coat(i)) below = i;
  }
  return below;
}

bool PlanFacts::pauses(std::size_t i) const {
  if (coat(i) || event(i).kind == job::EventKind::turn || !event(i).may_pause) return false;
  return events[i].work == nullptr || events[i].work->may_pause;
}

std::vector<shop::WorkingTime> PlanFacts::at_work(std::size_t i) const {
  const job::Event& e = event(i);
  if (!pauses(i)) return {{e.start, e.end}};
  std::vector<shop::WorkingTime> stretches;
  for (const shop::WorkingTime& stretch : working) {
    const Instant from = std::max(stretch.begin, e.start);
    const Instant until = std::min(stretch.end, e.end);
    if (until > from) stretches.push_back({from, until});
  }
  return stretches;
}

std::chrono::seconds PlanFacts::hands_on(std::size_t i) const {
  std::chrono::seconds sum{0};
  for (const shop::WorkingTime& stretch : at_work(i)) sum += stretch.end - stretch.begin;
  return sum;
}

bool PlanFacts::concerns(const job::OrderWork& work, std::size_t face) const {
  return work.parts.empty() || std::find(work.parts.begin(), work.parts.end(), faces[face].part->id) != work.parts.end();
}

bool PlanFacts::concerns(const job::OrderWork& work, const LoadFacts& load) const {
  return std::any_of(load.faces.begin(), load.faces.end(), [&](std::size_t face) { return concerns(work, face); });
}

bool PlanFacts::said_missed(std::size_t before, std::size_t i) const {
  return event(before).done && std::any_of(plan.findings.begin(), plan.findings.end(), [&](const job::Finding& finding) {
           return finding.code == "limit-missed" && finding.subject == event(i).id;
         });
}

std::string PlanFacts::when(Instant t) const {
  return t >= never ? "never while the air is known" : day_and_time(job.shop.zone.to_local(t));
}

std::string PlanFacts::name(std::size_t i) const {
  const job::Event& e = event(i);
  return fmt::format("{}{}{} ({} to {})", e.name, e.load.empty() ? "" : " of ", e.load, when(e.start), when(e.end));
}

std::string PlanFacts::face_name(std::size_t face) const { return plan.faces[face].part + " / " + plan.faces[face].face; }

}  // namespace coatday::checker
