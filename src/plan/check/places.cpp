// A load holds a place to dry from each coat until it may be stacked or is taken away.

#include <algorithm>
#include <charconv>

#include <fmt/core.h>

#include "plan/check/facts.h"

namespace coatday::plan::checking {

namespace {

using finish::Stage;

/// Places `first` to `last` of one kind, from 1: "rack 3", "rail 1-4", "points" where there is one.
struct Held {
  const shop::DryingPlace* place = nullptr;
  int first = 1;
  int last = 1;
};

std::optional<int> whole_number(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

std::optional<Held> read_as(const shop::DryingPlace& place, std::string_view text) {
  if (!text.starts_with(place.name)) return std::nullopt;
  text.remove_prefix(place.name.size());
  if (text.empty()) return place.count == 1 ? std::optional(Held{&place, 1, 1}) : std::nullopt;
  if (text.front() != ' ') return std::nullopt;
  text.remove_prefix(1);
  const auto dash = text.find('-');
  const auto first = whole_number(text.substr(0, dash));
  const auto last = dash == std::string_view::npos ? first : whole_number(text.substr(dash + 1));
  if (!first || !last || *first < 1 || *last < *first || *last > place.count) return std::nullopt;
  return Held{&place, *first, *last};
}

std::optional<Held> read_place(const shop::Shop& shop, std::string_view text) {
  for (const shop::DryingPlace& place : shop.places) {
    if (const auto held = read_as(place, text)) return held;
  }
  return std::nullopt;
}

bool suits(piece::Support support, shop::PlaceKind kind) {
  switch (support) {
    case piece::Support::points:
      return kind == shop::PlaceKind::points;
    case piece::Support::hooks:
      return kind == shop::PlaceKind::hooks;
    case piece::Support::laid:
      return kind == shop::PlaceKind::rack || kind == shop::PlaceKind::floor;
  }
  return false;
}

/// When the load is taken away or may be stacked.
Instant free_again(const Facts& facts, std::size_t coat, const LoadFacts& load) {
  const bool cures = facts.events[coat].product->law(finish::Clock::cure).has_value();
  Instant until =
      cures ? facts.reached(coat, {Stage::pack, Stage::handle, Stage::tack_free}) : facts.reached(coat, {Stage::handle, Stage::tack_free});
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

class PlaceJudge {
 public:
  PlaceJudge(const Facts& facts, Breaches& out) : facts_(facts), out_(out) {
    for (const PlaceUse& use : facts.plan.places) held_.push_back(read_place(facts.job.shop, use.place));
  }

  void run() {
    for (std::size_t u = 0; u < held_.size(); ++u) {
      if (!held_[u]) tell("place-unknown", u, "the shop has no such place");
      for (std::size_t v = 0; v < u; ++v) pair(v, u);
    }
    for (std::size_t i = 0; i < facts_.events.size(); ++i) {
      if (facts_.coat(i) && !facts_.event(i).done) coat(i);
    }
  }

 private:
  void tell(std::string code, std::size_t use, const std::string& message) {
    const PlaceUse& u = facts_.plan.places[use];
    out_.push_back({std::move(code), fmt::format("{}, {} to {}, for {}: {}", u.place, facts_.when(u.from), facts_.when(u.until),
                                                 facts_.name(u.event), message)});
  }

  void pair(std::size_t u, std::size_t v) {
    const PlaceUse& a = facts_.plan.places[u];
    const PlaceUse& b = facts_.plan.places[v];
    if (!held_[u] || !held_[v] || held_[u]->place != held_[v]->place) return;
    if (held_[u]->last < held_[v]->first || held_[v]->last < held_[u]->first) return;
    if (facts_.events[a.event].load == facts_.events[b.event].load) return;
    const bool apart = a.until <= b.from + rounding || b.until <= a.from + rounding;
    const bool past = facts_.event(a.event).done && facts_.event(b.event).done;
    if (!apart && !past) tell("place-twice", v, "it is held for " + facts_.name(a.event));
  }

  void coat(std::size_t i) {
    const LoadFacts& load = facts_.loads.at(facts_.events[i].load);
    const Instant needed = free_again(facts_, i, load);
    int places = 0;
    std::map<const piece::Part*, int> side_by_side;
    bool any = false;
    for (std::size_t u = 0; u < held_.size(); ++u) {
      const PlaceUse& use = facts_.plan.places[u];
      if (use.event != i) continue;
      any = true;
      if (use.from > facts_.event(i).start + rounding) tell("place-held-late", u, "the coat goes on before");
      if (use.until + rounding < needed) tell("place-left-early", u, "it is needed until " + facts_.when(needed));
      if (!held_[u]) continue;
      if (!suits(load.support, held_[u]->place->kind))
        tell("place-wrong-kind", u, fmt::format("not for parts on {}", piece::word(load.support)));
      places += held_[u]->last - held_[u]->first + 1;
      for (const auto& [part, count] : load.items) fit(*held_[u]->place, *part, side_by_side);
    }
    if (!any) out_.push_back({"no-place", facts_.name(i) + ": nowhere to dry"});
    if (places > 0) room(i, load, places, side_by_side);
  }

  /// The least that any of its places takes.
  static void fit(const shop::DryingPlace& place, const piece::Part& part, std::map<const piece::Part*, int>& side_by_side) {
    const piece::Footprint foot = piece::footprint(part.shape);
    const int here = shop::fits(place, foot.length, foot.width);
    const auto [at, fresh] = side_by_side.try_emplace(&part, here);
    if (!fresh) at->second = std::min(at->second, here);
  }

  void room(std::size_t i, const LoadFacts& load, int places, const std::map<const piece::Part*, int>& side_by_side) {
    double needed = 0;
    for (const auto& [part, count] : load.items) {
      const int fits = side_by_side.at(part);
      if (fits == 0) return out_.push_back({"place-too-small", fmt::format("{}: {} does not fit its place", facts_.name(i), part->name)});
      needed += static_cast<double>(count) / fits;
    }
    constexpr double noise = 1e-9;
    if (needed > places + noise)
      out_.push_back({"place-too-small", fmt::format("{}: its load needs {:.1f} places and has {}", facts_.name(i), needed, places)});
  }

  const Facts& facts_;
  Breaches& out_;
  std::vector<std::optional<Held>> held_;
};

}  // namespace

void check_places(const Facts& facts, Breaches& out) { PlaceJudge(facts, out).run(); }

}  // namespace coatday::plan::checking
