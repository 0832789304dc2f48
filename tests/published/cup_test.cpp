// cup.csv: bending from strain, by two layers and by a linear gradient.

#include "wood/cup.h"
#include <algorithm>
#include <vector>

#include "tests/published/values.h"

namespace coatday::published {
namespace {

using wood::Curvature;

constexpr int cells = 400;

Metres mm(const Value& v, std::string_view input) { return Metres(v.number(input) / 1000); }

Curvature two_layers(double difference, Metres thickness) {
  std::vector<double> strain(cells, 0.0);
  std::fill(strain.begin() + cells / 2, strain.end(), difference);
  return wood::free_curvature(strain, thickness);
}

double linear_sag(const Value& v) {
  std::vector<double> moisture;
  for (int i = 0; i < cells; ++i) moisture.push_back(v.number("difference_pct") / 100 * (i + 0.5) / cells);
  const Curvature curvature = wood::free_curvature(moisture, v.number("coefficient"), mm(v, "thickness_mm"));
  return 1000 * wood::sag(curvature, mm(v, "width_mm")).value();
}

double two_layer_sag(const Value& v) {
  const Curvature curvature = two_layers(v.number("coefficient") * v.number("difference_pct"), mm(v, "thickness_mm"));
  return 1000 * wood::sag(curvature, mm(v, "width_mm")).value();
}

/// A cantilever's tip lies as deep as the middle of an arc of twice its length.
double cantilever_tip(const Value& v) {
  return 1000 * wood::sag(two_layers(v.number("difference"), mm(v, "thickness_mm")), mm(v, "length_mm") * 2).value();
}

const Computations computations{
    {"two_layer_curvature", [](const Value& v) { return two_layers(v.number("difference"), mm(v, "thickness_mm")).value() / 1000; }},
    {"cantilever_tip", cantilever_tip},
    {"linear_sag", linear_sag},
    {"two_layer_sag", two_layer_sag},
};

class Cup : public testing::TestWithParam<Group> {};
TEST_P(Cup, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Cup, testing::ValuesIn(group({"cup.csv"})), group_name);

}  // namespace
}  // namespace coatday::published
