#pragma once
// The parts of the generator. Each draws from the scene and adds to its case.

#include "tests/soak/case.h"
#include "tests/soak/random.h"
#include "tests/soak/when.h"

namespace coatday::soak {

/// What an order has to know of the shop, so that its file is without a mistake.
struct Scene {
  Random& random;
  const Known& known;
  Case& made;
  When start{};
  std::string zone{};
  int people = 1;
  bool mild = false;                    ///< three quarters have air that suits most finishes
  bool bare = false;                    ///< a quarter of all cases have few keys, so that small ones come up
  std::vector<std::string> supports{};  ///< for which there is a place
  std::vector<std::string> own_wood{}, own_metal{};

  /// Whether a key that may be left out is given.
  [[nodiscard]] bool gives(double share) const { return random.chance(bare ? share / 6 : share); }
};

[[nodiscard]] std::string millimetres(int);
/// In any unit; mostly in whole millimetres, which the relations can write otherwise.
[[nodiscard]] std::string length(Random&, int least_mm, int most_mm);
[[nodiscard]] std::string temperature(Random&, int least_c, int most_c);
[[nodiscard]] std::string minutes(Random&, int least, int most);
/// In minutes, hours, days or all of them.
[[nodiscard]] std::string duration(Random&, int least_minutes, int most_minutes);
/// Seldom on a mark of five minutes.
[[nodiscard]] When odd_time(Random&, When day);
[[nodiscard]] std::string species(Random&);

/// One that suits wood or metal, shipped or own.
[[nodiscard]] std::string schedule(Scene&, bool metal);

void add_label(Scene&);
void add_shop(Scene&);
[[nodiscard]] Tree make_air(Scene&);
/// An invented year in one of the forms that are read; gives the name of its file.
[[nodiscard]] std::string add_weather(Scene&);
/// An invented logger's table; gives the value of `log`.
[[nodiscard]] Tree add_log(Scene&);
void add_order(Scene&, int number);
[[nodiscard]] Tree make_part(Scene&, int number, bool metal);
/// The sizes of a shape, set into a part.
void add_shape(Scene&, Tree& part, bool metal);
/// Keys of a part of wood alone.
void add_wood(Scene&, Tree& part);

}  // namespace coatday::soak
