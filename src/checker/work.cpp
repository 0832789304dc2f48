// Other work: the shop's own at its hour or in its window, the order's in its place, and the record of what is done.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"
#include "job/load_items.h"

namespace coatday::checker {

namespace {

using When = job::OrderWork::When;

bool share_parts(const job::OrderWork& a, const job::OrderWork& b) {
  if (a.parts.empty() || b.parts.empty()) return true;
  return std::any_of(a.parts.begin(), a.parts.end(),
                     [&](const std::string& part) { return std::find(b.parts.begin(), b.parts.end(), part) != b.parts.end(); });
}

/// At its hour, or in its window, by enough people.
void check_own_terms(const PlanFacts& facts, const shop::Work& work, std::size_t i, Breaches& out) {
  const job::Event& e = facts.event(i);
  if (e.done) return;
  if (work.start && std::chrono::abs(e.start - *work.start) > rounding) {
    out.push_back({"work-moved", fmt::format("{} is fixed at {}", facts.name(i), facts.when(*work.start))});
  }
  if ((work.not_before && e.start + rounding < *work.not_before) || (work.not_after && e.end > *work.not_after + rounding)) {
    out.push_back({"outside-window", facts.name(i) + " lies outside its window"});
  }
  if (e.people < work.people) out.push_back({"too-few-people", fmt::format("{} takes {}", facts.name(i), work.people)});
}

class PieceWork {
 public:
  PieceWork(const PlanFacts& facts, std::size_t piece, Breaches& out) : facts_(facts), piece_(piece), out_(out) {}

  void run() {
    for (const OrderWorkFacts& work : facts_.order_work) {
      if (work.piece != piece_) continue;
      if (!work.event) {
        out_.push_back({"work-missing", fmt::format("{} is not in the plan", work.work->work.name)});
        continue;
      }
      check_own_terms(facts_, work.work->work, *work.event, out_);
      if (work.work->delivery) last_of_all(*work.event);
      if (!facts_.event(*work.event).done && work.work->when == When::after_finishing) after_finishing(*work.work, *work.event);
      if (work.work->when == When::before_finishing) before_finishing(*work.work, *work.event);
      for (const OrderWorkFacts& earlier : facts_.order_work) {
        if (&earlier == &work) break;
        if (earlier.piece == piece_ && earlier.event) in_turn(earlier, work);
      }
    }
  }

 private:
  void report(std::string code, std::size_t i, const std::string& message) {
    out_.push_back({std::move(code), facts_.name(i) + ": " + message});
  }

  Instant rested(std::size_t i, const job::OrderWork& work) const { return later(facts_.event(i).end, work.work.rest); }

  void before_finishing(const job::OrderWork& work, std::size_t i) {
    for (std::size_t k = 0; k < facts_.events.size(); ++k) {
      const job::Event& e = facts_.event(k);
      if (e.done || e.step.empty() || e.piece != piece_) continue;
      const bool ours = std::any_of(e.faces.begin(), e.faces.end(), [&](std::size_t face) { return facts_.concerns(work, face); });
      if (ours && e.start + rounding < rested(i, work)) {
        return report("work-order", k, fmt::format("{} comes first, with its rest until {}", work.work.name, facts_.when(rested(i, work))));
      }
    }
  }

  void after_finishing(const job::OrderWork& work, std::size_t i) {
    const job::Event& e = facts_.event(i);
    for (std::size_t k = 0; k < facts_.events.size(); ++k) {
      const job::Event& step = facts_.event(k);
      if (step.step.empty() || step.piece != piece_) continue;
      const bool ours = std::any_of(step.faces.begin(), step.faces.end(), [&](std::size_t face) { return facts_.concerns(work, face); });
      if (!ours) continue;
      if (e.start + rounding < step.end) return report("work-order", i, "comes after " + facts_.name(k));
      if (!facts_.coat(k)) continue;
      const Instant ready = ready_for(k, work.stage);
      if (e.start + rounding < ready) {
        return report("work-too-early", i,
                      fmt::format("{} is ready ({}) at {}", facts_.name(k), finish::word(work.stage), facts_.when(ready)));
      }
    }
  }

  /// What no clock leads to is held to the stage before: dry to handle.
  Instant ready_for(std::size_t coat, finish::Stage stage) const {
    const finish::Product& product = *facts_.events[coat].product;
    const bool by_clock = product.law(finish::clock_of(stage)).has_value();
    return by_clock ? facts_.reached(coat, {stage, finish::Stage::handle}) : facts_.reached(coat, {finish::Stage::handle});
  }

  /// Works of one side of the finishing that touch the same parts follow each other as listed.
  void in_turn(const OrderWorkFacts& earlier, const OrderWorkFacts& work) {
    if (earlier.work->when != work.work->when || !share_parts(*earlier.work, *work.work) || facts_.event(*work.event).done) return;
    if (facts_.event(*work.event).start + rounding >= rested(*earlier.event, *earlier.work)) return;
    report("work-order", *work.event, fmt::format("follows {}, with its rest", facts_.name(*earlier.event)));
  }

  void last_of_all(std::size_t i) {
    for (std::size_t k = 0; k < facts_.events.size(); ++k) {
      if (k == i || facts_.event(k).piece != piece_ || facts_.event(k).end <= facts_.event(i).start + rounding) continue;
      return report("delivery-not-last", i, facts_.name(k) + " follows");
    }
  }

  const PlanFacts& facts_;
  std::size_t piece_;
  Breaches& out_;
};

/// Shop work that cannot lie before or after the order's own.
bool must_be_there(const PlanFacts& facts, const shop::Work& work) {
  Instant last = facts.plan.from;
  for (const job::Event& e : facts.plan.events) {
    if (e.piece) last = std::max(last, e.end);
  }
  if (work.start) return *work.start >= facts.plan.from && *work.start < last;
  const bool over = work.not_after && *work.not_after <= facts.plan.from;
  return !over && work.not_after && *work.not_after <= last;
}

}  // namespace

void check_shop_work(const PlanFacts& facts, Breaches& out) {
  for (std::size_t w = 0; w < facts.shop_work.size(); ++w) {
    const shop::Work& work = facts.job.shop.work[w];
    if (const auto i = facts.shop_work[w]) {
      check_own_terms(facts, work, *i, out);
    } else if (must_be_there(facts, work)) {
      out.push_back({"work-missing", fmt::format("{} is not in the plan", work.name)});
    }
  }
}

void check_order_work(const PlanFacts& facts, Breaches& out) {
  for (std::size_t p = 0; p < facts.job.order.pieces.size(); ++p) PieceWork(facts, p, out).run();
}

namespace {

/// A record, and what it says of an event.
class Record {
 public:
  explicit Record(const job::Done& done) : done_(done), id_(job::parse_step_id(done.event)) {
    if (id_) items_ = job::items_of(id_->load);
  }

  /// The event is about the same step, of items that were all done then.
  [[nodiscard]] bool tells_of(const job::Event& event) const {
    if (event.id == done_.event) return true;
    if (!id_ || id_->load.empty()) return false;
    job::StepId same = event.step_id;
    same.load = id_->load;
    return same == *id_ && job::within(job::items_of(event.step_id.load), items_);
  }
  [[nodiscard]] bool agrees_with(const job::Event& event) const {
    return event.done && std::chrono::abs(event.start - done_.start) <= rounding && std::chrono::abs(event.end - done_.end) <= rounding;
  }

 private:
  const job::Done& done_;
  std::optional<job::StepId> id_;
  job::LoadItems items_;
};

}  // namespace

void check_history(const PlanFacts& facts, Breaches& out) {
  const std::vector<job::Event>& events = facts.plan.events;
  std::vector<bool> known(events.size());
  for (const job::Done& done : facts.job.order.history) {
    const Record record(done);
    bool any = false, agree = true;
    for (std::size_t i = 0; i < events.size(); ++i) {
      if (!record.tells_of(events[i])) continue;
      any = known[i] = true;
      agree = agree && record.agrees_with(events[i]);
    }
    if (any && agree) continue;
    out.push_back({"history-lost", fmt::format("{} was done {} to {}; the plan does not say so", done.event, facts.when(done.start),
                                               facts.when(done.end))});
  }
  for (std::size_t i = 0; i < events.size(); ++i) {
    if (events[i].done && !known[i]) out.push_back({"history-invented", facts.name(i) + ": nobody said that it is done"});
  }
}

}  // namespace coatday::checker
