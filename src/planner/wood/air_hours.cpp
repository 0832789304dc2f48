#include "planner/wood/air_hours.h"

#include <algorithm>

#include "wood/moisture.h"

namespace coatday::planner {
namespace {

constexpr std::chrono::hours one_hour{1};
constexpr date::days at_once{60};

}  // namespace

void AirHours::reach(Instant until) {
  Instant end = from_ + hours_.size() * one_hour;
  while (end < until) {
    const Instant next = std::max(until, end + at_once);
    const auto source = room_(end, next + one_hour);
    const std::vector<wood::AirSpan> more = wood::air_spans(*source, end, next, Minutes(one_hour));
    for (Instant t = end; t < next; t += one_hour) beyond_table_ += wood::in_moisture_table(source->mean(t, t + one_hour)) ? 0 : 1;
    hours_.insert(hours_.end(), more.begin(), more.end());
    end = from_ + hours_.size() * one_hour;
  }
}

std::span<const wood::AirSpan> AirHours::between(Instant from, Instant until) {
  reach(until);
  const auto index = [this](Instant t) { return static_cast<std::size_t>(std::max(Instant::duration(0), t - from_) / one_hour); };
  const std::size_t first = index(from), last = std::max(first, index(until + one_hour - std::chrono::seconds(1)));
  return std::span(hours_).subspan(first, last - first);
}

MoistureContent AirHours::equilibrium(Instant from, Instant until) {
  const auto hours = between(from, until);
  double sum = 0;
  for (const wood::AirSpan& span : hours) sum += span.equilibrium.value();
  return MoistureContent(sum / static_cast<double>(std::max<std::size_t>(1, hours.size())));
}

}  // namespace coatday::planner
