#include <fmt/format.h>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

std::string heated(Random& random) {
  switch (random.between(0, 3)) {
    case 0:
      return fmt::format("06:00-12:00 at {}, 12:00-20:00 at {}", temperature(random, 18, 24), temperature(random, 16, 22));
    case 1:
      return fmt::format("00:00-23:59 at {}", temperature(random, 17, 25));
    default:
      return fmt::format("07:00-18:00 at {}", temperature(random, 15, 24));
  }
}

enum class Beside { nothing, constant, outdoors };

Tree make_rule(Scene& scene, Beside beside, bool every_day) {
  Random& random = scene.random;
  Tree rule = map();
  if (!every_day && random.chance(0.6)) set(rule, "days", random.one_of({"sat-sun", "mon", "fri-mon", "tue, thu"}));
  if (!every_day && random.chance(0.5)) {
    const When first = scene.start + date::days(random.between(0, 40));
    set(rule, "dates", day_of(first) + " to " + day_of(first + date::days(random.between(0, 20))));
  }
  if (scene.mild || random.chance(0.9)) set(rule, "heated", heated(random));
  if (beside == Beside::nothing || scene.mild || random.chance(0.4)) set(rule, "otherwise", temperature(random, scene.mild ? 15 : 6, 18));
  if (beside == Beside::nothing || (beside == Beside::constant && random.chance(0.4)))
    set(rule, "humidity", fmt::format("{} %", scene.mild ? random.between(35, 60) : random.between(20, 75)));
  return rule;
}

Tree make_timetable(Scene& scene, Beside beside) {
  Tree rules = list({make_rule(scene, beside, true)});
  for (int i = scene.random.between(0, 2); i > 0; --i) rules.children.push_back(make_rule(scene, beside, false));
  return rules;
}

Tree constant(Scene& scene) {
  Random& random = scene.random;
  Tree always = map();
  set(always, "temperature", scene.mild ? temperature(random, 18, 26) : temperature(random, 8, 31));
  set(always, "humidity", fmt::format("{} %", scene.mild ? random.between(32, 60) : random.between(15, 85)));
  return always;
}

void add_room(Scene& scene, Tree& air) {
  Random& random = scene.random;
  set(air, "time constant", duration(random, 30, 6000));
  const bool heats = find(air, "timetable") != nullptr || find(air, "night") != nullptr;
  if (heats && random.chance(0.5)) {
    Tree& heater = set(air, "heater", map());
    set(heater, "lifts", random.one_of({"30 K", "108 °F", "15 °C", "8 K"}));
    if (random.chance(0.6)) {
      set(heater, "power", random.one_of({"6 kW", "41000 BTU/h", "1500 W"}));
      if (random.chance(0.7)) set(air, "energy price", "0.17");
    }
  }
  if (random.chance(0.5)) return;
  set(air, "volume", random.one_of({"140 m3", "5000 ft3", "60 m3"}));
  set(air, "air changes", random.one_of({"0.3", "0.5", "2", "12"}));
  if (random.chance(0.6)) set(air, "moisture gain", random.one_of({"100 g/h", "3 l/day", "5 pt/day", "0 g/h"}));
  if (random.chance(0.5)) {
    Tree& dryer = set(air, "dehumidifier", map());
    set(dryer, "set point", fmt::format("{} %", random.between(35, 60)));
    set(dryer, "removes", random.one_of({"25 pt/day", "10 l/day", "400 g/h"}));
  }
}

}  // namespace

Tree make_air(Scene& scene) {
  Random& random = scene.random;
  Tree air = map();
  const int form = random.between(0, 9);
  if (form < 4) {
    set(air, "constant", constant(scene));
    if (random.chance(0.3)) set(air, "timetable", make_timetable(scene, Beside::constant));
  } else if (form < 6) {
    set(air, "timetable", make_timetable(scene, Beside::nothing));
  } else {
    set(air, "outdoors", add_weather(scene));
    if (scene.mild || random.chance(0.5)) set(air, "timetable", make_timetable(scene, Beside::outdoors));
    if (random.chance(0.2)) set(air, "night", temperature(random, 8, 18));
    add_room(scene, air);
  }
  if (random.chance(0.12)) set(air, "log", add_log(scene));
  return air;
}

}  // namespace coatday::soak
