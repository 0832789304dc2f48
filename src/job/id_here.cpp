#include "job/id_here.h"

#include <algorithm>

namespace coatday::job {

std::string id_here(const Order& order, const std::string& event) {
  const std::size_t end = std::min(event.find('/'), event.size());
  const std::string piece = event.substr(0, end);
  const auto has_id = [&](const OrderPiece& one) { return one.piece.id == piece; };
  if (std::ranges::any_of(order.pieces, has_id)) return event;
  const auto meant = [&](const OrderPiece& one) { return one.other_id == piece; };
  const auto found = std::ranges::find_if(order.pieces, meant);
  if (found == order.pieces.end() || std::ranges::count_if(order.pieces, meant) > 1) return event;
  return found->piece.id + event.substr(end);
}

}  // namespace coatday::job
