#include "report/figures/today.h"

#include "report/document/element.h"
#include "report/sections/day_list.h"
#include "report/sections/event_facts.h"

namespace coatday::report::page {
namespace {

void draw_brief(Element parent, const job::Plan& plan, const Day& day, const std::string& title, const Texts& texts) {
  Element box = parent.add("div", {{"class", "brief"}});
  box.add("h3", {}, title);
  Element list = box.add("ol", {});
  for (const job::Event* event : day.events) {
    Element step = list.add("li", {});
    step.add("time", {}, clock_time(texts.zone.to_local(event->start)));
    Element what = step.add("span", {});
    what.add("b", {}).name(event->name);
    if (const std::string subject = event_facts(plan, *event, texts.units).subject; !subject.empty()) what.text(" " + subject);
  }
}

// The first two days with work on them, from today on.
void draw_briefs(Element parent, const job::Plan& plan, const Texts& texts) {
  const LocalDay today = local_day(plan.from, texts.zone);
  Element briefs = parent.add("div", {{"class", "briefs"}});
  int shown = 0;
  for (const Day& day : day_list(plan)) {
    if (day.events.empty() || day.date < today) continue;
    const char* which = day.date == today ? "Today, " : shown == 0 ? "First, " : "Next, ";
    draw_brief(briefs, plan, day, which + date_text(day.date), texts);
    if (++shown == 2) return;
  }
}

}  // namespace

Section today(const job::Plan& plan, const Texts& texts) {
  Section section{"today", "Today and next"};
  section.media = Media::page;
  section.blocks.emplace_back(Figure{"", [&plan, texts](Element parent) { draw_briefs(parent, plan, texts); }});
  return section;
}

}  // namespace coatday::report::page
