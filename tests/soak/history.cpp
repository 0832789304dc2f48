#include "tests/soak/history.h"

#include <algorithm>

#include "tests/soak/when.h"

namespace coatday::soak {
namespace {

using nlohmann::json;

struct Event {
  std::string id, piece;
  When start, end;
};

std::string text_of(const json& object, const char* key) {
  const auto found = object.find(key);
  return found != object.end() && found->is_string() ? found->get<std::string>() : "";
}

/// By their start. Work of the shop belongs to no order.
std::vector<Event> events_of(const json& plan) {
  std::vector<Event> events;
  for (const json& one : plan.value("events", json::array())) {
    const auto start = when_of(text_of(one, "start")), end = when_of(text_of(one, "end"));
    const std::string piece = text_of(one, "piece");
    if (start && end && *start <= *end && !piece.empty()) events.push_back({text_of(one, "id"), piece, *start, *end});
  }
  std::stable_sort(events.begin(), events.end(), [](const Event& a, const Event& b) { return a.start < b.start; });
  return events;
}

/// Ids of pieces in the order of the plan are those of the orders' pieces one after another.
std::map<std::string, std::string> order_of_piece(const Case& one, const json& plan) {
  std::map<std::string, std::string> order_of;
  const json pieces = plan.value("pieces", json::array());
  std::size_t next = 0;
  for (const std::string& name : one.orders) {
    const Tree* given = find(one.trees.at(name), "pieces");
    for (std::size_t i = 0; given != nullptr && i < given->children.size() && next < pieces.size(); ++i)
      order_of[text_of(pieces[next++], "id")] = name;
  }
  return order_of;
}

/// All up to a moment, or all of one piece.
std::vector<Event> done_of(Random& random, const std::vector<Event>& all) {
  const Event& last = all[random.below(all.size())];
  const bool by_piece = random.chance(0.2);
  std::vector<Event> done;
  for (const Event& event : all) {
    if (by_piece ? event.piece == last.piece : event.end <= last.end) done.push_back(event);
  }
  return done;
}

/// Later by some minutes, and the longer the later, as a day in a shop goes.
void shift(Random& random, std::vector<Event>& done) {
  std::chrono::minutes late(0);
  for (Event& event : done) {
    event.start += late;
    if (random.chance(0.3)) late += std::chrono::minutes(random.between(1, 17));
    event.end += late;
  }
}

}  // namespace

std::optional<Case> some_time_later(Random& random, const Case& one, const json& plan) {
  const std::vector<Event> all = events_of(plan);
  if (all.empty()) return std::nullopt;
  std::vector<Event> done = done_of(random, all);
  if (random.chance(0.4)) shift(random, done);
  const auto order_of = order_of_piece(one, plan);
  Case later = one;
  When from = done.front().end;
  for (const std::string& name : one.orders) {
    Tree& history = set(later.trees[name], "history", list());
    for (const Event& event : done) {
      const auto order = order_of.find(event.piece);
      if (order == order_of.end() || order->second != name) continue;
      Tree& entry = history.children.emplace_back(map());
      set(entry, "event", event.id);
      set(entry, "start", stamp(event.start));
      set(entry, "end", stamp(event.end));
      from = std::max(from, event.end);
    }
    remove(later.trees[name], "start");
  }
  if (random.chance(0.5)) from += std::chrono::minutes(random.between(0, 5000));
  later.from = stamp(from);
  return later;
}

Case with_earlier_plan(Case one, const json& plan) {
  json kept = {{"schema", plan.value("schema", "")}, {"events", plan.value("events", json::array())}};
  one.tables[earlier_plan] = kept.dump();
  return one;
}

}  // namespace coatday::soak
