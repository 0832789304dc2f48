#include "report/words.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace coatday::report {
namespace {

std::string range(double low, double high, const std::string& unit) {
  const long from = std::lround(low);
  const long to = std::lround(high);
  if (from == to) return fmt::format("{} {}", from, unit);
  return fmt::format("{}{}{} {}", from, from < 0 ? " to " : "-", to, unit);
}

double degrees(Celsius t, Units units) { return units == Units::us ? t.value() * 1.8 + 32 : t.value(); }

}  // namespace

std::string unbroken(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == ' ') {
      out += "\u00a0";
    } else {
      out += c;
    }
  }
  return out;
}

LocalDay local_day(Instant t, const Zone& zone) { return day_of(zone.to_local(t)); }

std::string date_text(LocalDay day) { return unbroken(short_date(day)); }
std::string instant_text(Instant t, const Zone& zone) { return unbroken(day_and_time(zone.to_local(t))); }
std::string instant_text(Instant t, const Zone& zone, LocalDay on) {
  return local_day(t, zone) == on ? clock_time(zone.to_local(t)) : instant_text(t, zone);
}

std::string volume_text(Litres v, Units units) { return unbroken(format_volume(v, units)); }
std::string area_text(SquareMetres a, Units units) { return unbroken(format_area(a, units)); }

std::string money_text(std::optional<Money> money, const std::string& currency) {
  if (!money || currency.empty()) return "";
  return unbroken(fmt::format("{:.2f} {}", money->value(), currency));
}

std::string slack_text(Hours slack) {
  if (std::abs(slack.count()) * 60 < 1) return "just in time";
  if (slack.count() < 0) return unbroken(format_span(-slack) + " late");
  if (slack.count() < 24) return unbroken(format_span(slack) + " to spare");
  const long days = static_cast<long>(slack.count() / 24);
  return unbroken(days == 1 ? "a day to spare" : fmt::format("{} days to spare", days));
}

std::string set_text(const std::vector<std::string>& set) {
  constexpr std::size_t most_keys = 4;  // more are nothing to type in by hand
  if (set.size() > most_keys) return fmt::format("; {} keys, which plan --format json lists", set.size());
  std::string text;
  for (const std::string& one : set) text += " " + unbroken("--set \"" + one + "\"");
  return text.empty() ? "" : "; what-if" + text;
}

std::string listed(const std::vector<std::string>& items) {
  std::string out;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i > 0) out += i + 1 == items.size() ? " and " : ", ";
    out += items[i];
  }
  return out;
}

std::string counted(std::size_t n, const std::string& one, const std::string& many) { return fmt::format("{} {}", n, n == 1 ? one : many); }

std::optional<std::string> air_text(const climate::AirSeries& air, Instant from, Instant until, Units units) {
  std::optional<climate::Air> low, high;
  for (const climate::AirRow& row : air.rows()) {
    if (row.from + climate::AirSeries::step <= from || row.from >= until) continue;
    if (!low) low = high = row.air;
    low = {std::min(low->temperature, row.air.temperature), std::min(low->humidity, row.air.humidity)};
    high = {std::max(high->temperature, row.air.temperature), std::max(high->humidity, row.air.humidity)};
  }
  if (!low) return std::nullopt;
  const std::string warmth = range(degrees(low->temperature, units), degrees(high->temperature, units), units == Units::us ? "°F" : "°C");
  return unbroken(warmth) + ", " + unbroken(range(low->humidity.value() * 100, high->humidity.value() * 100, "% RH"));
}

std::optional<std::string> surface_text(const job::Plan& plan, const job::Event& coat, Units units) {
  constexpr Kelvins noticeable{1};
  std::optional<Celsius> low, high;
  bool differs = false;
  for (const Hours body : coat.bodies) {
    const auto surface = plan.surfaces.find(body);
    if (surface == plan.surfaces.end()) continue;
    for (const climate::AirRow& row : surface->second.air().rows()) {
      if (row.from + climate::AirSeries::step <= coat.start || row.from >= coat.end) continue;
      const Celsius here = row.air.temperature, room = plan.air.at(row.from).air.temperature;
      low = std::min(low.value_or(here), here);
      high = std::max(high.value_or(here), here);
      differs = differs || here - room >= noticeable || room - here >= noticeable;
    }
  }
  if (!differs) return std::nullopt;
  const std::string of = plan.faces.at(coat.faces.front()).wood ? "wood at " : "steel at ";
  return of + unbroken(range(degrees(*low, units), degrees(*high, units), units == Units::us ? "°F" : "°C"));
}

std::string pace_text(const finish::RateFactors& factors) {
  std::vector<std::string> clocks;
  if (factors.drying != 1) clocks.push_back(fmt::format("drying at {:.3g}", factors.drying));
  if (factors.cure != 1) clocks.push_back(fmt::format("cure at {:.3g}", factors.cure));
  return clocks.empty() ? "" : listed(clocks) + " times the rate of an open room where the air moves as usual: a ratio only, judgement";
}

std::string stage_text(finish::Stage stage) {
  switch (stage) {
    case finish::Stage::tack_free:
      return "tack-free";
    case finish::Stage::handle:
      return "dry to handle";
    case finish::Stage::sand:
      return "dry to sand";
    case finish::Stage::recoat:
      return "dry to recoat";
    case finish::Stage::recoat_close:
      return "end of the recoat window";
    case finish::Stage::pack:
      return "dry to pack";
    case finish::Stage::light_use:
      return "light use";
    case finish::Stage::full_cure:
      return "full cure";
  }
  return "";
}

std::string product_name(const job::Plan& plan, const std::string& id) {
  const auto found = plan.products.find(id);
  return found == plan.products.end() || found->second.name.empty() ? id : found->second.name;
}

std::string stretch_text(const job::Plan& plan, const job::PlaceUse& use) {
  const auto beside = [&](const job::PlaceUse& other) {
    return other.place == use.place && other.event != use.event && other.from < use.until && use.from < other.until;
  };
  if (use.laid.empty() || std::none_of(plan.places.begin(), plan.places.end(), beside)) return "";
  const auto begin = [&use](const shop::Laid& row) { return use.across ? row.y : row.x; };
  const auto end = [&](const shop::Laid& row) { return use.across ? row.y + row.across * row.count : row.x + row.along; };
  Metres from = begin(use.laid.front()), until = from;
  for (const shop::Laid& row : use.laid) {
    from = std::min(from, begin(row));
    until = std::max(until, end(row) - plan.shop.gap);
  }
  return fmt::format("{}from {} to {}", use.across ? "across its width " : "", format_length(from, plan.shop.units),
                     format_length(until, plan.shop.units));
}

const job::Event* find_event(const job::Plan& plan, const std::string& id) {
  const auto found = std::find_if(plan.events.begin(), plan.events.end(), [&id](const job::Event& e) { return e.id == id; });
  return found == plan.events.end() ? nullptr : &*found;
}

}  // namespace coatday::report
