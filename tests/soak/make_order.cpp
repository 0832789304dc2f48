#include <fmt/format.h>

#include <algorithm>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

using date::days;

std::string promise(Scene& scene) {
  const When at = odd_time(scene.random, scene.start + days(scene.random.between(1, 90)));
  return scene.random.chance(0.6) ? day_of(at) : stamp(at);
}

std::string importance(Random& random) { return random.one_of({"1", "2", "0.5", "10", "1000"}); }

void add_work(Scene& scene, Tree& piece, const std::vector<std::string>& parts) {
  Random& random = scene.random;
  Tree& all = set(piece, "work", list());
  const int before = random.between(0, 2), after = random.between(0, 1), delivery = random.between(0, 1);
  for (int i = 0; i < before + after + delivery; ++i) {
    Tree& work = all.children.emplace_back(map());
    const bool is_after = i >= before, delivers = i >= before + after;
    set(work, "name", fmt::format("{} {}", random.one_of({"glue up", "weld frame", "put together", "fit hinges"}), i + 1));
    set(work, "when", delivers ? "delivery" : is_after ? "after finishing" : "before finishing");
    set(work, "takes", random.chance(0.9) ? duration(random, 5, 200) : duration(random, 300, 1300));
    if (random.chance(0.3)) set(work, "rest", random.chance(0.9) ? duration(random, 10, 3000) : "6 days");
    if (is_after && random.chance(0.5)) set(work, "stage", random.one_of({"handle", "pack", "sand", "full cure", "light use"}));
    if (random.chance(0.2)) set(work, "people", std::to_string(random.between(1, scene.people)));
    if (random.chance(0.15)) set(work, "hot", "yes");
    if (random.chance(0.2)) set(work, "dust", random.one_of({"light", "heavy", "none"}));
    if (random.chance(0.2)) set(work, "may pause", "yes");
    if (random.chance(0.4)) set(work, "parts", list({text(random.one_of(parts))}));
    if (random.chance(0.15)) set(work, "not before", stamp(odd_time(random, scene.start + days(random.between(0, 12)))));
    if (random.chance(0.08)) set(work, "not after", day_of(scene.start + days(random.between(13, 90))));
    if (delivers && random.chance(0.1)) {
      remove(work, "not before");
      remove(work, "not after");
      set(work, "start", stamp(odd_time(random, scene.start + days(random.between(25, 100)))));
    }
  }
  if (all.children.empty()) remove(piece, "work");
}

}  // namespace

std::string schedule(Scene& scene, bool metal) {
  const auto& own = metal ? scene.own_metal : scene.own_wood;
  if (!own.empty() && scene.random.chance(0.6)) return scene.random.one_of(own);
  return scene.random.one_of(metal ? scene.known.metal : scene.known.wood);
}

namespace {

Tree make_piece(Scene& scene, int number) {
  Random& random = scene.random;
  const bool metal = random.chance(0.2);
  Tree piece = map();
  set(piece, "piece", fmt::format("{} {}", random.one_of({"low table", "chest", "Bank", "lamp", "board"}), number));
  if (scene.gives(0.2)) set(piece, "promised", promise(scene));
  if (scene.gives(0.15)) set(piece, "importance", importance(random));
  if (scene.gives(0.1)) set(piece, "food contact", random.one_of({"yes", "no", "no"}));
  set(piece, "schedule", schedule(scene, metal));
  set(piece, metal ? "material" : "species", metal ? "steel" : species(random));
  if (!metal && scene.gives(0.1)) set(piece, "moisture", "8.5 %");
  if (!metal && scene.gives(0.1)) set(piece, "cut", random.one_of({"flat", "quarter", "60 deg"}));
  if (!metal && scene.gives(0.05)) set(piece, "cup limit", "3 mm");
  if (scene.gives(0.08)) set(piece, "kept at", temperature(random, 3, 20));
  if (random.chance(0.2)) set(piece, "support", random.one_of(scene.supports));
  Tree& parts = set(piece, "parts", list());
  std::vector<std::string> names;
  for (int i = random.chance(0.8) ? 1 : random.between(2, 4); i > 0; --i) {
    Tree part = make_part(scene, i, metal);
    Tree* name = find(part, "part");
    if (std::find(names.begin(), names.end(), name->text) != names.end()) name->text += fmt::format(" {}", i + 10);
    names.push_back(name->text);
    parts.children.push_back(std::move(part));
  }
  if (scene.gives(0.35)) add_work(scene, piece, names);
  return piece;
}

Tree customer_room(Scene& scene) {
  Random& random = scene.random;
  Tree room = map();
  const auto& tables = scene.made.tables;
  const std::string weather = tables.contains("weather.csv") ? "weather.csv" : tables.contains("weather.epw") ? "weather.epw" : "";
  if (weather.empty()) {
    Tree& seasons = set(room, "seasons", map());
    set(seasons, "nov-apr", "20 °C 35 %");
    set(seasons, "may-oct", "75 °F 55 %");
    return room;
  }
  set(room, "outdoors", weather);
  set(room, "heated", temperature(random, 16, 22));
  if (random.chance(0.5)) set(room, "cooled", temperature(random, 24, 28));
  if (random.chance(0.5)) set(room, "no drier than", "30 %");
  if (random.chance(0.5)) set(room, "no damper than", "60 %");
  return room;
}

}  // namespace

void add_order(Scene& scene, int number) {
  Random& random = scene.random;
  Tree order = map();
  set(order, "order", fmt::format("order {}", number + 1));
  set(order, "shop", "shop.yaml");
  const int far = number > 0 && random.chance(0.3) ? random.between(30, 250) : 0;
  if (random.chance(0.6)) set(order, "start", stamp(scene.start + days(far)));
  if (scene.gives(0.3)) set(order, "promised", day_of(scene.start + days(far + random.between(2, 90))));
  if (scene.gives(0.15)) set(order, "importance", importance(random));
  set(order, "support", random.one_of(scene.supports));
  if (scene.gives(0.1)) set(order, "schedule", schedule(scene, false));  // each piece has its own
  if (scene.gives(0.1)) set(order, "species", species(random));
  if (scene.gives(0.12)) set(order, "moisture band", random.one_of({"0.5 %", "2 %", "6 %"}));
  if (scene.gives(0.15)) set(order, "customer room", customer_room(scene));
  if (scene.gives(0.05)) set(order, "kept at", temperature(random, 5, 18));
  if (scene.gives(0.05)) set(order, "cut", "quarter");
  if (scene.gives(0.04)) set(order, "cup limit", "4 mm");
  if (scene.gives(0.04)) set(order, "moisture", "9 %");
  Tree& pieces = set(order, "pieces", list());
  int count = random.chance(0.88) ? 1 : random.between(2, 3);
  if (random.chance(0.004)) count = random.between(8, 16);
  for (int i = 0; i < count; ++i) pieces.children.push_back(make_piece(scene, i + 1));
  if (random.chance(0.2)) set(order, "history", list());
  if (scene.made.trees.contains("label.yaml")) set(order, "own finishes", list(std::vector<std::string>{"label.yaml"}));
  const std::string name = number == 0 ? "order.yaml" : fmt::format("order-{}.yaml", number + 1);
  scene.made.orders.push_back(name);
  scene.made.trees[name] = std::move(order);
}

}  // namespace coatday::soak
