// The wood of an order: ready to coat, cup through the year, and the base.
#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "report/document/table.h"
#include "report/wood.h"
#include "report/words.h"

namespace coatday::report {
namespace {

using job::WoodBoard;
using job::WoodPart;

std::string percent(MoistureContent m) { return unbroken(fmt::format("{:.1f} %", 100 * m.value())); }

constexpr Metres too_small_to_see{1e-4};

Metres size(Metres length) { return Metres(std::abs(length.value())); }

class Page {
 public:
  Page(const job::Job& job, const job::Plan& plan, const job::WoodFindings& wood, const TextStyle& style)
      : job_(job), plan_(plan), wood_(wood), style_(style) {}

  Lines run() {
    head();
    ready();
    for (const WoodPart& part : wood_.parts) {
      if (part.board) board(part);
    }
    limits();
    return std::move(lines_);
  }

 private:
  void say(std::string_view before, const Text& text) { append(lines_, hang(Text(before), text, style_)); }
  void title(const std::string& text) {
    lines_.emplace_back();
    append(lines_, wrap(Text(text, Mark::strong), style_.columns));
  }

  std::string length(Metres l) const { return unbroken(format_length(l, style_.units)); }
  std::string day(Instant t) const { return unbroken(date_text(local_day(t, plan_.shop.zone))); }

  void head() {
    append(lines_, wrap(Text(job_.order.name + ": its wood", Mark::strong), style_.columns));
    append(lines_, labelled("room", 10, wood_.room.empty() ? "not stated ('customer room'): the shop's air alone is followed" : wood_.room,
                            style_));
    if (!wood_.room.empty())
      append(lines_,
             labelled("there", 10, fmt::format("from {} to {}", day(wood_.moves_in), long_date(local_day(wood_.until, plan_.shop.zone))),
                      style_));
    for (const std::string& film : wood_.films) append(lines_, labelled(&film == &wood_.films.front() ? "films" : "", 10, film, style_));
  }

  void ready() {
    title("Ready to coat?");
    TextTable table{{{"part"}, {"moisture", Align::right}, {"by"}, {"shop's air", Align::right}, {"ready"}}, {}};
    for (const WoodPart& part : wood_.parts) {
      if (!part.skipped.empty()) continue;
      const job::WoodReady& ready = part.ready;
      table.rows.push_back({part.name, percent(ready.now), ready.measured ? "meter" : "its stay", percent(ready.shop), ready_words(ready)});
    }
    if (table.rows.empty()) say("  ", "no part is of solid wood");
    if (!table.rows.empty()) append(lines_, layout(table, 2, style_));
    for (const WoodPart& part : wood_.parts) {
      if (!part.skipped.empty()) say("  ", part.name + ": left out, " + part.skipped);
    }
    readings_apart();
    rooms();
  }

  Text ready_words(const job::WoodReady& ready) const {
    if (ready.ready) return {ready.measured ? "yes" : "yes, if it lay here", Mark::good};
    if (!ready.ready_at) return {"not within a year", Mark::bad};
    const std::string late = ready.ready_late ? day(*ready.ready_late) : "later than a year";
    return {fmt::format("{} ({} to {})", day(*ready.ready_at), day(*ready.ready_early), late), Mark::caution};
  }

  void readings_apart() {
    for (const WoodPart& part : wood_.parts) {
      if (part.ready.drier)
        say("  ", fmt::format("{}: readings from {} to {}; their mean counts", part.name, percent(*part.ready.drier),
                              percent(*part.ready.damper)));
    }
  }

  void rooms() {
    const auto known =
        std::find_if(wood_.parts.begin(), wood_.parts.end(), [](const WoodPart& p) { return p.ready.room_driest.has_value(); });
    const auto any = std::find_if(wood_.parts.begin(), wood_.parts.end(), [](const WoodPart& p) { return p.skipped.empty(); });
    if (any == wood_.parts.end()) return;
    say("  ", fmt::format(
                  "Ready: all through within {} of where the shop's air leads over the next week (common practice, no source); the days in "
                  "brackets are by the published spread of diffusion.",
                  percent(any->ready.band)));
    if (known == wood_.parts.end()) return;
    say("  ", fmt::format("The room leads to {} in its driest month and {} in its dampest.", percent(*known->ready.room_driest),
                          percent(*known->ready.room_dampest)));
    for (const WoodPart& part : wood_.parts) {
      if (part.skipped.empty() && !part.ready.suits_room())
        say("  ", Text(part.name + " is outside that: it will move after it is delivered", Mark::caution));
    }
  }

  void board(const WoodPart& part) {
    const WoodBoard& board = *part.board;
    title(fmt::format("{}, {} wide across the grain, {} thick", part.name, length(board.width), length(board.thickness)));
    cups(board);
    base(part, board);
  }

  void cups(const WoodBoard& board) {
    if (board.cups.empty()) return say("  ", "No cup: " + board.no_cup + ".");
    const bool flat =
        std::all_of(board.cups.begin(), board.cups.end(), [](const job::Cupping& c) { return size(c.most) < too_small_to_see; });
    if (flat) return say("  ", fmt::format("Cups less than {} whichever way it is finished.", length(too_small_to_see)));
    TextTable highest{{{"cup, free"},
                       {"highest", Align::right},
                       {"spread", Align::right},
                       {"on", Align::right},
                       {wood_.room.empty() ? "last" : "settled", Align::right}},
                      {}};
    for (const job::Cupping& cup : board.cups) {
      highest.rows.push_back({cup.way, length(cup.highest.cup), unbroken(length(size(cup.least)) + " to " + length(size(cup.most))),
                              day(cup.highest.at), length(cup.settled.cup)});
    }
    append(lines_, layout(highest, 2, style_));
    over_time(board);
    if (!board.no_cup.empty()) say("  ", Text("These are " + board.no_cup + ".", Mark::caution));
    if (board.cup_limit) {
      const bool within = size(board.cups.front().most) <= *board.cup_limit;
      say("  ", Text(fmt::format("Its limit is {}: {}.", length(*board.cup_limit),
                                 within ? "kept over the whole spread"
                                 : size(board.cups.front().highest.cup) <= *board.cup_limit
                                     ? "kept at the middle of the spread, not over all of it"
                                     : "passed"),
                     within ? Mark::good : Mark::caution));
    }
    one_face(board);
    say("  ",
        fmt::format("Held along both edges and the middle, so that it may slide but not lift, it bows {} between them and pulls at each "
                    "edge with up to {}.",
                    length(size(board.held.bow)), pull(board.held.at_each_edge)));
  }

  /// Along the grain; two digits are more than is known of it.
  std::string pull(wood::NewtonsPerMetre force) const {
    constexpr double pound_per_foot = 14.5939;  // N/m
    const bool us = style_.units == Units::us;
    const double amount = std::abs(force.value()) / (us ? pound_per_foot : 1);
    const double digit = amount < 10 ? 1 : std::pow(10, std::floor(std::log10(amount)) - 1);
    return fmt::format("{:.0f} {} a {}", std::round(amount / digit) * digit, us ? "lbf" : "N", us ? "foot" : "metre");
  }

  void one_face(const WoodBoard& board) {
    if (board.one_face.empty()) return;
    std::vector<std::string> steps;
    for (const job::OneFaceLimit& limit : board.one_face) steps.push_back(unbroken(format_span(limit.longest)) + " after " + limit.step);
    say("  ", fmt::format("With one face coated it may lie {}; longer, and it may pass its limit.", listed(steps)));
  }

  void over_time(const WoodBoard& board) {
    const std::size_t marks = std::min(wood_.marks.size(), board.cups.front().at_marks.size());
    if (marks < 2) return;
    TextTable table{{{"after hand-over"}}, {}};
    for (std::size_t m = 0; m < marks; ++m) table.columns.push_back({m == 0 ? std::string("then") : wood_.marks[m].name, Align::right});
    for (const job::Cupping& cup : board.cups) {
      std::vector<Text> row{cup.way};
      for (std::size_t m = 0; m < marks; ++m) row.emplace_back(std::isnan(cup.at_marks[m].value()) ? "-" : length(cup.at_marks[m]));
      table.rows.push_back(std::move(row));
    }
    append(lines_, layout(table, 2, style_));
  }

  void base(const WoodPart& part, const WoodBoard& board) {
    const piece::Part& of = job_.order.pieces[part.piece].piece.parts[part.part];
    if (board.seasons.empty()) {
      if (!of.solid.fixings.empty()) say("  ", Text("Its fixings are not checked: no 'customer room' is stated.", Mark::caution));
      return;
    }
    say("  ", fmt::format("On its base, fixed at {} of moisture; coefficient {:.5f} for each 1 %{}:", percent(board.when_fixed),
                          board.coefficient, board.cut_said ? "" : ", as flat cut, which moves most, since no 'cut' is stated"));
    TextTable seasons{{{""}, {"", Align::right}, {""}}, {}};
    for (const job::SeasonWidth& season : board.seasons)
      seasons.rows.push_back({season.name, percent(season.equilibrium), change_words(season)});
    append(lines_, layout(seasons, 4, style_));
    if (board.beyond_range)
      say("    ", Text("The room leaves the 6 to 14 % in which the coefficient holds: movements are told to the end of that range, and are "
                       "the least.",
                       Mark::caution));
    if (!board.at_edges) return;
    const Metres play = board.at_edges->needed();
    say("  ",
        fmt::format(
            "Fix it at the middle of its width and let it slide everywhere else, across the grain: at the edges, {} from there, by {} "
            "inwards and {} outwards.",
            length(board.width / 2), length(board.at_edges->inwards), length(board.at_edges->outwards)));
    for (const job::FixingCheck& check : board.fixings) say("    ", fixing_words(check));
    if (play > Metres(0)) {
      say("  ",
          fmt::format("An eighth of an inch all round a shank (common practice, no source) would do up to {} from the fixed point here{}.",
                      length(board.width / 2 * (wood::customary_room / play)), wood::customary_room >= play ? ", beyond its edges" : ""));
    }
  }

  std::string change_words(const job::SeasonWidth& season) const {
    if (!season.change) return season.change.error();
    return (*season.change < Metres(0) ? "narrower by " : "wider by ") + length(size(*season.change));
  }

  Text fixing_words(const job::FixingCheck& check) const {
    const piece::Fixing& fixing = *check.fixing;
    const bool screwed = fixing.kind == piece::FixingKind::hole || fixing.kind == piece::FixingKind::slot;
    std::string name = fixing.name.empty() ? "" : fixing.name + ", ";
    name += std::string(piece::word(fixing.kind));
    if (screwed) name += fmt::format(" {} on a shank of {}", length(fixing.measures.opening), length(fixing.measures.shank));
    if (fixing.kind == piece::FixingKind::button) name += fmt::format(" with {} to each side", length(fixing.measures.opening / 2));
    name += fmt::format(", {} off: ", length(fixing.measures.from_fixed_point));
    if (!check.play) return Text(name + "no verdict, " + check.play.error(), Mark::caution);
    const std::string needed = fmt::format("{} needed", length(check.play->needed()));
    if (check.play->passes() && check.at_least)
      return Text(name) + Text("no verdict: it passes to the end of the range, " + needed + " till there", Mark::caution);
    if (check.play->passes())
      return Text(name) + Text("passes, " + needed, Mark::good) + Text(screwed ? ", " + length(check.play->room) + " to each side" : "");
    std::string remedy;
    if (screwed) remedy = fmt::format("; a {} of {} passes", piece::word(fixing.kind), length(check.opening_needed));
    if (fixing.kind == piece::FixingKind::button) remedy = fmt::format("; {} to each side passes", length(check.opening_needed / 2));
    return Text(name) + Text(fmt::format("short by {}{}", check.at_least ? "at least " : "", length(check.play->short_by())), Mark::bad) +
           Text(remedy);
  }

  void limits() {
    title("What this rests on");
    const char* const words[] = {
        ("Cup: +, the face bulges, -, it is hollow; of a free board between films, in one dimension, over the published spread of "
         "diffusion "
         "across the "
         "grain (six-fold). Edges count as sealed but where told as bare; ends, knots, creep, set, twist and hysteresis are left out, so "
         "that a top that "
         "was wet once may keep a cup. Films from published moisture exclusion; the nearest class is a guess, named above."),
        ("One bare face makes a cup that rises and decays (FPL Technical Note D-12); some trade writers dispute that finishing both faces "
         "prevents a "
         "lasting one."),
        ("Base: it does not move; the wood follows each month's mean wholly, which is more than it does through a film: the safe side for "
         "fixings."),
        ("A meter is within about 1 % (common practice, no source). Measure again before coating.")};
    for (const char* each : words) say("  ", each);
    if (wood_.hours_beyond_table > 0) {
      say("  ", Text(fmt::format("For {} the air is beyond the table with which equilibria were compared (from {} up, 5 to 95 % RH).",
                                 counted(static_cast<std::size_t>(wood_.hours_beyond_table), "hour", "hours"),
                                 unbroken(format_temperature(Celsius(-1.1), style_.units))),
                     Mark::caution));
    }
  }

  const job::Job& job_;
  const job::Plan& plan_;
  const job::WoodFindings& wood_;
  const TextStyle& style_;
  Lines lines_;
};

}  // namespace

std::string wood_text(const job::Job& job, const job::Plan& plan, const job::WoodFindings& wood, const TextStyle& style) {
  return render(Page(job, plan, wood, style).run(), style.colour);
}

}  // namespace coatday::report
