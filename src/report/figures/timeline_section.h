#pragma once
// The timeline: week after week the air, the faces, and what days without a coat wait for.

#include <optional>

#include "job/air_forecast.h"
#include "job/plan.h"
#include "report/document/document.h"
#include "report/words.h"

namespace coatday::report::page {

/// For the page alone; nothing without a plan. The air is over days_shown(). Both outlive the section.
[[nodiscard]] std::optional<Section> timeline(const job::Plan&, const job::AirForecast&, const Texts&);

}  // namespace coatday::report::page
