#include "input/join_orders.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "input/names.h"

namespace coatday::input {
namespace {

using NewIds = std::map<std::string, std::string>;  // of one order's pieces: from all that they may be called

std::map<std::string, int> count_ids(const std::vector<job::Order>& orders) {
  std::map<std::string, int> counts;
  for (const job::Order& order : orders) {
    for (const job::OrderPiece& piece : order.pieces) ++counts[piece.piece.id];
  }
  return counts;
}

std::string with_order(const job::Order& order, const std::string& id) {
  const std::string name = kebab(order.name);
  return (name.empty() ? "order" : name) + "-" + id;
}

std::string unique(const std::string& id, std::set<std::string>& taken) {
  std::string one = id;
  for (int again = 2; !taken.insert(one).second; ++again) one = id + "-" + std::to_string(again);
  return one;
}

// An event's id begins with its piece's.
std::string renamed(const std::string& event, const NewIds& ids) {
  const std::size_t end = event.find('/');
  const auto found = ids.find(event.substr(0, end));
  return found == ids.end() || end == std::string::npos ? event : found->second + event.substr(end);
}

// A piece keeps its id unless another order has it, too. Its order's history may call it either way: it was written in one company and is
// read in another. The id as it is where the order is planned alone comes first.
void name_pieces(job::Order& order, const std::map<std::string, int>& counts, std::set<std::string>& taken) {
  NewIds bare, longer;
  for (job::OrderPiece& piece : order.pieces) {
    std::string& id = piece.piece.id;
    const std::string own = id, full = with_order(order, id);
    if (counts.at(own) > 1) id = unique(full, taken);
    piece.other_id = counts.at(own) > 1 ? own : full;
    bare[own] = longer[full] = id;
  }
  bare.merge(longer);
  for (job::Done& done : order.history) done.event = renamed(done.event, bare);
}

void add(job::Order& all, job::Order order) {
  for (job::OrderPiece& piece : order.pieces) {
    piece.order = order.name;
    piece.piece.name = kebab(order.name) == kebab(piece.piece.name) ? order.name : order.name + " / " + piece.piece.name;
    all.pieces.push_back(std::move(piece));
  }
  std::ranges::move(order.history, std::back_inserter(all.history));
}

std::string listed(const std::vector<job::Order>& orders) {
  std::string names = orders.front().name;
  for (std::size_t i = 1; i < orders.size(); ++i) names += (i + 1 < orders.size() ? ", " : " and ") + orders[i].name;
  return names;
}

std::optional<Instant> first_start(const std::vector<job::Order>& orders) {
  std::optional<Instant> first = orders.front().start;
  for (const job::Order& order : orders) {
    if (!order.start) return std::nullopt;
    first = std::min(*first, *order.start);
  }
  return first;
}

}  // namespace

job::Order join_orders(std::vector<job::Order> orders) {
  const std::map<std::string, int> counts = count_ids(orders);
  std::set<std::string> taken;
  for (const auto& [id, count] : counts) {
    if (count == 1) taken.insert(id);
  }
  for (job::Order& order : orders) name_pieces(order, counts, taken);
  if (orders.size() == 1) return std::move(orders.front());
  job::Order all;
  all.name = listed(orders);
  all.file = orders.front().file;
  all.start = first_start(orders);
  for (job::Order& order : orders) add(all, std::move(order));
  return all;
}

}  // namespace coatday::input
