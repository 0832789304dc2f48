#pragma once
// A label that gives times in several airs describes the clock better than a class default.

#include "finish/product.h"

namespace coatday::finish {

/// Fits the activation energy, or the wet-bulb share, of the product's law to its rows by least squares in ln(time), for each stage from
/// the first row that has it, since the planner starts from that row too. The range of the law is widened to include the rows. A law of
/// vapour pressure has nothing to fit: only its residual is found. None with fewer than two rows that share a stage of that clock, or
/// where their air does not differ in what the law depends on.
[[nodiscard]] std::optional<Fit> fit_law(const Product&, Clock);

/// The same for each stage alone. None for a clock if its stages would then come in a wrong order anywhere in the range of the rows' air:
/// such rows are fitted together.
[[nodiscard]] PerStage<std::optional<Fit>> fit_stages(const Product&);

/// A law that the record itself gives is kept; the residual shows how far the rows of that stage are from it. None where only one row
/// has the stage.
[[nodiscard]] std::optional<Fit> as_recorded(const Product&, Stage);

}  // namespace coatday::finish
