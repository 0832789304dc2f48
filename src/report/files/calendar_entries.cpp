#include "report/files/calendar_entries.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "quantity/kebab.h"
#include "report/sections/event_facts.h"
#include "report/words.h"

namespace coatday::report {
namespace {

constexpr Minutes notice{15};  // to fetch and stir: judgement
constexpr std::size_t most_waits = 3;

/// Percent-encoded, so that any two names differ and what joins them occurs in none.
std::string encoded(std::string_view text) {
  std::string out;
  for (const char c : text) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '_';
    out += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return out;
}

std::string order_of(const job::PieceResult& piece, const std::string& order) { return piece.order.empty() ? order : piece.order; }

/// The piece's id as it is when its order is planned alone: beside another of that id it has the order's name before it.
std::string own_id(const job::Plan& plan, const job::PieceResult& piece, const std::string& order) {
  const std::string prefix = kebab(order_of(piece, order)) + "-";
  if (!piece.id.starts_with(prefix) || prefix == "-") return piece.id;
  const std::string own = piece.id.substr(prefix.size());
  const bool taken = std::any_of(plan.pieces.begin(), plan.pieces.end(),
                                 [&](const job::PieceResult& other) { return other.id == own && other.order == piece.order; });
  return own.empty() || taken ? piece.id : own;
}

std::string piece_uid(const job::Plan& plan, const job::PieceResult& piece, const std::string& order, const std::string& what) {
  return encoded(plan.shop.name) + "/" + encoded(order_of(piece, order)) + "/" + encoded(own_id(plan, piece, order)) + what + "@coatday";
}

std::string uid_of(const job::Plan& plan, const job::Event& event, const std::string& order) {
  const std::string shop = encoded(plan.shop.name) + "/";
  if (!event.piece) return shop + (event.id.starts_with("shop/") ? "" : encoded(order) + "/") + event.id + "@coatday";  // cans brought in
  const job::PieceResult& piece = plan.pieces[*event.piece];
  return piece_uid(plan, piece, order, event.id.substr(std::min(event.id.size(), piece.id.size())));
}

std::string place_of(const job::Plan& plan, const job::Event& event) {
  std::vector<std::string> places;
  for (const job::PlaceUse& use : plan.places) {
    if (use.event < plan.events.size() && &plan.events[use.event] == &event) places.push_back(use.place);
  }
  return plan.shop.name + (places.empty() ? "" : ": " + listed(places));
}

std::string of_load(const job::Event& event) { return event.load.empty() ? event.name : event.name + " (" + event.load + ")"; }

/// "clear 1 (top), dry to recoat: Fri 22 Jan 15:18"
std::string wait_words(const job::Plan& plan, const std::string& id, const std::string& reason, Instant t) {
  const job::Event* other = find_event(plan, id);
  const std::string name = other == nullptr ? id : of_load(*other);
  const bool said = reason.empty() || (other != nullptr && reason == "after " + other->name);
  return name + (said ? "" : ", " + reason) + ": " + instant_text(t, plan.shop.zone);
}

/// What it waits for, the last to come first.
std::vector<std::string> waits(const job::Plan& plan, const job::Event& event) {
  std::vector<job::AfterEvent> after = event.after;
  std::stable_sort(after.begin(), after.end(), [](const auto& a, const auto& b) { return a.earliest > b.earliest; });
  std::vector<std::string> out, shown;
  for (const job::AfterEvent& wait : after) {
    if (out.size() == most_waits || std::find(shown.begin(), shown.end(), wait.event) != shown.end()) continue;
    shown.push_back(wait.event);
    out.push_back(wait_words(plan, wait.event, wait.reason, wait.earliest));
  }
  return out;
}

std::string sentence(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return text;
}

std::string description(const job::Plan& plan, const job::Event& event, const EventFacts& facts) {
  std::vector<std::string> lines;
  const auto add = [&lines](const std::string& label, const std::string& text) {
    if (!text.empty()) lines.push_back(sentence(label + text));
  };
  add(event.faces.empty() ? "Of: " : "Faces: ", facts.subject);
  add("Finish: ", event.product.empty() ? "" : product_name(plan, event.product));
  add("How: ", facts.how);
  add("", event.note);
  add("", facts.surface);
  add("", facts.wet);
  for (const std::string& wait : waits(plan, event)) add("Waits for ", wait);
  for (const job::BeforeEvent& limit : event.before) add("Not after ", wait_words(plan, limit.event, limit.reason, limit.latest));
  add("Next: ", facts.next);
  add("", facts.last);
  add("", facts.resting);
  add("", facts.vapour);
  add("Why then: ", event.why);
  for (const std::string& key : event.cautions) {
    const auto found = plan.cautions.find(key);
    add("! ", found == plan.cautions.end() ? key : found->second);
  }
  return joined(lines, "\n");
}

std::vector<CalendarAlarm> alarms(const job::Event& event, const std::string& summary, const std::string& subject) {
  if (event.done) return {};
  std::vector<CalendarAlarm> all{{-notice, summary}};
  if (event.wipe_by)
    all.push_back({std::chrono::floor<Minutes>(*event.wipe_by - event.start), "wipe off the " + event.name + ": " + subject});
  return all;
}

CalendarEntry entry_of(const job::Plan& plan, const job::Event& event, const std::string& order, Units units) {
  const EventFacts facts = event_facts(plan, event, units);
  CalendarEntry entry;
  entry.uid = uid_of(plan, event, order);
  entry.order = event.piece ? order_of(plan.pieces[*event.piece], order) : "";
  const std::string subject = facts.subject.empty() && event.piece ? plan.pieces[*event.piece].name : facts.subject;
  entry.summary = (event.done ? "done: " : "") + event.name + (subject.empty() ? "" : ": " + subject);
  entry.location = place_of(plan, event);
  entry.description = (entry.order.empty() ? "" : entry.order + "\n") + description(plan, event, facts);
  entry.start = event.start;
  entry.end = event.end;
  entry.alarms = alarms(event, entry.summary, subject);
  entry.event = &event;
  return entry;
}

struct Moment {
  std::optional<Instant> job::HandOver::*when;
  const char* words;
  const char* uid;
};
constexpr std::array<Moment, 3> moments{{{&job::HandOver::wrap, "may be wrapped", "#pack"},
                                         {&job::HandOver::deliver, "ready to deliver", "#deliver"},
                                         {&job::HandOver::full_use, "full use", "#full-cure"}}};

CalendarEntry hand_over(const job::Plan& plan, const job::PieceResult& piece, const Moment& moment, const std::string& order) {
  const Zone& zone = plan.shop.zone;
  const Instant late = *(piece.ready.slow.*moment.when);
  CalendarEntry entry;
  entry.uid = piece_uid(plan, piece, order, moment.uid);
  entry.order = order_of(piece, order);
  entry.summary = fmt::format("{} from {}: {}", moment.words, clock_time(zone.to_local(late)), piece.name);
  entry.location = plan.shop.name;
  entry.description = "Safe to promise: " + instant_text(late, zone);
  if (const auto& expected = piece.ready.expected.*moment.when) entry.description += "\nExpected: " + instant_text(*expected, zone);
  if (piece.due && moment.when == &job::HandOver::deliver) entry.description += "\nPromised: " + instant_text(*piece.due, zone);
  entry.start = entry.end = late;
  entry.all_day = local_day(late, zone);
  return entry;
}

}  // namespace

std::vector<CalendarEntry> calendar_entries(const job::Plan& plan, const std::string& order, Units units) {
  std::vector<CalendarEntry> entries;
  for (const job::Event& event : plan.events) entries.push_back(entry_of(plan, event, order, units));
  for (const job::PieceResult& piece : plan.pieces) {
    for (const Moment& moment : moments) {
      if (piece.ready.slow.*moment.when) entries.push_back(hand_over(plan, piece, moment, order));
    }
  }
  return entries;
}

}  // namespace coatday::report
