#pragma once
// Published values: rows of tests/published/values/*.csv, and the checks that compare the program with them.
//
// Columns: quantity, inputs, expected, unit, tolerance, source, verified.
//   inputs     name=value pairs between blanks, the unit in the name: "t_C=20 rh_pct=50"
//   tolerance  absolute, in the row's unit ("0.07"), or a share of the expected value ("0.03 %")
//   source     document, edition, table or section
//   verified   how far the value was compared with its source; begins with the name of a Standing
//
// A check maps the name of each quantity to a function that computes it; see psychrometrics_test.cpp.

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <gtest/gtest.h>

namespace coatday::published {

/// Only the first is verification: the others guard against slips.
enum class Standing { seen, from_memory, computed_here };

struct Value {
  std::string place;  ///< file:line
  std::string quantity;
  std::map<std::string, std::string, std::less<>> inputs;
  double expected = 0;
  std::string unit;
  double tolerance = 0;  ///< absolute, in `unit`
  std::string source;
  std::string verified;
  Standing standing = Standing::seen;

  [[nodiscard]] bool has(std::string_view input) const { return inputs.count(input) != 0; }
  [[nodiscard]] const std::string& text(std::string_view input) const;  ///< throws std::runtime_error naming the row
  [[nodiscard]] double number(std::string_view input) const;            ///< likewise
};

/// Throws std::runtime_error with file and line at the first row that is malformed or has no source.
[[nodiscard]] std::vector<Value> parse_values(std::string_view csv, const std::string& file);
/// The rows of one file of tests/published/values/.
[[nodiscard]] std::vector<Value> read_values(const std::string& file);
/// Names of the files in that folder, sorted.
[[nodiscard]] std::vector<std::string> value_files();

/// All rows of one quantity and one standing.
struct Group {
  std::string name;  ///< fit for a test's name: wet_bulb_computed_here
  std::vector<Value> values;
};
[[nodiscard]] std::vector<Group> group(const std::vector<std::string>& files);

/// For INSTANTIATE_TEST_SUITE_P.
[[nodiscard]] std::string group_name(const testing::TestParamInfo<Group>&);
void PrintTo(const Group&, std::ostream*);

/// How a check computes each quantity, in the unit of the row.
using Computations = std::map<std::string, std::function<double(const Value&)>, std::less<>>;
/// Expects every value of the group within its tolerance.
void check(const Group&, const Computations&);

}  // namespace coatday::published
