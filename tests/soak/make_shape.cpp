#include <fmt/format.h>

#include <functional>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

void board(Random& r, Tree& part) {
  const bool tiny = r.chance(0.05);
  set(part, "length", tiny ? length(r, 30, 60) : length(r, 200, 2000));
  set(part, "width", tiny ? length(r, 25, 40) : length(r, 60, 900));
  set(part, "thickness", length(r, 6, 60));
}

void round_top(Random& r, Tree& part) {
  set(part, "diameter", length(r, 60, 1200));
  set(part, "thickness", length(r, 12, 45));
}

void tapered_leg(Random& r, Tree& part) {
  set(part, "length", length(r, 200, 900));
  set(part, "top", length(r, 30, 80));
  set(part, "foot", length(r, 15, 30));
}

struct Between {
  int least, most;
};

void profile(Random& r, Tree& part, Between gap, Between diameter) {
  Tree& profile = set(part, "profile", list());
  int at = 0;
  for (int points = r.between(2, 5); points > 0; --points, at += r.between(gap.least, gap.most)) {
    Tree& point = profile.children.emplace_back(map());
    set(point, "at", millimetres(at));
    set(point, "diameter", millimetres(r.between(diameter.least, diameter.most)));
  }
}

void turned_leg(Random& r, Tree& part) { profile(r, part, {20, 200}, {18, 80}); }

void closed_ends(Random& r, Tree& part) {
  if (r.chance(0.5)) set(part, "wall", millimetres(r.between(1, 5)));
  if (r.chance(0.3)) set(part, "closed ends", r.one_of({"yes", "no"}));
}

void round_tube(Random& r, Tree& part) {
  set(part, "length", length(r, 200, 1800));
  set(part, "diameter", length(r, 16, 100));
  closed_ends(r, part);
}

void rect_tube(Random& r, Tree& part) {
  set(part, "length", length(r, 200, 1800));
  set(part, "width", length(r, 20, 120));
  set(part, "height", length(r, 20, 100));
  closed_ends(r, part);
}

void cabinet(Random& r, Tree& part) {
  set(part, "width", length(r, 200, 1100));
  set(part, "height", length(r, 200, 1100));
  set(part, "depth", length(r, 100, 500));
  set(part, "thickness", length(r, 10, 25));
}

void door(Random& r, Tree& part) {
  set(part, "width", length(r, 250, 600));
  set(part, "height", length(r, 300, 1200));
  set(part, "thickness", length(r, 20, 30));
  set(part, "frame", length(r, 40, 80));
  set(part, "recess", length(r, 3, 7));
}

void vessel(Random& r, Tree& part) {
  profile(r, part, {30, 150}, {40, 220});
  set(part, "wall", millimetres(r.between(2, 12)));
  if (r.chance(0.4)) set(part, "depth", millimetres(r.between(10, 28)));
}

void bowl(Random& r, Tree& part) {
  set(part, "diameter", length(r, 300, 500));
  set(part, "height", length(r, 40, 150));
  set(part, "wall", length(r, 5, 14));
}

void free_shape(Random& r, Tree& part) {
  set(part, "length", length(r, 100, 1200));
  set(part, "width", length(r, 60, 600));
  set(part, "height", length(r, 20, 200));
  if (r.chance(0.3)) set(part, "wall", millimetres(r.between(1, 8)));
  Tree& faces = set(part, "faces", list());
  const bool pair = r.chance(0.7);
  for (const char* name : {"front", "back", "ends"}) {
    if (name == std::string("back") && !pair) continue;
    Tree& face = faces.children.emplace_back(map());
    set(face, "name", name);
    set(face, "area", r.one_of({"0.2 m2", "260 in2", "1200 cm2", "3 ft2"}));
    if (name == std::string("ends") && r.chance(0.6)) set(face, "end grain", "yes");
    if (name != std::string("front") && r.chance(0.3)) set(face, "show", r.one_of({"yes", "no"}));
  }
  if (!pair) return;
  set(faces.children[0], "opposite", "back");
  set(faces.children[1], "opposite", "front");
}

struct Shape {
  const char* word;
  std::function<void(Random&, Tree&)> add;
};

const std::vector<Shape>& shapes() {
  static const std::vector<Shape> all{{"board", board},
                                      {"round top", round_top},
                                      {"tapered leg", tapered_leg},
                                      {"turned leg", turned_leg},
                                      {"round tube", round_tube},
                                      {"rect tube", rect_tube},
                                      {"case", cabinet},
                                      {"door", door},
                                      {"bowl", bowl},
                                      {"vessel", vessel},
                                      {"free", free_shape}};
  return all;
}

}  // namespace

void add_shape(Scene& scene, Tree& part, bool metal) {
  Random& random = scene.random;
  const auto& all = shapes();
  const Shape& shape = metal && random.chance(0.7) ? all[4 + random.below(2)]
                       : random.chance(0.35)       ? all[0]
                                                   : all[random.below(all.size())];
  set(part, "shape", shape.word);
  shape.add(random, part);
}

void add_wood(Scene& scene, Tree& part) {
  Random& random = scene.random;
  if (scene.gives(0.25)) {
    Tree& readings = set(part, "moisture", list());
    for (int i = random.between(1, 3); i > 0; --i) {
      Tree& reading = readings.children.emplace_back(map());
      set(reading, "reading", fmt::format("{}.{} %", random.between(5, 12), random.between(0, 9)));
      if (random.chance(0.8)) set(reading, "on", stamp(odd_time(random, scene.start - date::days(random.between(0, 20)))));
      if (random.chance(0.5)) set(reading, "at", random.one_of({"left end", "middle"}));
    }
    if (random.chance(0.4)) set(part, "moisture", fmt::format("{}.{} %", random.between(5, 13), random.between(0, 9)));
  }
  if (scene.gives(0.2)) set(part, "cut", random.one_of({"flat", "quarter", "35 deg", "0 deg", "90 deg"}));
  if (scene.gives(0.12)) set(part, "cup limit", random.one_of({"2 mm", "1/8 in", "10 mm"}));
  const std::string shape = find(part, "shape")->text;
  const bool solid = random.chance(0.85);
  if (!solid || random.chance(0.2)) set(part, "core", solid ? "solid" : random.one_of({"plywood", "MDF", "particleboard"}));
  if (!solid || !scene.gives(0.2) || (shape != "board" && shape != "round top")) return;
  const auto fixing = [](std::vector<std::pair<const char*, const char*>> keys) {
    Tree made = map();
    for (const auto& [key, value] : keys) set(made, key, value);
    return made;
  };
  set(part, "fixings",
      list({fixing({{"name", "middle"}, {"kind", "fixed"}, {"distance", "0 mm"}}),
            fixing({{"kind", "slot"}, {"shank", "3/16 in"}, {"slot", "1/2 in"}, {"distance", "20 mm"}}),
            fixing({{"name", "back"}, {"kind", "hole"}, {"shank", "5 mm"}, {"hole", "8 mm"}, {"distance", "20 mm"}}),
            fixing({{"name", "buttons"}, {"kind", "button"}, {"play", "3 mm"}, {"distance", "15 mm"}})}));
}

}  // namespace coatday::soak
