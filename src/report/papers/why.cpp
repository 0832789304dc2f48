#include "report/papers/why.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/sections/faces.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string event_text(const job::Plan& plan, const std::string& id) {
  const job::Event* event = find_event(plan, id);
  return event == nullptr ? id : event->name + " (" + id + ")";
}

Phrase after_text(const job::Plan& plan, const job::AfterEvent& wait, Instant start) {
  Phrase text(instant_text(wait.earliest, plan.shop.zone) + " at the earliest: " + event_text(plan, wait.event));
  if (!wait.reason.empty()) text += ", " + wait.reason;
  if (wait.earliest == start) text += Phrase("; this decides", Mark::strong);
  return text;
}

Phrase before_text(const job::Plan& plan, const job::BeforeEvent& limit) {
  Phrase text(instant_text(limit.latest, plan.shop.zone) + " at the latest: " + event_text(plan, limit.event));
  if (!limit.reason.empty()) text += ", " + limit.reason;
  return text;
}

std::string film_text(const job::Event& event, const finish::Product& product, Units units) {
  const finish::DryingFactor& times = event.drying;
  std::string words = fmt::format("{} wet; the times of its record are for {}", format_film(*event.wet_film, units),
                                  format_film(finish::film_of_times(product), units));
  words += fmt::format(", and it dries {:.2g} times as long", times.expected);
  if (times.slow - times.fast > 0.005) words += fmt::format(" ({:.2g} to {:.2g})", times.fast, times.slow);
  return words + ": judgement";
}

std::string air_fact(const job::Plan& plan, const job::Event& event, const Texts& texts) {
  const auto air = report::air_text(plan.air, event.start, std::max(event.end, event.start + Minutes(1)), texts.units);
  if (!air) return "";
  const Celsius dew_point = plan.air.at(std::max(event.start, plan.air.begin())).dew_point;
  const auto surface = surface_text(plan, event, texts.units);
  return *air + ", dew point " + unbroken(format_temperature(dew_point, texts.units)) + (surface ? "; " + *surface : "");
}

Facts facts_of(const job::Plan& plan, const job::Event& event, const Texts& texts) {
  Facts facts;
  const auto add = [&facts](const char* label, const Phrase& value) {
    if (!value.empty()) facts.facts.push_back({label, value});
  };
  add("id", event.id);
  add("from", texts.instant(event.start) + " to " + texts.instant(event.end, local_day(event.start, texts.zone)));
  add("why", event.why.empty() ? "no reason was kept" : event.why);
  for (const job::AfterEvent& wait : event.after) add("not before", after_text(plan, wait, event.start));
  for (const job::BeforeEvent& limit : event.before) add("not after", before_text(plan, limit));
  add("air", air_fact(plan, event, texts));
  if (const auto product = plan.products.find(event.product); product != plan.products.end()) {
    if (event.wet_film) add("film", film_text(event, product->second, texts.units));
    add("room", pace_text(product->second.rate_factors));
  }
  if (event.kind == job::EventKind::turn && !plan.shop.turning)
    add("time", "by what each part weighs and its longest side: common practice, no source");
  add("note", event.note);
  return facts;
}

Table stages_of(const job::Event& event, const Texts& texts) {
  Table table{"stages", "When each stage is reached", {{"stage"}, {"earliest"}, {"expected"}, {"safe"}}, {{}}};
  const auto cell = [&texts](const std::optional<Instant>& t) { return t ? texts.instant(*t) : std::string("-"); };
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto stage = static_cast<finish::Stage>(i);
    if (!event.stages.expected[stage] && !event.stages.slow[stage]) continue;
    table.groups.front().rows.push_back(
        {{stage_text(stage), cell(event.stages.fast[stage]), cell(event.stages.expected[stage]), cell(event.stages.slow[stage])}});
  }
  return table;
}

}  // namespace

std::optional<Document> why(const job::Plan& plan, const std::string& id, const Texts& texts) {
  const job::Event* event = find_event(plan, id);
  for (const job::Event& one : plan.events) {
    if (event == nullptr && job::is_about(one.step_id, id)) event = &one;
  }
  if (event == nullptr) return std::nullopt;
  const std::string subject = event->faces.empty() ? event->load : face_text(plan, event->faces);
  Document document{typed(event->name) + Phrase(subject.empty() ? "" : ", " + subject, Mark::faint)};
  Section section{"why", {}, {}, {facts_of(plan, *event, texts)}};
  if (Table stages = stages_of(*event, texts); !stages.groups.front().rows.empty()) section.blocks.emplace_back(std::move(stages));
  document.sections.push_back(std::move(section));
  return document;
}

Document events(const job::Plan& plan, const Texts& texts) {
  Table table{"events", "The steps by their ids", {{"start"}, {"event"}, {"name"}}, {{}}};
  for (const job::Event& event : plan.events) table.groups.front().rows.push_back({{texts.instant(event.start), event.id, event.name}});
  return {{}, {}, {Section{"events", {}, {}, {table}}}};
}

}  // namespace coatday::report
