#pragma once
// The keys of a product in a finish file. A plain property of a product is a member of Product and a row here: the reader, the list of known
// keys, `coatday finishes NAME` and the JSON all follow the row.

#include <optional>
#include <span>
#include <string_view>
#include <type_traits>
#include <variant>

#include "finish/product.h"

namespace coatday::finish {

/// The member that a key fills. None: the key has a reader of its own.
using Field =
    std::variant<std::monostate, std::string Product::*, bool Product::*, Base Product::*, Role Product::*, FlashClass Product::*,
                 double Product::*, std::optional<double> Product::*, Hours Product::*, std::optional<Hours> Product::*,
                 GramsPerLitre Product::*, std::optional<SquareMetresPerLitre> Product::*, std::optional<Micrometres> Product::*,
                 Celsius Limits::*, RelativeHumidity Limits::*, Kelvins Limits::*, std::optional<Kelvins> Limits::*, Hours Limits::*>;

/// What a value may be. As usual: a duration from 0, a plain number is a share from 0 to 100 %.
enum class Range { usual, above_zero, factor };  // a factor is from 1 to 100

struct ProductKey {
  std::string_view key;
  Field field = {};
  Range range = Range::usual;
  std::string_view about;      ///< help: what the value says
  std::string_view json = {};  ///< its member in the JSON; empty: it has none, or one that is worked out
  std::string_view line = {};  ///< the label of its line in `coatday finishes NAME`; empty: none, or one that it shares with others
};

/// In the order in which messages list them.
[[nodiscard]] std::span<const ProductKey> product_keys();
[[nodiscard]] std::span<const ProductKey> limit_keys();     ///< under 'limits'
[[nodiscard]] std::span<const ProductKey> coverage_keys();  ///< under 'coverage'

template <class Of, class T>
[[nodiscard]] auto& member(Of& product, T Product::*field) {
  return product.*field;
}
template <class Of, class T>
[[nodiscard]] auto& member(Of& product, T Limits::*field) {
  return product.limits.*field;
}

/// Calls `visit` with the member of the product, unless the key has a reader of its own.
template <class Of, class Visit>
void with_member(Of& product, const Field& field, const Visit& visit) {
  std::visit(
      [&](auto which) {
        if constexpr (!std::is_same_v<decltype(which), std::monostate>) visit(member(product, which));
      },
      field);
}

}  // namespace coatday::finish
