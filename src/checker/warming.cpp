// What lags behind the air: the plan's word on it, and what is carried in from elsewhere.

#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

constexpr Kelvins near_enough{0.5};

/// A coat that is not done comes after what it goes on, or the can, was brought in, and after it is warm.
class WarmthJudge {
 public:
  WarmthJudge(const PlanFacts& facts, std::size_t coat, Breaches& out) : facts_(facts), i_(coat), out_(out) {}

  void run() {
    for (const std::size_t face : facts_.event(i_).faces) {
      const piece::Part& part = *facts_.faces[face].part;
      if (part.kept_at && !begun([&](std::size_t k) { return facts_.events[k].load == facts_.events[i_].load; })) {
        warm(carry_in(facts_.event(i_).step_id.piece, facts_.event(i_).step_id.load, ""), part.name, *part.kept_at,
             own_time_constant(part));
      }
    }
    const finish::Product& product = *facts_.events[i_].product;
    if (facts_.job.shop.finishes_kept_at && !begun([&](std::size_t k) { return facts_.event(k).product == product.id; })) {
      warm(carry_in("", "", product.id), "the can", *facts_.job.shop.finishes_kept_at, own_time_constant(product));
    }
  }

 private:
  static job::StepId carry_in(std::string piece, std::string load, std::string can) {
    return {std::move(piece), std::move(load), std::move(can), job::StepId::Pass::only, job::StepId::Kind::carry_in};
  }

  /// What is done with it says that it is in the shop.
  template <class Concerns>
  [[nodiscard]] bool begun(Concerns concerns) const {
    for (std::size_t k = 0; k < facts_.events.size(); ++k) {
      if (facts_.event(k).done && facts_.event(k).step_id.kind != job::StepId::Kind::carry_in && concerns(k)) return true;
    }
    return false;
  }

  void warm(const job::StepId& id, const std::string& what, Celsius from, Hours body) {
    if (reported_) return;
    const auto carried =
        std::find_if(facts_.plan.events.begin(), facts_.plan.events.end(), [&](const job::Event& e) { return e.step_id == id; });
    const Instant start = facts_.event(i_).start;
    if (carried == facts_.plan.events.end() || carried->end > start + rounding) {
      return report("not-carried-in", fmt::format("{} was not brought in before", what));
    }
    if (body <= Hours(0) || carried->end < facts_.plan.air.begin()) return;
    const Kelvins behind = facts_.surfaces.at(body).behind(carried->end, from, start);
    if (std::abs(behind.value()) <= (near_enough + surface_slack).value()) return;
    report("not-warm-yet", fmt::format("{} is {:.1f} K off what was always here", what, behind.value()));
  }

  void report(std::string code, const std::string& message) {
    reported_ = true;
    out_.push_back({std::move(code), facts_.name(i_) + ": " + message});
  }

  const PlanFacts& facts_;
  std::size_t i_;
  Breaches& out_;
  bool reported_ = false;
};

void check_surface(const PlanFacts& facts, Hours time_constant, const ThermalBody& body, Breaches& out) {
  const auto said = facts.plan.surfaces.find(time_constant);
  const std::vector<Celsius>& own = body.means();
  const auto report = [&](const std::string& message) {
    out.push_back({"surface-differs", fmt::format("what lags by {:.3f} h: {}", time_constant.count(), message)});
  };
  if (said == facts.plan.surfaces.end()) return report("the plan does not know it");
  const climate::AirSeries& air = said->second.air();
  const auto off = first_off(air, own);
  if (!off) return;
  if (*off >= air.rows().size() || *off >= own.size()) return report("the plan has other rows for it than for its air");
  report(fmt::format("at {} {:.2f} °C, by the lag {:.2f} °C", facts.when(air.rows()[*off].from), air.rows()[*off].air.temperature.value(),
                     own[*off].value()));
}

}  // namespace

void check_surfaces(const PlanFacts& facts, Breaches& out) {
  for (const auto& [time_constant, body] : facts.surfaces) check_surface(facts, time_constant, body, out);
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (facts.coat(i) && facts.event(i).bodies != facts.events[i].bodies) {
      out.push_back({"bodies-differ", facts.name(i) + " does not lag as its parts' shapes say"});
    }
  }
}

void check_warming(const PlanFacts& facts, Breaches& out) {
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (facts.coat(i) && !facts.event(i).done) WarmthJudge(facts, i, out).run();
  }
}

}  // namespace coatday::checker
