#include "input/shop_file.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <set>

#include "input/amounts.h"
#include "input/choices.h"
#include "input/defaults.h"
#include "input/names.h"
#include "input/spans.h"
#include "input/work.h"

namespace coatday::input {
namespace {

using shop::Shop;

std::string day_word(weekday day) {
  constexpr std::array<std::string_view, 7> words{"Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"};
  return std::string(words.at(day.c_encoding()));
}

void add_shifts(const Entry& entry, Shop& shop, Mistakes& mistakes) {
  const Location days_at = entry.value.source->location(entry.at);
  const auto days = parse_days(entry.key);
  if (!days) mistakes.add(days_at, days.error());
  if (entry.value.kind != Value::Kind::text) {
    mistakes.add(entry.value.where(), "expected hours such as 08:00-12:00, 13:00-17:00");
    return;
  }
  const auto hours = parse_hours_of_day(entry.value.text);
  if (!hours) mistakes.add(entry.value.where(), hours.error());
  if (!days || !hours) return;
  for (const weekday day : *days) {
    const bool overlaps = std::ranges::any_of(shop.week, [&](const shop::Shift& s) {
      return s.day == day && std::ranges::any_of(*hours, [&](const HoursOfDay& h) { return h.from < s.until && s.from < h.until; });
    });
    if (overlaps) mistakes.add(entry.value.where(), fmt::format("two shifts overlap on {}", day_word(day)));
    if (overlaps) continue;
    for (const HoursOfDay& h : *hours) shop.week.push_back({day, h.from, h.until});
  }
}

void read_hours(const Fields& fields, Shop& shop, Mistakes& mistakes) {
  const Value* hours = fields.need("hours");
  if (hours == nullptr) return;
  if (hours->entries.empty()) fields.mistake("hours", "expected days with their hours, such as 'mon-fri: 08:00-17:00'");
  for (const Entry& entry : hours->entries) add_shifts(entry, shop, mistakes);
}

// Ranges that lie within each other are walked once.
std::vector<LocalDay> days_of(std::vector<DateRange> ranges) {
  std::ranges::sort(ranges, {}, &DateRange::first);
  std::vector<LocalDay> days;
  for (const DateRange& range : ranges) {
    LocalDay day = days.empty() ? range.first : std::max(range.first, days.back() + date::days(1));
    for (; day <= range.last; day += date::days(1)) days.push_back(day);
  }
  return days;
}

void read_places(const Fields& fields, Shop& shop, Mistakes& mistakes) {
  fields.need("drying places");
  std::set<std::string> names;
  for (const Value& item : fields.list("drying places")) {
    const Fields place(item, "a drying place", {"name", "kind", "count", "length", "width"}, mistakes);
    shop::DryingPlace p;
    p.where = place.where();
    place.must("name", p.name, parse_name);
    const bool has_kind = place.must("kind", p.kind, parse_place_kind);
    place.take("count", p.count, parse_positive_count);
    place.take("length", p.length, parse_length);
    place.take("width", p.width, parse_length);
    if (!p.name.empty() && !names.insert(p.name).second)
      place.mistake("name", fmt::format("two drying places have the name {}", in_quotes(p.name)));
    if (has_kind && p.kind == shop::PlaceKind::hooks && p.width) place.mistake("width", "hooks have a length only");
    shop.places.push_back(std::move(p));
  }
}

void read_dust(const Fields& fields, Shop& shop) {
  shop.light_dust_settles = defaults::light_dust_settles;
  shop.heavy_dust_settles = defaults::heavy_dust_settles;
  const auto dust = fields.map("dust", "the dust", {"light settles", "heavy settles"});
  if (!dust) return;
  dust->take("light settles", shop.light_dust_settles, parse_duration);
  dust->take("heavy settles", shop.heavy_dust_settles, parse_duration);
}

void read_hot_work(const Fields& fields, Shop& shop) {
  shop.hot_work_clear = defaults::hot_work_clear;
  const auto hot = fields.map("hot work", "the hot work", {"clear"});
  if (hot) hot->take("clear", shop.hot_work_clear, parse_fire_watch);
}

void read_set_aside(const Fields& fields, Shop& shop) {
  const auto aside = fields.map("set aside", "what is set aside", {"parts"});
  if (aside) aside->must("parts", shop.set_aside, parse_set_aside);
}

void read_stock(const Fields& fields, Shop& shop, const finish::Catalogue& catalogue, Mistakes& mistakes) {
  for (const Value& item : fields.list("stock")) {
    const Fields stock(item, "an item of the stock", {"product", "volume", "opened", "good until"}, mistakes);
    shop::StockItem s;
    s.where = stock.where();
    if (stock.must("product", s.product, parse_name) && !catalogue.products.contains(s.product)) {
      stock.mistake("product", unknown("product", s.product, keys_of(catalogue.products)));
    }
    stock.must("volume", s.volume, parse_volume);
    stock.take("opened", s.opened, parse_date);
    stock.take("good until", s.good_until, parse_date);
    shop.stock.push_back(std::move(s));
  }
}

void read_all_work(const Fields& fields, Shop& shop, Mistakes& mistakes) {
  Ids ids;
  for (const Value& item : fields.list("work")) {
    const Fields work(item, "work", {"name", "takes", "start", "not before", "not after", "dust", "hot", "people", "may pause"}, mistakes);
    shop::Work w = read_work(work, shop);
    w.id = ids.make(w.name, "work");
    shop.work.push_back(std::move(w));
  }
}

void read_ventilation(const Fields& fields, Shop& shop) {
  const auto given = fields.map("ventilation", "the ventilation", {"airflow", "limit", "room", "air movement"});
  if (!given) return;
  given->take("airflow", shop.ventilation.airflow, parse_airflow);
  given->take("limit", shop.ventilation.limit, parse_vapour_limit);
  given->take("room", shop.ventilation.closed, parse_room);
  given->take("air movement", shop.ventilation.air_movement, parse_air_movement);
}

void read_customs(const Fields& fields, Shop& shop, Mistakes& mistakes) {
  shop.units = defaults::units;
  shop.people = defaults::people;
  shop.both_faces_within = defaults::both_faces_within;
  shop.handling = defaults::handling;
  shop.gap = defaults::gap;
  shop.sharing_gap = defaults::sharing_gap;
  fields.take("units", shop.units, parse_units);
  fields.take("currency", shop.currency, parse_name);
  fields.take("people", shop.people, parse_positive_count);
  fields.take("both faces within", shop.both_faces_within, parse_some_time);
  fields.take("turning", shop.turning, parse_minutes);
  fields.take("handling", shop.handling, parse_minutes);
  fields.take("gap between parts", shop.gap, parse_distance);
  fields.take("sharing gap", shop.sharing_gap, parse_duration);
  fields.take("finishes kept at", shop.finishes_kept_at, parse_air_temperature);
  fields.need("methods");
  for (const finish::Method method : each_text(fields.list("methods"), mistakes, parse_method)) shop.methods.emplace_back(word(method));
}

}  // namespace

const Keys& shop_keys() {
  static const Keys keys{"shop",
                         "time zone",
                         "units",
                         "currency",
                         "people",
                         "hours",
                         "closed",
                         "methods",
                         "drying places",
                         "air",
                         "dust",
                         "hot work",
                         "both faces within",
                         "turning",
                         "handling",
                         "set aside",
                         "gap between parts",
                         "sharing gap",
                         "stock",
                         "work",
                         "own finishes",
                         "ventilation",
                         "finishes kept at",
                         "rates"};
  return keys;
}

shop::Shop read_shop(const Fields& fields, const finish::Catalogue& catalogue, Mistakes& mistakes) {
  Shop shop;
  fields.must("shop", shop.name, parse_name);
  fields.must("time zone", shop.zone, Zone::find);
  read_customs(fields, shop, mistakes);
  read_hours(fields, shop, mistakes);
  shop.closed = days_of(each_text(fields.list("closed"), mistakes, parse_dates));
  read_places(fields, shop, mistakes);
  read_dust(fields, shop);
  read_hot_work(fields, shop);
  read_set_aside(fields, shop);
  read_ventilation(fields, shop);
  read_stock(fields, shop, catalogue, mistakes);
  read_all_work(fields, shop, mistakes);
  return shop;
}

shop::Rates read_rates(const Fields& fields, const std::string& currency) {
  shop::Rates rates;
  const auto given = fields.map("rates", "the rates", {"hour", "material markup"});
  if (!given) return rates;
  Money hour;
  double markup = 0;
  if (given->take("hour", hour, parse_price)) rates.hour = hour;
  if (given->take("material markup", markup, parse_share)) rates.material_markup = markup;
  if (rates.hour && currency.empty()) given->mistake("hour", "a rate needs the shop's 'currency'");
  return rates;
}

}  // namespace coatday::input
