// The table of product keys: each is in the example of every key, and each plain one is read.
#include "finish/product_keys.h"

#include <fmt/core.h>
#include <gtest/gtest.h>

#include <array>
#include <type_traits>

#include "tests/input/folder.h"

namespace coatday::input {
namespace {

using finish::Product;
using finish::ProductKey;

struct Group {
  std::string_view key;  // empty: of the product itself
  std::span<const ProductKey> rows;
};
std::vector<Group> groups() {
  return {{"", finish::product_keys()}, {"limits", finish::limit_keys()}, {"coverage", finish::coverage_keys()}};
}

TEST(ProductKeys, AreAllInTheExampleOfEveryKey) {
  const std::string label = slurp(source_dir() + "/samples/every-key/label.yaml").value_or("");
  for (const Group& group : groups()) {
    for (const ProductKey& row : group.rows) {
      const bool there =
          label.find(fmt::format(" {}: ", row.key)) < label.size() || label.find(fmt::format(" {}:\n", row.key)) < label.size();
      EXPECT_TRUE(there) << row.key;
      EXPECT_FALSE(row.about.empty()) << row.key;
    }
  }
}

// Two values that differ.
using Texts = std::array<const char*, 2>;
Texts texts(const std::string&, const ProductKey&) { return {"one name", "another name"}; }
Texts texts(bool, const ProductKey&) { return {"yes", "no"}; }
Texts texts(finish::Base, const ProductKey&) { return {"water", "alcohol"}; }
Texts texts(finish::Role, const ProductKey&) { return {"stain", "topcoat"}; }
Texts texts(finish::FlashClass, const ProductKey&) { return {"none", "category-2"}; }
Texts texts(double, const ProductKey& row) { return row.range == finish::Range::factor ? Texts{"2", "3"} : Texts{"10 %", "20 %"}; }
Texts texts(Hours, const ProductKey&) { return {"5 h", "7 h"}; }
Texts texts(GramsPerLitre, const ProductKey&) { return {"100 g/l", "200 g/l"}; }
Texts texts(SquareMetresPerLitre, const ProductKey&) { return {"10 m2/l", "12 m2/l"}; }
Texts texts(Micrometres, const ProductKey&) { return {"40 um", "50 um"}; }
Texts texts(Celsius, const ProductKey&) { return {"20 °C", "22 °C"}; }
Texts texts(RelativeHumidity, const ProductKey&) { return {"70 %", "80 %"}; }
Texts texts(Kelvins, const ProductKey&) { return {"4 K", "6 K"}; }
template <class T>
Texts texts(const std::optional<T>&, const ProductKey& row) {
  return texts(T(), row);
}

Product with(std::string_view group, std::string_view key, const char* text) {
  const std::string value = fmt::format("{}: {}", key, text);
  const std::string own =
      "products:\n  own:\n    like: water-clear\n    " + (group.empty() ? value : fmt::format("{}: {{{}}}", group, value)) + "\n";
  Opening opened = open_catalogue({"own.yaml"}, "schedules", from({{"own.yaml", own}}));
  EXPECT_EQ(printed(opened), "") << own;
  return opened ? opened->job.catalogue.products.at("own") : Product{};
}

TEST(ProductKeys, AreReadIntoTheirMembers) {
  for (const Group& group : groups()) {
    for (const ProductKey& row : group.rows) {
      Product product;
      finish::with_member(product, row.field, [&](auto& value) {
        const Texts both = texts(value, row);
        const Product one = with(group.key, row.key, both[0]), other = with(group.key, row.key, both[1]);
        using Member = std::remove_reference_t<decltype(value)>;
        std::vector<Member> read;
        for (const Product& each : {one, other}) {
          finish::with_member(each, row.field, [&read](const auto& found) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(found)>, Member>) read.push_back(found);
          });
        }
        EXPECT_TRUE(read[0] != read[1]) << row.key;
      });
    }
  }
}

}  // namespace
}  // namespace coatday::input
