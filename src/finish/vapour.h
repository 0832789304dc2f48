#pragma once
// The solvent in a coat. A reckoning for cautions and airflow, never a clearance: fire code, label and safety data sheet count.

#include "finish/product.h"
#include "finish/solvent.h"

namespace coatday::finish {

/// What the product's vapour is reckoned as: the record's own solvent, else, of those usual in its base, the one whose gram needs most air
/// (judgement). Water-borne finishes hold co-solvents: a glycol ether is assumed.
[[nodiscard]] const Solvent& solvent_of(const Product&);

/// Grams of solvent in a litre from the can: the record's own content, else its VOC, whichever is more. VOC may leave out solvents that
/// burn (acetone in the United States, for one).
[[nodiscard]] GramsPerLitre solvent_content(const Product&);

/// Liquid solvent in a coat of so many litres from the can, with so many litres of thinner a litre: all of the solvent, and thinner as solvent
/// throughout; that of a water-borne finish is water.
[[nodiscard]] Litres solvent_in(const Product&, Litres from_can, double thinner_share);

}  // namespace coatday::finish
