#pragma once
// How thick a coat is, worked out by the checker itself.

#include "checker/drying_clock.h"
#include "finish/schedule.h"

namespace coatday::checker {

class Film {
 public:
  /// Without a step it takes the thickness of the record.
  Film(const finish::Step*, const finish::Product&);

  [[nodiscard]] bool stated() const { return stated_; }
  [[nodiscard]] double wet() const { return wet_; }  ///< µm
  /// (wet / the record's)^n.
  [[nodiscard]] double drying(Estimate) const;
  [[nodiscard]] double square_metres_per_litre() const;  ///< from the can
  /// Within what is known: half to twice the record's film, and no thicker than its law reaches.
  [[nodiscard]] bool known() const;

 private:
  finish::Mechanism mechanism_;
  double wet_, recorded_, thinned_;  // µm, µm, litres at the gun of one from the can
  bool stated_ = false;
};

}  // namespace coatday::checker
