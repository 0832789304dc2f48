// What the plan comes to, why there is none, and what must be said beside it.
#include <fmt/core.h>

#include <algorithm>

#include "job/compare.h"
#include "report/sections/advice.h"
#include "report/sections/sections.h"
#include "report/sections/sections_html.h"
#include "report/words.h"

namespace coatday::report::page {
namespace {

/// A question of the first screen and its answer.
Element add_answer(Element list, std::string_view question) {
  Element entry = list.add("div", {});
  entry.add("dt", {}, question);
  return entry.add("dd", {});
}

// The last of all pieces: what the shop has to keep.
const job::PieceResult* last_piece(const job::Plan& plan) {
  const job::PieceResult* last = nullptr;
  for (const job::PieceResult& piece : plan.pieces) {
    if (!piece.ready_late.deliver) return &piece;
    if (last == nullptr || *piece.ready_late.deliver > *last->ready_late.deliver) last = &piece;
  }
  return last;
}

const job::PieceResult* tightest_piece(const job::Plan& plan) {
  const job::PieceResult* tightest = nullptr;
  for (const job::PieceResult& piece : plan.pieces) {
    if (piece.slack && (tightest == nullptr || *piece.slack < *tightest->slack)) tightest = &piece;
  }
  return tightest;
}

void add_delivery(Element list, const job::Plan& plan) {
  const job::PieceResult* last = last_piece(plan);
  if (last == nullptr) return;
  Element answer = add_answer(list, plan.pieces.size() > 1 ? "All ready to deliver" : "Ready to deliver");
  if (!last->ready_late.deliver) {
    answer.add("strong", {}, "never in this air");
    return;
  }
  answer.add("strong", {}, instant_text(*last->ready_late.deliver, plan.shop.zone));
  answer.add("span", {}, "by the late side, which may be promised; expected " + instant_text(*last->ready.deliver, plan.shop.zone));
  const job::PieceResult* tightest = tightest_piece(plan);
  if (tightest == nullptr) return;
  Element promise = add_answer(list, "Promised");
  promise.add("strong", {{"class", tightest->slack->count() < 0 ? "bad" : ""}}, slack_text(*tightest->slack));
  Element of = promise.add("span", {});
  if (plan.pieces.size() > 1) of.name(tightest->name).text(", ");
  of.text(instant_text(*tightest->due, plan.shop.zone));
}

std::string buy_answer(const job::Plan& plan) {
  const auto [sum, unpriced] = job::cost_of(plan);
  const std::string total = sum.value() > 0 ? money_text(sum, plan.shop.currency) : "";
  if (!total.empty()) return "about " + total + (unpriced > 0 ? fmt::format(", and {} without a price", unpriced) : "");
  const bool any = std::any_of(plan.purchase.begin(), plan.purchase.end(), [](const job::Purchase& row) { return !row.buy.empty(); });
  return any ? "before the first day" : "nothing: all of it is on the shelf";
}

std::string listed_cans(const job::Plan& plan, Units units) {
  std::vector<std::string> items;
  for (const job::Purchase& row : plan.purchase) {
    const std::string part = row.part.empty() ? "" : ", " + row.part;
    if (!row.buy.empty()) items.push_back(cans_words(row.buy, units) + " " + product_name(plan, row.product) + part);
  }
  return listed(items);
}

void add_list(Element parent, const std::vector<std::string>& items) {
  Element list = parent.add("ul", {});
  for (const std::string& item : items) list.add("li", {}, item);
}

const char* word(job::Severity severity) {
  return severity == job::Severity::error ? "error" : severity == job::Severity::warning ? "warning" : "note";
}

void add_findings(Contents& contents, const job::Plan& plan) {
  if (plan.findings.empty()) return;
  Element list = contents.section("findings", "Findings").add("ul", {{"class", "findings"}});
  for (const job::Finding& finding : plan.findings) {
    Element item = list.add("li", {});
    item.add("b", {{"class", word(finding.severity)}}, word(finding.severity));
    item.text(" " + (finding.subject.empty() ? "" : finding.subject + ": ") + finding.message + place_words(finding.where));
  }
}

void add_moved(Contents& contents, const job::Plan& plan) {
  if (!plan.changes) return;
  const job::Changes& changes = *plan.changes;
  Element section = contents.section("moved", "Moved against the earlier plan");
  std::vector<std::string> moves;
  for (const job::Move& move : changes.moved) {
    const job::Event& event = plan.events.at(move.event);
    moves.push_back(event.name + (event.whose.empty() ? "" : " (" + event.whose + ")") + ": " + instant_text(move.was, plan.shop.zone) +
                    ", now " + instant_text(event.start, plan.shop.zone));
  }
  if (!moves.empty()) add_list(section, moves);
  section.add("p", {}, rest_words(changes));
}

void add_vapour(Contents& contents, const job::Plan& plan, Units units) {
  const LabelledFacts facts = vapour_facts(plan, units);
  if (facts.empty()) return;
  Element section = contents.section("vapour", "Solvent vapour");
  Element list = section.add("dl", {{"class", "facts"}});
  for (const auto& [label, words] : facts) {
    list.add("dt", {}, label);
    list.add("dd", {}, words);
  }
  section.add("p", {{"class", "caution"}}, vapour_caution());
}

}  // namespace

void add_answers(Contents& contents, const job::Plan& plan, Units units) {
  Element section = contents.section("short", "In short");
  Element list = section.add("dl", {{"class", "answers"}});
  const bool planned = plan.status == job::Status::feasible;
  if (planned) add_delivery(list, plan);
  if (!planned) add_answer(list, "Plan").add("strong", {{"class", "bad"}}, verdict_words(plan));
  if (planned && !plan.purchase.empty()) {
    Element buy = add_answer(list, "Buy");
    buy.add("strong", {}, buy_answer(plan));
    buy.add("span", {}, listed_cans(plan, units));
  }
  if (planned && !plan.faces.empty()) {
    const FaceVerdict faces = both_faces(plan);
    Element answer = add_answer(list, "Both faces");
    answer.add("strong", {{"class", faces.equal ? "" : "bad"}}, faces.words);
  }
  Element how = section.add("p", {{"class", "how"}});
  if (planned) how.text("Plan: " + verdict_words(plan) + ". ");
  if (!plan.shop.air_description.empty()) how.text("Air: " + plan.shop.air_description + ".");
  if (const std::string hours = air_hours(plan); !hours.empty()) how.text(" Hours: " + hours + ".");
  if (const std::string room = room_words(plan); !room.empty()) how.text(" Room: " + room + ".");
}

void add_reasons(Contents& contents, const job::Plan& plan) {
  if (const std::string words = contradiction_words(plan); !words.empty()) {
    Element section = contents.section("reasons", "No plan");
    section.add("p", {{"class", "bad"}}, words);
    if (!plan.contradiction.empty()) add_list(section, plan.contradiction);
  }
  if (!plan.proposals.empty()) {
    const bool planned = plan.status == job::Status::feasible;
    add_list(contents.section("help", planned ? "What would make it in time, or earlier" : "What would help"), plan.proposals);
  }
}

void add_advice(Contents& contents, const job::Plan& plan, const job::Advice& advice, Units units) {
  if (advice.helps.empty()) return;
  Element section = contents.section("waiting", "It waits for the air");
  section.add("p", {}, "One change would help:");
  std::vector<std::string> helps;
  for (const job::Help& help : advice.helps) helps.push_back(help_words(plan, help, units));
  add_list(section, helps);
  if (std::any_of(advice.helps.begin(), advice.helps.end(), [](const job::Help& help) { return help.air; }))
    section.add("p", {{"class", "caution"}}, "Caution: " + heat_caution_words());
}

void add_notes(Contents& contents, const job::Plan& plan, Units units) {
  add_moved(contents, plan);
  add_vapour(contents, plan, units);
  add_findings(contents, plan);
}

std::string caution_id(const std::string& key) { return "caution-" + key; }

void add_cautions(Contents& contents, const job::Plan& plan) {
  if (plan.cautions.empty()) return;
  Element section = contents.section("cautions", "Cautions");
  section.add("p", {{"class", "how"}}, "The usual ones, at the steps above. The label, the local code and licensed practice count.");
  Element list = section.add("ul", {{"class", "cautions"}});
  for (const auto& [key, text] : plan.cautions) list.add("li", {{"id", caution_id(key)}}, text);
}

}  // namespace coatday::report::page
