#include "job/step_id.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "job/load_items.h"

namespace coatday::job {
namespace {

using Kind = StepId::Kind;
using Pass = StepId::Pass;

constexpr std::string_view shop = "shop", cans = "cans", scuff_suffix = "-scuff";

/// The last part of an id that has one.
constexpr std::array<std::pair<std::string_view, Pass>, 4> passes{
    {{"first", Pass::first}, {"second", Pass::second}, {"hidden", Pass::hidden}, {"show", Pass::show}}};
constexpr std::array<std::pair<std::string_view, Kind>, 2> turns{{{"turn", Kind::turn}, {"turn-back", Kind::turn_back}}};
constexpr std::array<std::pair<std::string_view, Kind>, 2> of_loads{{{"carry-in", Kind::carry_in}, {"measure", Kind::measure}}};

template <class Table, class Value>
std::string_view name_in(const Table& table, Value value) {
  const auto row = std::find_if(table.begin(), table.end(), [value](const auto& one) { return one.second == value; });
  return row == table.end() ? std::string_view() : row->first;
}

template <class Table>
auto value_in(const Table& table, std::string_view name) {
  const auto row = std::find_if(table.begin(), table.end(), [name](const auto& one) { return one.first == name; });
  return row == table.end() ? std::nullopt : std::optional(row->second);
}

std::vector<std::string> parts_of(std::string_view text) {
  std::vector<std::string> parts;
  for (std::size_t begin = 0; begin <= text.size();) {
    const std::size_t end = std::min(text.find('/', begin), text.size());
    parts.emplace_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return parts;
}

StepId without_load(const std::string& first, const std::string& second) {
  if (first == cans) return {"", "", second, Pass::only, Kind::carry_in};
  return {first == shop ? "" : first, "", second, Pass::only, Kind::other_work};
}

}  // namespace

std::string to_string(const StepId& id) {
  if (id.load.empty()) {
    const std::string first = !id.piece.empty() ? id.piece : std::string(id.kind == Kind::carry_in ? cans : shop);
    return first + "/" + id.step;
  }
  if (const std::string_view name = name_in(of_loads, id.kind); !name.empty()) return load_key(id) + "/" + std::string(name);
  const std::string step = load_key(id) + "/" + id.step;
  const std::string_view turn = name_in(turns, id.kind), last = turn.empty() ? name_in(passes, id.pass) : turn;
  return last.empty() ? step : step + "/" + std::string(last);
}

std::optional<StepId> parse_step_id(std::string_view text) {
  const std::vector<std::string> parts = parts_of(text);
  if (std::any_of(parts.begin(), parts.end(), [](const std::string& part) { return part.empty(); })) return std::nullopt;
  if (parts.size() == 2) return without_load(parts[0], parts[1]);
  if (parts.size() == 3) {
    if (const auto kind = value_in(of_loads, parts[2])) return StepId{parts[0], parts[1], "", Pass::only, *kind};
    return StepId{parts[0], parts[1], parts[2], Pass::only, Kind::step};
  }
  if (parts.size() != 4) return std::nullopt;
  if (const auto kind = value_in(turns, parts[3])) return StepId{parts[0], parts[1], parts[2], Pass::only, *kind};
  if (const auto pass = value_in(passes, parts[3])) return StepId{parts[0], parts[1], parts[2], *pass, Kind::step};
  return std::nullopt;
}

std::string load_key(const StepId& id) { return id.load.empty() ? "" : id.piece + "/" + id.load; }

bool is_about(const StepId& event, std::string_view asked) {
  std::optional<StepId> id = parse_step_id(asked);
  if (!id || id->load.empty()) return id == event;
  const bool held = within(items_of(id->load), items_of(event.load));
  id->load = event.load;
  return held && id == event;
}

std::string by_first_item(std::string_view event) {
  std::optional<StepId> id = parse_step_id(event);
  const LoadItems items = id ? items_of(id->load) : LoadItems{};
  if (items.empty()) return std::string(event);
  id->load = load_id({{items.front().part, items.front().first, items.front().first}}, {false});
  return to_string(*id);
}

std::string scuff_before(const std::string& coat) { return coat + std::string(scuff_suffix); }

std::optional<std::string> coat_after(const std::string& scuff) {
  if (scuff.size() <= scuff_suffix.size() || !scuff.ends_with(scuff_suffix)) return std::nullopt;
  return scuff.substr(0, scuff.size() - scuff_suffix.size());
}

}  // namespace coatday::job
