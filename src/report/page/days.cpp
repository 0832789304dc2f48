// Today and next, and the calendar by day.
#include <fmt/core.h>

#include <algorithm>
#include <set>

#include "report/sections/day_list.h"
#include "report/sections/event_facts.h"
#include "report/sections/sections_html.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

std::string clock(const job::Plan& plan, Instant t) { return clock_time(plan.shop.zone.to_local(t)); }

std::string seconds(Instant t) { return fmt::format("{}", t.time_since_epoch().count()); }

void add_brief(Element parent, const job::Plan& plan, const Day& day, const char* title) {
  Element box = parent.add("div", {{"class", "brief"}});
  box.add("h3", {}).add("span", {{"class", "when"}}, title).text(" ");
  Element list = box.add("ol", {});
  for (const job::Event* event : day.events) {
    Element step = list.add("li", {});
    step.add("time", {}, clock(plan, event->start));
    Element what = step.add("span", {});
    what.add("b", {}).name(event->name);
    if (const std::string subject = event_facts(plan, *event, Units::metric).subject; !subject.empty()) what.text(" " + subject);
  }
}

/// The days one after the other; each caution in full where it first applies.
class Days {
 public:
  Days(Element section, const job::Plan& plan, Units units) : section_(section), plan_(plan), units_(units), all_(day_list(plan)) {}

  void add() {
    for (const DaySpan& span : day_spans(all_)) {
      if (all_[span.first].events.empty()) {
        add_quiet(all_[span.first], all_[span.last]);
      } else {
        add_day(all_[span.first], span.last + 1 < all_.size() ? &all_[span.last + 1] : nullptr);
      }
    }
  }

 private:
  Element article(const Day& first, const Day& last, std::string_view kind) {
    return section_.add(
        "article", {{"class", std::string(kind)}, {"data-from", seconds(first.midnight)}, {"data-until", seconds(last.next_midnight)}});
  }

  void add_quiet(const Day& first, const Day& last) {
    Element day = article(first, last, first.closed() ? "day quiet closed" : "day quiet");
    const std::string until = first.date == last.date ? "" : " – " + date_text(last.date);
    day.add("h3", {}, date_text(first.date) + until);
    day.add("p", {{"class", "air"}}, quiet_words(plan_, first, last, units_));
  }

  void add_day(const Day& day, const Day* next) {
    Element article = this->article(day, day, "day");
    article.add("h3", {}, date_text(day.date));
    article.add("p", {{"class", "air"}}, hours_words(plan_, day, next, units_));
    Element list = article.add("ol", {{"class", "steps"}});
    Instant busy_until = day_begins(plan_, day);
    for (const job::Event* event : day.events) {
      if (event->start > busy_until) add_idle(list, busy_until, event->start);
      add_step(list, *event);
      busy_until = std::max(busy_until, event->end);
    }
    const std::vector<std::string> night = night_words(plan_, busy_until);
    if (night.empty()) return;
    Element rest = article.add("div", {{"class", "night"}});
    rest.add("b", {}, "Overnight");
    Element dries = rest.add("ul", {});
    for (const std::string& words : night) dries.add("li", {}, words);
  }

  void add_idle(Element list, Instant from, Instant until) {
    const std::string words = idle_words(plan_, from, until);
    if (words.empty()) return;
    Element step = list.add("li", {{"class", "wait"}});
    add_time(step, from, until);
    Element what = step.add("div", {{"class", "what"}});
    what.add("b", {}, "wait");
    step.add("div", {{"class", "more"}}).add("p", {}, words);
  }

  void add_time(Element step, Instant from, Instant until) {
    Element time = step.add("p", {{"class", "time"}});
    time.add("time", {}, clock(plan_, from));
    time.add("span", {}, format_hours_minutes(ceil_minutes(until - from)));
  }

  void add_step(Element list, const job::Event& event) {
    const EventFacts facts = event_facts(plan_, event, units_);
    Element step = list.add("li", {{"class", job::is_coat(event.kind) ? "coat" : "work"}});
    add_time(step, event.start, event.end);
    Element what = step.add("div", {{"class", "what"}});
    Element box = what.add("label", {});
    Element tick = box.add("input", {{"type", "checkbox"}, {"id", "done/" + event.id}});
    if (event.done) tick.set("checked", "checked");
    box.add("b", {}).name(event.name);
    if (!facts.subject.empty()) what.add("p", {}, facts.subject);
    what.add("p", {{"class", "how"}}, facts.how);
    Element more = step.add("div", {{"class", "more"}});
    add_details(more, event, facts);
    add_cautions_of(more, event, facts);
  }

  static void add_details(Element more, const job::Event& event, const EventFacts& facts) {
    const auto add = [&more](const char* kind, std::string_view words) {
      if (!words.empty()) more.add("p", {}, words).set("class", kind);
    };
    add("fact", facts.ends);
    if (!event.note.empty()) more.add("p", {{"class", "fact"}, {"dir", "auto"}}, event.note);  // in the language of its writer
    add("fact", facts.surface);
    add("fact wet", facts.wet);
    if (!facts.next.empty()) add("fact", "next: " + facts.next);
    add("fact", facts.last);
    add("fact", facts.resting);
    add("fact", facts.vapour);
  }

  void add_cautions_of(Element more, const job::Event& event, const EventFacts& facts) {
    if (event.cautions.empty()) return;
    Element list = more.add("ul", {{"class", "cautions"}});
    for (std::size_t i = 0; i < event.cautions.size(); ++i) {
      const std::string& key = event.cautions[i];
      const auto full = plan_.cautions.find(key);
      Element caution = list.add("li", {});
      if (full != plan_.cautions.end() && told_.insert(key).second) {
        caution.text(full->second);
      } else {
        caution.add("a", {{"href", "#" + caution_id(key)}}, facts.cautions[i]);
      }
    }
  }

  Element section_;
  const job::Plan& plan_;
  Units units_;
  std::vector<Day> all_;
  std::set<std::string> told_;
};

}  // namespace

void add_today(Contents& contents, const job::Plan& plan) {
  const std::vector<Day> all = day_list(plan);
  const LocalDay today = local_day(plan.from, plan.shop.zone);
  Element section = contents.section("today", "Today and next");
  Element briefs = section.add("div", {{"class", "briefs"}});
  int shown = 0;
  for (const Day& day : all) {
    if (day.events.empty() || day.date < today) continue;
    const std::string date = date_text(day.date);
    add_brief(briefs, plan, day, (day.date == today ? "Today, " + date : (shown == 0 ? "First, " : "Next, ") + date).c_str());
    if (++shown == 2) break;
  }
}

void add_days(Contents& contents, const job::Plan& plan, Units units) { Days(contents.section("days", "Day by day"), plan, units).add(); }

}  // namespace coatday::report::page
