#include "report/sections/moved.h"

namespace coatday::report {
namespace {

std::string load_name(const job::Plan& plan, const job::Event& event) {
  if (plan.pieces.size() < 2 || !event.piece) return event.load;
  return plan.pieces.at(*event.piece).name + (event.load.empty() ? "" : " / " + event.load);
}

std::string rest_text(const job::Changes& changes) {
  std::string text = counted(changes.stayed, "step stays", "steps stay") + " where " + (changes.stayed == 1 ? "it was" : "they were");
  if (changes.added > 0) text += "; " + counted(changes.added, "is new", "are new");
  if (changes.unknown > 0) {
    text += "; " + counted(changes.unknown, "step", "steps") + " of the earlier plan " + (changes.unknown == 1 ? "is" : "are") +
            " not in this one";
  }
  return text + ".";
}

}  // namespace

Table moves(const job::Plan& plan, const std::vector<job::Move>& moved, const Texts& texts) {
  Table table{"moves", "", {{"was"}, {"now"}, {}, {}}, {{}}};
  table.most_lines = 20;  // with what stands around them, no more than a screen
  for (const job::Move& move : moved) {
    const job::Event& event = plan.events.at(move.event);
    table.groups[0].rows.push_back(
        {{Phrase(texts.instant(move.was), Mark::faint), texts.instant(event.start), typed(event.name), typed(load_name(plan, event))}});
  }
  return table;
}

std::optional<Section> moved(const job::Plan& plan, const Texts& texts) {
  if (!plan.changes) return std::nullopt;
  const job::Changes& changes = *plan.changes;
  const bool none = changes.moved.empty();
  Section section{"moved", "Moved", none ? "nothing" : counted(changes.moved.size(), "step", "steps") + " against the earlier plan"};
  if (!none) section.blocks.emplace_back(moves(plan, changes.moved, texts));
  section.blocks.emplace_back(Paragraph{rest_text(changes)});
  return section;
}

}  // namespace coatday::report
