// The dates of hand-over follow from the events.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"
#include "job/time_step.h"

namespace coatday::checker {

namespace {

using finish::Stage;

/// What the coats say of one date.
struct Date {
  std::optional<Instant> at;
  bool open = false;  ///< some coat does not get there while the air is known, or nobody says when

  void add(std::optional<Instant> when) {
    if (!when) open = true;
    if (when) at = std::max(at.value_or(*when), *when);
  }
};

class ReadyJudge {
 public:
  ReadyJudge(const PlanFacts& facts, std::size_t piece, Breaches& out)
      : facts_(facts), piece_(piece), result_(facts.plan.pieces[piece]), out_(out) {
    for (const OrderWorkFacts& work : facts.order_work) {
      if (work.piece == piece && work.work->delivery && work.event) delivery_ = work.event;
    }
    for (std::size_t i = 0; i < facts.events.size(); ++i) {
      if (facts.event(i).piece == piece && i != delivery_) last_ = std::max(last_, facts.event(i).end);
    }
  }

  void run() {
    stages(result_.ready.expected, Estimate::expected);
    stages(result_.ready.slow, Estimate::slow);
    stages(result_.ready.fast, Estimate::fast);
    deliver(result_.ready.expected.deliver, Estimate::expected);
    deliver(result_.ready.slow.deliver, Estimate::slow);
    slack();
  }

 private:
  /// A delivery with an hour of its own was agreed before anybody knew the safe date.
  [[nodiscard]] bool follows_work() const { return delivery_ && !facts_.events[*delivery_].work->start; }

  void stages(const job::HandOver& ready, Estimate side) {
    stage(ready.handle, Stage::handle, side);
    stage(ready.wrap, Stage::pack, side);
    stage(ready.careful_use, Stage::light_use, side);
    stage(ready.full_use, Stage::full_cure, side);
  }

  static const char* clock_text(Estimate side) {
    return side == Estimate::expected ? "" : side == Estimate::slow ? ", safe time," : ", earliest time,";
  }

  void report(const std::string& message) { out_.push_back({"ready-differs", result_.name + ": " + message}); }
  [[nodiscard]] std::string when(const std::optional<Instant>& t) const { return t ? facts_.when(*t) : "no date"; }

  /// Every coat that has the stage must have reached it; the last coat on each face must have some word on it.
  [[nodiscard]] Date date(Stage stage, Estimate side) const {
    Date result;
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.event(i).piece == piece_ && facts_.coat(i) && clocked(i, stage)) result.add(reached(i, {stage}, side));
    }
    for (std::size_t f = 0; f < facts_.faces.size(); ++f) {
      if (facts_.plan.faces[f].piece == piece_) last_coat(f, stage, side, result);
    }
    return result;
  }

  void last_coat(std::size_t face, Stage stage, Estimate side, Date& result) const {
    std::optional<std::size_t> coat;
    std::optional<Instant> baked;
    for (const std::size_t i : facts_.faces[face].events) {
      if (facts_.coat(i)) {
        coat = i;
        baked.reset();
      } else if (facts_.event(i).kind == job::EventKind::bake) {
        baked = facts_.event(i).end;
      }
    }
    if (!coat || clocked(*coat, stage)) return;
    const finish::Product& product = *facts_.events[*coat].product;
    const bool by_heat = finish::clock_of(stage) == finish::Clock::cure && !product.law(finish::Clock::cure);
    if (by_heat) return result.add(baked);
    if (stage == Stage::pack || stage == Stage::handle)
      return result.add(reached(*coat, {Stage::handle, Stage::recoat, Stage::tack_free}, side));
    result.open = true;
  }

  [[nodiscard]] bool clocked(std::size_t coat, Stage stage) const {
    const finish::Product& product = *facts_.events[coat].product;
    return product.reference().hours[stage] && product.law(finish::clock_of(stage));
  }

  [[nodiscard]] std::optional<Instant> reached(std::size_t coat, std::initializer_list<Stage> stages, Estimate side) const {
    const EventFacts& of = facts_.events[coat];
    const job::StageInstants& at = side == Estimate::expected ? of.stages : side == Estimate::slow ? of.slow : of.fast;
    for (const Stage stage : stages) {
      if (of.product->reference().hours[stage]) return at[stage];
    }
    return facts_.event(coat).end;
  }

  /// The date may also wait for the last dry work.
  void stage(const std::optional<Instant>& said, Stage stage, Estimate side) {
    const Date own = date(stage, side);
    const std::string what = fmt::format("{}{}", finish::word(stage), clock_text(side));
    if (own.open && said) return report(fmt::format("{} {}, though a coat does not get there, or nobody says when", what, when(said)));
    if (own.open || !own.at) return;
    const Instant latest = std::max(*own.at, last_);
    if (said && *said + rounding >= *own.at && *said <= latest + rounding) return;
    report(fmt::format("{} {}, the coats say {}", what, when(said), when(own.at)));
  }

  /// When all is print-free (or dry to handle, where no clock leads further) and dry work and assembly are over, then in working hours; or
  /// when the delivery itself starts, which waits for the safe times.
  void deliver(const std::optional<Instant>& said, Estimate side) {
    Date own;
    own.add(last_);
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.event(i).piece != piece_ || !facts_.coat(i)) continue;
      own.add(clocked(i, Stage::pack) ? reached(i, {Stage::pack}, side) : reached(i, {Stage::handle}, side));
    }
    for (const OrderWorkFacts& work : facts_.order_work) {
      const bool ours =
          work.piece == piece_ && work.event && !work.work->delivery && work.work->when == job::OrderWork::When::after_finishing;
      if (ours) own.add(later(facts_.event(*work.event).end, work.work->work.rest));
    }
    const std::string what = fmt::format("deliver{}", clock_text(side));
    if (own.open && said) return report(fmt::format("{} {}, though a coat is not print-free while the air is known", what, when(said)));
    if (own.open) return;
    const Instant open = working_at_or_after(*own.at + rounding);  // a clock may be that much off, and the shop may close meanwhile
    const bool by_work = follows_work() && side == Estimate::slow;
    if (by_work && said != facts_.event(*delivery_).start) return report("the delivery itself starts at another time than it is said to");
    if (by_work && facts_.event(*delivery_).done) return;
    const bool agreed = delivery_ && !follows_work() && side == Estimate::expected;
    const Instant latest = by_work && said ? *said : agreed ? std::max(open + grid, facts_.event(*delivery_).start) : open + grid;
    if (said && *said + rounding >= *own.at && *said <= latest + rounding) return;
    report(fmt::format("{} {}, the events say {}", what, when(said), when(own.at)));
  }

  /// A piece leaves in working hours, when the plan's clock strikes.
  [[nodiscard]] Instant working_at_or_after(Instant at) const {
    const Instant t(std::chrono::ceil<std::chrono::duration<std::int64_t, std::ratio<grid.count() * 60>>>(at.time_since_epoch()));
    for (const date::days ahead : {date::days(60), date::days(800)}) {  // a shop may be closed for a season
      for (const shop::WorkingTime& shift : shop::working_time(facts_.job.shop, t, t + ahead)) {
        if (shift.end >= t) return std::max(t, shift.begin);
      }
    }
    return t;
  }

  void slack() {
    const auto promised = facts_.job.order.pieces[piece_].promised;
    const bool known = promised && result_.ready.slow.deliver;
    const bool same_due = result_.due == promised && result_.slack.has_value() == known;
    if (!same_due) return report("what is promised is not as in the order, or its slack is missing");
    if (!known) return;
    const Hours own = *promised - (follows_work() ? facts_.event(*delivery_).end : *result_.ready.slow.deliver);
    if (std::chrono::abs(*result_.slack - own) > Hours(rounding)) report("slack is not the promised date less the end of the delivery");
  }

  const PlanFacts& facts_;
  std::size_t piece_;
  const job::PieceResult& result_;
  Breaches& out_;
  std::optional<std::size_t> delivery_;
  Instant last_;  ///< end of the last event, delivery left out
};

}  // namespace

void check_ready(const PlanFacts& facts, Breaches& out) {
  const std::size_t pieces = facts.job.order.pieces.size();
  if (facts.plan.pieces.size() != pieces) {
    out.push_back({"ready-differs", fmt::format("the plan has dates for {} of {} pieces", facts.plan.pieces.size(), pieces)});
    return;
  }
  for (std::size_t p = 0; p < pieces; ++p) ReadyJudge(facts, p, out).run();
}

}  // namespace coatday::checker
