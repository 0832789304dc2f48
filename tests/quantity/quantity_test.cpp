// What must compile, what must not, and that a unit costs nothing.
#include "quantity/quantity.h"

#include <gtest/gtest.h>

#include <concepts>
#include <type_traits>

#include "quantity/time.h"

namespace coatday {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
  a < b;
};

// A temperature is a point on its scale.
static_assert(!Addable<Celsius, Celsius>);
static_assert(!Multipliable<Celsius, double>);
static_assert(Subtractable<Celsius, Celsius>);
static_assert(std::same_as<decltype(Celsius(20) - Celsius(18)), Kelvins>);
static_assert(std::same_as<decltype(Celsius(20) + Kelvins(2)), Celsius>);
static_assert(!Addable<Kelvins, Celsius>);
static_assert(!Comparable<Celsius, Kelvins>);

// Units do not mix, and a bare number has none.
static_assert(!Addable<Metres, SquareMetres>);
static_assert(!Addable<Metres, Micrometres>);
static_assert(!Addable<Metres, double>);
static_assert(!Comparable<Metres, double>);
static_assert(!Comparable<RelativeHumidity, MoistureContent>);
static_assert(!std::convertible_to<double, Metres>);
static_assert(!std::convertible_to<Metres, double>);
static_assert(std::constructible_from<Metres, double>);

// The legal products, and one that has no meaning here.
static_assert(std::same_as<decltype(Metres(2) * Metres(3)), SquareMetres>);
static_assert(std::same_as<decltype(SquareMetres(2) / SquareMetresPerLitre(10)), Litres>);
static_assert(std::same_as<decltype(Metres(2) / Metres(3)), double>);
static_assert(!Multipliable<Litres, Litres>);
static_assert(!Multipliable<SquareMetres, SquareMetresPerLitre>);

// Curing is elapsed time, working hours are wall time.
static_assert(!Subtractable<Instant, LocalTime>);
static_assert(!Comparable<Instant, LocalTime>);
static_assert(!Addable<Instant, Instant>);
static_assert(!std::convertible_to<LocalTime, Instant>);

static_assert(sizeof(Metres) == sizeof(double));
static_assert(std::is_trivially_copyable_v<Metres>);

TEST(Quantity, ArithmeticKeepsTheUnit) {
  EXPECT_EQ(Metres(2) + Metres(3), Metres(5));
  EXPECT_EQ(Metres(2) - Metres(3), Metres(-1));
  EXPECT_EQ(2 * Metres(3), Metres(6));
  EXPECT_EQ(Metres(3) / 2, Metres(1.5));
  Metres sum(1);
  sum += Metres(2);
  sum -= Metres(0.5);
  EXPECT_EQ(sum, Metres(2.5));
}

TEST(Quantity, AreaDividedByTheSpreadingRateIsAVolume) { EXPECT_EQ(Metres(2) * Metres(3) / SquareMetresPerLitre(12), Litres(0.5)); }

TEST(Celsius, ZeroIsTheIcePoint) {
  // From memory: BIPM, The International System of Units, 9th edition (2019), section 2.3.1: t/°C = T/K - 273.15.
  EXPECT_DOUBLE_EQ(Celsius(0).kelvin(), 273.15);
  EXPECT_EQ(Celsius(18) + Kelvins(5) - Celsius(18), Kelvins(5));
}

}  // namespace
}  // namespace coatday
