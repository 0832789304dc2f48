#include "report/papers/sheet.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/sections/day_list.h"
#include "report/sections/event_facts.h"
#include "report/sections/waiting.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr const char* when_blank = "from ______ to ______";
constexpr const char* air_blank_us = "______ °F  ______ % RH";
constexpr const char* air_blank_metric = "______ °C  ______ % RH";

/// How a two-part or thinned product is made ready.
std::string mix_text(const job::Plan& plan, const job::Event& event, const Texts& texts) {
  const auto found = plan.products.find(event.product);
  if (found == plan.products.end() || !event.volume) return "";
  const finish::Product& product = found->second;
  const climate::Air& air = plan.air.at(event.start).air;
  std::vector<std::string> facts;
  if (const auto& parts = product.two_part) {
    const double all = parts->base_parts + parts->hardener_parts;
    facts.push_back(fmt::format("mix {} : {} by volume, {} and {}", parts->base_parts, parts->hardener_parts,
                                texts.volume(*event.volume * (parts->base_parts / all)),
                                texts.volume(*event.volume * (parts->hardener_parts / all))));
    if (event.mixes > 1) facts.back() += fmt::format(", in {} mixes", event.mixes);
    if (const Hours stand = finish::induction(product, air); stand > Hours(0)) facts.push_back("stands " + format_span(stand) + " first");
    if (const auto life = finish::pot_life(product, air)) facts.push_back("use within " + format_span(*life));
  }
  if (product.thinner_share > 0) facts.push_back("thin with " + texts.volume(*event.volume * product.thinner_share));
  return joined(facts, "; ");
}

std::string together(std::vector<std::string> facts) {
  std::erase(facts, "");
  return joined(facts, "; ");
}

std::vector<Phrase> cautions_of(const std::vector<std::string>& cautions) {
  std::vector<Phrase> all;
  for (const std::string& caution : cautions) all.emplace_back(caution);
  return all;
}

Steps::Step form_of(const job::Plan& plan, const job::Event& event, const Texts& texts) {
  const EventFacts facts = event_facts(plan, event, texts.units);
  const bool coat = job::is_coat(event.kind);
  Steps::Step step{event.id, event.start, event.end, event.name, facts.subject};
  step.details = {together({coat ? product_name(plan, event.product) : "", facts.how, facts.ends, event.note}),
                  mix_text(plan, event, texts), together({facts.wet, facts.resting, facts.surface}),
                  facts.next.empty() ? facts.last : "next: " + facts.next};
  step.cautions = cautions_of(facts.cautions);
  step.blanks = {when_blank};
  if (coat) step.blanks.emplace_back(texts.units == Units::us ? air_blank_us : air_blank_metric);
  step.coat = coat;
  step.done = event.done;
  return step;
}

/// Each in full, once.
List full_cautions(const job::Plan& plan, const Day& day) {
  std::map<std::string, std::string> all;
  for (const job::Event* event : day.events) {
    for (const std::string& key : event->cautions) {
      const auto found = plan.cautions.find(key);
      all[key] = found == plan.cautions.end() ? key : found->second;
    }
  }
  List list{List::Kind::cautions, {}};
  for (const auto& [key, text] : all) list.items.emplace_back(text);
  return list;
}

/// After the last step: what dries, what comes next, and room for notes.
Facts after_work(const job::Plan& plan, const Day& day, const Day* next, const Texts& texts) {
  Instant busy_until = day.events.front()->start;
  for (const job::Event* event : day.events) busy_until = std::max(busy_until, event->end);
  Facts facts;
  for (const std::string& words : night_text(plan, busy_until))
    facts.facts.push_back({facts.facts.empty() ? Phrase("overnight") : Phrase(), words});
  if (next != nullptr) {
    const job::Event& first = *next->events.front();
    facts.facts.push_back({"next day", texts.instant(first.start) + ", " + first.name});
  }
  facts.facts.push_back({"notes"});
  return facts;
}

Section day_section(const job::Plan& plan, const Day& day, const Day* tomorrow, const Day* next, const Texts& texts) {
  Steps steps{texts.zone};
  for (const job::Event* event : day.events) steps.steps.push_back(form_of(plan, *event, texts));
  return {"day-" + iso8601(day.midnight, texts.zone).substr(0, 10),
          unbroken(long_date(day.date)),
          hours_text(plan, day, tomorrow, texts.units),
          {steps, after_work(plan, day, next, texts), full_cautions(plan, day)}};
}

}  // namespace

Document sheet(const job::Plan& plan, const std::string& order, const Texts& texts) {
  Document document{typed(order), "day sheet"};
  const std::vector<Day> days = day_list(plan);
  for (std::size_t i = 0; i < days.size(); ++i) {
    if (days[i].events.empty()) continue;
    const auto next =
        std::find_if(days.begin() + static_cast<std::ptrdiff_t>(i) + 1, days.end(), [](const Day& d) { return !d.events.empty(); });
    const Day* tomorrow = i + 1 < days.size() ? &days[i + 1] : nullptr;
    document.sections.push_back(day_section(plan, days[i], tomorrow, next == days.end() ? nullptr : &*next, texts));
  }
  const bool finished = plan.status == job::Status::planned && document.sections.empty();
  if (finished) document.sections.push_back({"nothing", {}, {}, {Paragraph{"Nothing is left to do: all of it is done."}}});
  return document;
}

}  // namespace coatday::report
