#include "tests/piece/cubes.h"

#include <array>

namespace coatday::piece::testing {

int exposed_faces(Box box, const std::function<bool(int, int, int)>& solid) {
  const auto filled = [&](int x, int y, int z) {
    return x >= 0 && y >= 0 && z >= 0 && x < box.x && y < box.y && z < box.z && solid(x, y, z);
  };
  constexpr std::array<std::array<int, 3>, 6> neighbours{{{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}}};
  int count = 0;
  for (int x = 0; x < box.x; ++x)
    for (int y = 0; y < box.y; ++y)
      for (int z = 0; z < box.z; ++z)
        for (const auto& [dx, dy, dz] : neighbours)
          if (filled(x, y, z) && !filled(x + dx, y + dy, z + dz)) ++count;
  return count;
}

}  // namespace coatday::piece::testing
