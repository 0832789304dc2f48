// The shop's air, day by day, at the width of a terminal.
#include "report/papers/air.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/document/table.h"
#include "report/words.h"

namespace coatday::report {
namespace {

using job::AirDay;
using job::AirForecast;
using job::FinishHours;

constexpr std::size_t half_hours = 48;

std::string degrees(const job::Range& range, Units units) {
  const std::string low = format_temperature(Celsius(range.low), units), high = format_temperature(Celsius(range.high), units);
  if (low == high) return unbroken(low);
  return unbroken(low.substr(0, low.find(' ')) + " to " + high);
}

std::string percent(const job::Range& range) {
  const std::string low = fmt::format("{:.0f}", 100 * range.low), high = fmt::format("{:.0f}", 100 * range.high);
  return unbroken(low == high ? low + " %" : low + " to " + high + " %");
}

std::string damp(const AirDay& day, Units units) {
  if (day.saturated <= Hours(0)) return "";
  std::string words = unbroken(format_span(day.saturated));
  if (day.condensed && *day.condensed > Litres(0)) words += ", " + unbroken(volume_text(*day.condensed, units));
  return words;
}

Lines days_table(const AirForecast& all, const TextStyle& style) {
  bool any_damp = false;
  for (const AirDay& day : all.days) any_damp = any_damp || day.saturated > Hours(0);
  const auto title = [](const char* words) { return TextColumn{Text(words, Mark::faint), Align::left}; };
  TextTable table{{title(""), title("open"), title("closed"), title("RH"), title("dew point")}, {}};
  if (any_damp) table.columns.push_back(title("at 100 % RH"));
  for (const AirDay& day : all.days) {
    std::vector<Text> row{date_text(day.day), day.open ? degrees(*day.open, style.units) : "-",
                          day.closed ? degrees(*day.closed, style.units) : "-", percent(day.humidity), degrees(day.dew_point, style.units)};
    if (any_damp) row.emplace_back(damp(day, style.units), Mark::caution);
    table.rows.push_back(std::move(row));
  }
  return layout(table, 2, style);
}

/// "logger until Wed 4 Nov 14:00; then weather file".
std::string rests_on(const job::Job& job, const AirForecast& all) {
  const auto rows = all.air.rows().subspan(all.days.front().first, all.days.back().last - all.days.front().first);
  std::string words;
  constexpr int most = 6;
  int spans = 0;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (r > 0 && rows[r].origin == rows[r - 1].origin) continue;
    if (r > 0) words += " until " + instant_text(rows[r].from, job.shop.zone) + "; then ";
    if (spans++ == most) return words + "others (every half hour is in the other forms)";
    words += climate::word(rows[r].origin);
  }
  return words;
}

struct Sign {
  char sign = ' ';
  bool known = false, may = true, working = false;
};

/// The signs of a day, one for each half hour of the wall clock. Where summer time begins, some stay blank; where it ends, two hours share
/// theirs and a coat may go on in both or not at all.
Text strip(const job::Job& job, const AirForecast& all, const FinishHours& finish, const AirDay& day) {
  std::vector<Sign> signs(half_hours);
  for (std::size_t r = day.first; r < day.last; ++r) {
    const auto clock = job.shop.zone.to_local(all.air.rows()[r].from) - day.day;
    Sign& sign = signs.at(static_cast<std::size_t>(clock / climate::AirSeries::step));
    sign.known = true;
    sign.may = sign.may && finish.may[r];
    sign.working = sign.working || all.working[r];
  }
  Text text;
  for (const Sign& s : signs) {
    const char sign = !s.known ? ' ' : s.may ? (s.working ? '#' : '-') : s.working ? 'x' : '.';
    const Mark mark = !s.working ? Mark::faint : s.may ? Mark::good : Mark::bad;
    text += Text(std::string(1, sign), mark);
  }
  return text;
}

std::string at_work(const AirForecast& all, const FinishHours& finish, const AirDay& day) {
  Hours may{0}, open{0};
  for (std::size_t r = day.first; r < day.last; ++r) {
    if (!all.working[r]) continue;
    open += climate::AirSeries::step;
    if (finish.may[r]) may += climate::AirSeries::step;
  }
  if (open <= Hours(0)) return "closed";
  if (may <= Hours(0)) return "none";
  return may == open ? "all " + format_span(open) : format_span(may);
}

Lines finish_block(const job::Job& job, const finish::Catalogue& catalogue, const AirForecast& all, const FinishHours& finish,
                   const TextStyle& style) {
  const finish::Product* product = catalogue.product(finish.use.product);
  Lines lines = hang(Text("  " + finish.use.product, Mark::strong) + "  ", product == nullptr ? "" : product->name, style);
  lines.push_back(spaces(14) + Text("0     3     6     9     12    15    18    21    24  at work", Mark::faint));
  for (const AirDay& day : all.days) {
    lines.push_back(Text("  ") + padded(date_text(day.day), 12) + strip(job, all, finish, day) +
                    Text("    " + unbroken(at_work(all, finish, day))));
  }
  if (!finish.limit_exceeded.empty())
    append(lines, hang("  ", "Not on " + instant_text(finish.hindered, job.shop.zone) + ": " + finish.limit_exceeded + ".", style));
  return lines;
}

std::string judged_at(const AirForecast& all) {
  const bool parts = std::any_of(all.finishes.begin(), all.finishes.end(),
                                 [](const FinishHours& f) { return !f.use.wood.empty() || !f.use.steel.empty(); });
  if (parts) return "Judged in the room, and at the can and at every part that takes the finish, which lag behind the room's air.";
  return "Judged in the room, and at the can, which lags behind the room's air; so do wood and steel: name an order, and they count.";
}

}  // namespace

std::string air_text(const job::Job& job, const finish::Catalogue& catalogue, const AirForecast& all, const TextStyle& style) {
  Lines page = wrap(Text(job.shop.name, Mark::strong) + "  air from " + unbroken(long_date(all.days.front().day)), style.columns);
  append(page, hang(Text("  air       ", Mark::faint), job.shop.air_description, style));
  append(page, hang(Text("  rests on  ", Mark::faint), rests_on(job, all), style));
  for (const job::AirNote& note : job.air_notes)
    append(page, hang(Text("  note      ", Mark::faint), note.file + ": " + note.message, style));
  page.emplace_back();
  append(page, days_table(all, style));
  page.emplace_back();
  if (all.finishes.empty()) {
    append(page, hang("",
                      "When a finish may go on is told for those of an order that is named after the shop, those on the shelf and "
                      "the shop's own; or name some: --finish water-clear. The command 'finishes' lists them.",
                      style));
    return render(page, style.colour);
  }
  page.emplace_back("When each may go on", Mark::strong);
  append(page, hang("  ",
                    "by half hours: # yes, at work; - yes, but nobody is at work; x no, at work; . no. A coat needs all the half hours "
                    "that it takes. " +
                        judged_at(all),
                    style));
  for (const FinishHours& finish : all.finishes) {
    page.emplace_back();
    append(page, finish_block(job, catalogue, all, finish, style));
  }
  return render(page, style.colour);
}

}  // namespace coatday::report
