// The order as it is beside the order with something changed.
#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "job/compare.h"
#include "report/document/render_text.h"
#include "report/document/table.h"
#include "report/document/table_lines.h"
#include "report/papers/report.h"
#include "report/sections/advice.h"
#include "report/sections/findings.h"
#include "report/sections/moved.h"
#include "report/sections/no_plan.h"
#include "report/sections/purchase.h"
#include "report/sections/summary.h"
#include "report/words.h"

namespace coatday::report {
namespace {

struct Both {
  const job::Plan& before;
  const job::Plan& after;
};

Text at(const job::Plan& plan, const std::optional<Instant>& t) {
  if (plan.status != job::Status::feasible) return {"no plan", Mark::bad};
  return t ? Text(instant_text(*t, plan.shop.zone)) : Text("never in this air", Mark::bad);
}

Text sooner(const std::optional<Instant>& before, const std::optional<Instant>& after) {
  if (!before || !after) return {};
  const Hours gain(*before - *after);
  if (gain.count() == 0) return "the same";
  return {unbroken(format_span(gain.count() > 0 ? gain : -gain)) + (gain.count() > 0 ? " sooner" : " later"),
          gain.count() > 0 ? Mark::good : Mark::bad};
}

Text slack(const std::optional<Hours>& hours) {
  return hours ? Text(slack_text(*hours), hours->count() < 0 ? Mark::bad : Mark::plain) : Text("nothing promised");
}

using Results = std::pair<const job::PieceResult*, const job::PieceResult*>;

bool same(const Results& a, const Results& b) {
  const auto equal = [](const job::PieceResult* x, const job::PieceResult* y) {
    return x->ready.deliver == y->ready.deliver && x->ready_late.deliver == y->ready_late.deliver && x->slack == y->slack;
  };
  return equal(a.first, b.first) && equal(a.second, b.second);
}

void add_piece(TextTable& table, const Both& both, const std::string& who, const Results& results) {
  const auto& [was, now] = results;
  const auto row = [&](const std::string& label, std::optional<Instant> a, std::optional<Instant> b) {
    table.rows.push_back({Text(label), at(both.before, a), at(both.after, b), sooner(a, b)});
  };
  row(who, was->ready.deliver, now->ready.deliver);
  row("  safe", was->ready_late.deliver, now->ready_late.deliver);
  if (was->slack || now->slack) table.rows.push_back({Text("  promise"), slack(was->slack), slack(now->slack), Text()});
}

// Pieces with the same dates are told together.
void add_pieces(TextTable& table, const Both& both) {
  std::vector<std::pair<Results, std::vector<std::string>>> groups;
  for (const job::PieceResult& now : both.after.pieces) {
    const auto was = std::find_if(both.before.pieces.begin(), both.before.pieces.end(), [&](const auto& p) { return p.id == now.id; });
    if (was == both.before.pieces.end()) continue;
    const Results results{&*was, &now};
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return same(g.first, results); });
    if (group == groups.end()) {
      groups.push_back({results, {now.name}});
    } else {
      group->second.push_back(now.name);
    }
  }
  for (const auto& [results, names] : groups) add_piece(table, both, groups.size() == 1 ? "deliver" : listed(names), results);
}

using Shopping = std::map<std::string, std::string>;  // product, and part -> cans

Shopping shopping(const job::Plan& plan, Units units) {
  Shopping all;
  for (const job::Purchase& row : plan.purchase) {
    if (!row.buy.empty()) all[product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part)] = cans_text(row.buy, units);
  }
  return all;
}

void add_shopping(TextTable& table, const Both& both, const TextStyle& style) {
  const job::Cost was = job::cost_of(both.before), now = job::cost_of(both.after);
  const auto money = [&](const job::Plan& plan, const job::Cost& cost) {
    const std::string words = money_text(cost.sum, plan.shop.currency);
    return words.empty() || cost.sum.value() <= 0 ? "no prices"
                                                  : words + (cost.unpriced > 0 ? fmt::format(", {} unpriced", cost.unpriced) : "");
  };
  const double more = now.sum.value() - was.sum.value();
  const bool priced = was.sum.value() > 0 && now.sum.value() > 0 && !both.after.shop.currency.empty();
  const std::string difference = !priced                  ? ""
                                 : std::abs(more) < 0.005 ? "the same"
                                                          : fmt::format("{:+.2f} {}", more, both.after.shop.currency);
  table.rows.push_back({Text("buy"), money(both.before, was), money(both.after, now), difference});
  const Shopping before = shopping(both.before, style.units), after = shopping(both.after, style.units);
  Shopping products = before;
  products.insert(after.begin(), after.end());
  for (const auto& [product, any] : products) {
    const auto of = [&, &product = product](const Shopping& list) { return list.contains(product) ? list.at(product) : "none"; };
    if (of(before) != of(after)) table.rows.push_back({Text("  " + product), of(before), of(after), Text()});
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

Lines heat(const job::Comparison& found, const job::Plan& after, const TextStyle& style) {
  const Text head("  heat  ", Mark::faint);
  if (found.differs.count() == 0) return hang(head, "the shop is as warm as before", style);
  std::string words;
  if (found.warmer > 0) words = "warmer by " + degree_hours(found.warmer, style.units);
  if (found.cooler > 0) words += (words.empty() ? "" : ", ") + ("colder by " + degree_hours(found.cooler, style.units));
  words += fmt::format(" (degrees times hours) in {} until {}; {}", format_span(found.differs),
                       instant_text(found.air_until, after.shop.zone), heat_text(found, after));
  return hang(head, words, style);
}

Lines coats(const job::Comparison& found, const job::Plan& after, const TextStyle& style) {
  Lines lines = hang(Text("Moved  ", Mark::strong), found.moved.empty() ? "no coat" : counted(found.moved.size(), "coat", "coats"), style);
  append(lines, table_lines(moves(after, found.moved, {style.units, after.shop.zone}), 2, style));
  std::string rest = counted(found.stayed, "coat stays", "coats stay") + " as planned before";
  if (found.added > 0) rest += "; " + counted(found.added, "is new", "are new");
  if (found.gone > 0) rest += "; " + counted(found.gone, "is gone", "are gone");
  if (found.stayed + found.added + found.gone > 0) append(lines, hang("  ", rest + ".", style));
  return lines;
}

void add_no_plan(Lines& page, const job::Plan& plan, const char* which, const TextStyle& style) {
  if (plan.status == job::Status::feasible) return;
  page.emplace_back();
  page.emplace_back(which, Mark::strong);
  for (const Section& section : present({report::no_plan(plan), proposals(plan), findings(plan.findings)}))
    append(page, section_lines(section, style));
}

}  // namespace

std::string what_if_text(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set, const std::string& order,
                         const TextStyle& style) {
  Lines page = wrap(Text(order, Mark::strong) + "  " + from_text(after, {style.units, after.shop.zone}), style.columns);
  for (const std::string& text : set) append(page, hang(Text("  what if   ", Mark::faint), text, style));
  page.emplace_back();
  const Both both{before, after};
  TextTable table{{{Text()}, {Text("as it is", Mark::faint)}, {Text("changed", Mark::faint)}, {Text("difference", Mark::faint)}}, {}};
  add_pieces(table, both);
  add_shopping(table, both, style);
  append(page, layout(table, 2, style));
  const bool planned = before.status == job::Status::feasible && after.status == job::Status::feasible;
  if (planned) {
    const job::Comparison found = job::compare(before, after);
    append(page, heat(found, after, style));
    page.emplace_back();
    append(page, coats(found, after, style));
    if (found.warmer > 0) append(page, section_lines(heat_caution(), style));
  }
  add_no_plan(page, before, "As it is", style);
  add_no_plan(page, after, "Changed", style);
  return render(page, style.colour);
}

}  // namespace coatday::report
