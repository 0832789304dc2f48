#include <algorithm>

#include "report/document/table.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

bool same(const job::HandOver& a, const job::HandOver& b) {
  return std::all_of(hand_over_moments.begin(), hand_over_moments.end(), [&](const auto& m) { return a.*m.second == b.*m.second; });
}

std::string cell(const std::optional<Instant>& t, const Zone& zone) { return t ? instant_text(*t, zone) : "-"; }

TextTable dates(const job::PieceResult& piece, const Zone& zone) {
  TextTable table{{{}, {Text("early side", Mark::faint)}, {Text("expected", Mark::faint)}, {Text("late side", Mark::faint)}}, {}};
  for (const auto& [name, moment] : hand_over_moments) {
    const bool waits_for_hands = moment == &job::HandOver::deliver;
    table.rows.push_back({Text(unbroken(name)), Text(waits_for_hands ? "" : cell(piece.ready_early.*moment, zone)),
                          Text(cell(piece.ready.*moment, zone)), Text(cell(piece.ready_late.*moment, zone))});
  }
  return table;
}

bool has_gap(const job::PieceResult& piece) {
  return std::any_of(hand_over_moments.begin(), hand_over_moments.end(),
                     [&](const auto& m) { return !(piece.ready.*m.second && piece.ready_late.*m.second); });
}

Lines promise(const job::PieceResult& piece, const Zone& zone, const TextStyle& style) {
  if (!piece.due) return {};
  Text words("promised " + instant_text(*piece.due, zone));
  if (piece.slack) words += ": " + Text(slack_text(*piece.slack), piece.slack->count() < 0 ? Mark::bad : Mark::good) + " on the late side";
  return hang("    ", words, style);
}

}  // namespace

Lines hand_over(const job::Plan& plan, const TextStyle& style) {
  if (plan.pieces.empty() || plan.status != job::Status::feasible) return {};
  Lines lines = hang(Text("Hand-over", Mark::strong) + "  ", "what may be done with it, from when; give the customer the late side", style);
  std::vector<bool> told(plan.pieces.size(), false);
  bool gap = false;
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    if (told[i]) continue;
    const job::PieceResult& piece = plan.pieces[i];
    std::vector<std::string> names;
    for (std::size_t j = i; j < plan.pieces.size(); ++j) {
      const job::PieceResult& other = plan.pieces[j];
      if (told[j] || piece.due != other.due || !same(piece.ready, other.ready) || !same(piece.ready_late, other.ready_late) ||
          !same(piece.ready_early, other.ready_early))
        continue;
      told[j] = true;
      names.push_back(other.name);
    }
    append(lines, hang("  ", listed(names), style));
    append(lines, layout(dates(piece, plan.shop.zone), 4, style));
    append(lines, promise(piece, plan.shop.zone, style));
    gap = gap || has_gap(piece);
  }
  if (gap) append(lines, hang("  -  ", "not reached in this shop's air, or the product has no such stage", style));
  return lines;
}

}  // namespace coatday::report
