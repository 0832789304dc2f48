// The tasks that a load's steps make: what each of them takes.
#include "planner/tasks/load_walk.h"

#include <algorithm>
#include <set>

#include "job/stages.h"
#include "job/time_step.h"
#include "piece/heat.h"
#include "planner/tasks/effort.h"
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

}  // namespace

Task LoadWalk::base_task(const finish::Step& step, const std::string& suffix) const {
  Task task;
  task.id = load_.id + "/" + step.id + suffix;
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

void LoadWalk::rest() {
  const Rest* longest = nullptr;
  int items = 0;
  for (const LoadPart& part : load_.parts) {
    const auto rest = graph_.wood.rests.find({load_.piece, part.part});
    if (rest == graph_.wood.rests.end() || !rest->second.until) continue;
    items += part.count;
    if (longest == nullptr || *rest->second.until > *longest->until) longest = &rest->second;
  }
  if (longest == nullptr) return;
  Task task;
  task.id = load_.id + "/measure";
  task.kind = job::EventKind::prepare;
  task.name = "measure the moisture";
  task.piece = load_.piece;
  task.load = index_;
  task.hands_on = job::in_whole_steps(Hours(job_.shop.handling) * items);
  task.not_before = longest->until;
  task.not_before_why = longest->why;
  task.note = longest->note;
  task.carries_in = true;  // what was worked on since needs no measuring
  const std::size_t id = add(std::move(task));
  for (const std::size_t before : previous_) after(id, before, Elapsed{}, "");
  if (previous_.empty()) first_.push_back(id);
  previous_ = {id};
}

SquareMetres LoadWalk::area(const std::vector<std::size_t>& faces) const {
  SquareMetres sum;
  for (const std::size_t face : faces) sum += loads_.faces[face].area;
  return sum;
}

job::Bodies LoadWalk::bodies(const std::vector<std::size_t>& faces) const {
  std::set<Hours> all;  // an exception may leave a part of the load out
  for (const LoadPart& of : load_.parts) {
    const piece::Part& part = job_.order.pieces[load_.piece].piece.parts[of.part];
    const bool coated = std::any_of(faces.begin(), faces.end(), [&](std::size_t f) { return loads_.faces[f].part_id == part.id; });
    if (coated) all.insert(piece::time_constant(part));
  }
  return {all.begin(), all.end()};
}

std::vector<finish::Surface> LoadWalk::surfaces(const std::vector<std::size_t>& faces) const {
  std::vector<finish::Surface> all;
  for (const std::size_t face : faces) all.push_back({loads_.faces[face].area, loads_.faces[face].end_grain});
  return all;
}

std::size_t LoadWalk::coat(const finish::Step& step, const finish::Product& product, const std::vector<std::size_t>& faces,
                           const std::string& suffix) {
  Task task = base_task(step, suffix);
  task.faces = faces;
  task.product = &product;
  task.method = method_of(step, product, job_.shop);
  task.support = load_.support;
  task.bodies = bodies(faces);
  task.on_wood = wood();
  task.stand = product.stand;
  if (suffix == "/show") {
    task.note += task.note.empty() ? "" : "; ";
    task.note += "the side that shows goes first, since all is less late or ready earlier so; mind the marks of what it lies on";
  }
  task.bare = std::all_of(faces.begin(), faces.end(), [&](std::size_t f) { return touched_.count(f) == 0; });
  for (const std::size_t face : faces) {
    touched_.insert({face, 0});
    task.coat = ++counts_[{face, product.id}];
  }
  const finish::Method method = task.method.value_or(finish::Method::brush);
  task.wet_film = finish::wet_film(step, product);
  task.drying = finish::drying_factor(step, product);
  task.volume = finish::need(step, product, method, surfaces(faces), task.bare && wood());
  task.vapour = vapour_of(product, *task.volume, product.thinner_share + step.thinner_share, job_.shop.ventilation);
  const auto mixing = graph_.mixings.find(&product);
  const Effort effort = vented_effort(task.vapour, product, method, area(faces), load_.items, job_.shop,
                                      mixing == graph_.mixings.end() ? as_recorded(product) : mixing->second);
  task.hands_on = effort.hands_on;
  task.set_up = effort.set_up;
  task.clean_up = effort.clean_up;
  task.mixes = effort.mixes;
  return add(std::move(task));
}

std::optional<std::size_t> LoadWalk::remedy_scuff(const finish::Step& step, const std::array<std::vector<std::size_t>, 2>& passes) {
  std::vector<std::size_t> below;
  std::vector<std::size_t> faces;
  for (const std::size_t pass : {std::size_t{0}, std::size_t{1}}) {
    const SideState& side = sides_[pass];
    if (passes[pass].empty() || !side.coat || side.abraded) continue;
    const finish::Product& product = *graph_.tasks[*side.coat].product;
    if (!job::has_stage(product, finish::Stage::recoat_close)) continue;
    if (!job::has_stage(product, finish::Stage::sand)) return std::nullopt;
    below.push_back(*side.coat);
    faces.insert(faces.end(), passes[pass].begin(), passes[pass].end());
  }
  if (below.empty()) return std::nullopt;
  Task task = base_task(step, "-scuff");
  task.kind = job::EventKind::scuff;
  task.name = "scuff before " + step.name;
  task.step = step.id + "-scuff";
  task.grit = scuff_grit;
  task.faces = faces;
  task.dust = shop::Dust::light;
  task.optional = true;
  finish::Step effort;
  effort.work_rate = scuff_rate;
  task.hands_on = dry_effort(effort, area(faces), load_.items, job_.shop).hands_on;
  task.may_pause = task.hands_on > shortest_shift();
  task.note = "the recoat window was missed";
  const std::size_t id = add(std::move(task));
  for (const std::size_t coat : below) after(id, coat, StageOf{finish::Stage::sand}, job::dry_to(finish::Stage::sand));
  return id;
}

std::size_t LoadWalk::turn(const finish::Step& step, const std::string& suffix, std::size_t wet_pass) {
  Task task = base_task(step, suffix);
  task.kind = job::EventKind::turn;
  task.name = "turn";
  task.faces.clear();
  task.people = load_.turning_people;
  task.dust = shop::Dust::none;
  task.hot = false;
  task.note.clear();
  task.grit.reset();
  task.support = load_.support;
  task.hands_on = turning_effort(load_.items, job_.shop);
  const std::size_t id = add(std::move(task));
  if (const auto wet = sides_[wet_pass].coat) {
    const finish::Stage stage = job::turnable(*graph_.tasks[*wet].product, load_.support);
    after(id, *wet, StageOf{stage}, job::dry_to(stage));
  }
  return id;
}

std::optional<Crew> LoadWalk::crew(Minutes alone) const {
  if (job_.shop.people < 2 || alone < long_work) return std::nullopt;
  const Minutes together = job::in_whole_steps(Hours(alone) / 2);
  return Crew{2, together, together > shortest_shift()};
}

const char* LoadWalk::pass_suffix(std::size_t pass) const {
  if (order_[0] == hidden) return pass == hidden ? "/first" : "/second";
  return pass == hidden ? "/hidden" : "/show";
}

Minutes LoadWalk::shortest_shift() const {
  Minutes shortest{24 * 60};
  for (const shop::Shift& shift : job_.shop.week) shortest = std::min(shortest, shift.until - shift.from);
  return shortest;
}

}  // namespace coatday::planner
