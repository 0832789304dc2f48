#include "planner/result/cautions.h"

#include <algorithm>
#include <map>

namespace coatday::planner {

namespace {

/// Usual cautions of the trade; the label and local rules say more, and count for more.
const std::map<std::string, std::string>& texts() {
  static const std::map<std::string, std::string> all = {
      {"vapour",
       "Flammable vapour: no flame, pilot light, heater, spark or smoking in the room while it is wet; fresh air in and vapour out, with a "
       "fan "
       "rated for it; respirator as the label says. Fire code and label count."},
      {"solvent", "Solvent vapour: fresh air while it is put on and dries; respirator and gloves as the label says."},
      {"oily-rags",
       "Oily rags can catch fire by themselves: spread them flat outdoors in one layer until hard, or in water in a lidded metal can until "
       "removed. Local rules count."},
      {"isocyanate",
       "Isocyanate: harms lungs and skin for good. Supplied air or the respirator that the label names, gloves, nobody else in the room; "
       "people who are sensitised must keep away. Follow label, law and licensed practice."},
      {"acid", "Acid hardener: gloves and eye protection; keep it off steel; waste as the label says."},
      {"formaldehyde", "Gives off formaldehyde while it cures: strong ventilation and the respirator that the label names."},
      {"skin", "Keep off skin and eyes: gloves and eye protection as the label says."},
      {"exotherm", "Resin heats up in the mass: mix little at a time, pour in layers, let leftovers harden outdoors."},
      {"fast-bond", "Bonds skin and eyes in seconds: eye protection, good air, no cloth in contact with it."},
      {"curing-fumes",
       "Fumes while it is heated: outdoors or under extraction, smoke alarm in mind, nothing flammable near. First fires the same. Follow "
       "the "
       "label."},
      {"hot-work",
       "Hot work: no wet finish, vapour, rags or dust near; extinguisher at hand, watch for at least half an hour after (common practice; "
       "your fire code may ask for more)."},
      {"sanding-dust", "Sanding dust: extraction and a dust mask; empty bags outdoors, since finish dust can heat up by itself."},
      {"machining-dust", "Wood dust harms lungs and can explode: extraction at the machine, mask, no flame."},
      {"grinding-sparks",
       "Grinding: sparks fly far and the dust harms lungs and eyes; face shield, mask, nothing that burns in their way, and never in the "
       "room "
       "with wet finish."},
      {"heavy", "Heavy: over 23 kg (51 lb) is too much for one person. Two people lift it, or a hoist; whoever is alone gets help first."},
      {"spray", "Spraying: overspray burns; booth or extraction, respirator, no spark source. Local code counts."},
      {"food-contact",
       "For food: only a finish with a label that says so, and only when fully cured. The law of the place where it is sold decides, not "
       "this "
       "plan."},
  };
  return all;
}

void add(std::vector<std::string>& keys, const char* key) {
  if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.emplace_back(key);
}

void of_product(std::vector<std::string>& keys, const finish::Product& product) {
  if (product.flammable()) add(keys, "vapour");
  for (const finish::Hazard hazard : product.hazards) {
    switch (hazard) {
      case finish::Hazard::vapour:
        if (!product.flammable()) add(keys, "solvent");
        break;
      case finish::Hazard::isocyanate:
        add(keys, "isocyanate");
        break;
      case finish::Hazard::oily_rags:
        add(keys, "oily-rags");
        break;
      case finish::Hazard::dust:
        add(keys, "sanding-dust");
        break;
      case finish::Hazard::skin:
        add(keys, "skin");
        break;
      case finish::Hazard::acid:
        add(keys, "acid");
        break;
      case finish::Hazard::formaldehyde:
        add(keys, "formaldehyde");
        break;
      case finish::Hazard::curing_fumes:
        break;  // while it is heated, not while it is put on
      case finish::Hazard::exotherm:
        add(keys, "exotherm");
        break;
      case finish::Hazard::fast_bond:
        add(keys, "fast-bond");
        break;
    }
  }
}

}  // namespace

std::vector<std::string> cautions_of(const job::Event& event, const finish::Product* product, const piece::Piece* piece) {
  std::vector<std::string> keys;
  if (product != nullptr) of_product(keys, *product);
  if (event.method && finish::is_spray(*event.method)) add(keys, "spray");
  if (event.hot) add(keys, "hot-work");
  if (event.kind == job::EventKind::bake) add(keys, "curing-fumes");
  if (event.dust == shop::Dust::light) add(keys, "sanding-dust");
  if (event.dust == shop::Dust::heavy) add(keys, event.hot ? "grinding-sparks" : "machining-dust");
  if (piece != nullptr && piece->food_contact && event.film) add(keys, "food-contact");
  return keys;
}

const std::string& caution_text(const std::string& key) { return texts().at(key); }

}  // namespace coatday::planner
