#include "report/papers/finish_at.h"

#include <fmt/core.h>

#include <algorithm>

#include "finish/times.h"
#include "report/document/table.h"
#include "report/files/json_finish.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string in_words(const climate::Air& air, Units units) {
  return format_temperature(air.temperature, units) + ", " + format_humidity(air.humidity);
}

std::string span(Hours hours) { return unbroken(format_span(hours)); }

std::string goes_on_at(const finish::Limits& limits, Units units) {
  const Kelvins margin = std::max(limits.dew_point_margin, limits.blush_margin.value_or(Kelvins(0)));
  const std::string above = units == Units::us ? fmt::format("{:.0f} °F", margin.value() * 1.8) : fmt::format("{:.1f} K", margin.value());
  return "from " + format_temperature(limits.coldest, units) + " to " + format_temperature(limits.hottest, units) + ", up to " +
         format_humidity(limits.dampest) + ", " + above + " above the dew point";
}

/// Its reason where all the stages that are refused have the same.
void add_refusals(Lines& lines, const finish::StageTimes& at, const TextStyle& style) {
  std::vector<std::string> shown;
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto& reason = at.refused.values[i];
    if (!reason || std::find(shown.begin(), shown.end(), *reason) != shown.end()) continue;
    shown.push_back(*reason);
    std::vector<std::string> stages;
    for (std::size_t j = i; j < finish::stage_count; ++j) {
      if (at.refused.values[j] == reason) stages.push_back(unbroken(stage_text(static_cast<finish::Stage>(j))));
    }
    append(lines, hang("  ", "no time for " + listed(stages) + ": " + *reason, style));
  }
}

TextTable stages_table(const finish::StageTimes& at) {
  TextTable table;
  for (const char* title : {"stage, from application", "earliest", "expected", "safe"}) table.columns.push_back({Text(title, Mark::faint)});
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    if (!at.times.values[i] && !at.refused.values[i]) continue;
    const auto& time = at.times.values[i];
    const auto cell = [&](Hours finish::StageTime::*side) { return Text(time ? span((*time).*side) : "-"); };
    table.rows.push_back({stage_text(static_cast<finish::Stage>(i)), cell(&finish::StageTime::fast), cell(&finish::StageTime::expected),
                          cell(&finish::StageTime::slow)});
  }
  return table;
}

std::string range_of(const finish::Law& law) {
  const bool energy = law.kind == finish::Law::Kind::arrhenius;
  return unbroken(energy ? fmt::format("{:.3g} to {:.3g} kJ/mol", law.least, law.most)
                         : fmt::format("a wet-bulb share of {:.2g} to {:.2g}", law.least, law.most));
}

/// The stated ranges of the laws are a part of what is unsure; where they alone are more than the factor, that is said.
std::string law_ranges_text(const finish::Product& product, const finish::StageTimes& at, double factor) {
  std::vector<std::string> ranges;
  for (const auto& [clock, name] : {std::pair{finish::Clock::drying, "drying"}, std::pair{finish::Clock::cure, "cure"}}) {
    const auto law = product.law(clock);
    if (law && law->least < law->most) ranges.push_back(fmt::format("{} {}", name, range_of(*law)));
  }
  double most = 1;
  for (const auto& time : at.times.values) most = std::max(most, time ? time->by_laws : 1);
  if (ranges.empty()) return "";
  return fmt::format("The laws' own ranges ({}) make {:.2f} times at most of it in this air: {}.", listed(ranges), most,
                     most > factor ? "more than that, so the true times may lie beyond both sides" : "within that");
}

/// What the room makes of it, beside its air.
std::string room_text(const finish::Product& product) {
  const finish::RateFactors closed = finish::rate_factors(product.mechanism, true, 1),
                            moved = finish::rate_factors(product.mechanism, false, finish::most_movement);
  std::vector<std::string> words;
  if (closed.cure < 1) {
    words.push_back(fmt::format("in a closed one, or stacked, {} goes on at half its rate", closed.drying < 1 ? "it" : "its cure"));
  }
  if (moved.drying > 1) words.emplace_back("where the air moves more it dries up to twice as fast");
  return words.empty() ? "" : "In an open room where the air moves as usual; " + listed(words) + " (ratios only, judgement).";
}

std::string window_text(const finish::StageTimes& at) {
  const auto& open = at.times[finish::Stage::recoat];
  const auto& close = at.times[finish::Stage::recoat_close];
  if (!open || !close) return "";
  if (open->slow < close->fast) {
    return "recoat surely between " + format_span(open->slow) + " and " + format_span(close->fast) + "; after that scuff first";
  }
  return "no recoat window is sure in this air: it may close before the coat is surely dry to recoat, so scuff first";
}

}  // namespace

std::string finish_at_text(const finish::Product& product, const climate::Air& air, const TextStyle& style) {
  const finish::StageTimes at = finish::times_in(product, air, style.units);
  Lines lines = wrap(Text(product.name, Mark::strong) + " (" + product.id + ") at " + unbroken(in_words(air, style.units)), style.columns);
  append(lines, layout(stages_table(at), 2, style));
  const std::string window = window_text(at);
  if (!window.empty()) append(lines, hang("  ", window, style));
  add_refusals(lines, at, style);
  append(lines, hang("  ",
                     fmt::format("Each time may be {:.2g} times as long or as short (judgement); dry to handle and to sand are best judged "
                                 "by touch.",
                                 finish::uncertainty(air)),
                     style));
  for (const std::string& words : {law_ranges_text(product, at, finish::uncertainty(air)), room_text(product)}) {
    if (!words.empty()) append(lines, hang("  ", words, style));
  }
  return render(lines, style.colour);
}

std::optional<std::string> why_not_at(const finish::Product& product, const climate::Air& air, Units units) {
  const finish::StageTimes at = finish::times_in(product, air, units);
  if (at.may_not_go_on) {
    return fmt::format("'{}' may not go on at {}: {}; it goes on {}", product.id, in_words(air, units), *at.may_not_go_on,
                       goes_on_at(product.limits, units));
  }
  if (at.any()) return std::nullopt;
  for (const auto& reason : at.refused.values) {
    if (reason) return fmt::format("nothing is known of '{}' at {}: {}", product.id, in_words(air, units), *reason);
  }
  return fmt::format("the record of '{}' has no times", product.id);
}

std::string finishes_at_text(const finish::Catalogue& catalogue, const climate::Air& air, const TextStyle& style) {
  Lines lines = wrap("dry to recoat, from application, at " + unbroken(in_words(air, style.units)), style.columns);
  TextTable table;
  for (const char* title : {"finish", "earliest", "expected", "safe"}) table.columns.push_back({Text(title, Mark::faint)});
  Lines refused;
  for (const auto& [id, product] : catalogue.products) {
    const finish::StageTimes at = finish::times_in(product, air, style.units);
    const auto& time = at.times[finish::Stage::recoat];
    const auto& reason = at.may_not_go_on ? at.may_not_go_on : at.refused[finish::Stage::recoat];
    if (reason) append(refused, hang("  - ", id + ": " + *reason, style));
    if (time && !reason) table.rows.push_back({id, span(time->fast), span(time->expected), span(time->slow)});
  }
  if (!table.rows.empty()) append(lines, layout(table, 0, style));
  if (!refused.empty()) lines.push_back(Text("No time for"));
  append(lines, refused);
  return render(lines, style.colour);
}

std::string finish_at_json(const finish::Product& product, const climate::Air& air) {
  const finish::StageTimes at = finish::times_in(product, air);
  const auto side = [&](Hours finish::StageTime::*hours) {
    return stages_json(at.times, [hours](const std::optional<finish::StageTime>& t) { return t ? Json(((*t).*hours).count()) : Json(); });
  };
  const Json out{{"schema", "coatday-finish-at/2"},
                 {"finish", product.id},
                 {"name", product.name},
                 {"air", {{"temperature_c", air.temperature.value()}, {"relative_humidity", air.humidity.value()}}},
                 {"stages_h", side(&finish::StageTime::expected)},
                 {"stages_safe_h", side(&finish::StageTime::slow)},
                 {"stages_earliest_h", side(&finish::StageTime::fast)},
                 {"factor", finish::uncertainty(air)},
                 {"factor_by_law_ranges", stages_json(at.times, [](const auto& t) { return t ? Json(t->by_laws) : Json(); })},
                 {"refused", stages_json(at.refused, [](const std::optional<std::string>& r) { return r ? Json(*r) : Json(); })}};
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace coatday::report
