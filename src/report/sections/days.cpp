#include "report/sections/days.h"

#include <algorithm>

#include "report/sections/cautions.h"
#include "report/sections/day_list.h"
#include "report/sections/event_facts.h"
#include "report/sections/waiting.h"

namespace coatday::report {
namespace {

using Step = Steps::Step;

Step step_of(const job::Plan& plan, const job::Event& event, const Texts& texts) {
  const EventFacts facts = event_facts(plan, event, texts.units);
  Step step{event.id, event.start, event.end, typed(event.name), facts.subject, facts.how};
  const Phrase next = facts.next.empty() ? Phrase() : Phrase("next: ", Mark::faint) + facts.next;
  step.details = {facts.ends, typed(event.note), facts.surface, Phrase(facts.wet, Mark::strong),
                  next,       facts.last,        facts.resting, facts.vapour};
  for (const std::string& key : event.cautions) step.cautions.push_back(caution_at_step(plan, key));
  step.coat = job::is_coat(event.kind);
  step.done = event.done;
  return step;
}

Steps steps_of(const job::Plan& plan, const Day& day, const Texts& texts) {
  Steps steps{texts.zone};
  Instant busy_until = day_begins(plan, day);
  for (const job::Event* event : day.events) {
    const std::string idle = event->start > busy_until ? idle_text(plan, busy_until, event->start) : "";
    if (!idle.empty()) steps.steps.push_back(Step{"", busy_until, event->start, "wait", idle});
    steps.steps.push_back(step_of(plan, *event, texts));
    busy_until = std::max(busy_until, event->end);
  }
  for (const std::string& words : night_text(plan, busy_until))
    steps.steps.push_back(Step{"", busy_until, busy_until, on_page("night", "Overnight"), words});
  return steps;
}

Section day_section(const Day& first, const Day& last) {
  Section section;
  section.title = Phrase(date_text(first.date), Mark::strong);
  if (first.date != last.date) section.title += on_page(unbroken(" - "), " – ", Mark::strong) + Phrase(date_text(last.date), Mark::strong);
  section.kind = !first.events.empty() ? "day" : first.closed() ? "day quiet closed" : "day quiet";
  section.lasts = Section::Time{first.midnight, last.next_midnight};
  return section;
}

}  // namespace

std::optional<Section> days(const job::Plan& plan, const Texts& texts) {
  const std::vector<Day> all = day_list(plan);
  if (all.empty()) return std::nullopt;
  Section section{"days", "Day by day"};
  section.title_in = Media::page;
  for (const DaySpan& span : day_spans(all)) {
    const Day& first = all[span.first];
    const Day& last = all[span.last];
    Section day = day_section(first, last);
    if (first.events.empty()) {
      day.lead = quiet_text(plan, first, last, texts.units);
    } else {
      day.lead = hours_text(plan, first, span.last + 1 < all.size() ? &all[span.last + 1] : nullptr, texts.units);
      day.blocks.emplace_back(steps_of(plan, first, texts));
    }
    section.blocks.emplace_back(std::move(day));
  }
  return section;
}

}  // namespace coatday::report
