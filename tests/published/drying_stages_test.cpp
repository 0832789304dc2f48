// drying_stages.csv: the air in which drying times are stated, and the order of the stages.

#include <algorithm>
#include <stdexcept>

#include "finish/law.h"
#include "tests/published/values.h"

namespace coatday::published {
namespace {

const Computations computations{
    {"reference_temperature", [](const Value&) { return finish::reference_air.temperature.value(); }},
    {"reference_humidity", [](const Value&) { return 100 * finish::reference_air.humidity.value(); }},
};

finish::Stage stage(const Value& v) {
  std::string name = v.text("stage");
  std::replace(name.begin(), name.end(), '-', ' ');
  const auto words = finish::words<finish::Stage>();
  const auto found = std::find(words.begin(), words.end(), name);
  if (found == words.end()) throw std::runtime_error(v.place + ": unknown stage " + name);
  return static_cast<finish::Stage>(found - words.begin());
}

TEST(DryingStages, ReferenceAirIsTheRefereesAir) {
  std::size_t checked = 0;
  for (const Group& g : group({"drying_stages.csv"})) {
    if (g.values.front().quantity == "place_in_order") continue;
    check(g, computations);
    checked += g.values.size();
  }
  EXPECT_EQ(checked, 2u);
}

TEST(DryingStages, ComeInThePublishedOrder) {
  std::vector<std::pair<double, finish::Stage>> places;
  for (const Value& v : read_values("drying_stages.csv")) {
    if (v.quantity == "place_in_order") places.emplace_back(v.expected, stage(v));
  }
  ASSERT_EQ(places.size(), 3u);
  std::sort(places.begin(), places.end());
  EXPECT_TRUE(std::is_sorted(places.begin(), places.end(), [](const auto& a, const auto& b) { return a.second < b.second; }));
}

}  // namespace
}  // namespace coatday::published
