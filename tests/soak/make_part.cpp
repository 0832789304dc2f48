#include <fmt/format.h>

#include <algorithm>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

std::string faces_of(const std::string& shape, Random& random) {
  if (shape == "board") return random.one_of({"left end", "right end", "underside"});
  if (shape == "round top") return random.one_of({"face", "underside", "edge"});
  return "";
}

void add_deviations(Scene& scene, Tree& part, const std::string& shape) {
  Random& random = scene.random;
  const std::string face = faces_of(shape, random);
  if (face.empty()) return;
  if (scene.gives(0.2)) {
    Tree mask = map();
    set(mask, "face", face);
    if (random.chance(0.5)) {
      set(mask, "area", "90 mm2");
    } else {
      set(mask, "size", "9 mm x 10 mm");
      if (random.chance(0.5)) set(mask, "count", "2");
    }
    if (random.chance(0.7)) set(mask, "reason", "glue face");
    set(part, "mask", list({mask}));
  }
  if (scene.gives(0.2)) {
    Tree except = map();
    set(except, "face", face);
    set(except, "coats", std::to_string(random.between(0, 3)));
    set(except, "reason", "hidden in the upright");
    set(part, "except", list({except}));
  }
}

std::string count_of(Random& random) {
  if (random.chance(0.03)) return std::to_string(random.between(20, 60));
  return std::to_string(random.chance(0.8) ? random.between(1, 4) : random.between(5, 14));
}

}  // namespace

Tree make_part(Scene& scene, int number, bool metal) {
  Random& random = scene.random;
  Tree part = map();
  set(part, "part",
      random.one_of({"top", "leg", "rail", "door", "shelf", "Seite"}) + (random.chance(0.1) ? "" : fmt::format(" {}", number)));
  if (random.chance(0.4)) set(part, "count", count_of(random));
  add_shape(scene, part, metal);
  add_deviations(scene, part, find(part, "shape")->text);
  if (random.chance(0.7)) set(part, "support", random.one_of(scene.supports));
  if (scene.gives(0.12)) set(part, "kept at", temperature(random, 2, 20));
  if (scene.people > 1 && random.chance(0.2)) set(part, "people to turn", std::to_string(random.between(1, scene.people)));
  if (!metal) add_wood(scene, part);
  if (scene.gives(0.12)) set(part, "schedule", schedule(scene, metal));
  if (scene.gives(0.1)) set(part, metal ? "material" : "species", metal ? "steel" : species(random));
  return part;
}

}  // namespace coatday::soak
