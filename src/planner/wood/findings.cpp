#include "planner/wood/findings.h"

#include <algorithm>

#include "planner/wood/wood_calculator.h"
#include "planner/wood/wood_care.h"

namespace coatday::planner {
namespace {

using date::days;

std::vector<job::WoodMark> marks_of(Instant moves_in, bool has_room) {
  std::vector<job::WoodMark> marks{{"at hand-over", moves_in}};
  if (!has_room) return marks;
  const std::pair<const char*, int> later[] = {{"1 week", 7}, {"1 month", 30}, {"3 months", 91}, {"6 months", 182}, {"1 year", 365}};
  for (const auto& [name, after] : later) marks.push_back({name, moves_in + days(after)});
  return marks;
}

std::vector<job::OneFaceLimit> limits_of(const WoodCare& care, WoodCare::PartOfPiece part, const finish::Schedule& schedule) {
  std::vector<job::OneFaceLimit> limits;
  for (const finish::Step& step : schedule.steps) {
    const auto limit = care.one_face.find({part, step.id});
    if (limit != care.one_face.end()) limits.push_back({step.name, limit->second.longest});
  }
  return limits;
}

/// Of several orders each its own.
void add_room(const job::OrderPiece& piece, Instant moves_in, Units units, std::string& rooms) {
  if (!piece.room) return;
  const std::string words =
      (piece.order.empty() ? "" : piece.order + ": ") + piece.room(moves_in, moves_in + std::chrono::hours(1))->describe(units);
  if (rooms.find(words) == std::string::npos) rooms += (rooms.empty() ? "" : "; ") + words;
}

std::string skipped(const piece::Part& part) {
  if (unknown_moisture(part)) return "it is kept elsewhere, and without a reading nothing is known of its moisture";
  if (part.solid.core == piece::Core::solid) return "";
  return std::string(piece::word(part.solid.core)) + " hardly moves with moisture, and what is known here is of solid wood";
}

}  // namespace

job::WoodFindings wood_findings(const job::Job& job, const job::Plan& plan) {
  WoodCalculator calculator(job, plan);
  const WoodCare care = wood_care(job, plan.from, plan.ready.value_or(plan.from));
  job::WoodFindings all;
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    const job::OrderPiece& piece = job.order.pieces[p];
    const Instant moves_in = calculator.moves_in(p);
    if (all.marks.empty() || moves_in > all.moves_in) {
      all.moves_in = moves_in;
      all.until = piece.room ? moves_in + days(365) : moves_in;
      all.marks = marks_of(moves_in, piece.room != nullptr);
    }
    add_room(piece, moves_in, job.shop.units, all.room);
    for (std::size_t i = 0; i < piece.piece.parts.size(); ++i) {
      const piece::Part& part = piece.piece.parts[i];
      if (!part.wood()) continue;
      job::WoodPart row{p, i, piece.piece.name + " / " + part.name, skipped(part), {}, {}};
      if (row.skipped.empty()) {
        row.ready = calculator.ready(p, part);
        row.board = calculator.board(p, part, row.ready.now);
      }
      if (row.board) {
        row.board->one_face = limits_of(care, {p, i}, *job.catalogue.schedule(part.schedule));
        calculator.move(p, part, *row.board);
        calculator.cup(p, part, row.ready.now, finish_options(calculator.coats(p, part)), marks_of(moves_in, piece.room != nullptr),
                       *row.board);
      }
      all.parts.push_back(std::move(row));
    }
  }
  all.hours_beyond_table = calculator.hours_beyond_table();
  all.films.assign(calculator.films().notes().begin(), calculator.films().notes().end());
  return all;
}

}  // namespace coatday::planner
