#include "report/sections/time_spent.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace coatday::report {
namespace {

using job::TimeCause;

constexpr std::size_t most_orders = 4;
constexpr Hours a_day{24};

std::string cause_text(const job::TimeShare& share) {
  switch (share.cause) {
    case TimeCause::drying:
      return "drying";
    case TimeCause::air:
      return "waiting for warmer or drier air";
    case TimeCause::closed:
      return "shop closed";
    case TimeCause::place:
      return fmt::format("waiting for a place ({})", share.place);
    case TimeCause::set_aside:
      return "waiting for room to stand parts aside";
    case TimeCause::hands:
      return "waiting for hands";
    case TimeCause::spray_gun:
      return "waiting for the spray gun";
    case TimeCause::exhaust:
      return "waiting for the exhaust";
    case TimeCause::dust:
      return "keeping dust off wet film";
    case TimeCause::hot_work:
      return "keeping hot work off vapour";
    case TimeCause::limit:
      return "waiting, so that the next step can follow in time";
    case TimeCause::visit:
      return "with other work";
    case TimeCause::rest:
      return "waits that the schedule asks for";
    case TimeCause::start:
      return "before its start";
    case TimeCause::work:
      break;
  }
  return "work";
}

std::string days(Hours time) { return fmt::format("{:.0f}", time / a_day); }

std::string slower_text(const job::TimeShare& share) {
  if (share.cause != TimeCause::drying || share.slower < a_day) return "";
  return fmt::format(" ({} more than in the air of the labels)", days(share.slower));
}

std::string text(const job::TimeSpent& spent) {
  std::string words;
  for (const job::TimeShare& share : spent.shares) {
    if (share.time < a_day) continue;
    const bool first = words.empty();
    words += fmt::format("{}{} {}", first ? "" : ", ", cause_text(share), days(share.time));
    if (first) words += days(share.time) == "1" ? " day" : " days";
    words += slower_text(share);
  }
  return words;
}

}  // namespace

std::vector<std::string> time_spent_texts(const job::Plan& plan) {
  std::vector<const job::TimeSpent*> orders;
  for (const job::TimeSpent& spent : plan.time_spent) orders.push_back(&spent);
  std::stable_sort(orders.begin(), orders.end(), [](const auto* a, const auto* b) { return a->all > b->all; });
  if (orders.size() > most_orders) orders.resize(most_orders);
  std::vector<std::string> lines;
  for (const job::TimeSpent* spent : orders) {
    const std::string words = text(*spent);
    if (!words.empty()) lines.push_back((spent->order.empty() ? "" : spent->order + ": ") + words);
  }
  return lines;
}

}  // namespace coatday::report
