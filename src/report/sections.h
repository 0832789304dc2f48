#pragma once
// The parts that the reports are put together from. Inside this room only.

#include <string>
#include <utility>
#include <vector>

#include "plan/plan.h"
#include "report/lines.h"

namespace coatday::report {

/// What goes on, colour or film, to which face on which day; what is missing is a hole that is seen.
[[nodiscard]] Lines ledger(const plan::Plan&, const Look&);
/// Day by day, waiting included.
[[nodiscard]] Lines days(const plan::Plan&, const Look&);
/// "logger until Tue 12 Jan 13:30; then timetable"; empty where all hours rest on one source.
[[nodiscard]] std::string air_hours(const plan::Plan&);
[[nodiscard]] Lines summary(const plan::Plan&, const std::string& order, const Look&);
/// How good the plan is, or that there is none.
[[nodiscard]] std::string verdict_words(const plan::Plan&);
/// What the shop's ventilation does to the finishes in use; empty where nothing.
[[nodiscard]] std::string room_words(const plan::Plan&);
[[nodiscard]] Lines purchase(const plan::Plan&, const Look&);
[[nodiscard]] Lines hand_over(const plan::Plan&, const Look&);
/// A label and what it says.
using Facts = std::vector<std::pair<std::string, std::string>>;
/// The fresh air that solvent vapour takes, against the shop's. Nothing where there is none.
[[nodiscard]] Facts vapour_facts(const plan::Plan&, Units);
[[nodiscard]] std::string vapour_caution();
[[nodiscard]] Lines vapour(const plan::Plan&, const Look&);
[[nodiscard]] Lines findings(const std::vector<plan::Finding>&, const Look&);
[[nodiscard]] Lines cautions(const plan::Plan&, const Look&);
[[nodiscard]] Lines proposals(const plan::Plan&, const Look&);
/// What moved against the earlier plan, where there was one.
[[nodiscard]] Lines moved(const plan::Plan&, const Look&);
/// Some of its events with their earlier starts, no more than a screen.
[[nodiscard]] Lines moves(const plan::Plan&, const std::vector<plan::Move>&, const Look&);
[[nodiscard]] Lines contradiction(const plan::Plan&, const Look&);
/// That there is no plan, before the requirements that contradict each other; empty where there is one.
[[nodiscard]] std::string contradiction_words(const plan::Plan&);
/// "14 steps stay where they were; 2 are new."
[[nodiscard]] std::string rest_words(const plan::Changes&);
/// Where a mistake stands: " (order.yaml:5:11)".
[[nodiscard]] std::string place_words(const Location&);

/// "equal on all 9 wooden parts", or which are not.
struct FaceVerdict {
  bool equal = true;
  std::string words;
};
[[nodiscard]] FaceVerdict both_faces(const plan::Plan&);

/// A step of the day with all that is said about it.
[[nodiscard]] Lines event_lines(const plan::Plan&, const plan::Event&, const Look&);
/// A coat's solvent and its air; nothing where it has none.
[[nodiscard]] std::string vapour_words(const plan::Event&, Units);
/// The start of a caution, as far as its first stop.
[[nodiscard]] std::string short_caution(const std::string& text);

}  // namespace coatday::report
