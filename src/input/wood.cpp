#include "input/wood.h"

#include <fmt/core.h>

#include <algorithm>
#include <vector>

#include "input/amounts.h"
#include "input/mistakes.h"
#include "quantity/nearest.h"
#include "wood/species.h"

namespace coatday::input {
namespace {

/// "Red oak", "red_oak" and "red-oak" are one.
std::string in_kebab_case(std::string_view typed) {
  std::string id(trim(typed));
  for (char& c : id) c = c == ' ' || c == '_' ? '-' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return id;
}

constexpr std::array<std::string_view, 4> sheets{"plywood", "mdf", "particleboard", "chipboard"};

constexpr MoistureContent driest_reading{0.03}, dampest_reading{0.30};  // meters show no less, and wetter wood is not for furniture

}  // namespace

Parsed<std::string> parse_species(std::string_view typed) {
  const std::string id = in_kebab_case(typed);
  const wood::Species* found = wood::find_species(id);
  if (found != nullptr) return std::string(found->id);
  if (std::ranges::find(sheets, id) != sheets.end()) {
    return tl::make_unexpected(
        fmt::format("{} is no species; give the species of its faces, and what is under them as the part's 'core'", in_quotes(typed)));
  }
  return tl::make_unexpected(unknown("species", typed, wood::species_names()));
}

Parsed<wood::RingAngle> parse_ring_angle(std::string_view typed) {
  const std::string_view text = trim(typed);
  if (text == "flat") return wood::flat_cut;
  if (text == "quarter") return wood::quarter_cut;
  for (const std::string_view unit : {"deg", "°"}) {
    if (!text.ends_with(unit)) continue;
    const auto degrees = parse_number(trim(text.substr(0, text.size() - unit.size())));
    if (degrees && *degrees >= 0 && *degrees <= 90) return wood::RingAngle(*degrees);
  }
  const std::vector<std::string> words{"flat", "quarter"};
  const auto meant = nearest_word(text, words);
  return tl::make_unexpected("expected flat, quarter or an angle between rings and face from 0 to 90 deg, such as 35 deg, found '" +
                             std::string(typed) + "'" + (meant ? "; did you mean '" + *meant + "'?" : ""));
}

Parsed<MoistureContent> parse_moisture(std::string_view typed) {
  const auto share = trim(typed).ends_with('%') ? parse_share(typed) : Parsed<double>(-1);
  if (share && *share >= driest_reading.value() && *share <= dampest_reading.value()) return MoistureContent(*share);
  return wrong_value(typed, "a moisture content from 3 to 30 %, such as 8.5 %");
}

Parsed<MoistureContent> parse_moisture_band(std::string_view typed) {
  const auto share = trim(typed).ends_with('%') ? parse_share(typed) : Parsed<double>(-1);
  if (share && *share >= 0.005 && *share <= 0.06) return MoistureContent(*share);
  return wrong_value(typed, "so many percent of moisture either way, from 0.5 to 6 %, such as 2 %");
}

Parsed<std::vector<unsigned>> parse_months(std::string_view typed) {
  static const std::vector<std::string> names{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};
  const auto number = [&](std::string_view name) -> Parsed<unsigned> {
    const std::string month = in_kebab_case(name);
    const auto found = std::ranges::find(names, month);
    if (found != names.end()) return static_cast<unsigned>(found - names.begin()) + 1;
    return tl::make_unexpected(unknown("month", name, names));
  };
  const auto ends = split(typed, "-");
  if (ends.size() > 2) return wrong_value(typed, "a month or a range of months, such as nov-apr");
  const auto first = number(ends.front()), last = number(ends.back());
  if (!first) return tl::make_unexpected(first.error());
  if (!last) return tl::make_unexpected(last.error());
  std::vector<unsigned> months{*first};
  while (months.back() != *last) months.push_back(months.back() % 12 + 1);
  return months;
}

}  // namespace coatday::input
