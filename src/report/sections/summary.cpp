// The first screen: when is it ready, is that in time, what must be bought, is any face left behind.
#include <fmt/format.h>

#include <algorithm>

#include "job/compare.h"
#include "report/sections/sections.h"
#include "report/words.h"

namespace coatday::report {
namespace {

Lines entry(std::string_view label, const Text& body, const TextStyle& style) { return labelled(label, 10, body, style); }

bool same_result(const job::PieceResult& a, const job::PieceResult& b) {
  return a.due == b.due && a.ready.deliver == b.ready.deliver && a.ready_late.deliver == b.ready_late.deliver && a.slack == b.slack;
}

Text delivery(const job::Plan& plan, const job::PieceResult& result) {
  const auto at = [&plan](Instant t) { return instant_text(t, plan.shop.zone); };
  if (!result.ready.deliver) return {"never in this air", Mark::bad};
  Text text = Text(at(*result.ready.deliver), Mark::strong);
  if (result.ready_late.deliver) text += ", late side " + at(*result.ready_late.deliver);
  if (!result.due) return text + "; nothing promised";
  text += "; promised " + at(*result.due);
  if (!result.slack) return text;
  return text + ": " + Text(slack_text(*result.slack), result.slack->count() < 0 ? Mark::bad : Mark::good);
}

// Pieces that are ready together are told together.
Lines deliveries(const job::Plan& plan, const TextStyle& style) {
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
    append(lines, entry(i == 0 ? "deliver" : "", who + delivery(plan, plan.pieces[i]), style));
  }
  return lines;
}

std::string cans(const job::Purchase& row, const TextStyle& style) {
  std::vector<std::string> sizes;
  for (const job::Bought& can : row.buy) sizes.push_back(unbroken(fmt::format("{} x ", can.count)) + volume_text(can.size, style.units));
  return listed(sizes);
}

std::string total_cost(const job::Plan& plan) {
  const auto [sum, unpriced] = job::cost_of(plan);
  const std::string total = sum.value() > 0 ? money_text(sum, plan.shop.currency) : "";
  if (total.empty()) return "";
  return ": about " + total + (unpriced > 0 ? fmt::format(", and {} without a price", unpriced) : "");
}

Text shopping(const job::Plan& plan, const TextStyle& style) {
  std::vector<std::string> items;
  for (const job::Purchase& row : plan.purchase) {
    const std::string part = row.part.empty() ? "" : ", " + row.part;
    if (!row.buy.empty()) items.push_back(cans(row, style) + " " + product_name(plan, row.product) + part);
  }
  if (items.empty()) return {plan.purchase.empty() ? "nothing" : "nothing: all of it is on the shelf"};
  return {listed(items) + total_cost(plan)};
}

Lines title(const job::Plan& plan, const std::string& order, const TextStyle& style) {
  const Text name(order, Mark::strong);
  const Text from("from " + unbroken(long_date(local_day(plan.from, plan.shop.zone))));
  const int room = style.columns - from.width() - 2;
  if (name.width() <= room) return {padded(name, room + 2) + from};
  Lines lines = wrap(name, style.columns);
  lines.push_back("  " + from);
  return lines;
}

Text verdict(const job::Plan& plan) {
  return {verdict_words(plan), plan.status != job::Status::feasible ? Mark::bad : plan.proven ? Mark::good : Mark::plain};
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
                     instant_text(*plan.ready_bound, plan.shop.zone));
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

Lines summary(const job::Plan& plan, const std::string& order, const TextStyle& style) {
  Lines lines = title(plan, order, style);
  const bool planned = plan.status == job::Status::feasible;
  if (planned) append(lines, deliveries(plan, style));
  if (planned) append(lines, entry("buy", shopping(plan, style), style));
  if (planned && !plan.faces.empty()) {
    const FaceVerdict faces = both_faces(plan);
    append(lines, entry("faces", Text(faces.words, faces.equal ? Mark::plain : Mark::bad), style));
  }
  append(lines, entry("plan", verdict(plan), style));
  if (!plan.shop.air_description.empty()) append(lines, entry("air", plan.shop.air_description, style));
  if (const std::string hours = air_hours(plan); !hours.empty()) append(lines, entry("", "hours: " + hours, style));
  if (const std::string words = room_words(plan); !words.empty()) append(lines, entry("room", words, style));
  return lines;
}

}  // namespace coatday::report
