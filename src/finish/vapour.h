#pragma once
// The solvent in a coat, for cautions and airflow. It permits nothing: fire code, label and safety data sheet decide.

#include "finish/product.h"
#include "finish/solvent.h"

namespace coatday::finish {

/// What the product's vapour counts as: the solvent of its record. Without one, the usual solvent of its base that needs most air for a
/// gram (judgement). Water-borne finishes hold co-solvents: a glycol ether is assumed.
[[nodiscard]] const Solvent& solvent_of(const Product&);

/// Grams of solvent in a litre from the can: the record's own content, else its VOC, whichever is more. VOC may leave out solvents that
/// burn (acetone in the United States, for one).
[[nodiscard]] GramsPerLitre solvent_content(const Product&);

/// Liquid solvent in a coat: litres from the can, and litres of thinner per litre. Thinner counts fully as solvent, except in water-borne
/// finishes, where it is water.
[[nodiscard]] Litres solvent_in(const Product&, Litres from_can, double thinner_share);

}  // namespace coatday::finish
