#include "report/sections/wood_board.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace coatday::report {
namespace {

using job::WoodBoard;

constexpr Metres too_small_to_see{1e-4};

Metres size(Metres length) { return Metres(std::abs(length.value())); }

/// Along the grain; two digits are more than is known of it.
std::string pull_text(wood::NewtonsPerMetre force, Units units) {
  constexpr double pound_per_foot = 14.5939;  // N/m
  const bool us = units == Units::us;
  const double amount = std::abs(force.value()) / (us ? pound_per_foot : 1);
  const double digit = amount < 10 ? 1 : std::pow(10, std::floor(std::log10(amount)) - 1);
  return fmt::format("{:.0f} {} a {}", std::round(amount / digit) * digit, us ? "lbf" : "N", us ? "foot" : "metre");
}

/// Puts together what is said of one board.
class BoardSection {
 public:
  BoardSection(const job::WoodFindings& wood, const WoodBoard& board, const Texts& texts) : wood_(wood), board_(board), texts_(texts) {}

  Section made(const std::string& name, bool has_fixings) && {
    section_.title = typed(name) + fmt::format(", {} wide across the grain, {} thick", length(board_.width), length(board_.thickness));
    section_.kind = "board";
    cups();
    if (board_.seasons.empty()) {
      if (has_fixings) say({"Its fixings are not checked: no 'customer room' is stated.", Mark::caution});
    } else {
      base();
    }
    return std::move(section_);
  }

 private:
  [[nodiscard]] std::string length(Metres l) const { return texts_.length(l); }
  void say(Phrase words) { section_.blocks.emplace_back(Paragraph{std::move(words)}); }
  // The page leaves it out.
  void say_on_terminal(Block block) {
    Section only;
    only.media = Media::text;
    only.blocks.emplace_back(std::move(block));
    section_.blocks.emplace_back(std::move(only));
  }

  void cups() {
    if (board_.cups.empty()) return say("No cup: " + board_.no_cup + ".");
    const bool flat =
        std::all_of(board_.cups.begin(), board_.cups.end(), [](const job::Cupping& c) { return size(c.most) < too_small_to_see; });
    if (flat) return say(fmt::format("Cups less than {} whichever way it is finished.", length(too_small_to_see)));
    section_.blocks.emplace_back(highest());
    over_time();
    if (!board_.no_cup.empty()) say({"These are " + board_.no_cup + ".", Mark::caution});
    if (board_.cup_limit) limit();
    one_face();
    say_on_terminal(Paragraph{fmt::format(
        "Held along both edges and the middle, so that it may slide but not lift, it bows {} between them and pulls at each edge with up "
        "to {}.",
        length(size(board_.held.bow)), pull_text(board_.held.at_each_edge, texts_.units))});
  }

  [[nodiscard]] Table highest() const {
    const auto below = [](const char* title) { return Column{title, Align::right, false, OnPage::below}; };
    Table table{"cups",
                "",
                {{"cup, free"}, {"highest", Align::right}, below("spread"), below("on"), below(wood_.room.empty() ? "last" : "settled")},
                {{}}};
    for (const job::Cupping& cup : board_.cups) {
      table.groups[0].rows.push_back(
          {{cup.way, length(cup.highest.cup), unbroken(length(size(cup.least)) + " to " + length(size(cup.most))),
            texts_.date(cup.highest.at), length(cup.settled.cup)}});
    }
    return table;
  }

  void over_time() {
    const std::size_t marks = std::min(wood_.marks.size(), board_.cups.front().at_marks.size());
    if (marks < 2) return;
    Table table{"cups", "", {{"after hand-over"}}, {{}}};
    for (std::size_t m = 0; m < marks; ++m) table.columns.push_back({m == 0 ? "then" : wood_.marks[m].name, Align::right});
    for (const job::Cupping& cup : board_.cups) {
      Table::Row row{{cup.way}};
      for (std::size_t m = 0; m < marks; ++m) row.cells.emplace_back(std::isnan(cup.at_marks[m].value()) ? "-" : length(cup.at_marks[m]));
      table.groups[0].rows.push_back(std::move(row));
    }
    say_on_terminal(std::move(table));
  }

  void limit() {
    const job::Cupping& planned = board_.cups.front();
    const bool within = size(planned.most) <= *board_.cup_limit, at_middle = size(planned.highest.cup) <= *board_.cup_limit;
    const char* verdict = within      ? "kept over the whole spread"
                          : at_middle ? "kept at the middle of the spread, not over all of it"
                                      : "passed";
    say({fmt::format("Its limit is {}: {}.", length(*board_.cup_limit), verdict), within ? Mark::good : Mark::caution});
  }

  void one_face() {
    if (board_.one_face.empty()) return;
    std::vector<std::string> steps;
    for (const job::OneFaceLimit& limit : board_.one_face) steps.push_back(unbroken(format_span(limit.longest)) + " after " + limit.step);
    say(fmt::format("With one face coated it may lie {}; longer, and it may pass its limit.", listed(steps)));
  }

  void base() {
    Table table{"base", "", {{}, {{}, Align::right}, {}}, {seasons()}};
    if (board_.at_edges) table.groups.push_back(fixings());
    section_.blocks.emplace_back(std::move(table));
    if (!board_.at_edges) return;
    const Metres play = board_.at_edges->needed();
    if (play <= Metres(0)) return;
    say(fmt::format("An eighth of an inch all round a shank (common practice, no source) would do up to {} from the fixed point here{}.",
                    length(board_.width / 2 * (wood::customary_room / play)), wood::customary_room >= play ? ", beyond its edges" : ""));
  }

  [[nodiscard]] Table::Group seasons() const {
    Table::Group group{
        fmt::format("On its base, fixed at {} of moisture; coefficient {:.5f} for each 1 %{}:", moisture_text(board_.when_fixed),
                    board_.coefficient, board_.cut_said ? "" : ", as flat cut, which moves most, since no 'cut' is stated"),
        {}};
    for (const job::SeasonWidth& season : board_.seasons)
      group.rows.push_back({{season.name, moisture_text(season.equilibrium), change_text(season)}});
    const char* beyond =
        "The room leaves the 6 to 14 % in which the coefficient holds: movements are shown to the end of that range, and are the least.";
    if (board_.beyond_range) group.rows.push_back({{}, {{beyond, Mark::caution}}});
    return group;
  }

  [[nodiscard]] std::string change_text(const job::SeasonWidth& season) const {
    if (!season.change) return season.change.error();
    return (*season.change < Metres(0) ? "narrower by " : "wider by ") + length(size(*season.change));
  }

  [[nodiscard]] Table::Group fixings() const {
    Table::Group group{
        fmt::format("Fix it at the middle of its width and let it slide everywhere else, across the grain: at the edges, {} from "
                    "there, by {} inwards and {} outwards.",
                    length(board_.width / 2), length(board_.at_edges->inwards), length(board_.at_edges->outwards)),
        {}};
    for (const job::FixingCheck& check : board_.fixings) group.rows.push_back({{}, {fixing(check)}});
    return group;
  }

  [[nodiscard]] Phrase fixing_name(const piece::Fixing& fixing) const {
    const bool screwed = fixing.kind == piece::FixingKind::hole || fixing.kind == piece::FixingKind::slot;
    std::string text = fixing.name.empty() ? "" : fixing.name + ", ";
    text += std::string(piece::word(fixing.kind));
    if (screwed) text += fmt::format(" {} on a shank of {}", length(fixing.measures.opening), length(fixing.measures.shank));
    if (fixing.kind == piece::FixingKind::button) text += fmt::format(" with {} to each side", length(fixing.measures.opening / 2));
    return typed(text + fmt::format(", {} off: ", length(fixing.measures.from_fixed_point)));
  }

  [[nodiscard]] Phrase fixing(const job::FixingCheck& check) const {
    const piece::FixingKind kind = check.fixing->kind;
    const bool screwed = kind == piece::FixingKind::hole || kind == piece::FixingKind::slot;
    const Phrase name = fixing_name(*check.fixing);
    if (!check.play) return name + Phrase("no verdict, " + check.play.error(), Mark::caution);
    const std::string needed = fmt::format("{} needed", length(check.play->needed()));
    if (check.play->passes() && check.at_least)
      return name + Phrase("no verdict: it passes to the end of the range, " + needed + " till there", Mark::caution);
    if (check.play->passes())
      return name + Phrase("passes, " + needed, Mark::good) + (screwed ? ", " + length(check.play->room) + " to each side" : "");
    std::string remedy;
    if (screwed) remedy = fmt::format("; a {} of {} passes", piece::word(kind), length(check.opening_needed));
    if (kind == piece::FixingKind::button) remedy = fmt::format("; {} to each side passes", length(check.opening_needed / 2));
    return name + Phrase(fmt::format("short by {}{}", check.at_least ? "at least " : "", length(check.play->short_by())), Mark::bad) +
           remedy;
  }

  const job::WoodFindings& wood_;
  const WoodBoard& board_;
  const Texts& texts_;
  Section section_;
};

}  // namespace

Section wood_board(const job::Job& job, const job::WoodFindings& wood, const job::WoodPart& part, const Texts& texts) {
  const piece::Part& of = job.order.pieces[part.piece].piece.parts[part.part];
  return BoardSection(wood, *part.board, texts).made(part.name, !of.solid.fixings.empty());
}

std::string moisture_text(MoistureContent m) { return unbroken(fmt::format("{:.1f} %", 100 * m.value())); }

}  // namespace coatday::report
