#include "report/sections/care.h"

namespace coatday::report {
namespace {

using finish::Mechanism;
using finish::Role;

std::vector<std::string> of_class(const finish::Product& top) {
  if (top.role == Role::oil) {
    return {"Wipe up what is spilled at once.",
            "When it looks dull or dry, rub in a thin coat of the same kind of oil and wipe all of it off again.",
            "! A cloth with such oil on it can catch fire by itself: spread it flat outdoors until it is hard, or put it into water in a "
            "lidded metal can. Local rules count."};
  }
  if (top.role == Role::wax)
    return {"Heat, alcohol and water that stands on it leave marks.", "When it looks dull, wax it again, thinly, and rub it up."};
  if (top.role == Role::enamel || top.role == Role::primer) {
    if (top.mechanism == Mechanism::heat_cured)
      return {"! Its first heats harden it and smell: open the windows, and do as the label of the finish says."};
    return {"Have a scratch that goes down to the metal touched up soon, or it rusts."};
  }
  if (top.mechanism == Mechanism::alcohol) return {"Alcohol, heat, and cleaners with ammonia mark it."};
  if (top.mechanism == Mechanism::lacquer_thinner) return {"Nail varnish remover, perfume and soft plastic that lies on it harm it."};
  return {"A drop of mild soap in the water does no harm; scouring powder and solvents do."};
}

}  // namespace

std::vector<std::string> care_text(const finish::Product& top) {
  std::vector<std::string> all{"Dust it with a soft, dry cloth; for more, one that is just damp, and a dry one after it."};
  for (std::string& words : of_class(top)) all.push_back(std::move(words));
  return all;
}

}  // namespace coatday::report
