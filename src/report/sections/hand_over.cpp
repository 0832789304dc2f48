#include "report/sections/hand_over.h"

#include <algorithm>

namespace coatday::report {
namespace {

using ThreeMoments = finish::PerEstimate<job::HandOver>;
constexpr std::array estimates{&ThreeMoments::fast, &ThreeMoments::expected, &ThreeMoments::slow};

bool same(const job::HandOver& a, const job::HandOver& b) {
  return std::all_of(hand_over_moments.begin(), hand_over_moments.end(), [&](const auto& m) { return a.*m.second == b.*m.second; });
}

bool same(const job::PieceResult& a, const job::PieceResult& b) {
  return a.due == b.due &&
         std::all_of(estimates.begin(), estimates.end(), [&](const auto one) { return same(a.ready.*one, b.ready.*one); });
}

// A page may break the line before the hour.
Phrase moment(const std::optional<Instant>& t, Mark mark, const Texts& texts) {
  if (!t) return on_page("-", "–");
  return on_page(texts.instant(*t), texts.date(*t) + " " + clock_time(texts.zone.to_local(*t)), mark);
}

Table::Row promise(const job::PieceResult& piece, const Texts& texts) {
  Phrase words = "promised " + texts.instant(*piece.due);
  if (piece.slack)
    words += ": " + Phrase(slack_text(*piece.slack), piece.slack->count() < 0 ? Mark::bad : Mark::good) + " on the safe date";
  return {{}, {words}};
}

Table::Group dates(const job::PieceResult& piece, const std::string& names, const Texts& texts) {
  Table::Group group{typed(names), {}};
  for (const auto& [name, moment_of] : hand_over_moments) {
    const bool waits_for_hands = moment_of == &job::HandOver::deliver;
    const Phrase early = waits_for_hands ? on_page("", "–") : moment(piece.ready.fast.*moment_of, Mark::faint, texts);
    group.rows.push_back({{unbroken(name), early, moment(piece.ready.expected.*moment_of, Mark::plain, texts),
                           moment(piece.ready.slow.*moment_of, Mark::strong, texts)}});
  }
  if (piece.due) group.rows.push_back(promise(piece, texts));
  return group;
}

bool has_gap(const job::PieceResult& piece) {
  return std::any_of(hand_over_moments.begin(), hand_over_moments.end(),
                     [&](const auto& m) { return !(piece.ready.expected.*m.second && piece.ready.slow.*m.second); });
}

}  // namespace

std::optional<Section> hand_over(const job::Plan& plan, const Texts& texts, const ChosenPieces& chosen) {
  if (plan.pieces.empty() || plan.status != job::Status::planned) return std::nullopt;
  Table table{"dates", "", {{}, {"earliest"}, {"expected"}, {"safe"}}};
  std::vector<bool> shown(plan.pieces.size(), false);
  bool gap = false;
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    if (shown[i] || !chosen.has(i)) continue;
    std::vector<std::string> names;
    for (std::size_t j = i; j < plan.pieces.size(); ++j) {
      if (shown[j] || !chosen.has(j) || !same(plan.pieces[i], plan.pieces[j])) continue;
      shown[j] = true;
      names.push_back(plan.pieces[j].name);
    }
    table.groups.push_back(dates(plan.pieces[i], listed(names), texts));
    gap = gap || has_gap(plan.pieces[i]);
  }
  Section section{"hand-over", "Hand-over", "what may be done with it, from when; promise the safe dates", {table}};
  if (gap) section.blocks.emplace_back(Paragraph{"not reached in this shop's air, or the product has no such stage", on_page("-  ", "–")});
  return section;
}

}  // namespace coatday::report
