#pragma once
// A plan as one HTML file: for the shop's wall, a phone and a desk. Nothing in it is fetched, and it reads without its script.

#include <string>

#include "job/advice.h"
#include "job/air_forecast.h"
#include "job/job.h"
#include "job/wood_findings.h"
#include "quantity/text.h"

namespace coatday::report {

/// What stands beside a plan, as far as it is known.
struct Beside {
  job::Advice advice{};
  job::WoodFindings wood{};
  job::AirForecast air{};  ///< over the days_shown() of figures/time_scale.h
};

/// Of one order or several. The plan is of the job; where there is none it says why.
[[nodiscard]] std::string plan_page(const job::Job&, const job::Plan&, const Beside&, Units);

}  // namespace coatday::report
