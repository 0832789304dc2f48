#include <fmt/core.h>

#include <algorithm>

#include "report/document/table.h"
#include "report/papers/report.h"
#include "report/sections/faces.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr int label_width = 12;

std::string event_text(const job::Plan& plan, const std::string& id) {
  const job::Event* event = find_event(plan, id);
  return event == nullptr ? id : event->name + " (" + id + ")";
}

Text after_text(const job::Plan& plan, const job::AfterEvent& wait, Instant start) {
  Text text(instant_text(wait.earliest, plan.shop.zone) + " at the earliest: " + event_text(plan, wait.event));
  if (!wait.reason.empty()) text += ", " + wait.reason;
  if (wait.earliest == start) text += Text("; this decides", Mark::strong);
  return text;
}

Text before_text(const job::Plan& plan, const job::BeforeEvent& limit) {
  Text text(instant_text(limit.latest, plan.shop.zone) + " at the latest: " + event_text(plan, limit.event));
  if (!limit.reason.empty()) text += ", " + limit.reason;
  return text;
}

std::string film_text(const job::Event& event, const finish::Product& product, Units units) {
  const finish::DryingFactor& times = event.drying;
  std::string words = fmt::format("{} wet; the times of its record are for {}", format_film(*event.wet_film, units),
                                  format_film(finish::film_of_times(product), units));
  words += fmt::format(", and it dries {:.2g} times as long", times.nominal);
  if (times.late - times.early > 0.005) words += fmt::format(" ({:.2g} to {:.2g})", times.early, times.late);
  return words + ": judgement";
}

Lines air_lines(const job::Plan& plan, const job::Event& event, const TextStyle& style) {
  const auto air = air_text(plan.air, event.start, std::max(event.end, event.start + Minutes(1)), style.units);
  if (!air) return {};
  const Celsius dew_point = plan.air.at(std::max(event.start, plan.air.begin())).dew_point;
  const auto surface = surface_text(plan, event, style.units);
  const std::string dew = ", dew point " + unbroken(format_temperature(dew_point, style.units));
  return labelled("air", label_width, *air + dew + (surface ? "; " + *surface : ""), style);
}

Lines stage_lines(const job::Plan& plan, const job::Event& event, const TextStyle& style) {
  TextTable table{
      {{Text("stage", Mark::faint)}, {Text("early side", Mark::faint)}, {Text("expected", Mark::faint)}, {Text("late side", Mark::faint)}},
      {}};
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto stage = static_cast<finish::Stage>(i);
    if (!event.stages[stage] && !event.late_stages[stage]) continue;
    const auto cell = [&plan](const std::optional<Instant>& t) { return t ? instant_text(*t, plan.shop.zone) : std::string("-"); };
    table.rows.push_back({stage_text(stage), cell(event.early_stages[stage]), cell(event.stages[stage]), cell(event.late_stages[stage])});
  }
  return table.rows.empty() ? Lines{} : layout(table, 2, style);
}

}  // namespace

std::optional<std::string> why_text(const job::Plan& plan, const std::string& id, const TextStyle& style) {
  const job::Event* event = find_event(plan, id);
  if (event == nullptr) return std::nullopt;
  const std::string subject = event->faces.empty() ? event->load : face_words(plan, event->faces);
  Lines lines = hang("", Text(event->name, Mark::strong) + (subject.empty() ? "" : ", " + subject), style);
  const auto entry = [&](const char* label, const Text& body) { append(lines, labelled(label, label_width, body, style)); };
  entry("id", event->id);
  entry("from", instant_text(event->start, plan.shop.zone) + " to " +
                    instant_text(event->end, plan.shop.zone, local_day(event->start, plan.shop.zone)));
  entry("why", event->why.empty() ? "no reason was kept" : event->why);
  for (const job::AfterEvent& wait : event->after) entry("not before", after_text(plan, wait, event->start));
  for (const job::BeforeEvent& limit : event->before) entry("not after", before_text(plan, limit));
  append(lines, air_lines(plan, *event, style));
  if (const auto product = plan.products.find(event->product); product != plan.products.end()) {
    if (event->wet_film) entry("film", film_text(*event, product->second, style.units));
    if (const std::string pace = pace_text(product->second.pace); !pace.empty()) entry("room", pace);
  }
  if (!event->note.empty()) entry("note", event->note);
  append(lines, stage_lines(plan, *event, style));
  return render(lines, style.colour);
}

std::string events_text(const job::Plan& plan, const TextStyle& style) {
  TextTable table{{{Text("start", Mark::faint)}, {Text("event", Mark::faint)}, {Text("name", Mark::faint)}}, {}};
  for (const job::Event& event : plan.events) table.rows.push_back({instant_text(event.start, plan.shop.zone), event.id, event.name});
  return render(layout(table, 0, style), style.colour);
}

}  // namespace coatday::report
