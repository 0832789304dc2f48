// What a load rests on, and when it may be turned over.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"
#include "piece/mass.h"

namespace coatday::checker {

namespace {

using finish::Stage;
using piece::Support;

class TurnJudge {
 public:
  TurnJudge(const PlanFacts& facts, const LoadFacts& load, Breaches& out) : facts_(facts), load_(load), out_(out) {}

  void run() {
    if (load_.mixed) report("load-mixed", load_.events.front(), "its parts do not rest on the same thing");
    for (std::size_t k = 0; k < load_.events.size(); ++k) overlap(k);
    for (const std::size_t i : load_.events) {
      if (facts_.event(i).support && *facts_.event(i).support != load_.support) report("support-differs", i, "not what its parts rest on");
      if (facts_.event(i).kind == job::EventKind::turn) turn(i);
    }
    if (load_.support != Support::hooks) sides();
  }

 private:
  void report(std::string code, std::size_t i, const std::string& message) {
    out_.push_back({std::move(code), facts_.name(i) + ": " + message});
  }

  /// A load is in one place at a time.
  void overlap(std::size_t k) {
    for (std::size_t later = k + 1; later < load_.events.size(); ++later) {
      const std::size_t a = load_.events[k], b = load_.events[later];
      if (facts_.event(b).start + rounding >= facts_.event(a).end || facts_.event(b).done) continue;
      report("load-twice", b, "its load is still busy with " + facts_.name(a));
    }
  }

  /// To turn one over: as the shop says, else by what each person holds and the longest side.
  [[nodiscard]] double seconds(const piece::Part& part, int people) const {
    if (const auto& said = facts_.job.shop.turning) return std::chrono::duration<double>(*said).count();
    return 10 + 10 * piece::mass(part).value() / people + 20 * piece::footprint(part.shape).length.value();
  }

  void turn(std::size_t i) {
    if (load_.support == Support::hooks) return report("hooks-turned", i, "what hangs is not turned");
    const job::Event& e = facts_.event(i);
    if (e.done) return;
    for (const std::size_t c : load_.events) {
      if (!facts_.coat(c) || facts_.event(c).start >= e.start) continue;
      const Instant firm = load_.support == Support::points ? facts_.reached(c, {Stage::tack_free, Stage::handle, Stage::recoat})
                                                            : facts_.reached(c, {Stage::handle, Stage::recoat});
      if (e.start + rounding < firm) report("turned-too-early", i, fmt::format("{} bears it from {}", facts_.name(c), facts_.when(firm)));
    }
    int needed = 1, items = 0;
    double takes = 0;
    for (const auto& [part, count] : load_.items) {
      const int people = part->turning_people.value_or(piece::mass(*part).value() > 23 ? std::min(2, facts_.job.shop.people) : 1);
      needed = std::max(needed, people);
      items += count;
      takes += count * seconds(*part, people);
    }
    if (e.people < needed) report("too-few-people", i, fmt::format("it takes {} to turn it", needed));
    if (e.end - e.start + rounding < std::chrono::duration<double>(takes))
      report("too-short", i, fmt::format("turning {} takes {:.1f} min", items, takes / 60));
  }

  std::optional<piece::Pass> pass_of(std::size_t i) const {
    std::optional<piece::Pass> pass;
    for (const std::size_t face : facts_.event(i).faces) {
      const piece::Pass here = facts_.faces[face].face.face.pass;
      if (pass && *pass != here) return std::nullopt;
      pass = here;
    }
    return pass;
  }

  /// Between coats on different sides it is turned, between coats on one side it is not, unless dry work in between handled it anyway.
  void sides() {
    std::optional<std::size_t> before;
    int turns = 0;
    bool handled = false;
    for (const std::size_t i : load_.events) {
      if (facts_.event(i).kind == job::EventKind::turn) {
        ++turns;
      } else if (!facts_.coat(i)) {
        handled = true;
      } else {
        side(before, i, turns, handled);
        before = i;
        turns = 0;
        handled = false;
      }
    }
  }

  void side(std::optional<std::size_t> before, std::size_t i, int turns, bool handled) {
    const auto pass = pass_of(i);
    if (!pass) return report("both-sides-at-once", i, "what lies on something shows one side at a time");
    if (!before || facts_.event(i).done || !pass_of(*before)) return;
    const bool same_step = facts_.event(*before).step == facts_.event(i).step;
    if (handled && !same_step) return;
    const bool other_side = pass_of(*before) != pass;
    if (other_side != (turns % 2 == 1)) report("not-turned", i, "the wrong side is up after " + facts_.name(*before));
  }

  const PlanFacts& facts_;
  const LoadFacts& load_;
  Breaches& out_;
};

}  // namespace

void check_turns(const PlanFacts& facts, Breaches& out) {
  for (const auto& [id, load] : facts.loads) TurnJudge(facts, load, out).run();
}

}  // namespace coatday::checker
