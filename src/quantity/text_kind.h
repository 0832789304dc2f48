#pragma once
// The grammar behind parse.h: an amount and a unit, once or as a chain such as "5 ft 8 1/2 in". Only this room includes it.

#include <span>
#include <string_view>

#include "quantity/parse.h"

namespace coatday::text {

inline constexpr double litre_per_gallon_e9 = 3785411784;

/// A number as a quantity.
template <class T>
Parsed<T> as(const Parsed<double>& number) {
  return number.map([](double value) { return T(value); });
}

/// base = (amount - zero) * numerator / denominator. The quotient of two whole numbers keeps the exact conversions exact.
struct Unit {
  std::string_view word;
  double numerator = 1;
  double denominator = 1;
  double zero = 0;  ///< where the base unit's zero stands on this scale (32 for °F)
};

enum class Low { included, excluded };

/// What one parser accepts. A unit of a chain is a run of letters, or a foot or inch mark; otherwise it is all that follows the number.
struct Kind {
  std::string_view name;     ///< "a length"
  std::string_view example;  ///< "68 in, 5 ft 8 in, 170 cm or 38 mm"
  std::span<const Unit> units;
  bool chain = false;  ///< 5 ft 8 in: large units before small ones
  double low = 0;
  double high = 0;
  Low bound = Low::included;
  std::string_view range;  ///< "above 0 and up to 100 m"
};
constexpr Kind between(std::string_view name, std::string_view example, std::span<const Unit> units, double low, double high,
                       std::string_view range) {
  return {name, example, units, false, low, high, Low::included, range};
}
constexpr Kind above_zero(std::string_view name, std::string_view example, std::span<const Unit> units, double high,
                          std::string_view range) {
  return {name, example, units, false, 0, high, Low::excluded, range};
}
constexpr Kind chained(Kind kind) {
  kind.chain = true;
  return kind;
}

/// The number in the kind's base unit, or the error.
[[nodiscard]] Parsed<double> parse(std::string_view, const Kind&);

}  // namespace coatday::text
