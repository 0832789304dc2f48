// What becomes of the wood: ready to coat, cup, and movement on its base. coatday wood tells all of it.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "report/document/table_html.h"
#include "report/sections/sections_html.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

using job::WoodPart;

constexpr Metres too_small_to_see{1e-4};

Metres size(Metres length) { return Metres(std::abs(length.value())); }
std::string length_words(Metres l, Units units) { return unbroken(format_length(l, units)); }
std::string moisture_words(MoistureContent m) { return unbroken(fmt::format("{:.1f} %", 100 * m.value())); }

std::string ready_words(const job::WoodReady& ready, const Zone& zone) {
  const auto day = [&zone](Instant t) { return date_text(local_day(t, zone)); };
  if (ready.ready) return ready.measured ? "yes" : "yes, if it lay here";
  if (!ready.ready_at) return "not within a year";
  const std::string late = ready.ready_late ? day(*ready.ready_late) : "later than a year";
  return day(*ready.ready_at) + (ready.ready_early ? " (" + day(*ready.ready_early) + " to " + late + ")" : "");
}

std::string cup_words(const job::Cupping& cup, Units units) {
  if (size(cup.most) < too_small_to_see) return "less than " + length_words(too_small_to_see, units);
  const char* way = cup.highest.cup < Metres(0) ? "hollow by " : "bulges by ";
  return way + length_words(size(cup.highest.cup), units) + " (" + length_words(size(cup.least), units) + " to " +
         length_words(size(cup.most), units) + ")";
}

std::string season_words(const job::SeasonWidth& season, Units units) {
  if (!season.change) return season.name + ": " + season.change.error();
  const char* way = *season.change < Metres(0) ? ": narrower by " : ": wider by ";
  return season.name + way + length_words(size(*season.change), units);
}

void add_ready(Element section, const job::Plan& plan, const job::WoodFindings& wood) {
  Element table = add_table(section, "wood", "Ready to coat, by the moisture of the wood");
  add_heads(table, {"part", "moisture", "shop's air leads to", "ready"});
  Element body = table.add("tbody", {});
  for (const WoodPart& part : wood.parts) {
    if (!part.skipped.empty()) continue;
    Element row = body.add("tr", {});
    row.add("th", {{"scope", "row"}}).name(part.name);
    row.add("td", {}, moisture_words(part.ready.now)).text(part.ready.measured ? " by meter" : " by its stay");
    row.add("td", {}, moisture_words(part.ready.shop));
    row.add("td", {{"class", part.ready.ready ? "" : "declared"}}, ready_words(part.ready, plan.shop.zone));
  }
}

// A board's cup in each way of finishing it: why both faces get the same.
void add_cups(Element section, const WoodPart& part, Units units) {
  const job::WoodBoard& board = *part.board;
  if (board.cups.empty()) return;
  Element list = section.add("ul", {{"class", "waits"}});
  for (const job::Cupping& cup : board.cups) list.add("li", {}, cup.way + ": " + cup_words(cup, units));
}

void add_fixings(Element section, const WoodPart& part, Units units) {
  Element list = section.add("ul", {{"class", "waits"}});
  for (const job::FixingCheck& check : part.board->fixings) {
    Element item = list.add("li", {});
    item.name(check.fixing->name.empty() ? std::string(piece::word(check.fixing->kind)) : check.fixing->name);
    if (!check.play) {
      item.text(": no verdict, " + check.play.error());
    } else if (check.short_of_room()) {
      item.text(": ").add("b", {{"class", "bad"}},
                          "short by " + std::string(check.at_least ? "at least " : "") + length_words(check.play->short_by(), units));
    } else {
      item.text((check.at_least ? ": no verdict beyond the range, " : ": passes, ") + length_words(check.play->needed(), units) +
                " needed");
    }
  }
}

void add_board(Element section, const WoodPart& part, Units units) {
  const job::WoodBoard& board = *part.board;
  Element box = section.add("div", {{"class", "board"}});
  box.add("h3", {}).name(part.name).text(", " + length_words(board.width, units) + " wide, " + length_words(board.thickness, units) +
                                         " thick");
  if (!board.cups.empty()) box.add("p", {}, "Highest cup, free, if it is finished:");
  add_cups(box, part, units);
  if (!board.no_cup.empty()) box.add("p", {}, (board.cups.empty() ? "No cup: " : "These are ") + board.no_cup + ".");
  if (!board.seasons.empty()) {
    std::vector<std::string> seasons;
    for (const job::SeasonWidth& season : board.seasons) seasons.push_back(season_words(season, units));
    box.add("p", {}, "Its width in the room, since it was fixed: " + listed(seasons) + (board.beyond_range ? ", at least." : "."));
  }
  if (!board.fixings.empty()) {
    box.add("p", {}, "Its fixings:");
    add_fixings(box, part, units);
  }
}

// Boards of which nothing is known, by the reason.
template <class Known>
void add_unknown(Element section, const job::WoodFindings& wood, const Known& known) {
  std::map<std::string, std::vector<std::string>> names;
  for (const WoodPart& part : wood.parts) {
    if (part.board && !known(part)) names[part.board->no_cup].push_back(part.name);
  }
  for (const auto& [reason, boards] : names) section.add("p", {{"class", "how"}}, "No cup of " + listed(boards) + ": " + reason + ".");
}

}  // namespace

void add_wood(Contents& contents, const job::Plan& plan, const job::WoodFindings& wood, Units units) {
  const auto told = [](const WoodPart& part) { return part.skipped.empty(); };
  if (std::none_of(wood.parts.begin(), wood.parts.end(), told)) return;
  Element section = contents.section("wood", "Wood");
  section.add(
      "p", {{"class", "how"}},
      wood.room.empty() ? "The room where it will live is not stated: the shop's air alone is followed." : "Its room: " + wood.room + ".");
  add_ready(section, plan, wood);
  const auto known = [](const WoodPart& part) { return part.board && !(part.board->cups.empty() && part.board->seasons.empty()); };
  add_unknown(section, wood, known);
  if (std::none_of(wood.parts.begin(), wood.parts.end(), known)) return;
  Element boards = section.add("div", {{"class", "boards"}});
  for (const WoodPart& part : wood.parts) {
    if (known(part)) add_board(boards, part, units);
  }
  section.add(
      "p", {{"class", "how"}},
      "In brackets: over the published spread of diffusion, which is six-fold. Ends, knots, creep, set and twist are left out; films "
      "by their nearest class. One bare face makes a cup that rises and decays (FPL Technical Note D-12); some trade writers dispute "
      "that finishing both faces prevents a lasting one. Measure the wood again before coating.");
}

}  // namespace coatday::report::page
