#pragma once
// A second way to the area of a body: build it from unit cubes and count the faces that no other cube covers.

#include <functional>

namespace coatday::piece::testing {

struct Box {
  int x, y, z;
};

/// Faces of cubes between solid and air; outside the box is air.
[[nodiscard]] int exposed_faces(Box, const std::function<bool(int x, int y, int z)>& solid);

}  // namespace coatday::piece::testing
