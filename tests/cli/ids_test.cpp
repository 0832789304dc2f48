// Names that would give two things one id: the plan is sound all the same.
#include <gtest/gtest.h>

#include "cli/run.h"
#include "tests/cli/typed.h"

namespace coatday::cli {
namespace {

const std::string shop = R"(shop: sample shop
time zone: America/Chicago
hours: {mon-sun: "08:00-17:00"}
methods: [brush]
drying places: [{name: trestle, kind: points, count: 4}]
air: {constant: {temperature: 20 °C, humidity: 45 %}}
finishes kept at: 15 °C
work: [{name: top, takes: 1 h}]
)";

const std::string board = "shape: board, length: 60 cm, width: 30 cm, thickness: 2 cm";

Outcome plan(const std::string& pieces) {
  return run({"plan", "order.yaml"}, typed({{"order.yaml", R"(order: sample
shop: shop.yaml
start: 2027-03-01 08:00
schedule: water-clear-three-coats
species: walnut
pieces:
)" + pieces},
                                            {"shop.yaml", shop}}));
}

TEST(Clashes, OfAPartWithABatchOfAnother) {
  const std::string door_1 = "{part: door 1, " + board + "}", doors = "{part: door, count: 20, " + board + "}";
  EXPECT_EQ(plan("  - {piece: p, parts: [" + doors + ", " + door_1 + "]}\n").status, done);
  EXPECT_EQ(plan("  - {piece: p, parts: [" + door_1 + ", " + doors + "]}\n").status, done);
}

TEST(Clashes, OfAPieceWithTheShopsOwnWorkOrItsCans) {
  const std::string work =
      ", work: [{name: top, when: before finishing, takes: 1 h}, {name: water-clear, when: before finishing, takes: 1 h}]";
  for (const char* piece : {"shop", "cans", "water-clear"}) {
    const Outcome outcome = plan("  - {piece: " + std::string(piece) + ", parts: [{part: top, " + board + "}]" + work + "}\n");
    EXPECT_EQ(outcome.status, done) << piece << outcome.err;
  }
}

}  // namespace
}  // namespace coatday::cli
