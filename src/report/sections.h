#pragma once
// The parts that the reports are put together from. Inside this room only.

#include <string>
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
[[nodiscard]] Lines purchase(const plan::Plan&, const Look&);
[[nodiscard]] Lines hand_over(const plan::Plan&, const Look&);
/// The fresh air that solvent vapour takes, against the shop's.
[[nodiscard]] Lines vapour(const plan::Plan&, const Look&);
[[nodiscard]] Lines findings(const std::vector<plan::Finding>&, const Look&);
[[nodiscard]] Lines cautions(const plan::Plan&, const Look&);
[[nodiscard]] Lines proposals(const plan::Plan&, const Look&);
/// What moved against the earlier plan, where there was one.
[[nodiscard]] Lines moved(const plan::Plan&, const Look&);
/// Some of its events with their earlier starts, no more than a screen.
[[nodiscard]] Lines moves(const plan::Plan&, const std::vector<plan::Move>&, const Look&);
[[nodiscard]] Lines contradiction(const plan::Plan&, const Look&);

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
