#pragma once
// Years of outdoor air made up for a test.

#include <functional>
#include <string>

#include "climate/outdoor.h"

namespace coatday::climate {

/// CSV text with rows "month,day,hour,<row>" for each hour of the year.
[[nodiscard]] std::string year_text(const std::string& comment, const std::string& header,
                                    const std::function<std::string(int month, int day, int hour)>& row);
/// A year at UTC with the same air always, "t_C,rh_pct".
[[nodiscard]] OutdoorYear constant_year(const std::string& row);
/// The file's text; the test fails where it cannot be read.
[[nodiscard]] std::string sample_text(const std::string& file);

}  // namespace coatday::climate
