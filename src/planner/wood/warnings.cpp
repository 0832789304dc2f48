#include "planner/wood/warnings.h"

#include <algorithm>
#include <cmath>

#include <fmt/core.h>

#include "planner/wood/wood_calculator.h"

namespace coatday::planner {
namespace {

bool on_purpose(const piece::Part& part) {
  return std::any_of(part.exceptions.begin(), part.exceptions.end(),
                     [](const piece::Exception& e) { return (e.face == "face" || e.face == "underside") && !e.reason.empty(); });
}

bool says_something(const piece::Part& part) {
  const piece::Solid& solid = part.solid;
  return part.wood() && (!solid.readings.empty() || solid.cup_limit || !solid.fixings.empty() || on_purpose(part));
}

class Warner {
 public:
  Warner(const job::Job& job, const job::Plan& plan) : job_(job), plan_(plan), calculator_(job, plan) {}

  void part(std::size_t p, const piece::Part& part) {
    const job::OrderPiece& piece = job_.order.pieces[p];
    subject_ = piece.piece.name + " / " + part.name;
    if (part.solid.core != piece::Core::solid) return no_solid_wood(part);
    if (unknown_moisture(part)) {
      return say("cup-unknown", job::Severity::note,
                 "it is kept elsewhere and not measured: no cup is calculated and no fixing checked; give a 'moisture' reading",
                 part.where);
    }
    const job::WoodReady ready = calculator_.ready(p, part);
    if (ready.measured) moisture(part, ready);
    auto board = calculator_.board(p, part, ready.now);
    if (!board) return;
    if (!part.solid.fixings.empty()) fixings(p, part, *board);
    if (part.solid.cup_limit || on_purpose(part)) cups(p, part, ready, *board);
  }

  std::vector<job::Finding> findings() { return std::move(findings_); }

 private:
  void say(std::string code, job::Severity severity, std::string message, const Location& where) {
    findings_.push_back({std::move(code), severity, std::move(message), subject_, where});
  }

  void no_solid_wood(const piece::Part& part) {
    say("cup-unknown", job::Severity::note,
        fmt::format("{} hardly moves with moisture, and what is known here is of solid wood: no cup is calculated",
                    piece::word(part.solid.core)),
        part.where);
  }

  void moisture(const piece::Part& part, const job::WoodReady& ready) {
    const Location& where = part.solid.readings.front().where;
    if (!ready.ready && ready.ready_at.expected) {
      say("moisture", job::Severity::warning,
          fmt::format("{} moist, and the shop's air leads to {}: not ready to be coated before {} ({} to {} over the published spread of "
                      "diffusion); measure it again then",
                      moisture_text(ready.now), moisture_text(ready.shop), day(*ready.ready_at.expected), day(*ready.ready_at.fast),
                      late(ready)),
          where);
    }
    if (!ready.suits_room()) {
      say("moisture-room", job::Severity::warning,
          fmt::format("{} moist, and the room where it will live leads to {} to {} through the year: it will move after it is delivered",
                      moisture_text(ready.now), moisture_text(*ready.room_driest), moisture_text(*ready.room_dampest)),
          where);
    }
  }

  void fixings(std::size_t p, const piece::Part& part, job::WoodBoard& board) {
    calculator_.move(p, part, board);
    if (!job_.order.pieces[p].room) {
      say("fixings-unchecked", job::Severity::note,
          "its fixings cannot be checked: the order does not say in which 'customer room' it will live", part.solid.fixings.front().where);
    }
    for (const job::FixingCheck& check : board.fixings) {
      const std::string name = check.fixing->name.empty() ? std::string(piece::word(check.fixing->kind)) : check.fixing->name;
      if (!check.play) {
        say("fixing-unchecked", job::Severity::note, fmt::format("{}: {}", name, check.play.error()), check.fixing->where);
      } else if (check.short_of_room()) {
        say("fixing-short", job::Severity::warning,
            fmt::format("{}: {} to each side, and the wood moves {}{}: short by {}; it may split or tear the screw", name,
                        length(check.play->room), check.at_least ? "at least " : "", length(check.play->needed()),
                        length(check.play->short_by())),
            check.fixing->where);
      }
    }
  }

  void cups(std::size_t p, const piece::Part& part, const job::WoodReady& ready, job::WoodBoard& board) {
    std::vector<FinishOption> options = finish_options(calculator_.coats(p, part));
    options.resize(1);  // as planned
    calculator_.cup(p, part, ready.now, options, {}, board);
    const std::string air = job_.order.pieces[p].room ? "in the customer's room" : "in the shop's air (no 'customer room' is stated)";
    if (board.cups.empty()) return say("cup-unknown", job::Severity::note, "no cup is shown: " + board.no_cup, part.where);
    const job::Cupping& cup = board.cups.front();
    const std::string words =
        fmt::format("{} over {} of width ({} to {} over the published spread of diffusion), on {}, {}; {} at the end, {}",
                    cupped(cup.highest.cup), length(board.width), length(size(cup.least)), length(size(cup.most)), day(cup.highest.at),
                    cup.highest.cup < Metres(0) ? "the face hollow" : "the face bulging", length(size(cup.settled.cup)), air);
    if (on_purpose(part)) say("cup", job::Severity::note, "finished unevenly on purpose, by calculation it cups " + words, part.where);
    if (!part.solid.cup_limit || size(cup.most) <= *part.solid.cup_limit) return;
    const bool surely = size(cup.highest.cup) > *part.solid.cup_limit;
    say("cup-limit", surely ? job::Severity::warning : job::Severity::note,
        fmt::format("it {} cup more than its limit of {}: {}", surely ? "will, by calculation," : "may", length(*part.solid.cup_limit),
                    words),
        part.where);
  }

  static Metres size(Metres cup) { return Metres(std::abs(cup.value())); }
  std::string cupped(Metres cup) const { return length(size(cup)); }
  std::string length(Metres l) const { return format_length(l, plan_.shop.units); }
  std::string day(Instant t) const { return short_date(day_of(plan_.shop.zone.to_local(t))); }
  std::string late(const job::WoodReady& ready) const { return ready.ready_at.slow ? day(*ready.ready_at.slow) : "more than a year"; }

  const job::Job& job_;
  const job::Plan& plan_;
  WoodCalculator calculator_;
  std::string subject_;
  std::vector<job::Finding> findings_;
};

}  // namespace

std::vector<job::Finding> wood_warnings(const job::Job& job, const job::Plan& plan) {
  std::vector<std::pair<std::size_t, const piece::Part*>> parts;
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    for (const piece::Part& part : job.order.pieces[p].piece.parts) {
      if (says_something(part)) parts.emplace_back(p, &part);
    }
  }
  if (parts.empty() || plan.status != job::Status::planned) return {};
  Warner warner(job, plan);
  for (const auto& [p, part] : parts) warner.part(p, *part);
  return warner.findings();
}

}  // namespace coatday::planner
