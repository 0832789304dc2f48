#include "input/choices.h"

#include <algorithm>
#include <array>
#include <string>

#include "input/mistakes.h"

namespace coatday::input {
namespace {

using namespace std::string_view_literals;

std::string with_spaces(std::string_view word) {
  std::string text(word);
  std::ranges::replace(text, '-', ' ');
  return text;
}

template <class Enum>
Parsed<Enum> one_of(std::string_view typed, std::string_view what, std::span<const std::string_view> words) {
  return choose(typed, what, words).map([](std::size_t i) { return static_cast<Enum>(i); });
}

template <class Enum>
Parsed<Enum> one_of(std::string_view typed, std::string_view what) {
  return one_of<Enum>(typed, what, finish::words<Enum>());
}

}  // namespace

Parsed<std::size_t> choose(std::string_view typed, std::string_view what, std::span<const std::string_view> words) {
  const auto at = std::ranges::find(words, with_spaces(typed), with_spaces);
  if (at != words.end()) return static_cast<std::size_t>(at - words.begin());
  return tl::make_unexpected(unknown(what, typed, {words.begin(), words.end()}));
}

Parsed<bool> parse_yes_no(std::string_view typed) {
  if (typed == "yes" || typed == "true") return true;
  if (typed == "no" || typed == "false") return false;
  return tl::make_unexpected("expected yes or no, found " + in_quotes(typed));
}

Parsed<finish::Base> parse_base(std::string_view typed) { return one_of<finish::Base>(typed, "base"); }
Parsed<finish::Role> parse_role(std::string_view typed) { return one_of<finish::Role>(typed, "role"); }
Parsed<finish::Mechanism> parse_mechanism(std::string_view typed) { return one_of<finish::Mechanism>(typed, "mechanism"); }
Parsed<finish::Method> parse_method(std::string_view typed) { return one_of<finish::Method>(typed, "method"); }
Parsed<finish::FlashClass> parse_flash_class(std::string_view typed) { return one_of<finish::FlashClass>(typed, "flash class"); }
Parsed<finish::Hazard> parse_hazard(std::string_view typed) { return one_of<finish::Hazard>(typed, "hazard"); }
Parsed<finish::StepKind> parse_step_kind(std::string_view typed) { return one_of<finish::StepKind>(typed, "kind of step"); }
Parsed<finish::Verdict> parse_verdict(std::string_view typed) { return one_of<finish::Verdict>(typed, "verdict"); }

Parsed<finish::Stage> parse_stage(std::string_view typed) {
  const auto stage = one_of<finish::Stage>(typed, "stage");
  if (stage && *stage == finish::Stage::recoat_close) {
    return tl::make_unexpected(std::string("'recoat closes' ends a window; expected a stage to wait for, such as recoat"));
  }
  return stage;
}

Parsed<finish::StepFaces> parse_step_faces(std::string_view typed) {
  return one_of<finish::StepFaces>(typed, "choice of faces", std::array{"all"sv, "show"sv});
}
Parsed<finish::Suits> parse_suits(std::string_view typed) {
  return one_of<finish::Suits>(typed, "material", std::array{"wood"sv, "metal"sv});
}
Parsed<piece::Support> parse_support(std::string_view typed) {
  return one_of<piece::Support>(typed, "support", std::array{"points"sv, "hooks"sv, "laid"sv});
}
Parsed<shop::PlaceKind> parse_place_kind(std::string_view typed) {
  return one_of<shop::PlaceKind>(typed, "kind of drying place", std::array{"points"sv, "hooks"sv, "rack"sv, "floor"sv});
}
Parsed<shop::Dust> parse_dust(std::string_view typed) {
  return one_of<shop::Dust>(typed, "dust", std::array{"none"sv, "light"sv, "heavy"sv});
}
Parsed<bool> parse_room(std::string_view typed) { return one_of<bool>(typed, "room", std::array{"open"sv, "closed"sv}); }
Parsed<Units> parse_units(std::string_view typed) { return one_of<Units>(typed, "units", std::array{"metric"sv, "us"sv}); }
Parsed<When> parse_when(std::string_view typed) {
  return one_of<When>(typed, "time", std::array{"before finishing"sv, "after finishing"sv, "delivery"sv});
}

}  // namespace coatday::input
