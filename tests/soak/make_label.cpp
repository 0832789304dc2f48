#include <fmt/format.h>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

const std::vector<std::string>& films() {
  static const std::vector<std::string> ids{"water-clear", "oil-varnish",  "hardwax-oil",          "wiping-oil",
                                            "shellac",     "water-enamel", "two-part-polyurethane"};
  return ids;
}

/// A value alone, or with its source.
Tree with_source(Random& random, const std::string& value) { return random.chance(0.5) ? text(value) : list({text(value), text("label")}); }

void add_times(Random& random, Tree& product) {
  Tree& times = set(product, "times", map());
  int at = 0;
  for (const char* stage : {"tack free", "handle", "sand", "recoat", "recoat closes", "pack", "light use", "full cure"}) {
    at += random.between(5, 200);
    if (stage == std::string("recoat closes") && random.chance(0.5)) continue;
    set(times, stage, with_source(random, fmt::format("{} min", at)));
  }
  if (random.chance(0.4)) set(product, "reference air", random.one_of({"70 °F 50 %", "20 °C 60 %"}));
  if (random.chance(0.3)) set(product, "times for wet film", "4 mil");
  if (random.chance(0.4)) return;
  Tree row = map();
  set(row, "air", "12 °C 50 %");
  set(row, "recoat", fmt::format("{} min", at * 2));
  set(row, "sand", fmt::format("{} min", at * 2 - 1));
  set(product, "times at", list({row}));
}

void add_limits(Random& random, Tree& product) {
  Tree& limits = set(product, "limits", map());
  if (random.chance(0.7)) set(limits, "coldest", random.one_of({"10 °C", "13 °C", "55 °F", "18 °C"}));
  if (random.chance(0.5)) set(limits, "hottest", random.one_of({"30 °C", "90 °F"}));
  if (random.chance(0.5)) set(limits, "dampest", random.one_of({"80 %", "65 %"}));
  if (random.chance(0.4)) set(limits, "above dew point", random.one_of({"3 K", "5 °F"}));
  if (random.chance(0.5)) {
    set(limits, "hold", duration(random, 30, 3000));
    set(limits, "hold above", random.one_of({"5 °C", "10 °C", "14 °C", "19 °C"}));
  }
  if (random.chance(0.2)) {
    set(limits, "blush refused", "5.5 K");
    set(limits, "blush warning", "8 K");
  }
}

void add_liquid(Random& random, Tree& product) {
  if (random.chance(0.4)) {
    Tree& coverage = set(product, "coverage", map());
    set(coverage, "spreading rate", random.one_of({"400 ft2/gal", "9 m2/l", "14.3 m2/l"}));
    if (random.chance(0.4)) set(coverage, "thinner", "5 %");
    if (random.chance(0.4)) set(coverage, "first coat factor", "1.3");
    if (random.chance(0.4)) set(coverage, "end grain factor", "2");
  }
  if (random.chance(0.2)) {
    Tree& parts = set(product, "two part", map());
    set(parts, "base", "4");
    set(parts, "hardener", "1");
    if (random.chance(0.5)) set(parts, "induction", minutes(random, 0, 30));
    set(product, "pot life", duration(random, 20, 400));
  }
  if (random.chance(0.3)) set(product, "stand", minutes(random, 1, 25));
  if (random.chance(0.3)) set(product, "voc", random.one_of({"2 lb/gal", "0 g/l", "350 g/l"}));
  if (random.chance(0.3)) set(product, "solvent", random.one_of({"toluene", "acetone", "2-butoxyethanol"}));
  if (random.chance(0.15)) {
    Tree& solvent = set(product, "solvent", map());
    set(solvent, "like", "toluene");
    set(solvent, "content", "300 g/l");
    if (random.chance(0.5)) set(solvent, "lower explosive limit", "1.2 %");
    if (random.chance(0.5)) set(solvent, "vapour", "24.8 ft3/gal");
    if (random.chance(0.5)) set(solvent, "density", "0.9 kg/l");
  }
  if (random.chance(0.3)) set(product, "flash class", random.one_of({"none", "category-4", "category-2"}));
  if (random.chance(0.3)) set(product, "hazards", list({text("skin"), text("vapour")}));
  if (random.chance(0.2)) set(product, "food contact when cured", random.one_of({"yes", "no"}));
}

void add_selling(Random& random, Tree& product) {
  if (random.chance(0.5)) {
    Tree small = map(), large = map();
    set(small, "size", "1 qt");
    set(small, "price", "31");
    set(large, "size", "1 gal");
    if (random.chance(0.5)) set(large, "price", "88");
    set(product, "cans", list({small, large}));
  }
  if (random.chance(0.3)) {
    Tree& rates = set(product, "work rates", map());
    set(rates, "brush", random.one_of({"60 ft2/h", "7 m2/h"}));
    set(rates, "wipe", "9 m2/h");
    if (random.chance(0.5)) set(rates, "hvlp-spray", "200 ft2/h");
  }
  if (random.chance(0.3)) set(product, "set up", minutes(random, 0, 40));
  if (random.chance(0.3)) set(product, "clean up", minutes(random, 0, 40));
  if (random.chance(0.3)) set(product, "opened keeps", "52 weeks");
  if (random.chance(0.2)) set(product, "film", "yes");
}

/// Drying by the air's deficit has a share of the wet bulb; all cure has an activation energy.
void add_laws(Random& random, Tree& product) {
  Tree& laws = set(product, "laws", map());
  Tree& cure = set(laws, "cure", map());
  set(cure, "activation", random.one_of({"55 kJ/mol", "30 kJ/mol"}));
  if (random.chance(0.5)) set(cure, "no credit below", "12 °C");
  if (find(product, "like")->text == "water-clear") set(set(laws, "drying", map()), "wet bulb share", "0.4");
  if (random.chance(0.3)) set(product, "mechanism", find(product, "like")->text == "water-clear" ? "water" : "oxidative");
}

Tree make_product(Random& random, const std::string& like) {
  Tree product = map();
  set(product, "name", "invented finish like " + like);
  set(product, "like", like);
  if (random.chance(0.3)) set(product, "family", like);
  if (random.chance(0.5)) add_times(random, product);
  if (random.chance(0.6)) add_limits(random, product);
  add_liquid(random, product);
  add_selling(random, product);
  if (random.chance(0.2)) add_laws(random, product);
  if (random.chance(0.1)) {
    set(product, "base", random.one_of({"water", "white-spirit"}));
    set(product, "role", "topcoat");
  }
  return product;
}

Tree step(const std::string& name, const std::string& kind) {
  Tree made = map();
  set(made, "step", name);
  set(made, "kind", kind);
  return made;
}

Tree dry_step(Random& random, const std::string& name, const std::string& kind) {
  Tree made = step(name, kind);
  set(made, "grit", std::to_string(random.between(80, 1500)));
  random.chance(0.7) ? set(made, "rate", random.one_of({"20 ft2/h", "8 m2/h", "1 m2/h"})) : set(made, "takes", minutes(random, 1, 50));
  if (random.chance(0.7)) set(made, "dusty", random.one_of({"yes", "no"}));
  if (random.chance(0.2)) set(made, "note", "lightly");
  return made;
}

Tree make_schedule(Random& random, const std::string& product) {
  Tree schedule = map();
  set(schedule, "name", "invented, " + product);
  set(schedule, "suits", "wood");
  if (random.chance(0.5)) set(schedule, "use", "shelves");
  if (random.chance(0.5)) set(schedule, "source", "label");
  Tree& steps = set(schedule, "steps", list());
  if (random.chance(0.8)) steps.children.push_back(dry_step(random, "sand", "prepare"));
  const int coats = random.between(1, 3);
  for (int i = 1; i <= coats; ++i) {
    if (i > 1 && random.chance(0.6)) {
      Tree& scuff = steps.children.emplace_back(dry_step(random, fmt::format("scuff {}", i), "scuff"));
      if (random.chance(0.4)) set(scuff, "after", random.one_of({"sand", "handle", "tack free"}));
      if (random.chance(0.2)) set(scuff, "hot", "yes");
    }
    Tree& coat = steps.children.emplace_back(step(fmt::format("coat {}", i), "topcoat"));
    set(coat, "product", product);
    if (random.chance(0.3)) set(coat, "thinner", random.one_of({"5 %", "30 %"}));
    if (random.chance(0.15) && product.starts_with("water")) set(coat, "method", "brush");
    if (random.chance(0.15) && product.starts_with("water")) set(coat, "wet film", random.one_of({"4 mil", "90 um"}));
    if (i > 1 && random.chance(0.35))
      set(coat, "within", random.chance(0.5) ? duration(random, 30, 5000) : random.one_of({"57 min", "61 min", "3 days"}));
    if (i > 1 && random.chance(0.15)) set(coat, "wait", duration(random, 10, 4000));
  }
  if (random.chance(0.3)) {
    Tree& rub = steps.children.emplace_back(dry_step(random, "rub out", "scuff"));
    set(rub, "faces", "show");
    set(rub, "wait", random.one_of({"10 days", "40 h", "91 min"}));
  }
  return schedule;
}

Tree baked_schedule(Random& random) {
  Tree schedule = map();
  set(schedule, "name", "invented, baked");
  set(schedule, "suits", "metal");
  Tree coat = step("enamel", "paint"), bake = step("cure", "bake"), stage = map();
  set(coat, "product", "heat-cured-silicone");
  set(stage, "temperature", "150 °C");
  set(stage, "for", duration(random, 10, 90));
  set(bake, "bake", list({stage}));
  set(schedule, "steps", list({coat, bake}));
  return schedule;
}

Tree make_rule(Random& random, const std::string& upper) {
  Tree rule = map();
  set(rule, "upper", upper);
  set(rule, "under", random.one_of({"oil-stain", "shellac", "any"}));
  switch (random.between(0, 3)) {
    case 0:
      set(rule, "verdict", "longer wait");
      set(rule, "wait", duration(random, 60, 5000));
      break;
    case 1:
      set(rule, "verdict", "barrier");
      set(rule, "barriers", list({text("shellac")}));
      break;
    default:
      set(rule, "verdict", "allowed");
  }
  if (random.chance(0.7)) set(rule, "source", "label");
  return rule;
}

}  // namespace

void add_label(Scene& scene) {
  Random& random = scene.random;
  Tree label = map();
  Tree& sources = set(label, "sources", map());
  set(sources, "label", "an invented can");
  Tree products = map(), schedules = map(), rules = list();
  for (int i = random.between(1, 2); i > 0; --i) {
    const std::string id = fmt::format("own-finish-{}", i);
    set(products, id, make_product(random, random.one_of(films())));
    set(schedules, "own-" + std::to_string(i), make_schedule(random, random.chance(0.8) ? id : random.one_of(films())));
    scene.own_wood.push_back("own-" + std::to_string(i));
    if (random.chance(0.4)) rules.children.push_back(make_rule(random, id));
  }
  if (random.chance(0.4)) {
    set(schedules, "own-baked", baked_schedule(random));
    scene.own_metal.emplace_back("own-baked");
  }
  set(label, "products", std::move(products));
  set(label, "schedules", std::move(schedules));
  if (!rules.children.empty()) set(label, "over", std::move(rules));
  scene.made.trees["label.yaml"] = std::move(label);
}

}  // namespace coatday::soak
