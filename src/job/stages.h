#pragma once
// Which stage of a product answers a question, when not every product has every stage.

#include <string>

#include "finish/product.h"
#include "piece/piece.h"
#include "shop/shop.h"

namespace coatday::job {

/// The record has the stage, and a clock leads to it.
[[nodiscard]] bool has_stage(const finish::Product&, finish::Stage);
[[nodiscard]] finish::Stage wet_until(const finish::Product&);     ///< dust sticks until then
[[nodiscard]] finish::Stage vapour_until(const finish::Product&);  ///< and vapour is about until then (common practice, no source)
[[nodiscard]] finish::Stage sandable(const finish::Product&);
[[nodiscard]] finish::Stage recoatable(const finish::Product&);
[[nodiscard]] finish::Stage handled(const finish::Product&);
/// Until then parts touch nothing: dry to pack, or what comes nearest.
[[nodiscard]] finish::Stage stackable(const finish::Product&);
/// Until then a part keeps the place on which it dries.
[[nodiscard]] finish::Stage keeps_place(const finish::Product&, const shop::Shop&);
/// The side that was coated last must bear the turn: tack-free on points, dry to handle when laid flat.
[[nodiscard]] finish::Stage turnable(const finish::Product&, piece::Support);

/// The maker sees and feels that it is reached, and need not trust a clock.
[[nodiscard]] constexpr bool told_by_touch(finish::Stage stage) { return stage < finish::Stage::recoat; }

/// "dry to recoat".
[[nodiscard]] std::string dry_to(finish::Stage);

}  // namespace coatday::job
