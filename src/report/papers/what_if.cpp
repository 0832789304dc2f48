#include "report/papers/what_if.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "job/compare.h"
#include "report/sections/advice.h"
#include "report/sections/findings.h"
#include "report/sections/moved.h"
#include "report/sections/no_plan.h"
#include "report/sections/purchase.h"
#include "report/sections/summary.h"

namespace coatday::report {
namespace {

struct Both {
  const job::Plan& before;
  const job::Plan& after;
};

Phrase at(const job::Plan& plan, const std::optional<Instant>& t) {
  if (plan.status != job::Status::planned) return {"no plan", Mark::bad};
  return t ? Phrase(instant_text(*t, plan.shop.zone)) : Phrase("never in this air", Mark::bad);
}

Phrase sooner(const std::optional<Instant>& before, const std::optional<Instant>& after) {
  if (!before || !after) return {};
  const Hours gain(*before - *after);
  if (gain.count() == 0) return "the same";
  return {unbroken(format_span(gain.count() > 0 ? gain : -gain)) + (gain.count() > 0 ? " sooner" : " later"),
          gain.count() > 0 ? Mark::good : Mark::bad};
}

Phrase slack(const std::optional<Hours>& hours) {
  return hours ? Phrase(slack_text(*hours), hours->count() < 0 ? Mark::bad : Mark::plain) : Phrase("nothing promised");
}

using Rows = std::vector<Table::Row>;
using Results = std::pair<const job::PieceResult*, const job::PieceResult*>;  // null where there is no plan

bool same(const Results& a, const Results& b) {
  const auto equal = [](const job::PieceResult* x, const job::PieceResult* y) {
    if (x == nullptr || y == nullptr) return x == y;
    return x->ready.expected.deliver == y->ready.expected.deliver && x->ready.slow.deliver == y->ready.slow.deliver && x->slack == y->slack;
  };
  return equal(a.first, b.first) && equal(a.second, b.second);
}

void add_piece(Rows& rows, const Both& both, const std::string& who, const Results& results) {
  static const job::PieceResult none;
  const job::PieceResult& was = results.first != nullptr ? *results.first : none;
  const job::PieceResult& now = results.second != nullptr ? *results.second : none;
  const auto row = [&](const std::string& label, std::optional<Instant> a, std::optional<Instant> b) {
    rows.push_back({{label, at(both.before, a), at(both.after, b), sooner(a, b)}});
  };
  row(who, was.ready.expected.deliver, now.ready.expected.deliver);
  row("  safe", was.ready.slow.deliver, now.ready.slow.deliver);
  if (!was.slack && !now.slack) return;
  const auto promise = [](const job::Plan& plan, const job::PieceResult& piece) {
    return plan.status == job::Status::planned ? slack(piece.slack) : Phrase();
  };
  rows.push_back({{"  promise", promise(both.before, was), promise(both.after, now), {}}});
}

const job::PieceResult* result_of(const job::Plan& plan, const std::string& piece) {
  const auto found = std::find_if(plan.pieces.begin(), plan.pieces.end(), [&](const job::PieceResult& p) { return p.id == piece; });
  return found == plan.pieces.end() ? nullptr : &*found;
}

// Pieces with the same dates share a row. Without a plan a side has none; then the other tells which there are.
void add_pieces(Rows& rows, const Both& both) {
  std::vector<std::pair<Results, std::vector<std::string>>> groups;
  for (const job::PieceResult& now : both.after.pieces.empty() ? both.before.pieces : both.after.pieces) {
    const Results results{result_of(both.before, now.id), result_of(both.after, now.id)};
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return same(g.first, results); });
    if (group == groups.end()) {
      groups.push_back({results, {now.name}});
    } else {
      group->second.push_back(now.name);
    }
  }
  for (const auto& [results, names] : groups) add_piece(rows, both, groups.size() == 1 ? "deliver" : listed(names), results);
}

using CansByProduct = std::map<std::string, std::string>;  // product, and part -> cans

CansByProduct shopping(const job::Plan& plan, Units units) {
  CansByProduct all;
  for (const job::Purchase& row : plan.purchase) {
    if (!row.buy.empty()) all[purchase_name(plan, row)] = cans_text(row.buy, units);
  }
  return all;
}

void add_shopping(Rows& rows, const Both& both, Units units) {
  const job::Cost was = job::cost_of(both.before), now = job::cost_of(both.after);
  const auto money = [&](const job::Plan& plan, const job::Cost& cost) -> std::string {
    if (plan.status != job::Status::planned) return "";
    const std::string words = money_text(cost.sum, plan.shop.currency);
    return words.empty() || cost.sum.value() <= 0 ? "no prices"
                                                  : words + (cost.unpriced > 0 ? fmt::format(", {} unpriced", cost.unpriced) : "");
  };
  const double more = now.sum.value() - was.sum.value();
  const bool priced = was.sum.value() > 0 && now.sum.value() > 0 && !both.after.shop.currency.empty();
  const std::string difference = !priced                  ? ""
                                 : std::abs(more) < 0.005 ? "the same"
                                                          : fmt::format("{:+.2f} {}", more, both.after.shop.currency);
  rows.push_back({{"buy", money(both.before, was), money(both.after, now), difference}});
  const CansByProduct before = shopping(both.before, units), after = shopping(both.after, units);
  CansByProduct products = before;
  products.insert(after.begin(), after.end());
  for (const auto& [product, any] : products) {
    const auto of = [&, &product = product](const CansByProduct& list) { return list.contains(product) ? list.at(product) : "none"; };
    if (of(before) != of(after)) rows.push_back({{"  " + product, of(before), of(after), {}}});
  }
}

std::string degree_hours(double kelvin_hours, Units units) {
  return units == Units::us ? fmt::format("{:.0f} °F h", kelvin_hours * 9 / 5) : fmt::format("{:.0f} K h", kelvin_hours);
}

std::string heat_text(const job::Comparison& found, const job::Plan& after) {
  const auto &was = found.heat_before, &now = found.heat_after;
  if (!was && !now) return "what that costs is not known: the shop file states no heater's power and no price of heat";
  if (!was || !now) return "what that costs is not known: only one of the two states what its heater can do";
  std::string words = fmt::format("the heater uses {:.0f} kWh in place of {:.0f} kWh", now->kilowatt_hours, was->kilowatt_hours);
  if (!was->cost || !now->cost || after.shop.currency.empty()) return words + "; the shop file states no price of a kWh or no currency";
  const Money more = *now->cost - *was->cost;
  if (std::abs(more.value()) < 0.005) return words + ", for the same money";
  return words + ", for " + money_text(Money(std::abs(more.value())), after.shop.currency) + (more.value() > 0 ? " more" : " less");
}

std::string heat_fact(const job::Comparison& found, const job::Plan& after, Units units) {
  if (found.differs.count() == 0) return "the shop is as warm as before";
  std::string text;
  if (found.warmer > 0) text = "warmer by " + degree_hours(found.warmer, units);
  if (found.cooler > 0) text += (text.empty() ? "" : ", ") + ("colder by " + degree_hours(found.cooler, units));
  return text + fmt::format(" (degrees times hours) in {} until {}; {}", format_span(found.differs),
                            instant_text(found.air_until, after.shop.zone), heat_text(found, after));
}

Section coats(const job::Comparison& found, const job::Plan& after, const Texts& texts) {
  Section section{"moved", "Moved", found.moved.empty() ? "no coat" : counted(found.moved.size(), "coat", "coats")};
  if (!found.moved.empty()) section.blocks.emplace_back(moves(after, found.moved, texts));
  std::string rest = counted(found.stayed, "coat stays", "coats stay") + " as planned before";
  if (found.added > 0) rest += "; " + counted(found.added, "is new", "are new");
  if (found.gone > 0) rest += "; " + counted(found.gone, "is gone", "are gone");
  if (found.stayed + found.added + found.gone > 0) section.blocks.emplace_back(Paragraph{rest + "."});
  if (found.warmer > 0) section.blocks.emplace_back(heat_caution());
  return section;
}

Section dates_and_cost(const Both& both, const Texts& texts) {
  Table table{"compare", "The order as it is, and changed", {{}, {"as it is"}, {"changed"}, {"difference"}}, {{}}};
  add_pieces(table.groups.front().rows, both);
  add_shopping(table.groups.front().rows, both, texts.units);
  return {"compare", {}, {}, {std::move(table)}};
}

void add_no_plan(Document& document, const job::Plan& plan, const char* which) {
  if (plan.status == job::Status::planned) return;
  Section section{"no-plan", which};
  for (Section& part : present({no_plan(plan), proposals(plan), findings(plan.findings)})) section.blocks.emplace_back(std::move(part));
  document.sections.push_back(std::move(section));
}

}  // namespace

Document what_if(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set, const std::string& order,
                 const Texts& texts) {
  Document document{typed(order) + Phrase("  " + from_text(after, texts), Mark::faint)};
  Facts changes;
  for (const std::string& text : set) changes.facts.push_back({"what if", text});
  document.sections = {{"set", {}, {}, {changes}}, dates_and_cost({before, after}, texts)};
  if (before.status == job::Status::planned && after.status == job::Status::planned) {
    const job::Comparison found = job::compare(before, after);
    document.sections.back().blocks.emplace_back(Facts{{{"heat", heat_fact(found, after, texts.units)}}});
    document.sections.push_back(coats(found, after, texts));
  }
  add_no_plan(document, before, "As it is");
  add_no_plan(document, after, "Changed");
  return document;
}

}  // namespace coatday::report
