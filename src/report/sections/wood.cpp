#include "report/sections/wood.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/sections/wood_board.h"

namespace coatday::report {
namespace {

using job::WoodPart;

bool counts(const WoodPart& part) { return part.skipped.empty(); }

Facts grounds(const job::WoodFindings& wood, const Texts& texts) {
  Facts facts;
  const char* unknown = "not stated ('customer room'): the shop's air alone is followed";
  facts.facts.push_back({"room", wood.room.empty() ? unknown : wood.room});
  if (!wood.room.empty())
    facts.facts.push_back({"there", fmt::format("from {} to {}", texts.date(wood.moves_in), long_date(local_day(wood.until, texts.zone)))});
  for (const std::string& film : wood.films) facts.facts.push_back({&film == &wood.films.front() ? "films" : "", film});
  return facts;
}

Phrase ready_phrase(const job::WoodReady& ready, const Texts& texts) {
  if (ready.ready) return {ready.measured ? "yes" : "yes, if it lay here", Mark::good};
  if (!ready.ready_at.expected) return {"not within a year", Mark::bad};
  const std::string late = ready.ready_at.slow ? texts.date(*ready.ready_at.slow) : "later than a year";
  return {fmt::format("{} ({} to {})", texts.date(*ready.ready_at.expected), texts.date(*ready.ready_at.fast), late), Mark::caution};
}

Table ready_table(const job::WoodFindings& wood, const Texts& texts) {
  Table table{"wood",
              "",
              {{"part"}, {"moisture", Align::right}, {"by", Align::left, false, OnPage::below}, {"shop's air", Align::right}, {"ready"}},
              {{}}};
  for (const WoodPart& part : wood.parts) {
    if (!counts(part)) continue;
    const job::WoodReady& ready = part.ready;
    table.groups[0].rows.push_back({{typed(part.name), moisture_text(ready.now), ready.measured ? "meter" : "from its air",
                                     moisture_text(ready.shop), ready_phrase(ready, texts)}});
  }
  return table;
}

// What "ready" means, and what the customer's room leads to.
void add_rooms(Section& section, const job::WoodFindings& wood) {
  const auto any = std::find_if(wood.parts.begin(), wood.parts.end(), counts);
  if (any == wood.parts.end()) return;
  const auto add = [&section](Phrase words) { section.blocks.emplace_back(Paragraph{std::move(words)}); };
  add(
      fmt::format("Ready: all through within {} of where the shop's air leads over the next week (common practice, no source); the days in "
                  "brackets are by the published spread of diffusion.",
                  moisture_text(any->ready.band)));
  const auto known = std::find_if(wood.parts.begin(), wood.parts.end(), [](const WoodPart& p) { return p.ready.room_driest.has_value(); });
  if (known == wood.parts.end()) return;
  add(fmt::format("The room leads to {} in its driest month and {} in its dampest.", moisture_text(*known->ready.room_driest),
                  moisture_text(*known->ready.room_dampest)));
  for (const WoodPart& part : wood.parts) {
    if (counts(part) && !part.ready.suits_room()) add({part.name + " is outside that: it will move after it is delivered", Mark::caution});
  }
}

Section ready_to_coat(const job::WoodFindings& wood, const Texts& texts) {
  Section section{"", "Ready to coat?"};
  const auto add = [&section](Phrase words) { section.blocks.emplace_back(Paragraph{std::move(words)}); };
  if (std::any_of(wood.parts.begin(), wood.parts.end(), counts)) {
    section.blocks.emplace_back(ready_table(wood, texts));
  } else {
    add("no part is of solid wood");
  }
  for (const WoodPart& part : wood.parts) {
    if (!counts(part)) add(part.name + ": left out, " + part.skipped);
  }
  for (const WoodPart& part : wood.parts) {
    if (part.ready.drier) {
      add(fmt::format("{}: readings from {} to {}; their mean counts", part.name, moisture_text(*part.ready.drier),
                      moisture_text(*part.ready.damper)));
    }
  }
  add_rooms(section, wood);
  return section;
}

Section what_it_rests_on(const job::WoodFindings& wood, const Texts& texts) {
  const char* const words[] = {
      ("Cup: +, the face bulges, -, it is hollow; of a free board between films, in one dimension, over the published spread of "
       "diffusion across the grain (six-fold). Edges count as sealed unless they are listed as bare; ends, knots, creep, set, twist and "
       "hysteresis are left out, so that a top that was wet once may keep a cup. Films from published moisture exclusion; the nearest "
       "class is a guess, named above."),
      ("One bare face makes a cup that rises and decays (FPL Technical Note D-12); some trade writers dispute that finishing both faces "
       "prevents a lasting one."),
      ("Base: it does not move; the wood follows each month's mean wholly, which is more than it does through a film: the safe side for "
       "fixings."),
      ("A meter is within about 1 % (common practice, no source). Measure again before coating.")};
  Section section{"", "What this rests on"};
  for (const char* each : words) section.blocks.emplace_back(Paragraph{each});
  if (wood.hours_beyond_table > 0) {
    const std::string hours = counted(static_cast<std::size_t>(wood.hours_beyond_table), "hour", "hours");
    const std::string coldest = unbroken(format_temperature(Celsius(-1.1), texts.units));
    section.blocks.emplace_back(
        Paragraph{{fmt::format("For {} the air is beyond the table with which equilibria were compared (from {} up, "
                               "5 to 95 % RH).",
                               hours, coldest),
                   Mark::caution}});
  }
  return section;
}

bool known(const WoodPart& part) { return part.board && !(part.board->cups.empty() && part.board->seasons.empty()); }

// Boards of which nothing is known, by the reason.
void add_unknown(Section& section, const job::WoodFindings& wood) {
  std::map<std::string, std::vector<std::string>> names;
  for (const WoodPart& part : wood.parts) {
    if (part.board && !known(part)) names[part.board->no_cup].push_back(part.name);
  }
  for (const auto& [reason, boards] : names) section.blocks.emplace_back(Paragraph{"No cup of " + listed(boards) + ": " + reason + "."});
}

}  // namespace

std::vector<Section> wood_sections(const job::Job& job, const job::WoodFindings& wood, const Texts& texts) {
  Section first;
  first.blocks.emplace_back(grounds(wood, texts));
  std::vector<Section> sections{first, ready_to_coat(wood, texts)};
  for (const WoodPart& part : wood.parts) {
    if (part.board) sections.push_back(wood_board(job, wood, part, texts));
  }
  sections.push_back(what_it_rests_on(wood, texts));
  return sections;
}

std::optional<Section> wood(const job::Job& job, const job::WoodFindings& wood, const Texts& texts) {
  if (std::none_of(wood.parts.begin(), wood.parts.end(), counts)) return std::nullopt;
  Section section{"wood", "Wood", {}, {grounds(wood, texts), ready_to_coat(wood, texts)}};
  add_unknown(section, wood);
  Section boards;
  boards.kind = "boards";
  for (const WoodPart& part : wood.parts) {
    if (known(part)) boards.blocks.emplace_back(wood_board(job, wood, part, texts));
  }
  if (boards.blocks.empty()) return section;
  section.blocks.emplace_back(std::move(boards));
  section.blocks.emplace_back(what_it_rests_on(wood, texts));
  return section;
}

}  // namespace coatday::report
