// `coatday wood` on an order of 30 pieces, each a top of its own thickness, a year hour by hour: the whole command, files and plan included, and
// `coatday plan` on the same order beside it. Aim: the year under a second of processor time.

#include <benchmark/benchmark.h>
#include <fmt/core.h>

#include "cli/run.h"
#include "tests/support/source_dir.h"

namespace {

using namespace coatday;
namespace fs = std::filesystem;

std::string order_of(int pieces) {
  std::string text = R"(order: tops
shop: samples/refectory-table/shop.yaml
start: 2027-02-01 08:00
schedule: water-clear-three-coats
species: red oak
customer room:
  outdoors: samples/climate/chicago.csv
  heated: 20 °C
  no drier than: 32 %
  no damper than: 60 %
pieces:
)";
  for (int p = 0; p < pieces; ++p) {
    text += fmt::format(
        "  - piece: table {}\n    parts:\n      - {{part: top, shape: board, length: 120 cm, width: {} cm, thickness: {} mm}}\n", p, 30 + p,
        15 + p);
  }
  return text;
}

cli::Environment environment() {
  cli::Environment environment;
  const fs::path root = source_dir();
  environment.read = [root, order = order_of(30)](const fs::path& path) -> input::FileText {
    if (path == "order.yaml") return order;
    return input::read_from_disk()(root / path);
  };
  environment.schedules = root / "schedules";
  return environment;
}

void command(benchmark::State& state, const char* name) {
  const cli::Environment here = environment();
  for (auto _ : state) {
    const cli::Outcome outcome = cli::run({name, "order.yaml"}, here);
    if (outcome.status != 0) state.SkipWithError(outcome.err.empty() ? outcome.out.c_str() : outcome.err.c_str());
    benchmark::DoNotOptimize(outcome);
  }
}
BENCHMARK_CAPTURE(command, wood_of_thirty_tops, "wood")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(command, plan_of_thirty_tops, "plan")->Unit(benchmark::kMillisecond);

}  // namespace
