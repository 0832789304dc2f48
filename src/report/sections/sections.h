#pragma once
// The parts that the reports are put together from. Inside this room only.

#include <string>
#include <utility>
#include <vector>

#include "job/plan.h"
#include "report/document/lines.h"

namespace coatday::report {

/// What goes on, colour or film, to which face on which day; what is missing is a hole that is seen.
[[nodiscard]] Lines ledger(const job::Plan&, const TextStyle&);
/// Day by day, waiting included.
[[nodiscard]] Lines days(const job::Plan&, const TextStyle&);
/// "logger until Tue 12 Jan 13:30; then timetable"; empty where all hours rest on one source.
[[nodiscard]] std::string air_hours(const job::Plan&);
[[nodiscard]] Lines summary(const job::Plan&, const std::string& order, const TextStyle&);
/// How good the plan is, or that there is none.
[[nodiscard]] std::string verdict_words(const job::Plan&);
/// What the shop's ventilation does to the finishes in use; empty where nothing.
[[nodiscard]] std::string room_words(const job::Plan&);
[[nodiscard]] Lines purchase(const job::Plan&, const TextStyle&);
[[nodiscard]] Lines hand_over(const job::Plan&, const TextStyle&);
/// A label and what it says.
using LabelledFacts = std::vector<std::pair<std::string, std::string>>;
/// The fresh air that solvent vapour takes, against the shop's. Nothing where there is none.
[[nodiscard]] LabelledFacts vapour_facts(const job::Plan&, Units);
[[nodiscard]] std::string vapour_caution();
[[nodiscard]] Lines vapour(const job::Plan&, const TextStyle&);
[[nodiscard]] Lines findings(const std::vector<job::Finding>&, const TextStyle&);
[[nodiscard]] Lines cautions(const job::Plan&, const TextStyle&);
[[nodiscard]] Lines proposals(const job::Plan&, const TextStyle&);
/// What moved against the earlier plan, where there was one.
[[nodiscard]] Lines moved(const job::Plan&, const TextStyle&);
/// Some of its events with their earlier starts, no more than a screen.
[[nodiscard]] Lines moves(const job::Plan&, const std::vector<job::Move>&, const TextStyle&);
[[nodiscard]] Lines contradiction(const job::Plan&, const TextStyle&);
/// That there is no plan, before the requirements that contradict each other; empty where there is one.
[[nodiscard]] std::string contradiction_words(const job::Plan&);
/// "14 steps stay where they were; 2 are new."
[[nodiscard]] std::string rest_words(const job::Changes&);
/// Where a mistake stands: " (order.yaml:5:11)".
[[nodiscard]] std::string place_words(const Location&);

/// "equal on all 9 wooden parts", or which are not.
struct FaceVerdict {
  bool equal = true;
  std::string words;
};
[[nodiscard]] FaceVerdict both_faces(const job::Plan&);

/// A step of the day with all that is said about it.
[[nodiscard]] Lines event_lines(const job::Plan&, const job::Event&, const TextStyle&);
/// A coat's solvent and its air; nothing where it has none.
[[nodiscard]] std::string vapour_words(const job::Event&, Units);
/// The start of a caution, as far as its first stop.
[[nodiscard]] std::string short_caution(const std::string& text);

}  // namespace coatday::report
