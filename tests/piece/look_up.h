#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>

#include "piece/shape.h"

namespace coatday::piece::testing {

inline Face face_named(const std::vector<Face>& all, const std::string& name) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Face& face) { return face.name == name; });
  if (found == all.end()) throw std::out_of_range(name);
  return *found;
}

inline double area_of(const Shape& shape, const std::string& name) { return face_named(faces_of(shape), name).area.value(); }

}  // namespace coatday::piece::testing
