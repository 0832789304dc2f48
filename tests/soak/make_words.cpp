#include <fmt/format.h>

#include "tests/soak/make.h"

namespace coatday::soak {

std::string millimetres(int mm) { return fmt::format("{} mm", mm); }

std::string length(Random& random, int least_mm, int most_mm) {
  const int mm = random.between(least_mm, most_mm);
  const int sixteenths = static_cast<int>(mm * 16 / 25.4);
  switch (random.between(0, 9)) {
    case 0:
      return fmt::format("{}.{} cm", mm / 10, mm % 10);
    case 1:
      return sixteenths < 16 ? millimetres(mm) : fmt::format("{} {}/16 in", sixteenths / 16, sixteenths % 15 + 1);
    case 2:
      return sixteenths < 16 * 14 ? millimetres(mm) : fmt::format("{} ft {} in", sixteenths / 192, sixteenths / 16 % 12);
    case 3:
      return fmt::format("{}.{:03} m", mm / 1000, mm % 1000);
    default:
      return millimetres(mm);
  }
}

std::string temperature(Random& random, int least_c, int most_c) {
  const int c = random.between(least_c, most_c);
  switch (random.between(0, 4)) {
    case 0:
      return fmt::format("{} °F", c * 9 / 5 + 32);
    case 1:
      return fmt::format("{}.{} C", c, random.between(0, 9));
    default:
      return fmt::format("{} °C", c);
  }
}

std::string minutes(Random& random, int least, int most) { return fmt::format("{} min", random.between(least, most)); }

std::string duration(Random& random, int least_minutes, int most_minutes) {
  const int all = random.between(least_minutes, most_minutes);
  switch (random.between(0, 3)) {
    case 0:
      return all < 1440 ? fmt::format("{} min", all) : fmt::format("{} days", all / 1440);
    case 1:
      return all < 60 ? fmt::format("{} min", all) : fmt::format("{} h", all / 60);
    case 2:
      return all < 60 ? fmt::format("{} min", all) : fmt::format("{} h {} min", all / 60, all % 60);
    default:
      return fmt::format("{} min", all);
  }
}

When odd_time(Random& random, When day) {
  const int clock = random.chance(0.05) ? 0 : random.between(6 * 60, 18 * 60);
  const int step = random.chance(0.5) ? 1 : random.chance(0.5) ? 5 : 30;
  return date::floor<date::days>(day) + std::chrono::minutes(clock / step * step);
}

std::string species(Random& random) {
  return random.one_of({"walnut", "white-oak", "red-oak", "hard-maple", "cherry", "ash", "teak", "beech-american", "aspen-quaking",
                        "Red Oak", "birch-yellow", "black walnut", "elm-american", "alder-red"});
}

}  // namespace coatday::soak
