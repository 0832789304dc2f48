#include "report/sections/air_hours.h"

#include "report/words.h"

namespace coatday::report {

std::string air_hours(const job::Plan& plan) {
  constexpr std::size_t most = 8;
  struct Source {
    climate::Origin origin;
    Instant until;
  };
  std::vector<Source> spans;
  for (const climate::AirRow& row : plan.air.rows()) {
    const Instant end = row.from + climate::AirSeries::step;
    if (end <= plan.from || row.from >= plan.until) continue;
    if (spans.empty() || spans.back().origin != row.origin) spans.push_back({row.origin, end});
    spans.back().until = end;
  }
  if (spans.size() < 2) return "";
  std::string words;
  for (std::size_t i = 0; i < spans.size(); ++i) {
    words += i == 0 ? "" : "; then ";
    if (i == most) return words + "others (every half hour is in the JSON form)";
    words += climate::word(spans[i].origin);
    if (i + 1 < spans.size()) words += " until " + instant_text(spans[i].until, plan.shop.zone);
  }
  return words;
}

}  // namespace coatday::report
