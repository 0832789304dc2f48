#pragma once
// Words of a fixed choice, and the counts and amounts that files hold beyond quantity/text.h. Each reads a whole text, or says what was expected.

#include <string_view>
#include <vector>

#include "finish/catalogue.h"
#include "job/job.h"
#include "piece/piece.h"
#include "quantity/text.h"
#include "shop/shop.h"

namespace coatday::input {

[[nodiscard]] Parsed<bool> parse_yes_no(std::string_view);
[[nodiscard]] Parsed<finish::Base> parse_base(std::string_view);
[[nodiscard]] Parsed<finish::Role> parse_role(std::string_view);
[[nodiscard]] Parsed<finish::Mechanism> parse_mechanism(std::string_view);
[[nodiscard]] Parsed<finish::Stage> parse_stage(std::string_view);  ///< not the recoat window's late end, which nothing can wait for
[[nodiscard]] Parsed<finish::Method> parse_method(std::string_view);
[[nodiscard]] Parsed<finish::FlashClass> parse_flash_class(std::string_view);
[[nodiscard]] Parsed<finish::Hazard> parse_hazard(std::string_view);
[[nodiscard]] Parsed<finish::StepKind> parse_step_kind(std::string_view);
[[nodiscard]] Parsed<finish::StepFaces> parse_step_faces(std::string_view);
[[nodiscard]] Parsed<finish::Suits> parse_suits(std::string_view);
[[nodiscard]] Parsed<finish::Verdict> parse_verdict(std::string_view);
[[nodiscard]] Parsed<piece::Support> parse_support(std::string_view);
[[nodiscard]] Parsed<shop::PlaceKind> parse_place_kind(std::string_view);
[[nodiscard]] Parsed<shop::Dust> parse_dust(std::string_view);
[[nodiscard]] Parsed<bool> parse_room(std::string_view);  ///< is it closed
[[nodiscard]] Parsed<Units> parse_units(std::string_view);

/// When other work of an order is done.
enum class When { before_finishing, after_finishing, delivery };
[[nodiscard]] Parsed<When> parse_when(std::string_view);

/// Index into `words`; a hyphen counts as a space.
[[nodiscard]] Parsed<std::size_t> choose(std::string_view typed, std::string_view what, std::span<const std::string_view> words);

}  // namespace coatday::input
