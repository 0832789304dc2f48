#pragma once
// Whether every wooden part gets the same film on opposite faces.

#include <string>

#include "job/plan.h"

namespace coatday::report {

/// "equal on all 9 wooden parts", or which are not. Counted from the events themselves.
struct FaceVerdict {
  bool equal = true;
  std::string text;
};
[[nodiscard]] FaceVerdict both_faces(const job::Plan&);

}  // namespace coatday::report
