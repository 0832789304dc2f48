#include "planner/tasks/load_walk.h"

#include <algorithm>

#include <fmt/core.h>

#include "job/stages.h"
#include "planner/tasks/coats.h"
#include "planner/tasks/history.h"

namespace coatday::planner {

namespace {

bool abrades(finish::StepKind kind) { return kind == finish::StepKind::prepare || kind == finish::StepKind::scuff; }

}  // namespace

void LoadWalk::run() {
  carried_in_ = carry_in(job_, loads_, index_, graph_);
  if (carried_in_) previous_ = first_ = {carried_in_->task};
  rest();
  for (const finish::Step& step : load_.schedule->steps) {
    if (step.product) {
      coat_step(step, *job_.catalogue.product(*step.product));
    } else {
      dry_step(step);
    }
  }
  close_holds(std::nullopt);
}

std::size_t LoadWalk::add(Task task) {
  graph_.tasks.push_back(std::move(task));
  return graph_.tasks.size() - 1;
}

void LoadWalk::after(std::size_t task, std::size_t other, Wait wait, std::string reason) {
  graph_.after.push_back({task, other, std::move(wait), false, std::move(reason)});
}

void LoadWalk::rest() {
  std::optional<Task> measure = tasks_.measure();
  if (!measure) return;
  const std::size_t id = add(*std::move(measure));
  for (const std::size_t before : previous_) after(id, before, Elapsed{}, "");
  if (previous_.empty()) first_.push_back(id);
  previous_ = {id};
}

void LoadWalk::chain(std::size_t task, const finish::Step& step) {
  for (const std::size_t before : previous_) {
    const Hours wait = step.wait.value_or(Hours(0));
    after(task, before, Elapsed{wait}, wait > Hours(0) ? fmt::format("{} after {}", format_span(wait), graph_.tasks[before].name) : "");
    if (step.within) {
      graph_.before.push_back({task, before, Elapsed{*step.within}, std::nullopt,
                               fmt::format("{} follows {} within {}", step.name, graph_.tasks[before].name, format_span(*step.within))});
    }
  }
  if (previous_.empty()) first_.push_back(task);
}

void LoadWalk::warm_enough(std::size_t coat) {
  if (!carried_in_) return;
  for (After& wait : carried_in_->warming) {
    wait.task = coat;
    graph_.after.push_back(std::move(wait));
  }
  carried_in_.reset();
}

void LoadWalk::dry_step(const finish::Step& step) {
  std::vector<std::size_t> faces;
  for (const std::size_t face : load_.faces) {
    if (reaches(step, nullptr, loads_.faces[face], loads_.shapes[face], films_[face])) faces.push_back(face);
  }
  if (faces.empty()) return;
  const std::size_t id = add(tasks_.dry(step, std::move(faces)));
  for (SideState& side : sides_) {
    if (!side.coat) continue;
    const finish::Product& below = *graph_.tasks[*side.coat].product;
    const finish::Stage stage = step.after_stage.value_or(abrades(step.kind) ? job::sandable(below) : job::handled(below));
    after(id, *side.coat, StageOf{stage}, job::dry_to(stage));
    if (abrades(step.kind) && step.faces == finish::StepFaces::all) side.abraded = true;
  }
  chain(id, step);
  close_holds(id);
  previous_ = {id};
  up_.reset();
}

/// The faces that this coat reaches, by the side that they are done with.
LoadWalk::Passes LoadWalk::passes_of(const finish::Step& step, const finish::Product& product) {
  Passes passes;
  for (const std::size_t face : load_.faces) {
    if (!reaches(step, &product, loads_.faces[face], loads_.shapes[face], films_[face])) continue;
    const bool together = load_.support == piece::Support::hooks || loads_.shapes[face].pass == piece::Pass::second;
    passes[together ? show : hidden].push_back(face);
    films_[face] += product.film ? 1 : 0;
  }
  return passes;
}

std::array<std::optional<Task>, 2> LoadWalk::coats_of(const finish::Step& step, const finish::Product& product, const Passes& passes) {
  const bool one_pass = passes[hidden].empty() || passes[show].empty();
  std::array<std::optional<Task>, 2> coats;
  for (const std::size_t pass : order_) {
    if (passes[pass].empty()) continue;
    coats[pass] = tasks_.coat(step, product, passes[pass], one_pass ? job::StepId::Pass::only : name_of(pass));
  }
  return coats;
}

void LoadWalk::coat_step(const finish::Step& step, const finish::Product& product) {
  const Passes passes = passes_of(step, product);
  std::array<std::optional<Task>, 2> coats = coats_of(step, product, passes);
  // Then only the second side may still need a scuff, unless both had theirs.
  const bool half_done = coats[hidden] && coats[show] && is_recorded(*coats[order_[0]]) && !is_recorded(tasks_.scuff(step, {}));
  Passes to_scuff = passes;
  if (half_done) to_scuff[order_[0]].clear();
  const std::optional<std::size_t> remedy = remedy_scuff(step, to_scuff);
  std::optional<std::size_t> turn_back;
  const std::size_t begins = passes[order_[0]].empty() ? order_[1] : order_[0];
  if (up_ && *up_ != begins && !passes[begins].empty()) turn_back = turn(step, job::StepId::Kind::turn_back, *up_);
  if (turn_back && remedy) after(*remedy, *turn_back, Elapsed{}, "");
  std::vector<std::size_t> done;
  for (const std::size_t pass : order_) {
    if (passes[pass].empty()) continue;
    const std::size_t id = add(*std::move(coats[pass]));
    over_what_lies_below(step, product, id, pass, remedy);
    if (done.empty()) {
      warm_enough(id);
      chain(id, step);
      close_holds(id);
      if (turn_back) after(id, *turn_back, Elapsed{}, "");
      if (remedy && !half_done) after(id, *remedy, Elapsed{}, "after scuffing");
    } else {
      const std::size_t turned = second_side(step, done.back(), id);
      if (remedy && half_done) {
        after(*remedy, turned, Elapsed{}, "");
        after(id, *remedy, Elapsed{}, "after scuffing");
      }
    }
    graph_.place_holds.push_back({id, std::nullopt, index_});
    open_holds_.push_back(graph_.place_holds.size() - 1);
    sides_[pass] = {id, false};
    done.push_back(id);
  }
  if (!done.empty()) coated(passes, std::move(done));
}

bool LoadWalk::is_recorded(const Task& task) const {
  const std::string& piece = job_.order.pieces[load_.piece].piece.id;
  return std::any_of(job_.order.history.begin(), job_.order.history.end(),
                     [&](const job::Done& done) { return done.event.starts_with(piece + "/") && RecordedStep(done.event).covers(task); });
}

/// Which side is up now, and what the next step comes after.
void LoadWalk::coated(const Passes& passes, std::vector<std::size_t> done) {
  if (load_.support == piece::Support::hooks) {
    sides_[hidden] = sides_[show];
  } else {
    up_ = passes[order_[1]].empty() ? order_[0] : order_[1];
  }
  coats_.insert(coats_.end(), done.begin(), done.end());
  previous_ = std::move(done);
}

void LoadWalk::over_what_lies_below(const finish::Step& step, const finish::Product& product, std::size_t id, std::size_t pass,
                                    std::optional<std::size_t> remedy) {
  const SideState& side = sides_[pass];
  if (!side.coat) return;
  const finish::Product& below = *graph_.tasks[*side.coat].product;
  const finish::Stage stage = step.after_stage.value_or(job::recoatable(below));
  const bool by_touch = step.after_stage && job::told_by_touch(stage);
  graph_.after.push_back({id, *side.coat, StageOf{stage}, !by_touch, by_touch ? job::dry_to(stage) : job::dry_to(stage) + " (safe time)"});
  const finish::OverRule* rule = job_.catalogue.over_rule(product, below);
  if (rule != nullptr && rule->verdict == finish::Verdict::longer_wait) {
    graph_.after.push_back({id, *side.coat, Dried{rule->wait}, true,
                            fmt::format("{} over {} waits {} (safe time)", product.name, below.name, format_span(rule->wait))});
  }
  if (side.abraded || !job::has_stage(below, finish::Stage::recoat_close)) return;
  graph_.before.push_back({id, *side.coat, StageOf{finish::Stage::recoat_close}, remedy,
                           fmt::format("the recoat window of {} ends, at the earliest", graph_.tasks[*side.coat].name)});
}

std::optional<std::size_t> LoadWalk::remedy_scuff(const finish::Step& step, const Passes& passes) {
  std::vector<std::size_t> below;
  std::vector<std::size_t> faces;
  for (const std::size_t pass : {hidden, show}) {
    const SideState& side = sides_[pass];
    if (passes[pass].empty() || !side.coat || side.abraded) continue;
    const finish::Product& product = *graph_.tasks[*side.coat].product;
    if (!job::has_stage(product, finish::Stage::recoat_close)) continue;
    if (!job::has_stage(product, finish::Stage::sand)) return std::nullopt;
    below.push_back(*side.coat);
    faces.insert(faces.end(), passes[pass].begin(), passes[pass].end());
  }
  if (below.empty()) return std::nullopt;
  const std::size_t id = add(tasks_.scuff(step, std::move(faces)));
  for (const std::size_t coat : below) after(id, coat, StageOf{finish::Stage::sand}, job::dry_to(finish::Stage::sand));
  for (const std::size_t before : previous_) after(id, before, Elapsed{}, "");  // one thing at a time is done to a load
  return id;
}

std::size_t LoadWalk::turn(const finish::Step& step, job::StepId::Kind kind, std::size_t wet_pass) {
  const std::size_t id = add(tasks_.turn(step, kind));
  if (const auto wet = sides_[wet_pass].coat) {
    const finish::Stage stage = job::turnable(*graph_.tasks[*wet].product, load_.support);
    const bool laid = load_.support == piece::Support::laid;
    after(id, *wet, StageOf{stage}, job::dry_to(stage) + (laid ? ", as it lies flat (support: laid)" : ""));
  }
  return id;
}

job::StepId::Pass LoadWalk::name_of(std::size_t pass) const {
  using Pass = job::StepId::Pass;
  if (order_[0] == hidden) return pass == hidden ? Pass::first : Pass::second;
  return pass == hidden ? Pass::hidden : Pass::show;
}

std::size_t LoadWalk::second_side(const finish::Step& step, std::size_t first, std::size_t second) {
  const std::size_t id = turn(step, job::StepId::Kind::turn, order_[0]);
  after(id, first, Elapsed{}, "");
  after(second, id, Elapsed{}, "");
  graph_.place_holds.back().until = second;
  open_holds_.pop_back();
  if (tasks_.wood()) graph_.before.push_back(both_faces(step, first, second));
  return id;
}

Before LoadWalk::both_faces(const finish::Step& step, std::size_t first, std::size_t second) const {
  Hours within = job_.shop.both_faces_within;
  const bool begun = is_begun(job_.order, job_.order.pieces[load_.piece].piece.id, job::items_of(load_.id));
  const WoodCare::OneFaces& limits = begun ? graph_.wood.one_face_begun : graph_.wood.one_face;
  std::string longer;
  for (const LoadPart& part : load_.parts) {
    const auto one_face = limits.find({{load_.piece, part.part}, step.id});
    if (one_face == limits.end() || one_face->second.longest >= within) continue;
    within = one_face->second.longest;
    longer = fmt::format("; with one face coated for longer, {} may cup more than {} in this air", part.label,
                         format_length(one_face->second.cup, job_.shop.units));
  }
  return {second, first, Elapsed{within}, std::nullopt,
          fmt::format("both faces of {} get {} within {}{}", load_.load_name, step.name, format_span(within), longer)};
}

void LoadWalk::close_holds(std::optional<std::size_t> until) {
  if (!until) {
    closed_holds_ = open_holds_;
    return;
  }
  for (const std::size_t hold : open_holds_) graph_.place_holds[hold].until = until;
  open_holds_.clear();
}

}  // namespace coatday::planner
