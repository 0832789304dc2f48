#include "planner/tasks/load_tasks.h"

#include <algorithm>
#include <set>

#include "job/stages.h"
#include "job/time_step.h"
#include "job/turning.h"
#include "piece/heat.h"
#include "planner/tasks/effort.h"
#include "planner/tasks/history.h"
#include "planner/tasks/vapour.h"

namespace coatday::planner {

namespace {

job::EventKind event_kind(finish::StepKind kind) {
  switch (kind) {
    case finish::StepKind::prepare:
      return job::EventKind::prepare;
    case finish::StepKind::fill:
      return job::EventKind::fill;
    case finish::StepKind::stain:
      return job::EventKind::stain;
    case finish::StepKind::seal:
      return job::EventKind::seal;
    case finish::StepKind::topcoat:
      return job::EventKind::topcoat;
    case finish::StepKind::prime:
      return job::EventKind::prime;
    case finish::StepKind::paint:
      return job::EventKind::paint;
    case finish::StepKind::scuff:
      return job::EventKind::scuff;
    case finish::StepKind::bake:
      return job::EventKind::bake;
    case finish::StepKind::other:
      break;
  }
  return job::EventKind::other;
}

/// While both are.
std::vector<RestSpan> both(const std::vector<RestSpan>& a, const std::vector<RestSpan>& b) {
  std::vector<RestSpan> result;
  for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
    const RestSpan span{std::max(a[i].from, b[j].from), std::min(a[i].until, b[j].until)};
    if (span.from < span.until) result.push_back(span);
    (a[i].until < b[j].until ? i : j)++;
  }
  return result;
}

}  // namespace

Task LoadTasks::base_task(const finish::Step& step, StepId::Pass pass, StepId::Kind kind) const {
  Task task;
  task.identify({piece_id_, load_.id, step.id, pass, kind});
  task.kind = event_kind(step.kind);
  task.name = step.name;
  task.piece = load_.piece;
  task.load = index_;
  task.step = step.id;
  task.grit = step.grit;
  task.hot = step.hot;
  task.note = step.note;
  task.dust = step.dusty ? shop::Dust::light : shop::Dust::none;
  return task;
}

std::optional<Task> LoadTasks::measure() const {
  const Rest* longest = nullptr;
  int items = 0;
  for (const LoadPart& part : load_.parts) {
    const auto rest = graph_.wood.rests.find({load_.piece, part.part});
    if (rest == graph_.wood.rests.end() || rest->second.now || !rest->second.until) continue;
    items += part.count;
    if (longest == nullptr || *rest->second.until > *longest->until) longest = &rest->second;
  }
  Task task;
  task.identify({piece_id_, load_.id, "", StepId::Pass::only, StepId::Kind::measure});
  task.load = index_;
  const std::vector<job::Done>& history = job_.order.history;
  const auto is_it = [&](const job::Done& done) { return RecordedStep(done.event).covers(task); };
  if (longest == nullptr && std::none_of(history.begin(), history.end(), is_it)) return std::nullopt;
  task.kind = job::EventKind::prepare;
  task.name = "measure the moisture";
  task.piece = load_.piece;
  task.hands_on = job::in_whole_steps(Hours(job_.shop.handling) * items);
  if (longest != nullptr) {
    task.not_before = longest->until;
    task.not_before_why = longest->why;
    task.note = longest->note;
  }
  task.carries_in = true;  // what was worked on since needs no measuring
  return task;
}

Task LoadTasks::dry(const finish::Step& step, std::vector<std::size_t> faces) const {
  Task task = base_task(step);
  const Effort effort = dry_effort(step, area(faces), load_.items, job_.shop);
  task.faces = std::move(faces);
  task.hands_on = effort.hands_on;
  task.may_pause = effort.hands_on > shortest_shift() && step.bake.empty() && !step.hot;
  task.bake = step.bake;
  if (step.bake.empty() && !step.hot) task.crew = crew(effort.hands_on);
  return task;
}

SquareMetres LoadTasks::area(const std::vector<std::size_t>& faces) const {
  SquareMetres sum;
  for (const std::size_t face : faces) sum += loads_.faces[face].area;
  return sum;
}

job::TimeConstants LoadTasks::bodies(const std::vector<std::size_t>& faces) const {
  std::set<Hours> all;  // an exception may leave a part of the load out
  for (const LoadPart& of : load_.parts) {
    const piece::Part& part = job_.order.pieces[load_.piece].piece.parts[of.part];
    const bool coated = std::any_of(faces.begin(), faces.end(), [&](std::size_t f) { return loads_.faces[f].part_id == part.id; });
    if (coated) all.insert(piece::time_constant(part));
  }
  return {all.begin(), all.end()};
}

std::vector<finish::Surface> LoadTasks::surfaces(const finish::Product& product, const std::vector<std::size_t>& faces) const {
  std::vector<finish::Surface> all;
  for (const std::size_t face : faces) {
    const bool bare = wood() && !(product.film ? filmed_ : coated_).contains(face);
    all.push_back({loads_.faces[face].area, loads_.faces[face].end_grain, bare});
  }
  return all;
}

std::optional<std::vector<RestSpan>> LoadTasks::at_rest() const {
  std::optional<std::vector<RestSpan>> all;
  for (const LoadPart& part : load_.parts) {
    const auto rest = graph_.wood.rests.find({load_.piece, part.part});
    if (rest == graph_.wood.rests.end()) continue;
    all = all ? both(*all, rest->second.at_rest) : rest->second.at_rest;
  }
  return all;
}

Task LoadTasks::coat(const finish::Step& step, const finish::Product& product, const std::vector<std::size_t>& faces, StepId::Pass pass) {
  Task task = base_task(step, pass);
  task.faces = faces;
  task.product = &product;
  task.method = method_of(step, product, job_.shop);
  task.support = load_.support;
  task.bodies = bodies(faces);
  task.on_wood = wood();
  task.stand = product.stand;
  if (pass == StepId::Pass::show) {
    task.note += task.note.empty() ? "" : "; ";
    task.note += "the side that shows goes first, since all is less late or ready earlier so; mind the marks of what it lies on";
  }
  if (coated_.empty()) task.at_rest = at_rest();
  for (const std::size_t face : faces) task.coat = ++counts_[{face, product.id}];
  task.wet_film = finish::wet_film(step, product);
  task.drying = finish::drying_factor(step, product);
  add_effort(step, task);
  coated_.insert(faces.begin(), faces.end());
  if (product.film) filmed_.insert(faces.begin(), faces.end());
  return task;
}

void LoadTasks::add_effort(const finish::Step& step, Task& coat) const {
  const finish::Product& product = *coat.product;
  const finish::Method method = coat.method.value_or(finish::Method::brush);
  coat.volume = finish::need(step, product, method, surfaces(product, coat.faces));
  coat.vapour = vapour_of(product, *coat.volume, product.thinner_share + step.thinner_share, job_.shop.ventilation);
  const auto mixing = graph_.mixings.find(&product);
  const Effort effort = vented_effort(coat.vapour, product, method, area(coat.faces), load_.items, job_.shop,
                                      mixing == graph_.mixings.end() ? as_recorded(product) : mixing->second);
  coat.hands_on = effort.hands_on;
  coat.set_up = effort.set_up;
  coat.clean_up = effort.clean_up;
  coat.mixes = effort.mixes;
}

Task LoadTasks::scuff(const finish::Step& coat, std::vector<std::size_t> faces) const {
  finish::Step scuffing = scuff_step(coat);
  scuffing.hot = coat.hot;
  scuffing.note = "the recoat window was missed";
  Task task = base_task(scuffing);
  task.hands_on = dry_effort(scuffing, area(faces), load_.items, job_.shop).hands_on;
  task.faces = std::move(faces);
  task.may_pause = task.hands_on > shortest_shift();
  task.optional = true;
  return task;
}

Task LoadTasks::turn(const finish::Step& step, StepId::Kind kind) const {
  Task task = base_task(step, StepId::Pass::only, kind);
  task.kind = job::EventKind::turn;
  task.name = "turn";
  task.people = load_.turning_people;
  task.dust = shop::Dust::none;
  task.hot = false;
  task.note.clear();
  task.grit.reset();
  task.support = load_.support;
  Hours takes{0};
  for (const LoadPart& of : load_.parts) {
    const piece::Part& part = job_.order.pieces[load_.piece].piece.parts[of.part];
    takes += job::turning_time(part, job_.shop) * of.count;
    task.heavy = task.heavy || job::too_heavy_for_one(part);
  }
  task.hands_on = job::in_whole_steps(takes);
  return task;
}

std::optional<Crew> LoadTasks::crew(Minutes alone) const {
  if (job_.shop.people < 2 || alone < long_work) return std::nullopt;
  const Minutes together = job::in_whole_steps(Hours(alone) / 2);
  return Crew{2, together, together > shortest_shift()};
}

Minutes LoadTasks::shortest_shift() const {
  Minutes shortest{24 * 60};
  for (const shop::Shift& shift : job_.shop.week) shortest = std::min(shortest, job::whole_steps_within(shift.from, shift.until));
  return shortest;
}

}  // namespace coatday::planner
