#include "report/papers/finishes.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "finish/product_keys.h"
#include "finish/vapour.h"
#include "report/document/table.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr int label_width = 16;

/// A page of labelled facts.
class FactLines {
 public:
  FactLines(const Text& title, const TextStyle& style) : look_(style), lines_(wrap(title, style.columns)) {}
  void add(std::string_view label, const Text& body) {
    if (!body.empty()) append(lines_, labelled(label, label_width, body, look_));
  }
  Lines& lines() { return lines_; }

 private:
  const TextStyle& look_;
  Lines lines_;
};

std::string span_text(const std::optional<Hours>& span) { return span ? unbroken(format_span(*span)) : "-"; }
std::string air_of(const climate::Air& air, Units units) {
  return unbroken(format_temperature(air.temperature, units) + ", " + format_humidity(air.humidity));
}
std::string difference(Kelvins k, Units units) {
  return unbroken(units == Units::us ? fmt::format("{:.0f} °F", k.value() * 1.8) : fmt::format("{:.1f} K", k.value()));
}

// The stages down, the label's airs across.
Lines stage_table(const finish::Product& product, const TextStyle& style) {
  TextTable table{{{Text("stage, from application", Mark::faint)}}, {}};
  for (const finish::StageRow& row : product.rows) table.columns.push_back({Text(air_of(row.air, style.units), Mark::faint)});
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto stage = static_cast<finish::Stage>(i);
    std::vector<Text> cells{stage_text(stage)};
    for (const finish::StageRow& row : product.rows) cells.emplace_back(span_text(row.hours[stage]));
    table.rows.push_back(cells);
  }
  return layout(table, 2, style);
}

std::string law_text(const std::optional<finish::Law>& law, const TextStyle& style) {
  if (!law) return "none: it does not go on in the shop's air";
  std::string words(finish::word(law->kind));
  if (law->kind == finish::Law::Kind::arrhenius) words += fmt::format(", {:.3g} kJ/mol", law->activation.value());
  if (law->kind == finish::Law::Kind::vapour_deficit) words += fmt::format(", wet-bulb share {:.2g}", law->wet_bulb_share);
  if (law->no_credit_below > Celsius(-200))
    words += ", stands still below " + unbroken(format_temperature(law->no_credit_below, style.units));
  words += ", known from " + unbroken(format_temperature(law->coldest, style.units)) + " to " +
           unbroken(format_temperature(law->hottest, style.units));
  if (law->kind != finish::Law::Kind::arrhenius)
    words += " and " + unbroken(format_humidity(law->driest)) + " to " + unbroken(format_humidity(law->dampest));
  if (law->cure_starts_at_recoat) words += ", starts at recoat";
  return words + (law->source.empty() ? "" : " (" + std::string(law->source) + ")");
}

/// The stages that several rows of the record give, each with how far its law is from them.
void add_fits(FactLines& facts, const finish::Product& product, const TextStyle& style) {
  const char* label = "its rows";
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto stage = static_cast<finish::Stage>(i);
    const std::optional<finish::Fit>& fit = product.fits[stage];
    if (!fit) continue;
    const double off = 100 * (std::exp(fit->residual) - 1);
    facts.add(label, std::string(finish::word(stage)) + ": " + law_text(fit->law, style) +
                         fmt::format("; the label is off by {:.{}f} % at most", off, off < 9.95 ? 1 : 0));
    label = "";
  }
}

std::string limit_text(const finish::Limits& limits, Units units) {
  std::string words = format_temperature(limits.coldest, units) + " to " + format_temperature(limits.hottest, units) + ", up to " +
                      format_humidity(limits.dampest) + ", " + difference(limits.dew_point_margin, units) + " above the dew point";
  if (limits.hold.count() > 0)
    words += "; then " + format_span(limits.hold) + " no colder than " + format_temperature(limits.hold_above, units);
  return words;
}

std::string blush_text(const finish::Limits& limits, Units units) {
  std::vector<std::string> words;
  if (limits.blush_margin) words.push_back("refused under " + difference(*limits.blush_margin, units) + " above the dew point");
  if (limits.blush_warning) words.push_back("warned of under " + difference(*limits.blush_warning, units));
  return listed(words);
}

std::string method_text(const finish::Product& product, Units units) {
  std::vector<std::string> words;
  for (const auto& [method, rate] : product.work_rates) {
    words.push_back(std::string(finish::word(method)) + " " + area_text(SquareMetres(rate.value()), units) + "/h");
  }
  return listed(words);
}

std::string can_text(const finish::Product& product, Units units) {
  std::vector<std::string> words;
  for (const finish::Can& can : product.cans) words.push_back(volume_text(can.size, units));
  return listed(words);
}

std::string hazard_text(const finish::Product& product) {
  std::vector<std::string> words;
  for (const finish::Hazard hazard : product.hazards) words.emplace_back(finish::word(hazard));
  return listed(words);
}

std::string vapour_of(const finish::Product& product) {
  if (finish::solvent_content(product) <= GramsPerLitre(0)) return "";
  const finish::Solvent& solvent = finish::solvent_of(product);
  std::string words = fmt::format("calculated as {}{}: {:.0f} l of vapour a litre, lower explosive limit {:.2g} %", solvent.name,
                                  product.solvent ? "" : ", assumed", 1000 * solvent.vapour.value(), 100 * solvent.lower_limit);
  if (product.solvent_content) words += fmt::format("; {:.0f} g/l that burns", finish::solvent_content(product).value());
  return words + " (" + solvent.source + ")";
}

// A plain value in words; empty where the product has none.
std::string value_text(const std::string& text, Units) { return text; }
std::string value_text(bool holds, Units) { return holds ? "yes" : ""; }
std::string value_text(double number, Units) { return fmt::format("{:.3g}", number); }
std::string value_text(Hours span, Units) { return unbroken(format_span(span)); }
std::string value_text(GramsPerLitre content, Units) { return fmt::format("{:.0f} g/l", content.value()); }
std::string value_text(SquareMetresPerLitre rate, Units units) { return unbroken(format_spreading_rate(rate, units)); }
std::string value_text(Micrometres film, Units units) { return unbroken(format_film(film, units)); }
std::string value_text(Celsius temperature, Units units) { return unbroken(format_temperature(temperature, units)); }
std::string value_text(RelativeHumidity humidity, Units) { return unbroken(format_humidity(humidity)); }
std::string value_text(Kelvins margin, Units units) { return difference(margin, units); }
template <class Enum, class = std::enable_if_t<std::is_enum_v<Enum>>>
std::string value_text(Enum choice, Units) {
  return std::string(finish::word(choice));
}
template <class T>
std::string value_text(const std::optional<T>& value, Units units) {
  return value ? value_text(*value, units) : "";
}

void add_value(FactLines& facts, const finish::Product& product, const finish::ProductKey& row, const TextStyle& style) {
  finish::with_member(product, row.field, [&](const auto& value) { facts.add(row.line, value_text(value, style.units)); });
}

/// These stand among lines that are worked out; all other lines of the table of keys follow in its order.
constexpr std::array<std::string_view, 3> placed{"stand", "pot life", "voc"};

void add_placed(FactLines& facts, const finish::Product& product, std::string_view key, const TextStyle& style) {
  const auto keys = finish::product_keys();
  add_value(facts, product, *std::find_if(keys.begin(), keys.end(), [key](const auto& row) { return row.key == key; }), style);
}

void add_others(FactLines& facts, const finish::Product& product, const TextStyle& style) {
  for (const auto keys : {finish::product_keys(), finish::limit_keys(), finish::coverage_keys()}) {
    for (const finish::ProductKey& row : keys) {
      const bool has_place = std::find(placed.begin(), placed.end(), row.key) != placed.end();
      if (!row.line.empty() && !has_place) add_value(facts, product, row, style);
    }
  }
}

void add_sources(FactLines& facts, const finish::Product& product) {
  for (const auto& [key, source] : product.sources)
    facts.add(&key == &product.sources.begin()->first ? "sources" : "", key + ": " + source);
}

}  // namespace

std::string finishes_text(const finish::Catalogue& catalogue, const TextStyle& style) {
  TextTable table;
  for (const char* title : {"finish", "name", "role", "recoat", "full cure"}) table.columns.push_back({Text(title, Mark::faint)});
  for (const auto& [id, product] : catalogue.products) {
    const finish::StageHours& hours = product.reference().hours;
    table.rows.push_back({id, product.name, finish::word(product.role), span_text(hours[finish::Stage::recoat]),
                          span_text(hours[finish::Stage::full_cure])});
  }
  return render(layout(table, 0, style), style.colour);
}

std::string finish_text(const finish::Product& product, const TextStyle& style) {
  FactLines facts(Text(product.name, Mark::strong) + " (" + product.id + ")", style);
  facts.add("kind", fmt::format("{}; base: {}; dries by: {}", finish::word(product.role), finish::word(product.base),
                                finish::word(product.mechanism)));
  facts.add("film", product.film ? "adds to the film that resists moisture" : "adds no film");
  append(facts.lines(), stage_table(product, style));
  facts.add("drying clock", law_text(product.law(finish::Clock::drying), style));
  facts.add("cure clock", law_text(product.law(finish::Clock::cure), style));
  add_fits(facts, product, style);
  facts.add("goes on at", limit_text(product.limits, style.units));
  facts.add("blush", blush_text(product.limits, style.units));
  facts.add("covers", unbroken(format_spreading_rate(product.spreading_rate(), style.units)) +
                          fmt::format("; bare wood takes {:.3g} times, its end grain {:.3g} times as much", product.first_coat_factor,
                                      product.first_coat_factor * product.end_grain_factor));
  if (product.film_of_times) facts.add("times are for", unbroken(format_film(*product.film_of_times, style.units)) + " wet");
  facts.add("put on with", method_text(product, style.units));
  add_placed(facts, product, "stand", style);
  add_placed(facts, product, "pot life", style);
  if (product.two_part) {
    facts.add("mixed",
              fmt::format("{:.3g} base to {:.3g} hardener by volume", product.two_part->base_parts, product.two_part->hardener_parts));
  }
  facts.add("sold in", can_text(product, style.units));
  add_placed(facts, product, "voc", style);
  facts.add("vapour", vapour_of(product));
  facts.add("hazards", hazard_text(product));
  if (product.food_contact_when_cured) facts.add("food", "may touch food when cured");
  add_others(facts, product, style);
  add_sources(facts, product);
  return render(facts.lines(), style.colour);
}

}  // namespace coatday::report
