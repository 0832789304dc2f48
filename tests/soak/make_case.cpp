#include <fmt/format.h>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

using std::chrono::minutes;

/// A fifth each: year's end, a change of the clocks in either half of the year, and days of no note.
When any_start(Random& random) {
  const date::year year(random.between(2026, 2033));
  const auto day = [&](unsigned month, int first, int last) {
    return When(date::local_days(year / static_cast<int>(month) / random.between(first, last)));
  };
  switch (random.between(0, 5)) {
    case 0:
      return odd_time(random, day(12, 20, 31));
    case 1:
      return odd_time(random, day(3, 8, 31));
    case 2:
      return odd_time(random, random.chance(0.5) ? day(10, 22, 31) : day(11, 1, 7));
    default:
      return odd_time(random, day(static_cast<unsigned>(random.between(1, 12)), 1, 28));
  }
}

}  // namespace

Case make_case(std::uint64_t seed, const Known& known) {
  Random random(seed);
  Case made;
  made.seed = seed;
  Scene scene{random, known, made};
  scene.start = any_start(random);
  scene.bare = random.chance(0.25);
  scene.mild = random.chance(0.75);
  made.from = stamp(scene.start);
  if (random.chance(0.35)) add_label(scene);
  add_shop(scene);
  const int orders = random.chance(0.1) ? random.between(2, 4) : 1;
  for (int i = 0; i < orders; ++i) add_order(scene, i);
  return made;
}

}  // namespace coatday::soak
