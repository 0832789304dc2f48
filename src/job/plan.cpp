#include "job/plan.h"

#include <algorithm>

namespace coatday::job {

std::string_view word(EventKind kind) {
  switch (kind) {
    case EventKind::prepare:
      return "prepare";
    case EventKind::fill:
      return "fill";
    case EventKind::stain:
      return "stain";
    case EventKind::seal:
      return "seal";
    case EventKind::topcoat:
      return "topcoat";
    case EventKind::prime:
      return "prime";
    case EventKind::paint:
      return "paint";
    case EventKind::scuff:
      return "scuff";
    case EventKind::turn:
      return "turn";
    case EventKind::bake:
      return "bake";
    case EventKind::other:
      break;
  }
  return "other";
}

bool is_coat(EventKind kind) {
  switch (kind) {
    case EventKind::fill:
    case EventKind::stain:
    case EventKind::seal:
    case EventKind::topcoat:
    case EventKind::prime:
    case EventKind::paint:
      return true;
    default:
      return false;
  }
}

int days_late(const Zone& zone, Instant due, Instant delivered) {
  if (delivered <= due) return 0;
  const auto days = day_of(zone.to_local(delivered)) - day_of(zone.to_local(due));
  return std::max(1, static_cast<int>(days.count()));
}

int days_late(const Plan& plan, const PieceResult& piece) {
  if (!piece.due || !piece.slack || *piece.slack >= Hours(0)) return 0;
  return std::max(1, days_late(plan.shop.zone, *piece.due, later(*piece.due, -*piece.slack)));
}

bool is_finished(const Plan& plan, std::size_t piece) {
  const auto open = [piece](const Event& event) { return event.piece == piece && !event.done; };
  return plan.status == Status::planned && std::none_of(plan.events.begin(), plan.events.end(), open);
}

}  // namespace coatday::job
