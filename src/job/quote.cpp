#include "job/quote.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace coatday::job {
namespace {

/// Not the shop's own work.
bool of_order(const Event& event) { return event.piece || !event.id.starts_with("shop/"); }

/// In the order of the list.
constexpr std::array kinds{"sanding and preparing", "coats", "scuffing between coats", "turning", "heat cure", "other work"};

std::size_t kind_of(const Event& event) {
  if (is_coat(event.kind)) return 1;
  switch (event.kind) {
    case EventKind::prepare:
      return 0;
    case EventKind::scuff:
      return 2;
    case EventKind::turn:
      return 3;
    case EventKind::bake:
      return 4;
    default:
      return 5;
  }
}

/// One person's; what pauses when the shop closes is worked on only while it is open.
Hours hours_of(const Plan& plan, const Event& event) {
  Hours worked = event.end - event.start;
  if (event.may_pause) {
    worked = Hours(0);
    for (const shop::WorkingTime& shift : plan.working) {
      const Instant from = std::max(shift.begin, event.start), until = std::min(shift.end, event.end);
      if (until > from) worked += until - from;
    }
  }
  return worked * event.people;
}

std::vector<Hands> hands_of(const Plan& plan) {
  std::vector<Hands> all;
  for (const char* kind : kinds) all.push_back({kind, Hours(0)});
  for (const Event& event : plan.events) {
    if (of_order(event)) all[kind_of(event)].hours += hours_of(plan, event);
  }
  std::erase_if(all, [](const Hands& hands) { return hands.hours <= Hours(0); });
  return all;
}

std::optional<Money> shelf_price(const Plan& plan, const Purchase& row, Litres taken) {
  if (taken <= Litres(0)) return Money(0);
  const auto product = plan.products.find(row.product);
  if (product == plan.products.end()) return std::nullopt;
  const finish::Can* smallest = nullptr;
  for (const finish::Can& can : product->second.cans) {
    if (can.price && (smallest == nullptr || can.size < smallest->size)) smallest = &can;
  }
  if (smallest == nullptr) return std::nullopt;
  return *smallest->price * (taken / smallest->size);
}

/// To the hundredth, so that the shown sums add up.
Money rounded(Money m) { return Money(std::round(m.value() * 100) / 100); }

Material material_of(const Plan& plan, const Purchase& row) {
  Material material{row.product, row.part, row.buy, row.spare, std::min(row.on_hand, row.need), Money(0)};
  for (const Bought& can : row.buy) {
    if (material.cost && can.price) *material.cost += *can.price * can.count;
    if (!can.price) material.cost.reset();
  }
  const auto shelf = shelf_price(plan, row, material.from_shelf);
  if (material.cost && shelf) *material.cost += *shelf;
  if (!shelf) material.cost.reset();
  if (material.cost) material.cost = rounded(*material.cost);
  return material;
}

/// When all pieces have reached it; none when one never does.
std::optional<Instant> last_of(const Plan& plan, HandOver finish::PerEstimate<HandOver>::*estimate) {
  std::optional<Instant> last;
  for (const PieceResult& piece : plan.pieces) {
    const auto& when = (piece.ready.*estimate).deliver;
    if (!when) return std::nullopt;
    last = std::max(last.value_or(*when), *when);
  }
  return last;
}

QuoteDays days_of(const Plan& plan, Instant begins, Instant promise) {
  const Zone& zone = plan.shop.zone;
  const auto day = [&zone](Instant t) { return day_of(zone.to_local(t)); };
  std::set<LocalDay> with_work, open;
  for (const Event& event : plan.events) {
    if (of_order(event)) with_work.insert(day(event.start));
  }
  for (const shop::WorkingTime& shift : plan.working) open.insert(day(shift.begin));
  QuoteDays days;
  for (LocalDay d = day(begins); d <= day(promise); d += date::days(1)) {
    ++(with_work.contains(d) ? days.hands_on : open.contains(d) ? days.waiting : days.closed);
  }
  return days;
}

void add_money(Quote& quote, const shop::Rates& rates) {
  for (const Material& material : quote.materials) {
    if (material.cost) quote.materials_cost += *material.cost;
    if (!material.cost) ++quote.unpriced;
  }
  if (rates.hour) quote.work = rounded(*rates.hour * quote.hours.count());
  if (rates.material_markup) quote.markup = rounded(quote.materials_cost * *rates.material_markup);
  if (quote.work && quote.unpriced == 0) quote.price = *quote.work + quote.materials_cost + quote.markup.value_or(Money(0));
}

}  // namespace

Quote quote(const Plan& plan, const shop::Rates& rates) {
  Quote quote;
  quote.hands = hands_of(plan);
  for (const Hands& hands : quote.hands) quote.hours += hands.hours;
  for (const Purchase& row : plan.purchase) quote.materials.push_back(material_of(plan, row));
  quote.sundries = plan.sundries.size();
  add_money(quote, rates);
  for (const Event& event : plan.events) {
    if (!of_order(event)) continue;
    quote.begins = std::min(quote.begins.value_or(event.start), event.start);
    if (is_coat(event.kind)) quote.last_coat = std::max(quote.last_coat.value_or(event.start), event.start);
  }
  quote.expected = last_of(plan, &finish::PerEstimate<HandOver>::expected);
  quote.promise = last_of(plan, &finish::PerEstimate<HandOver>::slow);
  if (quote.begins && quote.promise) quote.days = days_of(plan, *quote.begins, *quote.promise);
  return quote;
}

}  // namespace coatday::job
