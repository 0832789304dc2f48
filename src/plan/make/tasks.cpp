#include <algorithm>
#include <array>
#include <map>

#include <fmt/core.h>

#include "plan/make/carry_in.h"
#include "plan/make/coats.h"
#include "plan/make/effort.h"
#include "plan/make/grid.h"
#include "plan/make/stages.h"
#include "plan/make/task.h"
#include "plan/make/vapour.h"

namespace coatday::plan {

namespace {

EventKind event_kind(finish::StepKind kind) {
  switch (kind) {
    case finish::StepKind::prepare:
      return EventKind::prepare;
    case finish::StepKind::fill:
      return EventKind::fill;
    case finish::StepKind::stain:
      return EventKind::stain;
    case finish::StepKind::seal:
      return EventKind::seal;
    case finish::StepKind::topcoat:
      return EventKind::topcoat;
    case finish::StepKind::prime:
      return EventKind::prime;
    case finish::StepKind::paint:
      return EventKind::paint;
    case finish::StepKind::scuff:
      return EventKind::scuff;
    case finish::StepKind::bake:
      return EventKind::bake;
    case finish::StepKind::other:
      break;
  }
  return EventKind::other;
}

bool abrades(finish::StepKind kind) { return kind == finish::StepKind::prepare || kind == finish::StepKind::scuff; }

/// Dry work rests overnight only when one shift is too short for it.
Minutes shortest_shift(const shop::Shop& shop) {
  Minutes shortest{24 * 60};
  for (const shop::Shift& shift : shop.week) shortest = std::min(shortest, shift.until - shift.from);
  return shortest;
}

/// Lays out the steps of one load, then what comes before and after them.
class LoadWalk {
 public:
  LoadWalk(const Job& job, const Loads& loads, Sides sides, std::size_t load, TaskGraph& graph)
      : job_(job),
        loads_(loads),
        index_(load),
        load_(loads.loads[load]),
        graph_(graph),
        order_(sides == Sides::hidden_first ? std::array<std::size_t, 2>{hidden, show} : std::array<std::size_t, 2>{show, hidden}),
        films_(loads.faces.size(), 0) {}

  void run() {
    carried_in_ = carry_in(job_, loads_, index_, graph_);
    if (carried_in_) previous_ = first_ = {carried_in_->task};
    for (const finish::Step& step : load_.schedule->steps) {
      if (step.product) {
        coat_step(step, *job_.catalogue.product(*step.product));
      } else {
        dry_step(step);
      }
    }
    close_keeps(std::nullopt);
  }

  [[nodiscard]] const std::vector<std::size_t>& first_tasks() const { return first_; }
  [[nodiscard]] const std::vector<std::size_t>& last_tasks() const { return previous_; }
  [[nodiscard]] const std::vector<std::size_t>& coats() const { return coats_; }
  [[nodiscard]] const std::vector<std::size_t>& open_keeps() const { return closed_keeps_; }

 private:
  /// What a side of the load carries so far.
  struct SideState {
    std::optional<std::size_t> coat;  // the last coat's task
    bool abraded = true;              // since that coat
  };

  Task base_task(const finish::Step& step, const std::string& suffix) const {
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

  std::size_t add(Task task) {
    graph_.tasks.push_back(std::move(task));
    return graph_.tasks.size() - 1;
  }

  void after(std::size_t task, std::size_t other, Wait wait, std::string reason) {
    graph_.after.push_back({task, other, std::move(wait), false, std::move(reason)});
  }

  SquareMetres area(const std::vector<std::size_t>& faces) const {
    SquareMetres sum;
    for (const std::size_t face : faces) sum += loads_.faces[face].area;
    return sum;
  }

  std::vector<finish::Surface> surfaces(const std::vector<std::size_t>& faces) const {
    std::vector<finish::Surface> all;
    for (const std::size_t face : faces) all.push_back({loads_.faces[face].area, loads_.faces[face].end_grain});
    return all;
  }

  /// Every task of the step before must be over, plus the step's own wait; and it may not lie too long.
  void chain(std::size_t task, const finish::Step& step) {
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

  void warm_enough(std::size_t coat) {
    if (!carried_in_) return;
    for (After& wait : carried_in_->warming) {
      wait.task = coat;
      graph_.after.push_back(std::move(wait));
    }
    carried_in_.reset();
  }

  void dry_step(const finish::Step& step) {
    Task task = base_task(step, "");
    for (const std::size_t face : load_.faces) {
      if (reaches(step, nullptr, loads_.faces[face], loads_.shapes[face], films_[face])) task.faces.push_back(face);
    }
    if (task.faces.empty()) return;
    const Effort effort = dry_effort(step, area(task.faces), load_.items, job_.shop);
    task.hands_on = effort.hands_on;
    task.may_pause = effort.hands_on > shortest_shift(job_.shop) && step.bake.empty() && !step.hot;
    task.bake = step.bake;
    if (step.bake.empty() && !step.hot) task.crew = crew(effort.hands_on);
    const std::size_t id = add(std::move(task));
    for (SideState& side : sides_) {
      if (!side.coat) continue;
      const finish::Product& below = *graph_.tasks[*side.coat].product;
      const finish::Stage stage = step.after_stage.value_or(abrades(step.kind) ? sandable(below) : handled(below));
      after(id, *side.coat, StageOf{stage}, dry_to(stage));
      if (abrades(step.kind) && step.faces == finish::StepFaces::all) side.abraded = true;
    }
    chain(id, step);
    close_keeps(id);
    previous_ = {id};
    up_.reset();
  }

  /// Two sand one load when that takes one of them long: each at an end of it, or at pieces of their own.
  [[nodiscard]] std::optional<Crew> crew(Minutes alone) const {
    if (job_.shop.people < 2 || alone < long_work) return std::nullopt;
    const Minutes together = on_grid(Hours(alone) / 2);
    return Crew{2, together, together > shortest_shift(job_.shop)};
  }

  void coat_step(const finish::Step& step, const finish::Product& product) {
    std::array<std::vector<std::size_t>, 2> passes;
    for (const std::size_t face : load_.faces) {
      if (!reaches(step, &product, loads_.faces[face], loads_.shapes[face], films_[face])) continue;
      const bool together = load_.support == piece::Support::hooks || loads_.shapes[face].pass == piece::Pass::second;
      passes[together ? show : hidden].push_back(face);
      films_[face] += product.film ? 1 : 0;
    }
    std::optional<std::size_t> remedy = remedy_scuff(step, passes);
    std::optional<std::size_t> turn_back;
    const std::size_t begins = passes[order_[0]].empty() ? order_[1] : order_[0];
    if (up_ && *up_ != begins && !passes[begins].empty()) turn_back = turn(step, "/turn-back", *up_);
    if (turn_back && remedy) after(*remedy, *turn_back, Elapsed{}, "");
    std::vector<std::size_t> done;
    for (const std::size_t pass : order_) {
      if (passes[pass].empty()) continue;
      const bool one_pass = passes[hidden].empty() || passes[show].empty();
      const std::size_t id = coat(step, product, passes[pass], one_pass ? "" : pass_suffix(pass));
      over_what_lies_below(step, product, id, pass, remedy);
      if (done.empty()) {
        warm_enough(id);
        chain(id, step);
        close_keeps(id);
        if (turn_back) after(id, *turn_back, Elapsed{}, "");
      } else {
        second_side(step, done.back(), id);
      }
      graph_.keeps.push_back({id, std::nullopt, index_});
      open_keeps_.push_back(graph_.keeps.size() - 1);
      sides_[pass] = {id, false};
      done.push_back(id);
    }
    if (done.empty()) return;
    if (load_.support == piece::Support::hooks) {
      sides_[hidden] = sides_[show];
    } else {
      up_ = passes[order_[1]].empty() ? order_[0] : order_[1];
    }
    coats_.insert(coats_.end(), done.begin(), done.end());
    previous_ = done;
  }

  /// The same id always stands for the same faces.
  [[nodiscard]] const char* pass_suffix(std::size_t pass) const {
    if (order_[0] == hidden) return pass == hidden ? "/first" : "/second";
    return pass == hidden ? "/hidden" : "/show";
  }

  std::size_t coat(const finish::Step& step, const finish::Product& product, const std::vector<std::size_t>& faces,
                   const std::string& suffix) {
    Task task = base_task(step, suffix);
    task.faces = faces;
    task.product = &product;
    task.method = method_of(step, product, job_.shop);
    task.support = load_.support;
    task.bodies = load_.bodies;
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

  /// Waits for, and windows of, the coat below on this side.
  void over_what_lies_below(const finish::Step& step, const finish::Product& product, std::size_t id, std::size_t pass,
                            std::optional<std::size_t> remedy) {
    const SideState& side = sides_[pass];
    if (!side.coat) return;
    const finish::Product& below = *graph_.tasks[*side.coat].product;
    const finish::Stage stage = step.after_stage.value_or(recoatable(below));
    const bool by_touch = step.after_stage && told_by_touch(stage);
    graph_.after.push_back({id, *side.coat, StageOf{stage}, !by_touch, by_touch ? dry_to(stage) : dry_to(stage) + " by the late side"});
    const finish::OverRule* rule = job_.catalogue.over_rule(product, below);
    if (rule != nullptr && rule->verdict == finish::Verdict::longer_wait) {
      graph_.after.push_back({id, *side.coat, Dried{rule->wait}, true,
                              fmt::format("{} over {} waits {}, by the late side", product.name, below.name, format_span(rule->wait))});
    }
    if (side.abraded || !has_stage(below, finish::Stage::recoat_close)) return;
    graph_.before.push_back({id, *side.coat, StageOf{finish::Stage::recoat_close}, remedy,
                             fmt::format("the recoat window of {} closes by the early side", graph_.tasks[*side.coat].name)});
    if (remedy) after(id, *remedy, Elapsed{}, "after scuffing");
  }

  /// A scuff that takes part only when the window of a coat below is missed.
  std::optional<std::size_t> remedy_scuff(const finish::Step& step, const std::array<std::vector<std::size_t>, 2>& passes) {
    std::vector<std::size_t> below;
    std::vector<std::size_t> faces;
    for (const std::size_t pass : {std::size_t{0}, std::size_t{1}}) {
      const SideState& side = sides_[pass];
      if (passes[pass].empty() || !side.coat || side.abraded) continue;
      const finish::Product& product = *graph_.tasks[*side.coat].product;
      if (!has_stage(product, finish::Stage::recoat_close)) continue;
      if (!has_stage(product, finish::Stage::sand)) return std::nullopt;
      below.push_back(*side.coat);
      faces.insert(faces.end(), passes[pass].begin(), passes[pass].end());
    }
    if (below.empty()) return std::nullopt;
    Task task = base_task(step, "-scuff");
    task.kind = EventKind::scuff;
    task.name = "scuff before " + step.name;
    task.step = step.id + "-scuff";
    task.grit = scuff_grit;
    task.faces = faces;
    task.dust = shop::Dust::light;
    task.optional = true;
    finish::Step effort;
    effort.work_rate = scuff_rate;
    task.hands_on = dry_effort(effort, area(faces), load_.items, job_.shop).hands_on;
    task.may_pause = task.hands_on > shortest_shift(job_.shop);
    task.note = "the recoat window was missed";
    const std::size_t id = add(std::move(task));
    for (const std::size_t coat : below) after(id, coat, StageOf{finish::Stage::sand}, dry_to(finish::Stage::sand));
    return id;
  }

  /// Turning needs the side that was coated last to bear it: tack-free on points, dry to handle when laid flat.
  std::size_t turn(const finish::Step& step, const std::string& suffix, std::size_t wet_pass) {
    Task task = base_task(step, suffix);
    task.kind = EventKind::turn;
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
      const finish::Stage stage = turnable(*graph_.tasks[*wet].product, load_.support);
      after(id, *wet, StageOf{stage}, dry_to(stage));
    }
    return id;
  }

  void second_side(const finish::Step& step, std::size_t first, std::size_t second) {
    const std::size_t id = turn(step, "/turn", order_[0]);
    after(id, first, Elapsed{}, "");
    after(second, id, Elapsed{}, "");
    graph_.keeps.back().until = second;
    open_keeps_.pop_back();
    if (wood()) {
      graph_.before.push_back(
          {second, first, Elapsed{job_.shop.both_faces_within}, std::nullopt,
           fmt::format("both faces of {} get {} within {}", load_.whose, step.name, format_span(job_.shop.both_faces_within))});
    }
  }

  [[nodiscard]] bool wood() const { return loads_.faces[load_.faces.front()].wood; }

  void close_keeps(std::optional<std::size_t> until) {
    if (!until) {
      closed_keeps_ = open_keeps_;
      return;
    }
    for (const std::size_t keep : open_keeps_) graph_.keeps[keep].until = until;
    open_keeps_.clear();
  }

  static constexpr Minutes long_work{60};  // common practice, no source
  static constexpr std::size_t hidden = 0, show = 1;

  const Job& job_;
  const Loads& loads_;
  std::size_t index_;
  const Load& load_;
  TaskGraph& graph_;
  std::array<std::size_t, 2> order_;
  std::array<SideState, 2> sides_;
  std::optional<CarriedIn> carried_in_;  // until its first coat
  std::optional<std::size_t> up_;        // the side that lies up, freshly coated
  std::vector<int> films_;
  std::map<std::pair<std::size_t, std::string>, int> counts_;
  std::map<std::size_t, int> touched_;
  std::vector<std::size_t> previous_, first_, coats_, open_keeps_, closed_keeps_;
};

/// The order's and the shop's other work.
class WorkWalk {
 public:
  explicit WorkWalk(TaskGraph& graph) : graph_(graph) {}

  std::size_t add(const shop::Work& work, std::optional<std::size_t> piece, const std::string& prefix) {
    Task task;
    task.id = prefix + work.id;
    task.name = work.name;
    task.piece = piece;
    task.hands_on = on_grid(work.takes);
    task.people = work.people;
    task.dust = work.dust;
    task.hot = work.hot;
    task.may_pause = work.may_pause;
    task.fixed_start = work.start;
    task.not_before = work.not_before;
    task.not_after = work.not_after;
    graph_.tasks.push_back(std::move(task));
    return graph_.tasks.size() - 1;
  }

  void follow(std::size_t task, std::size_t other, const shop::Work& before) {
    const std::string reason =
        before.rest > Hours(0) ? fmt::format("{} rests {}", before.name, format_span(before.rest)) : "after " + before.name;
    graph_.after.push_back({task, other, Elapsed{before.rest}, false, reason});
  }

 private:
  TaskGraph& graph_;
};

class PieceWalk {
 public:
  PieceWalk(const Job& job, const Loads& loads, Sides sides, std::size_t piece, TaskGraph& graph)
      : job_(job), loads_(loads), sides_(sides), piece_(piece), order_(job.order.pieces[piece]), graph_(graph) {}

  void run() {
    for (std::size_t l = 0; l < loads_.loads.size(); ++l) {
      if (loads_.loads[l].piece != piece_) continue;
      walks_.emplace_back(l, LoadWalk(job_, loads_, sides_, l, graph_));
      walks_.back().second.run();
    }
    before_finishing();
    after_finishing();
    deliver();
  }

 private:
  [[nodiscard]] bool concerns(const OrderWork& work, const Load& load) const {
    if (work.parts.empty()) return true;
    return std::any_of(load.parts.begin(), load.parts.end(), [&](const LoadPart& p) {
      const std::string& id = order_.piece.parts[p.part].id;
      return std::find(work.parts.begin(), work.parts.end(), id) != work.parts.end();
    });
  }

  [[nodiscard]] static bool share_parts(const OrderWork& a, const OrderWork& b) {
    if (a.parts.empty() || b.parts.empty()) return true;
    return std::any_of(a.parts.begin(), a.parts.end(),
                       [&](const std::string& p) { return std::find(b.parts.begin(), b.parts.end(), p) != b.parts.end(); });
  }

  /// Works of one side of the finishing that touch the same parts follow each other as listed.
  void chain(std::vector<std::pair<const OrderWork*, std::size_t>>& earlier, const OrderWork& work, std::size_t task) {
    WorkWalk works(graph_);
    for (const auto& [before, id] : earlier) {
      if (share_parts(*before, work)) works.follow(task, id, before->work);
    }
    earlier.emplace_back(&work, task);
  }

  void before_finishing() {
    WorkWalk works(graph_);
    std::vector<std::pair<const OrderWork*, std::size_t>> earlier;
    for (const OrderWork& work : order_.work) {
      if (work.when != OrderWork::When::before_finishing) continue;
      const std::size_t id = works.add(work.work, piece_, order_.piece.id + "/");
      chain(earlier, work, id);
      for (auto& [l, walk] : walks_) {
        if (!concerns(work, loads_.loads[l])) continue;
        for (const std::size_t first : walk.first_tasks()) works.follow(first, id, work.work);
      }
    }
  }

  void after_finishing() {
    WorkWalk works(graph_);
    for (const OrderWork& work : order_.work) {
      if (work.when != OrderWork::When::after_finishing) continue;
      const std::size_t id = works.add(work.work, piece_, order_.piece.id + "/");
      chain(later_, work, id);
      if (work.delivery) delivery_ = id;
      for (auto& [l, walk] : walks_) {
        if (!concerns(work, loads_.loads[l])) continue;
        wait_for_load(id, walk, work.stage, false);
        for (const std::size_t keep : walk.open_keeps()) {
          if (!graph_.keeps[keep].until) graph_.keeps[keep].until = id;
        }
      }
    }
  }

  void wait_for_load(std::size_t task, const LoadWalk& walk, finish::Stage stage, bool late) {
    for (const std::size_t coat : walk.coats()) {
      const finish::Product& product = *graph_.tasks[coat].product;
      const finish::Stage reached = has_stage(product, stage) ? stage : handled(product);
      graph_.after.push_back({task, coat, StageOf{reached}, late, dry_to(reached)});
    }
    for (const std::size_t last : walk.last_tasks())
      graph_.after.push_back({task, last, Elapsed{}, late, "after " + graph_.tasks[last].name});
  }

  std::size_t milestone(const std::string& name, bool late) {
    Task task;
    task.id = order_.piece.id + "/" + name;
    task.name = name;
    task.piece = piece_;
    task.milestone = true;
    graph_.tasks.push_back(std::move(task));
    const std::size_t id = graph_.tasks.size() - 1;
    for (const auto& [l, walk] : walks_) wait_for_load(id, walk, finish::Stage::pack, late);
    WorkWalk works(graph_);
    for (const auto& [work, other] : later_) {
      if (!work->delivery) works.follow(id, other, work->work);
    }
    return id;
  }

  void deliver() {
    Delivery delivery{piece_, milestone("may be delivered", false), milestone("may be delivered, late side", true)};
    if (delivery_) graph_.after.push_back({*delivery_, delivery.nominal, Elapsed{}, false, "may be delivered"});
    graph_.deliveries.push_back(delivery);
  }

  const Job& job_;
  const Loads& loads_;
  Sides sides_;
  std::size_t piece_;
  const OrderPiece& order_;
  TaskGraph& graph_;
  std::vector<std::pair<std::size_t, LoadWalk>> walks_;
  std::vector<std::pair<const OrderWork*, std::size_t>> later_;
  std::optional<std::size_t> delivery_;
};

void apply_history(const Job& job, TaskGraph& graph) {
  for (const Done& done : job.order.history) {
    for (Task& task : graph.tasks) {
      if (task.id != done.event) continue;
      task.done = done;
      if (!task.vapour) continue;
      const Hours at_it = Hours(done.end - done.start) - task.set_up - task.clean_up - task.stand.value_or(Hours(0));
      task.vapour->airflow = airflow_within(*task.vapour, at_it);
      task.vapour->pauses = Minutes(0);
    }
  }
}

/// What is of an order does not start before it.
void apply_start(const Job& job, TaskGraph& graph) {
  for (Task& task : graph.tasks) {
    if (!task.piece) continue;
    const std::optional<Instant>& start = job.order.pieces[*task.piece].start;
    if (start) task.not_before = std::max(*start, task.not_before.value_or(*start));
  }
}

}  // namespace

TaskGraph make_tasks(const Job& job, const Loads& loads, Mixings mixings, Sides sides) {
  TaskGraph graph;
  graph.mixings = std::move(mixings);
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) PieceWalk(job, loads, sides, p, graph).run();
  bring_in_cans(job, graph);
  WorkWalk works(graph);
  for (const shop::Work& work : job.shop.work) works.add(work, std::nullopt, "shop/");
  apply_history(job, graph);
  leave_where_it_is(graph);
  apply_start(job, graph);
  return graph;
}

}  // namespace coatday::plan
