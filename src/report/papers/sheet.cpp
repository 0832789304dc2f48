#include "report/papers/sheet.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "report/sections/day_list.h"
#include "report/sections/event_facts.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr std::size_t page_lines = 60;  // of A4 and US Letter at six lines an inch, with margins
constexpr int step_column = 18;         // after box and hours
constexpr int blank_width = 22;         // what is written by hand, at the right
constexpr int label_width = 11;
constexpr const char* when_blank = "from ______ to ______";
constexpr const char* air_blank_us = "______ °F  ______ % RH";
constexpr const char* air_blank_metric = "______ °C  ______ % RH";

/// Lines that stay together on a page.
using Blocks = std::vector<Lines>;

/// How a two-part or thinned product is made ready.
std::string mix_text(const job::Plan& plan, const job::Event& event, Units units) {
  const auto found = plan.products.find(event.product);
  if (found == plan.products.end() || !event.volume) return "";
  const finish::Product& product = found->second;
  const climate::Air& air = plan.air.at(event.start).air;
  std::vector<std::string> facts;
  if (const auto& parts = product.two_part) {
    const double all = parts->base_parts + parts->hardener_parts;
    facts.push_back(fmt::format("mix {} : {} by volume, {} and {}", parts->base_parts, parts->hardener_parts,
                                volume_text(*event.volume * (parts->base_parts / all), units),
                                volume_text(*event.volume * (parts->hardener_parts / all), units)));
    if (event.mixes > 1) facts.back() += fmt::format(", in {} batches", event.mixes);
    if (const Hours stand = finish::induction(product, air); stand > Hours(0)) facts.push_back("stands " + format_span(stand) + " first");
    if (const auto life = finish::pot_life(product, air)) facts.push_back("use within " + format_span(*life));
  }
  if (product.thinner_share > 0) facts.push_back("thin with " + volume_text(*event.volume * product.thinner_share, units));
  return joined(facts, "; ");
}

/// What is said, with what is written by hand beside its first lines.
Lines beside_blanks(const Text& head, const Lines& body, const std::vector<std::string>& blanks, const TextStyle& style) {
  Lines lines;
  for (std::size_t i = 0; i < std::max(body.size(), blanks.size()); ++i) {
    Text line = i == 0 ? head : spaces(step_column);
    if (i < body.size()) line += body[i];
    if (i < blanks.size()) line = padded(line, style.columns - blank_width) + padded(blanks[i], blank_width, Align::right);
    lines.push_back(line);
  }
  return lines;
}

std::string together(std::vector<std::string> facts) {
  std::erase(facts, "");
  return joined(facts, "; ");
}

Lines step_block(const job::Plan& plan, const job::Event& event, const TextStyle& style) {
  const EventFacts facts = event_facts(plan, event, style.units);
  const auto clock = [&plan](Instant t) { return clock_time(plan.shop.zone.to_local(t)); };
  const bool coat = job::is_coat(event.kind);
  const Text head = padded(fmt::format("[{}]  {}-{}", event.done ? 'x' : ' ', clock(event.start), clock(event.end)), step_column);
  const int narrow = style.columns - step_column - blank_width - 1;
  Lines body = wrap(event.name, narrow);
  if (!facts.subject.empty()) append(body, wrap(facts.subject, narrow));
  std::vector<std::string> blanks{when_blank};
  if (coat) blanks.emplace_back(style.units == Units::us ? air_blank_us : air_blank_metric);
  Lines lines = beside_blanks(head, body, blanks, style);
  const auto add = [&](const std::string& text) {
    if (!text.empty()) append(lines, hang(spaces(step_column), text, style));
  };
  add(together({coat ? product_name(plan, event.product) : "", facts.how, facts.ends, event.note}));
  add(mix_text(plan, event, style.units));
  add(together({facts.wet, facts.resting, facts.surface}));
  add(facts.next.empty() ? facts.last : "next: " + facts.next);
  if (!facts.cautions.empty()) add("! " + joined(facts.cautions, "; "));
  lines.emplace_back();
  return lines;
}

Lines cautions_of(const job::Plan& plan, const Day& day, const TextStyle& style) {
  std::map<std::string, std::string> texts;
  for (const job::Event* event : day.events) {
    for (const std::string& key : event->cautions) {
      const auto found = plan.cautions.find(key);
      texts[key] = found == plan.cautions.end() ? key : found->second;
    }
  }
  Lines lines;
  for (const auto& [key, text] : texts) append(lines, hang("! ", text, style));
  return lines;
}

/// After the last step: what dries, what comes next, room for notes, and the cautions in full.
Blocks foot(const job::Plan& plan, const Day& day, const Day* next, const TextStyle& style) {
  Instant busy_until = day.events.front()->start;
  for (const job::Event* event : day.events) busy_until = std::max(busy_until, event->end);
  Lines lines;
  for (const std::string& words : night_words(plan, busy_until))
    append(lines, hang(padded(lines.empty() ? "overnight" : "", label_width), words, style));
  if (next != nullptr) {
    const job::Event& first = *next->events.front();
    append(lines, hang(padded("next day", label_width), instant_text(first.start, plan.shop.zone) + ", " + first.name, style));
  }
  const std::string blank(static_cast<std::size_t>(style.columns - label_width), '_');
  append(lines, {padded("notes", label_width) + blank, "", spaces(label_width) + blank, ""});
  return {lines, cautions_of(plan, day, style)};
}

Blocks blocks_of(const job::Plan& plan, const Day& day, const Day* next, const TextStyle& style) {
  Blocks blocks;
  for (const job::Event* event : day.events) blocks.push_back(step_block(plan, *event, style));
  const Blocks rest = foot(plan, day, next, style);
  blocks.insert(blocks.end(), rest.begin(), rest.end());
  return blocks;
}

Lines heading(const job::Plan& plan, const Day& day, const Day* tomorrow, const std::string& order, const TextStyle& style) {
  Lines lines = wrap(order, style.columns - blank_width);
  const Text date = unbroken(long_date(day.date)) + "  ";
  append(lines, hang(date, hours_words(plan, day, tomorrow, style.units), style));
  append(lines, {std::string(static_cast<std::size_t>(style.columns), '-'), ""});
  return lines;
}

/// A day on one page, or on as many as it takes, each with the heading.
std::vector<Lines> pages_of(const Lines& heading, const Blocks& blocks) {
  std::vector<Lines> pages{heading};
  for (const Lines& block : blocks) {
    const bool full = pages.back().size() + block.size() > page_lines && pages.back().size() > heading.size();
    if (full) pages.push_back(heading);
    if (full) pages.back().insert(pages.back().end() - 1, "(goes on from the page before)");
    append(pages.back(), block);
  }
  return pages;
}

void number(std::vector<Lines>& pages, const TextStyle& style) {
  for (std::size_t i = 0; i < pages.size(); ++i) {
    Text& title = pages[i].front();
    title = padded(title, style.columns - blank_width) +
            padded(fmt::format("day sheet {} of {}", i + 1, pages.size()), blank_width, Align::right);
  }
}

}  // namespace

std::string sheet_text(const job::Plan& plan, const std::string& order, const TextStyle& style) {
  const std::vector<Day> days = day_list(plan);
  std::vector<Lines> pages;
  for (std::size_t i = 0; i < days.size(); ++i) {
    if (days[i].events.empty()) continue;
    const auto next =
        std::find_if(days.begin() + static_cast<std::ptrdiff_t>(i) + 1, days.end(), [](const Day& d) { return !d.events.empty(); });
    const Day* tomorrow = i + 1 < days.size() ? &days[i + 1] : nullptr;
    const Lines head = heading(plan, days[i], tomorrow, order, style);
    const std::vector<Lines> day = pages_of(head, blocks_of(plan, days[i], next == days.end() ? nullptr : &*next, style));
    pages.insert(pages.end(), day.begin(), day.end());
  }
  number(pages, style);
  std::string text;
  for (const Lines& page : pages) text += (text.empty() ? "" : "\f") + render(page, false);
  return text;
}

}  // namespace coatday::report
