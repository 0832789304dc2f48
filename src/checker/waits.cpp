// Not too early, and no window missed.

#include <algorithm>
#include <cstdlib>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

using finish::Stage;

struct Bound {
  Instant at;
  std::string reason;
};

bool abrades(const PlanFacts& facts, std::size_t i) {
  const job::EventKind kind = facts.event(i).kind;
  return !facts.coat(i) && (kind == job::EventKind::prepare || kind == job::EventKind::scuff);
}

/// What the coat below must have reached before this event.
Bound dry_enough(const PlanFacts& facts, std::size_t i, std::size_t below) {
  const finish::Step* step = facts.events[i].step;
  const auto bound = [&](std::initializer_list<Stage> stages, bool surely = false) {
    return Bound{facts.reached(below, stages, surely ? Estimate::slow : Estimate::expected),
                 fmt::format("{} reaches {}{}", facts.name(below), finish::word(*stages.begin()), surely ? " at the safe time" : "")};
  };
  if (step != nullptr && step->after_stage) {
    const bool by_touch = finish::clock_of(*step->after_stage) == finish::Clock::drying && *step->after_stage != Stage::recoat;
    return bound({*step->after_stage, Stage::recoat, Stage::handle}, facts.coat(i) && !by_touch);
  }
  if (facts.coat(i)) return bound({Stage::recoat, Stage::handle, Stage::tack_free}, true);
  if (abrades(facts, i)) return bound({Stage::sand, Stage::recoat, Stage::handle, Stage::tack_free});
  return bound({Stage::handle, Stage::tack_free});
}

/// A rule's longer wait, on the drying clock of the coat below.
std::optional<Bound> longer_wait(const PlanFacts& facts, std::size_t i, std::size_t below) {
  const finish::Product& upper = *facts.events[i].product;
  const finish::Product& under = *facts.events[below].product;
  const finish::OverRule* rule = facts.job.catalogue.over_rule(upper, under);
  if (rule == nullptr || rule->verdict != finish::Verdict::longer_wait || !facts.events[below].own_clock) return std::nullopt;
  const auto dried = facts.dried(below, rule->wait, Estimate::slow);
  return Bound{dried.value_or(never), fmt::format("{} over {} waits {}", upper.name, under.name, format_span(rule->wait))};
}

bool forbidden(const PlanFacts& facts, std::size_t i, std::size_t below) {
  const auto* rule = facts.job.catalogue.over_rule(*facts.events[i].product, *facts.events[below].product);
  return rule != nullptr && (rule->verdict == finish::Verdict::never || rule->verdict == finish::Verdict::barrier);
}

bool abraded_between(const PlanFacts& facts, std::size_t face, std::size_t below, std::size_t i) {
  const auto& events = facts.faces[face].events;
  return std::any_of(events.begin(), events.end(), [&](std::size_t k) {
    return abrades(facts, k) && facts.event(k).start + rounding >= facts.event(below).end &&
           facts.event(k).end <= facts.event(i).start + rounding;
  });
}

class WaitJudge {
 public:
  WaitJudge(const PlanFacts& facts, std::size_t event, Breaches& out) : facts_(facts), i_(event), out_(out) {}

  /// The worst face speaks for the event.
  void run() {
    for (const std::size_t face : facts_.event(i_).faces) {
      if (const auto below = facts_.coat_below(face, i_)) above(face, *below);
    }
    if (earliest_ && facts_.event(i_).start + rounding < earliest_->at) {
      report("too-early", fmt::format("not before {}: {}", facts_.when(earliest_->at), earliest_->reason));
    }
    if (closes_ && facts_.event(i_).start > closes_->at + rounding) {
      report("window-missed", fmt::format("not after {} without scuffing: {}", facts_.when(closes_->at), closes_->reason));
    }
    if (over_) report("not-over", fmt::format("may not go on over {}", facts_.name(*over_)));
  }

 private:
  void report(std::string code, const std::string& message) { out_.push_back({std::move(code), facts_.name(i_) + ": " + message}); }

  void not_before(Bound bound) {
    if (!earliest_ || bound.at > earliest_->at) earliest_ = std::move(bound);
  }

  void above(std::size_t face, std::size_t below) {
    not_before(dry_enough(facts_, i_, below));
    if (!facts_.coat(i_)) return;
    if (auto longer = longer_wait(facts_, i_, below)) not_before(std::move(*longer));
    if (forbidden(facts_, i_, below)) over_ = below;
    const bool has_window = facts_.events[below].product->reference().hours[Stage::recoat_close].has_value();
    if (!has_window || abraded_between(facts_, face, below, i_)) return;
    const Instant close = facts_.reached(below, {Stage::recoat_close}, Estimate::fast);
    if (!closes_ || close < closes_->at) closes_ = Bound{close, "the recoat window of " + facts_.name(below) + " closes"};
  }

  const PlanFacts& facts_;
  std::size_t i_;
  Breaches& out_;
  std::optional<Bound> earliest_, closes_;
  std::optional<std::size_t> over_;
};

struct StepSpan {
  const finish::Step* step = nullptr;
  Instant start, end;
  std::size_t first = 0;  ///< its first event
};

/// The steps of a load in the schedule's order, both passes as one.
std::vector<StepSpan> spans(const PlanFacts& facts, const LoadFacts& load) {
  std::map<const finish::Step*, StepSpan> by_step;  // in the order of the schedule: the steps lie side by side
  for (const std::size_t i : load.events) {
    const job::Event& e = facts.event(i);
    if (facts.events[i].step == nullptr) continue;
    const auto [at, fresh] = by_step.try_emplace(facts.events[i].step, StepSpan{facts.events[i].step, e.start, e.end, i});
    if (!fresh) at->second.end = std::max(at->second.end, e.end);
  }
  std::vector<StepSpan> result;
  for (const auto& [step, span] : by_step) result.push_back(span);
  return result;
}

/// What a step itself asks for: so long after the step before, and not longer.
void check_step_lags(const PlanFacts& facts, const LoadFacts& load, Breaches& out) {
  const std::vector<StepSpan> steps = spans(facts, load);
  for (std::size_t k = 1; k < steps.size(); ++k) {
    const StepSpan& here = steps[k];
    if (facts.event(here.first).done) continue;
    const Hours lag = here.start - steps[k - 1].end;
    const std::string name = facts.name(here.first);
    if (here.step->wait && lag + rounding < *here.step->wait) {
      out.push_back({"too-early", fmt::format("{}: waits {} after the step before", name, format_span(*here.step->wait))});
    }
    if (here.step->within && lag > *here.step->within + rounding && !facts.said_missed(steps[k - 1].first, here.first)) {
      out.push_back({"step-too-late", fmt::format("{}: must begin within {} of the step before", name, format_span(*here.step->within))});
    }
  }
}

bool alike(std::optional<Instant> a, std::optional<Instant> b, Instant air_end) {
  const Instant x = a.value_or(air_end);
  const Instant y = b.value_or(air_end);
  const bool both = a.has_value() == b.has_value() || (x + rounding >= air_end && y + rounding >= air_end);
  return both && std::chrono::abs(x - y) <= rounding;
}

void compare_stage(const PlanFacts& facts, std::size_t i, Stage stage, const char* side, std::optional<Instant> said,
                   std::optional<Instant> own, Breaches& out) {
  if (alike(said, own, facts.plan.air.end())) return;
  out.push_back({"stage-differs", fmt::format("{}: {}{} at {}, by the clock {}", facts.name(i), finish::word(stage), side,
                                              said ? facts.when(*said) : "no time", own ? facts.when(*own) : "no time")});
}

}  // namespace

void check_stages(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (!facts.coat(i) || !facts.events[i].own_clock) continue;
    for (std::size_t s = 0; s < finish::stage_count; ++s) {
      const auto stage = static_cast<Stage>(s);
      const job::Event& e = facts.event(i);
      const EventFacts& own = facts.events[i];
      compare_stage(facts, i, stage, "", e.stages.expected[stage], own.stages[stage], out);
      compare_stage(facts, i, stage, ", safe time,", e.stages.slow[stage], own.slow[stage], out);
      compare_stage(facts, i, stage, ", earliest time,", e.stages.fast[stage], own.fast[stage], out);
    }
  }
}

void check_waits(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    const job::Event& e = facts.event(i);
    if (!e.done && e.kind != job::EventKind::turn && !e.step.empty()) WaitJudge(facts, i, out).run();
  }
  for (const auto& [id, load] : facts.loads) check_step_lags(facts, load, out);
}

}  // namespace coatday::checker
