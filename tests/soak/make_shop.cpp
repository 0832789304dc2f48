#include <fmt/format.h>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

using date::days;

Tree make_hours(Random& random) {
  Tree hours = map();
  switch (random.between(0, 24)) {
    case 0:
      set(hours, "sat", "09:00-13:00");
      break;
    case 1:
      set(hours, "mon-sun", "06:00-22:00");
      break;
    case 2:
      set(hours, "mon-thu", "08:07-11:53, 12:41-17:03");
      break;
    case 3:
      set(hours, "mon, wed, fri", "10:00-12:30");
      set(hours, "sat-sun", "09:30-10:30, 14:00-19:45");
      break;
    case 4:
      for (const char* day : {"mon", "tue", "wed", "thu", "fri"}) {
        const int from = random.between(5, 11);
        set(hours, day,
            fmt::format("{:02}:{:02}-{:02}:{:02}", from, random.between(0, 59), from + random.between(1, 9), random.between(0, 59)));
      }
      break;
    case 5:
      set(hours, "mon-fri", "16:00-23:59");
      set(hours, "sat", "00:00-05:30");
      break;
    case 6:
      set(hours, "tue-thu", "08:00-09:00");
      set(hours, "fri", "08:00-16:00");
      break;
    default:
      set(hours, "mon-fri", random.one_of({"08:00-12:00, 13:00-17:00", "07:30-16:00", "08:00-12:00, 12:45-17:00"}));
      if (random.chance(0.4)) set(hours, "sat", "09:00-13:00");
  }
  return hours;
}

Tree make_closed(Scene& scene) {
  Tree closed = list();
  for (int i = scene.random.between(1, 3); i > 0; --i) {
    const When first = scene.start + days(scene.random.between(0, 30));
    const When last = first + days(scene.random.between(1, 9));
    closed.children.push_back(text(scene.random.chance(0.5) ? day_of(first) : day_of(first) + " to " + day_of(last)));
  }
  return closed;
}

void add_places(Scene& scene, Tree& shop) {
  Random& random = scene.random;
  Tree& places = set(shop, "drying places", list());
  const bool small = random.chance(0.04);  // fewer and smaller than the parts ask for
  for (const std::string kind : {"points", "hooks", "rack", "floor"}) {
    if (kind != "points" && random.chance(0.3)) continue;
    Tree& place = places.children.emplace_back(map());
    set(place, "name", fmt::format("{} {}", random.one_of({"trestles", "rail", "shelves", "by the wall"}), places.children.size()));
    set(place, "kind", kind);
    if (random.chance(0.85)) set(place, "count", std::to_string(random.chance(0.3) ? random.between(1, 2) : random.between(2, 12)));
    if (random.chance(0.4)) set(place, "length", millimetres(small ? random.between(300, 900) : random.between(2200, 4000)));
    if (kind != "hooks" && random.chance(0.4))
      set(place, "width", millimetres(small ? random.between(200, 500) : random.between(1300, 2000)));
    const std::string support = kind == "rack" || kind == "floor" ? "laid" : kind;
    if (scene.supports.empty() || scene.supports.back() != support) scene.supports.push_back(support);
  }
}

Tree make_ventilation(Random& random) {
  Tree all = map();
  if (random.chance(0.6)) set(all, "airflow", random.one_of({"500 cfm", "2000 m3/h", "300 l/s", "200 m3/h", "60 m3/h", "20 m3/min"}));
  if (random.chance(0.4)) set(all, "limit", random.one_of({"25 %", "20 %", "10 %", "2 %"}));
  if (random.chance(0.5)) set(all, "room", random.one_of({"open", "closed"}));
  if (random.chance(0.5)) set(all, "air movement", random.one_of({"0.5", "1", "1.37", "2"}));
  return all;
}

Tree make_stock(Scene& scene) {
  Random& random = scene.random;
  Tree stock = list();
  for (int i = random.between(1, 4); i > 0; --i) {
    Tree& item = stock.children.emplace_back(map());
    set(item, "product", random.one_of(scene.known.products));
    set(item, "volume", random.one_of({"1 pt", "250 ml", "2 l", "1 gal", "8 fl oz", "3 qt"}));
    if (random.chance(0.5)) set(item, "opened", day_of(scene.start - days(random.between(0, 500))));
    if (random.chance(0.5)) set(item, "good until", day_of(scene.start + days(random.between(-30, 300))));
  }
  return stock;
}

/// A fixed hour, or a window, or neither.
void add_window(Scene& scene, Tree& work) {
  Random& random = scene.random;
  const When first = odd_time(random, scene.start + days(random.between(1, 25)));
  switch (random.between(0, 3)) {
    case 0:
      set(work, "start", stamp(first));
      break;
    case 1:
      set(work, "not before", random.chance(0.5) ? stamp(first) : day_of(first));
      set(work, "not after", day_of(first + days(random.between(1, 20))));
      break;
    case 2:
      set(work, "not before", stamp(first));
      break;
    default:
      break;
  }
}

Tree make_shop_work(Scene& scene) {
  Random& random = scene.random;
  Tree all = list();
  for (int i = random.between(1, 3); i > 0; --i) {
    Tree& work = all.children.emplace_back(map());
    set(work, "name", fmt::format("{} {}", random.one_of({"mill oak", "phone call", "weld brackets", "stocktaking"}), i));
    set(work, "takes", random.chance(0.85) ? duration(random, 3, 240) : duration(random, 240, 1500));
    if (random.chance(0.3)) set(work, "dust", random.one_of({"none", "light", "heavy"}));
    if (random.chance(0.25)) set(work, "hot", random.one_of({"yes", "no"}));
    if (random.chance(0.3)) set(work, "people", std::to_string(random.between(1, scene.people)));
    if (random.chance(0.3)) set(work, "may pause", "yes");
    add_window(scene, work);
  }
  return all;
}

void add_customs(Scene& scene, Tree& shop) {
  Random& random = scene.random;
  if (scene.gives(0.4)) {
    Tree& dust = set(shop, "dust", map());
    set(dust, "light settles", duration(random, 0, 240));
    if (random.chance(0.6)) set(dust, "heavy settles", duration(random, 0, 1440));
  }
  if (scene.gives(0.2)) set(set(shop, "hot work", map()), "clear", duration(random, 30, 300));
  if (scene.gives(0.5)) set(shop, "ventilation", make_ventilation(random));
  if (scene.gives(0.3))
    set(shop, "both faces within",
        random.chance(0.4) ? random.one_of({"903 min", "2 days", "14 days", "3 days"}) : duration(random, 240, 6000));
  if (scene.gives(0.2)) set(set(shop, "set aside", map()), "parts", std::to_string(random.between(0, 40)));
  if (scene.gives(0.3)) set(shop, "turning", minutes(random, 0, 20));
  if (scene.gives(0.3)) set(shop, "handling", minutes(random, 0, 6));
  if (scene.gives(0.3)) set(shop, "gap between parts", random.one_of({"0 mm", "25 mm", "1 in", "100 mm"}));
  if (scene.gives(0.3)) set(shop, "sharing gap", minutes(random, 0, 90));
  if (scene.gives(0.3)) set(shop, "stock", make_stock(scene));
  if (scene.gives(0.25)) set(shop, "finishes kept at", temperature(random, 2, 22));
  if (scene.gives(0.45)) set(shop, "work", make_shop_work(scene));
  if (const Tree* currency = find(shop, "currency"); currency != nullptr && random.chance(0.5)) {
    Tree& rates = set(shop, "rates", map());
    if (random.chance(0.8)) set(rates, "hour", std::to_string(random.between(0, 120)));
    if (random.chance(0.6)) set(rates, "material markup", random.one_of({"0 %", "15 %", "100 %"}));
  }
}

}  // namespace

void add_shop(Scene& scene) {
  Random& random = scene.random;
  Tree shop = map();
  scene.zone =
      random.one_of({"America/Chicago", "America/New_York", "Europe/Berlin", "Asia/Kolkata", "Australia/Lord_Howe", "Asia/Kathmandu", "UTC",
                     "America/St_Johns", "Pacific/Chatham", "Pacific/Kiritimati", "America/Phoenix", "Africa/Cairo", "America/Santiago"});
  set(shop, "shop", "the shop of case " + std::to_string(scene.made.seed));
  set(shop, "time zone", scene.zone);
  if (random.chance(0.6)) set(shop, "units", random.one_of({"us", "metric"}));
  if (random.chance(0.5)) set(shop, "currency", random.one_of({"USD", "EUR", "kr"}));
  scene.people = random.chance(0.5) ? 1 : random.chance(0.8) ? 2 : random.between(3, 9);
  if (scene.people > 1 || random.chance(0.5)) set(shop, "people", std::to_string(scene.people));
  set(shop, "hours", make_hours(random));
  if (scene.gives(0.5)) set(shop, "closed", make_closed(scene));
  std::vector<std::string> methods{"brush",      "pad",     "wipe",      "roller",        "pour",
                                   "hvlp-spray", "aerosol", "air-spray", "airless-spray", "air-assisted-airless-spray"};
  if (random.chance(0.5)) std::swap(methods[0], methods[5]);  // the first that a product can be put on with counts
  methods.resize(random.chance(0.5) ? 6 : methods.size());
  set(shop, "methods", list(methods));
  add_places(scene, shop);
  set(shop, "air", make_air(scene));
  add_customs(scene, shop);
  if (scene.made.trees.contains("label.yaml") && random.chance(0.5))
    set(shop, "own finishes", list(std::vector<std::string>{"label.yaml"}));
  scene.made.trees["shop.yaml"] = std::move(shop);
}

}  // namespace coatday::soak
