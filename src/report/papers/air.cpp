// The shop's air, day by day, at the width of a terminal.
#include "report/papers/air.h"

#include <fmt/core.h>

#include <algorithm>

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

Table days_of(const AirForecast& all, Units units) {
  Table table{"air", "The air of each day", {{}, {"open"}, {"closed"}, {"RH"}, {"dew point"}}, {{}}};
  const bool any_damp = std::any_of(all.days.begin(), all.days.end(), [](const AirDay& day) { return day.saturated > Hours(0); });
  if (any_damp) table.columns.push_back({"at 100 % RH"});
  for (const AirDay& day : all.days) {
    Table::Row row{{date_text(day.day), day.open ? degrees(*day.open, units) : "-", day.closed ? degrees(*day.closed, units) : "-",
                    percent(day.humidity), degrees(day.dew_point, units)}};
    if (any_damp) row.cells.emplace_back(damp(day, units), Mark::caution);
    table.groups.front().rows.push_back(std::move(row));
  }
  return table;
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
Phrase strip(const job::Job& job, const AirForecast& all, const FinishHours& finish, const AirDay& day) {
  std::vector<Sign> signs(half_hours);
  for (std::size_t r = day.first; r < day.last; ++r) {
    const auto clock = job.shop.zone.to_local(all.air.rows()[r].from) - day.day;
    Sign& sign = signs.at(static_cast<std::size_t>(clock / climate::AirSeries::step));
    sign.known = true;
    sign.may = sign.may && finish.may[r];
    sign.working = sign.working || all.working[r];
  }
  Phrase text;
  for (const Sign& s : signs) {
    const char sign = !s.known ? ' ' : s.may ? (s.working ? '#' : '-') : s.working ? 'x' : '.';
    const Mark mark = !s.working ? Mark::faint : s.may ? Mark::good : Mark::bad;
    text += Phrase(unbroken(std::string(1, sign)), mark);
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

Section finish_section(const job::Job& job, const finish::Catalogue& catalogue, const AirForecast& all, const FinishHours& finish) {
  const finish::Product* product = catalogue.product(finish.use.product);
  Table table{"hours",
              "When it may go on, by half hours",
              {{}, {unbroken("0     3     6     9     12    15    18    21    24")}, {unbroken("at work")}},
              {{}}};
  for (const AirDay& day : all.days)
    table.groups.front().rows.push_back({{date_text(day.day), strip(job, all, finish, day), unbroken(at_work(all, finish, day))}});
  Section section{"finish-" + finish.use.product, finish.use.product, product == nullptr ? "" : product->name, {std::move(table)}};
  if (!finish.limit_exceeded.empty())
    section.blocks.emplace_back(Paragraph{"Not on " + instant_text(finish.hindered, job.shop.zone) + ": " + finish.limit_exceeded + "."});
  return section;
}

std::string judged_at(const AirForecast& all) {
  const bool parts = std::any_of(all.finishes.begin(), all.finishes.end(),
                                 [](const FinishHours& f) { return !f.use.wood.empty() || !f.use.steel.empty(); });
  if (parts) return "Judged in the room, and at the can and at every part that takes the finish, which lag behind the room's air.";
  return "Judged in the room, and at the can, which lags behind the room's air; so do wood and steel: name an order, and they count.";
}

Facts about_air(const job::Job& job, const AirForecast& all) {
  Facts facts{{{"air", job.shop.air_description}, {"rests on", rests_on(job, all)}}};
  for (const job::AirNote& note : job.air_notes) facts.facts.push_back({"note", note.file + ": " + note.message});
  return facts;
}

}  // namespace

Document air(const job::Job& job, const finish::Catalogue& catalogue, const AirForecast& all, Units units) {
  Document document{typed(job.shop.name) + Phrase("  air from " + unbroken(long_date(all.days.front().day)), Mark::faint)};
  document.sections = {{"air", {}, {}, {about_air(job, all)}}, {"days", {}, {}, {days_of(all, units)}}};
  if (all.finishes.empty()) {
    document.sections.push_back(
        {"finishes",
         {},
         {},
         {Paragraph{"The hours of a finish are shown for those of an order that is named after the shop, those on the shelf and the shop's "
                    "own. Or name some: --finish water-clear. The command 'finishes' lists them."}}});
    return document;
  }
  document.sections.push_back({"finishes",
                               "When each may go on",
                               {},
                               {Paragraph{"by half hours: # yes, at work; - yes, but nobody is at work; x no, at work; . no. A coat needs "
                                          "all the half hours that it takes. " +
                                          judged_at(all)}}});
  for (const FinishHours& finish : all.finishes) document.sections.push_back(finish_section(job, catalogue, all, finish));
  return document;
}

}  // namespace coatday::report
