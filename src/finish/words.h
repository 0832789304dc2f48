#pragma once
// The trade's words for finishes, as types, with the words that stand for them in files.

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace coatday::finish {

/// What the finish is carried in.
enum class Base { water, alcohol, white_spirit, lacquer_thinner, reactive, none };
/// What it is for.
enum class Role { grain_raiser, resin, filler, stain, dye, sealer, primer, enamel, topcoat, oil, wax };
/// How it dries and cures.
enum class Mechanism {
  water,
  alcohol,
  lacquer_thinner,
  white_spirit,
  oxidative,
  epoxy,
  polyurethane_two_part,
  acid_cured,
  moisture_cure,
  cyanoacrylate,
  heat_cured
};
/// Stages of drying, after ASTM D1640 and common practice, in the order in which they come. recoat_close is the recoat window's late end.
enum class Stage { tack_free, handle, sand, recoat, recoat_close, pack, light_use, full_cure };
inline constexpr std::size_t stage_count = 8;
/// The drying clock runs tack-free to recoat; the cure clock the rest.
enum class Clock { drying, cure };
[[nodiscard]] constexpr Clock clock_of(Stage s) { return s <= Stage::recoat ? Clock::drying : Clock::cure; }

/// Stages that cannot come the other way round. Some finishes may be recoated before they can be handled or sanded.
struct StageOrder {
  Stage first, then;
};
inline constexpr std::array stage_orders{StageOrder{Stage::tack_free, Stage::handle},   StageOrder{Stage::tack_free, Stage::sand},
                                         StageOrder{Stage::tack_free, Stage::recoat},   StageOrder{Stage::recoat, Stage::recoat_close},
                                         StageOrder{Stage::handle, Stage::pack},        StageOrder{Stage::pack, Stage::full_cure},
                                         StageOrder{Stage::light_use, Stage::full_cure}};

/// How it is put on.
enum class Method { brush, pad, wipe, roller, pour, aerosol, hvlp_spray, air_spray, airless_spray, air_assisted_airless_spray };
/// Classes of flammable liquids by flash point, 29 CFR 1910.106(a)(19) (from memory): 1 < 23 °C and boiling <= 35 °C; 2 < 23 °C; 3 23-60 °C;
/// 4 above 60 to 93 °C; none: does not flash below 93 °C.
enum class FlashClass { none, category_4, category_3, category_2, category_1 };
enum class Hazard { vapour, isocyanate, oily_rags, dust, skin, acid, formaldehyde, curing_fumes, exotherm, fast_bond };

/// The word in files and reports: kebab case, but spaces in the stages, which are keys of a file. Every enum above has one.
[[nodiscard]] std::string_view word(Base);
[[nodiscard]] std::string_view word(Role);
[[nodiscard]] std::string_view word(Mechanism);
[[nodiscard]] std::string_view word(Stage);
[[nodiscard]] std::string_view word(Method);
[[nodiscard]] std::string_view word(FlashClass);
[[nodiscard]] std::string_view word(Hazard);
/// All words of an enum in declaration order: words<Base>()[i] belongs to Base(i).
template <class Enum>
[[nodiscard]] std::span<const std::string_view> words();
template <>
std::span<const std::string_view> words<Base>();
template <>
std::span<const std::string_view> words<Role>();
template <>
std::span<const std::string_view> words<Mechanism>();
template <>
std::span<const std::string_view> words<Stage>();
template <>
std::span<const std::string_view> words<Method>();
template <>
std::span<const std::string_view> words<FlashClass>();
template <>
std::span<const std::string_view> words<Hazard>();

/// By a stage; the order is that of the enum.
template <class T>
struct PerStage {
  std::array<T, stage_count> values{};
  [[nodiscard]] const T& operator[](Stage s) const { return values[static_cast<std::size_t>(s)]; }
  [[nodiscard]] T& operator[](Stage s) { return values[static_cast<std::size_t>(s)]; }
};

[[nodiscard]] constexpr bool is_spray(Method m) { return m >= Method::aerosol; }

}  // namespace coatday::finish
