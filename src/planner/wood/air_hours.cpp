#include "planner/wood/air_hours.h"

#include <algorithm>

#include "wood/moisture.h"

namespace coatday::planner {
namespace {

constexpr std::chrono::hours hour{1};
constexpr date::days at_once{60};

}  // namespace

void AirHours::reach(Instant until) {
  Instant end = from_ + hours_.size() * hour;
  while (end < until) {
    const Instant next = std::max(until, end + at_once);
    const auto source = room_(end, next + hour);
    const std::vector<wood::AirSpan> more = wood::air_spans(*source, end, next, Minutes(hour));
    for (Instant t = end; t < next; t += hour) beyond_table_ += wood::in_moisture_table(source->mean(t, t + hour)) ? 0 : 1;
    hours_.insert(hours_.end(), more.begin(), more.end());
    end = from_ + hours_.size() * hour;
  }
}

std::span<const wood::AirSpan> AirHours::between(Instant from, Instant until) {
  reach(until);
  const auto index = [this](Instant t) { return static_cast<std::size_t>(std::max(Instant::duration(0), t - from_) / hour); };
  const std::size_t first = index(from), last = std::max(first, index(until + hour - std::chrono::seconds(1)));
  return std::span(hours_).subspan(first, last - first);
}

MoistureContent AirHours::equilibrium(Instant from, Instant until) {
  const auto hours = between(from, until);
  double sum = 0;
  for (const wood::AirSpan& span : hours) sum += span.equilibrium.value();
  return MoistureContent(sum / static_cast<double>(std::max<std::size_t>(1, hours.size())));
}

}  // namespace coatday::planner
