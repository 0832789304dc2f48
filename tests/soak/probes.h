#pragma once
// Questions that are put to a case. Each gives a complaint or none, so that a shrinker can ask again.

#include "tests/soak/bench.h"
#include "tests/soak/random.h"

namespace coatday::soak {

using Probe = std::function<std::optional<Complaint>(const Case&, Bench&)>;

/// A run with these arguments must be sound.
[[nodiscard]] Probe sound_run(const std::string& command, const std::vector<std::string>& more = {});
/// Where `check` finds no mistake, `plan` finds none either.
[[nodiscard]] Probe check_sees_all();
/// As sound_run, and no exit 2: history and earlier plans that come from the program itself are no mistake.
[[nodiscard]] Probe accepted_run(const std::string& command, const std::vector<std::string>& more = {});
/// A command that prints something, with its options, drawn.
[[nodiscard]] Probe any_command(Random&, const Case&, const nlohmann::json& plan);

/// Relations between two runs. Each is empty where it does not fit the case.
struct Relation {
  const char* name;
  std::function<std::optional<Complaint>(const Case&, Bench&)> probe;
};
[[nodiscard]] const std::vector<Relation>& relations();

}  // namespace coatday::soak
