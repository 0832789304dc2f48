#include "finish/words.h"

#include "finish/catalogue.h"
#include "finish/law.h"
#include "finish/schedule.h"

namespace coatday::finish {
namespace {

using namespace std::string_view_literals;

constexpr std::array base_words{"water"sv, "alcohol"sv, "white-spirit"sv, "lacquer-thinner"sv, "reactive"sv, "none"sv};
constexpr std::array role_words{"grain-raiser"sv, "resin"sv,  "filler"sv,  "stain"sv, "dye"sv, "sealer"sv,
                                "primer"sv,       "enamel"sv, "topcoat"sv, "oil"sv,   "wax"sv};
constexpr std::array mechanism_words{
    "water"sv,      "alcohol"sv,       "lacquer-thinner"sv, "white-spirit"sv, "oxidative"sv, "epoxy"sv, "polyurethane-two-part"sv,
    "acid-cured"sv, "moisture-cure"sv, "cyanoacrylate"sv,   "heat-cured"sv};
constexpr std::array stage_words{"tack free"sv,     "handle"sv, "sand"sv,      "recoat"sv,
                                 "recoat closes"sv, "pack"sv,   "light use"sv, "full cure"sv};
constexpr std::array method_words{"brush"sv,   "pad"sv,        "wipe"sv,      "roller"sv,        "pour"sv,
                                  "aerosol"sv, "hvlp-spray"sv, "air-spray"sv, "airless-spray"sv, "air-assisted-airless-spray"sv};
constexpr std::array flash_words{"none"sv, "category-4"sv, "category-3"sv, "category-2"sv, "category-1"sv};
constexpr std::array hazard_words{"vapour"sv, "isocyanate"sv,   "oily-rags"sv,    "dust"sv,     "skin"sv,
                                  "acid"sv,   "formaldehyde"sv, "curing-fumes"sv, "exotherm"sv, "fast-bond"sv};
constexpr std::array step_words{"prepare"sv, "fill"sv,  "stain"sv, "seal"sv, "topcoat"sv,
                                "prime"sv,   "paint"sv, "scuff"sv, "bake"sv, "other"sv};
constexpr std::array verdict_words{"allowed"sv, "longer wait"sv, "barrier"sv, "never"sv};
constexpr std::array law_words{"arrhenius"sv, "vapour deficit"sv, "vapour pressure"sv};

template <class Enum>
constexpr std::size_t count_to(Enum last) {
  return static_cast<std::size_t>(last) + 1;
}
static_assert(base_words.size() == count_to(Base::none));
static_assert(role_words.size() == count_to(Role::wax));
static_assert(mechanism_words.size() == count_to(Mechanism::heat_cured));
static_assert(stage_words.size() == stage_count);
static_assert(method_words.size() == count_to(Method::air_assisted_airless_spray));
static_assert(flash_words.size() == count_to(FlashClass::category_1));
static_assert(hazard_words.size() == count_to(Hazard::fast_bond));
static_assert(step_words.size() == count_to(StepKind::other));
static_assert(verdict_words.size() == count_to(Verdict::never));
static_assert(law_words.size() == count_to(Law::Kind::vapour_pressure));

template <class Enum, std::size_t n>
std::string_view of(const std::array<std::string_view, n>& table, Enum e) {
  return table.at(static_cast<std::size_t>(e));
}

}  // namespace

template <>
std::span<const std::string_view> words<Base>() {
  return base_words;
}
template <>
std::span<const std::string_view> words<Role>() {
  return role_words;
}
template <>
std::span<const std::string_view> words<Mechanism>() {
  return mechanism_words;
}
template <>
std::span<const std::string_view> words<Stage>() {
  return stage_words;
}
template <>
std::span<const std::string_view> words<Method>() {
  return method_words;
}
template <>
std::span<const std::string_view> words<FlashClass>() {
  return flash_words;
}
template <>
std::span<const std::string_view> words<Hazard>() {
  return hazard_words;
}
template <>
std::span<const std::string_view> words<StepKind>() {
  return step_words;
}
template <>
std::span<const std::string_view> words<Verdict>() {
  return verdict_words;
}

std::string_view word(Base e) { return of(base_words, e); }
std::string_view word(Role e) { return of(role_words, e); }
std::string_view word(Mechanism e) { return of(mechanism_words, e); }
std::string_view word(Stage e) { return of(stage_words, e); }
std::string_view word(Method e) { return of(method_words, e); }
std::string_view word(FlashClass e) { return of(flash_words, e); }
std::string_view word(Hazard e) { return of(hazard_words, e); }
std::string_view word(StepKind e) { return of(step_words, e); }
std::string_view word(Verdict e) { return of(verdict_words, e); }
std::string_view word(Law::Kind e) { return of(law_words, e); }

}  // namespace coatday::finish
