#pragma once
// A label with times at several airs says how fast the clock runs better than a class default.

#include "finish/product.h"

namespace coatday::finish {

/// Fits the activation energy, or the wet-bulb share, of the product's law to its rows by least squares in ln(time), for each stage from
/// the first row that has it, since the planner starts from that row too. The law's range is widened to take the rows in. A law of
/// vapour pressure has nothing to fit: its residual alone tells. None with fewer than two rows that share a stage of that clock, or
/// where their air does not differ in what the law depends on.
[[nodiscard]] std::optional<Fit> fit_law(const Product&, Clock);

/// The same for each stage by itself. None at all for a clock whose stages would then come in a wrong order somewhere in the range of
/// the rows' air: such rows are better taken together.
[[nodiscard]] PerStage<std::optional<Fit>> fit_stages(const Product&);

/// A law that the record itself gives stands as it is; the residual tells how far the rows of that stage are from it. None where one row
/// alone has the stage.
[[nodiscard]] std::optional<Fit> as_recorded(const Product&, Stage);

}  // namespace coatday::finish
