// The order as it is beside the order with something changed.
#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "job/compare.h"
#include "report/document/table.h"
#include "report/papers/report.h"
#include "report/sections/advice.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

struct Both {
  const job::Plan& before;
  const job::Plan& after;
};

Text at(const job::Plan& plan, const std::optional<Instant>& t) {
  if (plan.status != job::Status::feasible) return {"no plan", Ink::bad};
  return t ? Text(instant_words(*t, plan.shop.zone)) : Text("never in this air", Ink::bad);
}

Text sooner(const std::optional<Instant>& before, const std::optional<Instant>& after) {
  if (!before || !after) return {};
  const Hours gain(*before - *after);
  if (gain.count() == 0) return "the same";
  return {unbroken(format_span(gain.count() > 0 ? gain : -gain)) + (gain.count() > 0 ? " sooner" : " later"),
          gain.count() > 0 ? Ink::good : Ink::bad};
}

Text slack(const std::optional<Hours>& hours) {
  return hours ? Text(slack_words(*hours), hours->count() < 0 ? Ink::bad : Ink::plain) : Text("nothing promised");
}

using Results = std::pair<const job::PieceResult*, const job::PieceResult*>;

bool same(const Results& a, const Results& b) {
  const auto equal = [](const job::PieceResult* x, const job::PieceResult* y) {
    return x->ready.deliver == y->ready.deliver && x->ready_late.deliver == y->ready_late.deliver && x->slack == y->slack;
  };
  return equal(a.first, b.first) && equal(a.second, b.second);
}

void add_piece(Table& table, const Both& both, const std::string& who, const Results& results) {
  const auto& [was, now] = results;
  const auto row = [&](const std::string& label, std::optional<Instant> a, std::optional<Instant> b) {
    table.rows.push_back({Text(label), at(both.before, a), at(both.after, b), sooner(a, b)});
  };
  row(who, was->ready.deliver, now->ready.deliver);
  row("  late side", was->ready_late.deliver, now->ready_late.deliver);
  if (was->slack || now->slack) table.rows.push_back({Text("  promise"), slack(was->slack), slack(now->slack), Text()});
}

// Pieces with the same dates are told together.
void add_pieces(Table& table, const Both& both) {
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
    if (!row.buy.empty()) all[product_name(plan, row.product) + (row.part.empty() ? "" : ", " + row.part)] = cans_words(row.buy, units);
  }
  return all;
}

void add_shopping(Table& table, const Both& both, const Look& look) {
  const job::Cost was = job::cost_of(both.before), now = job::cost_of(both.after);
  const auto money = [&](const job::Plan& plan, const job::Cost& cost) {
    const std::string words = money_words(cost.sum, plan.shop.currency);
    return words.empty() || cost.sum.value() <= 0 ? "no prices"
                                                  : words + (cost.unpriced > 0 ? fmt::format(", {} unpriced", cost.unpriced) : "");
  };
  const double more = now.sum.value() - was.sum.value();
  const bool priced = was.sum.value() > 0 && now.sum.value() > 0 && !both.after.shop.currency.empty();
  const std::string difference = !priced                  ? ""
                                 : std::abs(more) < 0.005 ? "the same"
                                                          : fmt::format("{:+.2f} {}", more, both.after.shop.currency);
  table.rows.push_back({Text("buy"), money(both.before, was), money(both.after, now), difference});
  const Shopping before = shopping(both.before, look.units), after = shopping(both.after, look.units);
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

std::string heat_words(const job::Comparison& found, const job::Plan& after) {
  const auto &was = found.heat_before, &now = found.heat_after;
  if (!was && !now) return "what that costs is not known: the shop file tells no heater's power and no price of heat";
  if (!was || !now) return "what that costs is not known: only one of the two tells what its heater can do";
  std::string words = fmt::format("the heater uses {:.0f} kWh in place of {:.0f} kWh", now->kilowatt_hours, was->kilowatt_hours);
  if (!was->cost || !now->cost || after.shop.currency.empty()) return words + "; the shop file tells no price of a kWh or no currency";
  const Money more = *now->cost - *was->cost;
  if (std::abs(more.value()) < 0.005) return words + ", for the same money";
  return words + ", for " + money_words(Money(std::abs(more.value())), after.shop.currency) + (more.value() > 0 ? " more" : " less");
}

Lines heat(const job::Comparison& found, const job::Plan& after, const Look& look) {
  const Text head("  heat  ", Ink::faint);
  if (found.differs.count() == 0) return hang(head, "the shop is as warm as before", look);
  std::string words;
  if (found.warmer > 0) words = "warmer by " + degree_hours(found.warmer, look.units);
  if (found.cooler > 0) words += (words.empty() ? "" : ", ") + ("colder by " + degree_hours(found.cooler, look.units));
  words += fmt::format(" (degrees times hours) in {} until {}; {}", format_span(found.differs),
                       instant_words(found.air_until, after.shop.zone), heat_words(found, after));
  return hang(head, words, look);
}

Lines coats(const job::Comparison& found, const job::Plan& after, const Look& look) {
  Lines lines = hang(Text("Moved  ", Ink::strong), found.moved.empty() ? "no coat" : counted(found.moved.size(), "coat", "coats"), look);
  append(lines, moves(after, found.moved, look));
  std::string rest = counted(found.stayed, "coat stays", "coats stay") + " as planned before";
  if (found.added > 0) rest += "; " + counted(found.added, "is new", "are new");
  if (found.gone > 0) rest += "; " + counted(found.gone, "is gone", "are gone");
  if (found.stayed + found.added + found.gone > 0) append(lines, hang("  ", rest + ".", look));
  return lines;
}

void no_plan(Lines& page, const job::Plan& plan, const char* which, const Look& look) {
  if (plan.status == job::Status::feasible) return;
  page.emplace_back();
  page.emplace_back(which, Ink::strong);
  append(page, contradiction(plan, look));
  append(page, proposals(plan, look));
  append(page, findings(plan.findings, look));
}

}  // namespace

std::string what_if_text(const job::Plan& before, const job::Plan& after, const std::vector<std::string>& set, const std::string& order,
                         const Look& look) {
  Lines page = change_title(order, after, look);
  for (const std::string& text : set) append(page, hang(Text("  what if   ", Ink::faint), text, look));
  page.emplace_back();
  const Both both{before, after};
  Table table{{{Text()}, {Text("as it is", Ink::faint)}, {Text("changed", Ink::faint)}, {Text("difference", Ink::faint)}}, {}};
  add_pieces(table, both);
  add_shopping(table, both, look);
  append(page, layout(table, 2, look));
  const bool planned = before.status == job::Status::feasible && after.status == job::Status::feasible;
  if (planned) {
    const job::Comparison found = job::compare(before, after);
    append(page, heat(found, after, look));
    page.emplace_back();
    append(page, coats(found, after, look));
    if (found.warmer > 0) append(page, heat_caution(look));
  }
  no_plan(page, before, "As it is", look);
  no_plan(page, after, "Changed", look);
  return render(page, look.colour);
}

}  // namespace coatday::report
