// The first screen: when is it ready, is that in time, what must be bought, is any face left behind.
#include <fmt/format.h>

#include <algorithm>

#include "job/compare.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

Lines entry(std::string_view label, const Text& body, const Look& look) { return labelled(label, 10, body, look); }

bool same_result(const job::PieceResult& a, const job::PieceResult& b) {
  return a.due == b.due && a.ready.deliver == b.ready.deliver && a.ready_late.deliver == b.ready_late.deliver && a.slack == b.slack;
}

Text delivery(const job::Plan& plan, const job::PieceResult& result) {
  const auto at = [&plan](Instant t) { return instant_words(t, plan.shop.zone); };
  if (!result.ready.deliver) return {"never in this air", Ink::bad};
  Text text = Text(at(*result.ready.deliver), Ink::strong);
  if (result.ready_late.deliver) text += ", late side " + at(*result.ready_late.deliver);
  if (!result.due) return text + "; nothing promised";
  text += "; promised " + at(*result.due);
  if (!result.slack) return text;
  return text + ": " + Text(slack_words(*result.slack), result.slack->count() < 0 ? Ink::bad : Ink::good);
}

// Pieces that are ready together are told together.
Lines deliveries(const job::Plan& plan, const Look& look) {
  Lines lines;
  std::vector<bool> told(plan.pieces.size(), false);
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    if (told[i]) continue;
    std::vector<std::string> names;
    for (std::size_t j = i; j < plan.pieces.size(); ++j) {
      if (told[j] || !same_result(plan.pieces[i], plan.pieces[j])) continue;
      told[j] = true;
      names.push_back(plan.pieces[j].name);
    }
    const bool all = names.size() == plan.pieces.size();
    const Text who = all ? Text() : Text(listed(names) + ": ");
    append(lines, entry(i == 0 ? "deliver" : "", who + delivery(plan, plan.pieces[i]), look));
  }
  return lines;
}

std::string cans(const job::Purchase& row, const Look& look) {
  std::vector<std::string> sizes;
  for (const job::Bought& can : row.buy) sizes.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_words(can.size, look.units));
  return listed(sizes);
}

std::string total_cost(const job::Plan& plan) {
  const auto [sum, unpriced] = job::cost_of(plan);
  const std::string total = sum.value() > 0 ? money_words(sum, plan.shop.currency) : "";
  if (total.empty()) return "";
  return ": about " + total + (unpriced > 0 ? fmt::format(", and {} without a price", unpriced) : "");
}

Text shopping(const job::Plan& plan, const Look& look) {
  std::vector<std::string> items;
  for (const job::Purchase& row : plan.purchase) {
    const std::string part = row.part.empty() ? "" : ", " + row.part;
    if (!row.buy.empty()) items.push_back(cans(row, look) + " " + product_name(plan, row.product) + part);
  }
  if (items.empty()) return {plan.purchase.empty() ? "nothing" : "nothing: all of it is on the shelf"};
  return {listed(items) + total_cost(plan)};
}

Lines title(const job::Plan& plan, const std::string& order, const Look& look) {
  const Text name(order, Ink::strong);
  const Text from("from " + unbroken(long_date(local_day(plan.from, plan.shop.zone))));
  const int room = look.columns - from.width() - 2;
  if (name.width() <= room) return {padded(name, room + 2) + from};
  Lines lines = wrap(name, look.columns);
  lines.push_back("  " + from);
  return lines;
}

Text verdict(const job::Plan& plan) {
  return {verdict_words(plan), plan.status != job::Status::feasible ? Ink::bad : plan.proven ? Ink::good : Ink::plain};
}

}  // namespace

std::string verdict_words(const job::Plan& plan) {
  switch (plan.status) {
    case job::Status::infeasible:
      return "not possible; the reasons stand below";
    case job::Status::not_found:
      return "none found, and none proven impossible";
    case job::Status::feasible:
      break;
  }
  if (plan.proven) return "proven best, with the parts gathered as they are";
  if (!plan.ready_bound || !plan.ready || *plan.ready <= plan.from) return "feasible";
  if (*plan.ready <= *plan.ready_bound) return "feasible; nothing can be ready sooner, by the late side";
  const double gap = (*plan.ready - *plan.ready_bound) / Hours(*plan.ready - plan.from);
  const std::string percent = gap < 0.01 ? "under 1" : fmt::format("{:.0f}", 100 * gap);
  return fmt::format("feasible, gap {} %: nothing can be ready before {} by the late side", percent,
                     instant_words(*plan.ready_bound, plan.shop.zone));
}

std::string room_words(const job::Plan& plan) {
  const shop::Ventilation& room = plan.shop.ventilation;
  const auto any = [&plan](double finish::RateFactors::*clock, bool closed, double movement) {
    return std::any_of(plan.products.begin(), plan.products.end(),
                       [&](const auto& p) { return finish::rate_factors(p.second.mechanism, closed, movement).*clock != 1; });
  };
  std::vector<std::string> words;
  if (room.closed && any(&finish::RateFactors::cure, true, 1))
    words.emplace_back("closed, so that oxidising films go on at half their rate");
  if (room.air_movement != 1 && any(&finish::RateFactors::drying, false, room.air_movement))
    words.push_back(fmt::format("its air moves so that films dry by evaporation {:.3g} times as fast as usual", room.air_movement));
  return words.empty() ? "" : fmt::format("{}: ratios only, judgement", fmt::join(words, "; "));
}

Lines summary(const job::Plan& plan, const std::string& order, const Look& look) {
  Lines lines = title(plan, order, look);
  const bool planned = plan.status == job::Status::feasible;
  if (planned) append(lines, deliveries(plan, look));
  if (planned) append(lines, entry("buy", shopping(plan, look), look));
  if (planned && !plan.faces.empty()) {
    const FaceVerdict faces = both_faces(plan);
    append(lines, entry("faces", Text(faces.words, faces.equal ? Ink::plain : Ink::bad), look));
  }
  append(lines, entry("plan", verdict(plan), look));
  if (!plan.shop.air_description.empty()) append(lines, entry("air", plan.shop.air_description, look));
  if (const std::string hours = air_hours(plan); !hours.empty()) append(lines, entry("", "hours: " + hours, look));
  if (const std::string words = room_words(plan); !words.empty()) append(lines, entry("room", words, look));
  return lines;
}

}  // namespace coatday::report
