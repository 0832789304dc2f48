// What stands aside: dry to handle, off its place, and not dry to pack before its next step.

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

using finish::Stage;

class AsideJudge {
 public:
  AsideJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {}

  void run() {
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.coat(i)) coat(i);
    }
    if (facts_.job.shop.set_aside.value_or(0) > 0 && !said()) count();
  }

 private:
  /// A step of its own schedule, or work of the order; turning over, and scuffing since a window was missed, leave it where it stands.
  [[nodiscard]] Instant next_step(std::size_t coat, const LoadFacts& load) const {
    Instant next = never;
    const auto begins = [&](std::size_t i) {
      if (i != coat && facts_.event(i).start >= facts_.event(coat).start) next = std::min(next, facts_.event(i).start);
    };
    for (const std::size_t i : load.events) {
      if (facts_.events[i].step != nullptr) begins(i);
    }
    for (const OrderWorkFacts& work : facts_.order_work) {
      const bool same = work.event && work.piece == facts_.event(coat).piece;
      if (same && facts_.concerns(*work.work, load)) begins(*work.event);
    }
    return next;
  }

  void coat(std::size_t i) {
    const LoadFacts& load = facts_.loads.at(facts_.events[i].load);
    const Instant dry = facts_.reached(i, {Stage::pack, Stage::recoat, Stage::handle, Stage::tack_free});
    const Instant packed = std::min(dry, next_step(i, load));
    bool placed = false;
    for (const job::PlaceUse& use : facts_.plan.places) {
      if (use.event != i) continue;
      placed = true;
      int parts = 0;
      for (const shop::Laid& row : use.laid) parts += row.count;
      stand(use.until, packed, parts);
      told(use, packed, dry);
    }
    if (placed) return;
    int parts = 0;
    for (const auto& [part, count] : load.items) parts += count;
    stand(facts_.reached(i, {Stage::handle, Stage::recoat, Stage::tack_free}), packed, parts);
  }

  void stand(Instant from, Instant until, int parts) {
    from = std::max(from, facts_.plan.from);
    if (from + rounding >= until) return;
    changes_[from] += parts;
    changes_[until] -= parts;
  }

  /// What the plan tells of it, to a step of its grid. Of two works that come next it may name the later one.
  void told(const job::PlaceUse& use, Instant packed, Instant dry) {
    const Instant ends = facts_.plan.until;
    const auto before = [](Instant a, Instant b) { return a + grid + rounding < b; };
    const bool wrong = use.then ? use.then->from != use.until || before(use.then->until, std::min(packed, ends)) ||
                                      before(std::min(dry, ends), use.then->until)
                                : before(use.until, std::min(packed, ends));
    if (!wrong) return;
    out_.push_back({"set-aside-differs", fmt::format("{}, {}: what lies there stands aside from {} until {}", use.place,
                                                     facts_.name(use.event), facts_.when(use.until), facts_.when(packed))});
  }

  [[nodiscard]] bool said() const {
    return std::any_of(facts_.plan.findings.begin(), facts_.plan.findings.end(),
                       [](const job::Finding& finding) { return finding.code == "set-aside-full"; });
  }

  void count() {
    int parts = 0;
    for (const auto& [at, change] : changes_) {
      parts += change;
      if (parts <= *facts_.job.shop.set_aside) continue;
      out_.push_back({"set-aside-over",
                      fmt::format("{}: {} parts stand aside, there is room for {}", facts_.when(at), parts, *facts_.job.shop.set_aside)});
      return;
    }
  }

  const PlanFacts& facts_;
  Breaches& out_;
  std::map<Instant, int> changes_;  // of the number of parts
};

}  // namespace

void check_set_aside(const PlanFacts& facts, Breaches& out) { AsideJudge(facts, out).run(); }

}  // namespace coatday::checker
