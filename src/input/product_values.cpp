#include "input/product_values.h"

#include <type_traits>

#include "input/amounts.h"
#include "input/choices.h"

namespace coatday::input {
namespace {

using finish::Range;

template <class T>
struct Inner {
  using type = T;
};
template <class T>
struct Inner<std::optional<T>> {
  using type = T;
};

Parsed<double> parse_plain(std::string_view typed, Range range) {
  if (range == Range::factor) return parse_factor(typed);
  return range == Range::above_zero ? parse_some_share(typed) : parse_share(typed);
}

template <class T>
Parsed<T> parse_value(std::string_view typed, Range range) {
  if constexpr (std::is_same_v<T, std::string>) return parse_name(typed);
  if constexpr (std::is_same_v<T, bool>) return parse_yes_no(typed);
  if constexpr (std::is_same_v<T, finish::Base>) return parse_base(typed);
  if constexpr (std::is_same_v<T, finish::Role>) return parse_role(typed);
  if constexpr (std::is_same_v<T, finish::FlashClass>) return parse_flash_class(typed);
  if constexpr (std::is_same_v<T, double>) return parse_plain(typed, range);
  if constexpr (std::is_same_v<T, Hours>) return range == Range::above_zero ? parse_some_time(typed) : parse_duration(typed);
  if constexpr (std::is_same_v<T, GramsPerLitre>) return parse_voc(typed);
  if constexpr (std::is_same_v<T, SquareMetresPerLitre>) return parse_spreading_rate(typed);
  if constexpr (std::is_same_v<T, Micrometres>) return parse_film(typed);
  if constexpr (std::is_same_v<T, Celsius>) return parse_air_temperature(typed);
  if constexpr (std::is_same_v<T, RelativeHumidity>) return parse_humidity(typed);
  if constexpr (std::is_same_v<T, Kelvins>) return parse_margin(typed);
}

}  // namespace

Keys key_list(std::span<const finish::ProductKey> rows) {
  Keys keys;
  for (const finish::ProductKey& row : rows) keys.push_back(row.key);
  return keys;
}

std::vector<std::string_view> read_values(const Fields& fields, std::span<const finish::ProductKey> rows, finish::Product& product) {
  std::vector<std::string_view> taken;
  for (const finish::ProductKey& row : rows) {
    finish::with_member(product, row.field, [&](auto& value) {
      using T = typename Inner<std::remove_reference_t<decltype(value)>>::type;
      if (fields.take(row.key, value, [&row](std::string_view typed) { return parse_value<T>(typed, row.range); }))
        taken.push_back(row.key);
    });
  }
  return taken;
}

}  // namespace coatday::input
