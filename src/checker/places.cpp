// A load holds a place to dry from each coat until it is dry to handle or is taken away; until it is dry to pack where nothing stands aside.

#include <algorithm>
#include <charconv>

#include <fmt/core.h>

#include "checker/checks.h"
#include "job/place_support.h"

namespace coatday::checker {

namespace {

using finish::Stage;

/// One of a shop's equal places, from 1: "rack 3", "points" where there is one.
struct Held {
  const shop::DryingPlace* place = nullptr;
  int number = 1;
};

std::optional<Held> read_as(const shop::DryingPlace& place, std::string_view text) {
  if (!text.starts_with(place.name)) return std::nullopt;
  text.remove_prefix(place.name.size());
  if (text.empty()) return place.count == 1 ? std::optional(Held{&place, 1}) : std::nullopt;
  if (text.front() != ' ') return std::nullopt;
  int number = 0;
  const auto [end, error] = std::from_chars(text.data() + 1, text.data() + text.size(), number);
  const bool known = error == std::errc{} && end == text.data() + text.size() && number >= 1 && number <= place.count;
  return known ? std::optional(Held{&place, number}) : std::nullopt;
}

std::optional<Held> read_place(const shop::Shop& shop, std::string_view text) {
  for (const shop::DryingPlace& place : shop.places) {
    if (const auto held = read_as(place, text)) return held;
  }
  return std::nullopt;
}

/// When the load is taken away, or dry to handle: then it may stand aside, if there is room at all.
Instant free_again(const PlanFacts& facts, std::size_t coat, const LoadFacts& load) {
  const bool stays = facts.job.shop.set_aside == 0;
  Instant until = stays ? facts.reached(coat, {Stage::pack, Stage::recoat, Stage::handle, Stage::tack_free})
                        : facts.reached(coat, {Stage::handle, Stage::recoat, Stage::tack_free});
  const auto taken_by = [&](std::size_t i) {
    if (i != coat && facts.event(i).start >= facts.event(coat).start) until = std::min(until, facts.event(i).start);
  };
  for (const std::size_t i : load.events) taken_by(i);
  for (const OrderWorkFacts& work : facts.order_work) {
    const bool same = work.event && work.piece == facts.event(coat).piece;
    if (same && facts.concerns(*work.work, load)) taken_by(*work.event);
  }
  return std::min(until, facts.plan.until);
}

constexpr Metres noise(1e-6);

bool apart(Metres a, Metres a_size, Metres b, Metres b_size) { return a + a_size <= b + noise || b + b_size <= a + noise; }

/// A side that the place does not give keeps nothing apart.
bool on_each_other(const shop::Laid& a, const shop::Laid& b, const shop::DryingPlace& place) {
  return !(place.length && apart(a.x, a.along, b.x, b.along)) && !(place.width && apart(a.y, a.across * a.count, b.y, b.across * b.count));
}

class PlaceJudge {
 public:
  PlaceJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {
    for (const job::PlaceUse& use : facts.plan.places) held_.push_back(read_place(facts.job.shop, use.place));
  }

  void run() {
    for (std::size_t u = 0; u < held_.size(); ++u) {
      if (!held_[u]) {
        report("place-unknown", u, "the shop has no such place");
        continue;
      }
      lying(u);
      for (std::size_t v = 0; v < u; ++v) pair(v, u);
    }
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.coat(i) && !facts_.event(i).done) coat(i);
    }
  }

 private:
  void report(std::string code, std::size_t use, const std::string& message) {
    const job::PlaceUse& u = facts_.plan.places[use];
    out_.push_back({std::move(code), fmt::format("{}, {} to {}, for {}: {}", u.place, facts_.when(u.from), facts_.when(u.until),
                                                 facts_.name(u.event), message)});
  }

  [[nodiscard]] const piece::Part* part(const job::PlaceUse& use, const shop::Laid& row) const {
    const auto piece = facts_.event(use.event).piece;
    if (!piece) return nullptr;
    const std::vector<piece::Part>& parts = facts_.job.order.pieces[*piece].piece.parts;
    return row.item < parts.size() ? &parts[row.item] : nullptr;
  }

  /// Everything at its own size, within the place, nothing on anything else.
  void lying(std::size_t u) {
    const job::PlaceUse& use = facts_.plan.places[u];
    const shop::DryingPlace& place = *held_[u]->place;
    for (std::size_t a = 0; a < use.laid.size(); ++a) {
      const shop::Laid& row = use.laid[a];
      const piece::Part* of = part(use, row);
      if (of == nullptr || row.count < 1) return report("place-size-differs", u, "what lies there is no part of the piece");
      if (!own_size(row, piece::footprint(of->shape), place.kind == shop::PlaceKind::hooks ? Metres(0) : facts_.job.shop.gap))
        return report("place-size-differs", u, of->name + " lies at another size");
      if (!within(row, place)) return report("place-too-small", u, of->name + " does not lie within it");
      for (std::size_t b = 0; b < a; ++b) {
        if (on_each_other(row, use.laid[b], place)) return report("place-too-small", u, of->name + " lies on something else");
      }
    }
  }

  /// As it is or turned.
  static bool own_size(const shop::Laid& row, const piece::Footprint& foot, Metres gap) {
    const auto as = [&](Metres along, Metres across) { return row.along + noise >= along + gap && row.across + noise >= across + gap; };
    return as(foot.length, foot.width) || as(foot.width, foot.length);
  }

  [[nodiscard]] bool within(const shop::Laid& row, const shop::DryingPlace& place) const {
    const Metres gap = facts_.job.shop.gap;  // none is needed at the place's end
    if (place.kind == shop::PlaceKind::hooks)
      return row.count == 1 && (!place.length || std::max(row.along, row.across) <= *place.length + noise);
    const bool along = !place.length || (row.x + noise >= Metres(0) && row.x + row.along <= *place.length + gap + noise);
    const bool across =
        place.width ? row.y + noise >= Metres(0) && row.y + row.across * row.count <= *place.width + gap + noise : row.count == 1;
    return along && across;
  }

  void pair(std::size_t u, std::size_t v) {
    const job::PlaceUse& a = facts_.plan.places[u];
    const job::PlaceUse& b = facts_.plan.places[v];
    if (!held_[u] || held_[u]->place != held_[v]->place || held_[u]->number != held_[v]->number) return;
    if (facts_.events[a.event].load == facts_.events[b.event].load && a.event != b.event) return;
    const bool one_after_other = a.until <= b.from + rounding || b.until <= a.from + rounding;
    const bool past = facts_.event(a.event).done && facts_.event(b.event).done;
    if (!one_after_other && !past && touch(a, b, *held_[u]->place)) report("place-twice", v, "it is held for " + facts_.name(a.event));
  }

  static bool touch(const job::PlaceUse& a, const job::PlaceUse& b, const shop::DryingPlace& place) {
    if (place.kind == shop::PlaceKind::hooks || a.laid.empty() || b.laid.empty()) return true;
    return std::any_of(a.laid.begin(), a.laid.end(), [&](const shop::Laid& x) {
      return std::any_of(b.laid.begin(), b.laid.end(), [&](const shop::Laid& y) { return on_each_other(x, y, place); });
    });
  }

  void coat(std::size_t i) {
    const LoadFacts& load = facts_.loads.at(facts_.events[i].load);
    const Instant needed = free_again(facts_, i, load);
    std::map<const piece::Part*, int> lies;
    bool any = false;
    for (std::size_t u = 0; u < held_.size(); ++u) {
      const job::PlaceUse& use = facts_.plan.places[u];
      if (use.event != i) continue;
      any = true;
      if (use.from > facts_.event(i).start + rounding) report("place-held-late", u, "the coat goes on before");
      if (use.until + rounding < needed) report("place-left-early", u, "it is needed until " + facts_.when(needed));
      for (const shop::Laid& row : use.laid) lies[part(use, row)] += row.count;
      if (held_[u] && !job::suits(load.support, held_[u]->place->kind))
        report("place-wrong-kind", u, fmt::format("not for parts on {}", piece::word(load.support)));
    }
    if (!any) return out_.push_back({"no-place", facts_.name(i) + ": nowhere to dry"});
    for (const auto& [of, count] : load.items) {
      if (lies[of] == count) continue;
      out_.push_back({"place-items-differ", fmt::format("{}: {} of {} of {} have a place", facts_.name(i), lies[of], count, of->name)});
    }
  }

  const PlanFacts& facts_;
  Breaches& out_;
  std::vector<std::optional<Held>> held_;
};

}  // namespace

void check_places(const PlanFacts& facts, Breaches& out) { PlaceJudge(facts, out).run(); }

}  // namespace coatday::checker
