#include "tests/published/values.h"
#include "tests/support/source_dir.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <ostream>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace coatday::published {
namespace {

std::filesystem::path folder() { return std::filesystem::path(source_dir()) / "tests/published/values"; }
constexpr std::string_view header = "quantity,inputs,expected,unit,tolerance,source,verified";
constexpr std::array standings{std::pair{Standing::seen, std::string_view("seen")},
                               std::pair{Standing::from_memory, std::string_view("from memory")},
                               std::pair{Standing::computed_here, std::string_view("computed here")}};

[[noreturn]] void refuse(const std::string& place, const std::string& reason) { throw std::runtime_error(place + ": " + reason); }

/// Fields of one line; a field in quotes may hold commas, and two quotes for one.
std::vector<std::string> fields(std::string_view line) {
  std::vector<std::string> result(1);
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"')
      result.back() += line[i++];
    else if (line[i] == '"')
      quoted = !quoted;
    else if (line[i] == ',' && !quoted)
      result.emplace_back();
    else
      result.back() += line[i];
  }
  return result;
}

double finite(const std::string& text, const std::string& place, const std::string& what) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
    refuse(place, what + " is not a number: '" + text + "'");
  return value;
}

double tolerance(std::string text, double expected, const std::string& place) {
  constexpr std::string_view percent = " %";
  const bool relative = text.size() > percent.size() && text.substr(text.size() - percent.size()) == percent;
  if (relative) text.resize(text.size() - percent.size());
  const double value = finite(text, place, "tolerance");
  if (!(value > 0)) refuse(place, "tolerance must be > 0");
  return relative ? value / 100 * std::abs(expected) : value;
}

std::map<std::string, std::string, std::less<>> inputs(const std::string& text, const std::string& place) {
  std::map<std::string, std::string, std::less<>> result;
  std::istringstream words(text);
  for (std::string word; words >> word;) {
    const auto equals = word.find('=');
    if (equals == 0 || equals == std::string::npos || equals + 1 == word.size()) refuse(place, "input is not name=value: '" + word + "'");
    if (!result.emplace(word.substr(0, equals), word.substr(equals + 1)).second) refuse(place, "input given twice: '" + word + "'");
  }
  return result;
}

Standing standing(const std::string& verified, const std::string& place) {
  for (const auto& [value, name] : standings)
    if (verified.substr(0, name.size()) == name) return value;
  refuse(place, "'verified' must begin with 'seen', 'from memory' or 'computed here'");
}

Value row(std::string_view line, const std::string& place) {
  const auto field = fields(line);
  if (field.size() != 7) refuse(place, std::to_string(field.size()) + " fields; expected 7");
  if (field[0].empty()) refuse(place, "no quantity");
  if (field[5].find_first_not_of(' ') == std::string::npos) refuse(place, "no source");
  const double expected = finite(field[2], place, "expected value");
  return {place,    field[0], inputs(field[1], place),  expected, field[3], tolerance(field[4], expected, place),
          field[5], field[6], standing(field[6], place)};
}

}  // namespace

const std::string& Value::text(std::string_view input) const {
  const auto found = inputs.find(input);
  if (found == inputs.end()) refuse(place, "no input '" + std::string(input) + "'");
  return found->second;
}

double Value::number(std::string_view input) const { return finite(text(input), place, std::string(input)); }

std::vector<Value> parse_values(std::string_view csv, const std::string& file) {
  std::vector<Value> result;
  for (int line = 1; !csv.empty(); ++line) {
    const auto end = std::min(csv.find('\n'), csv.size());
    const auto text = csv.substr(0, end);
    const auto place = file + ":" + std::to_string(line);
    csv.remove_prefix(std::min(end + 1, csv.size()));
    if (line > 1)
      result.push_back(row(text, place));
    else if (text != header)
      refuse(place, "the first line must be " + std::string(header));
  }
  if (result.empty()) refuse(file, "no rows");
  return result;
}

std::vector<Value> read_values(const std::string& file) {
  std::ifstream in(folder() / file, std::ios::binary);
  if (!in) refuse(file, "cannot be read");
  return parse_values(std::string(std::istreambuf_iterator<char>(in), {}), file);
}

std::vector<std::string> value_files() {
  std::vector<std::string> result;
  for (const auto& entry : std::filesystem::directory_iterator(folder()))
    if (entry.path().extension() == ".csv") result.push_back(entry.path().filename().string());
  std::sort(result.begin(), result.end());
  return result;
}

std::vector<Group> group(const std::vector<std::string>& files) {
  std::map<std::string, std::vector<Value>> groups;
  for (const auto& file : files)
    for (Value& value : read_values(file)) {
      std::string name = value.quantity + "_";
      name += standings.at(static_cast<std::size_t>(value.standing)).second;
      std::replace(name.begin(), name.end(), ' ', '_');
      groups[name].push_back(std::move(value));
    }
  std::vector<Group> result;
  for (auto& [name, values] : groups) result.push_back({name, std::move(values)});
  return result;
}

std::string group_name(const testing::TestParamInfo<Group>& info) { return info.param.name; }

void PrintTo(const Group& group, std::ostream* out) { *out << group.values.size() << " values"; }

void check(const Group& group, const Computations& computations) {
  ASSERT_FALSE(group.values.empty());
  for (const Value& value : group.values) {
    const auto computation = computations.find(value.quantity);
    ASSERT_NE(computation, computations.end()) << value.place << ": no check computes '" << value.quantity << "'";
    EXPECT_NEAR(computation->second(value), value.expected, value.tolerance)
        << value.place << ": " << value.quantity << " in " << value.unit << "\n  source: " << value.source
        << "\n  verified: " << value.verified;
  }
}

}  // namespace coatday::published
