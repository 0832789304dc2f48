// A plan beside the earlier one: what moved, from when to when.
#include <fmt/core.h>

#include <algorithm>

#include "report/document/table.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr std::size_t most_lines = 20;  // with what stands around them, no more than a screen

std::string whose(const job::Plan& plan, const job::Event& event) {
  if (plan.pieces.size() < 2 || !event.piece) return event.load;
  return plan.pieces.at(*event.piece).name + (event.load.empty() ? "" : " / " + event.load);
}

TextTable rows(const job::Plan& plan, const std::vector<job::Move>& moved, std::size_t count) {
  TextTable table{{{Text("was", Mark::faint)}, {Text("now", Mark::faint)}, {}, {}}, {}};
  for (std::size_t i = 0; i < count; ++i) {
    const job::Event& event = plan.events.at(moved[i].event);
    table.rows.push_back({Text(instant_text(moved[i].was, plan.shop.zone), Mark::faint), instant_text(event.start, plan.shop.zone),
                          event.name, whose(plan, event)});
  }
  return table;
}

}  // namespace

std::string rest_words(const job::Changes& changes) {
  std::string words = counted(changes.stayed, "step stays", "steps stay") + " where " + (changes.stayed == 1 ? "it was" : "they were");
  if (changes.added > 0) words += "; " + counted(changes.added, "is new", "are new");
  if (changes.unknown > 0) {
    words += "; " + counted(changes.unknown, "step", "steps") + " of the earlier plan " + (changes.unknown == 1 ? "is" : "are") +
             " not in this one";
  }
  return words + ".";
}

Lines moves(const job::Plan& plan, const std::vector<job::Move>& moved, const TextStyle& style) {
  Lines lines;
  std::size_t shown = std::min(moved.size(), most_lines);
  while (shown > 0 && layout(rows(plan, moved, shown), 2, style).size() > most_lines) --shown;
  if (shown > 0) append(lines, layout(rows(plan, moved, shown), 2, style));
  if (shown < moved.size()) append(lines, hang("  ", fmt::format("and {} more", moved.size() - shown), style));
  return lines;
}

Lines moved(const job::Plan& plan, const TextStyle& style) {
  if (!plan.changes) return {};
  const job::Changes& changes = *plan.changes;
  Lines lines =
      hang(Text("Moved  ", Mark::strong),
           changes.moved.empty() ? "nothing" : counted(changes.moved.size(), "step", "steps") + " against the earlier plan", style);
  append(lines, moves(plan, changes.moved, style));
  append(lines, hang("  ", rest_words(changes), style));
  return lines;
}

}  // namespace coatday::report
