#pragma once
// A place where cases are run: one folder, one program, and what was counted.

#include <map>
#include <nlohmann/json.hpp>

#include "tests/soak/find.h"

namespace coatday::soak {

/// Sums over many runs. Those of two benches can be added.
struct Counts {
  std::map<std::string, std::uint64_t> orders, mutants;  ///< runs by exit status
  std::map<std::string, std::uint64_t> used;             ///< keys, shapes, schedules and commands, by "kind: name"
  std::map<std::string, std::uint64_t> refusals;         ///< first words of exit 2 for files that should have none
  std::map<std::string, std::uint64_t> notes;            ///< what is counted and is no find
  std::uint64_t cases = 0, mutations = 0;
  double seconds = 0, slowest = 0;  ///< of processor time
  std::string slowest_run;
  std::uint64_t above_slow = 0;

  void add(const Counts&);
};

/// A plan as JSON, without its air and its output; nothing where it could not be read.
struct Planned {
  Run run;
  nlohmann::json json;
  std::optional<Complaint> complaint;

  [[nodiscard]] std::string status() const;                    ///< "planned", "impossible", "not found" or ""
  [[nodiscard]] nlohmann::json result(const char* key) const;  ///< null where the plan does not tell it
};

/// Relations ask for the plan of the same case again.
struct Remembered {
  Case at;
  std::vector<std::string> more;
  Planned planned;
};

struct Bench {
  Program program;
  std::filesystem::path folder;
  Counts counts{};
  std::map<std::string, std::string> there{};  ///< the files that the folder holds
  std::vector<Remembered> remembered{};        ///< the latest plans

  /// Lays the case out and runs a command over it.
  Run run(const Case&, const std::vector<std::string>& arguments);
  Run run_mutant(const std::map<std::string, std::string>& files, const std::vector<std::string>& arguments);

 private:
  void lay_out(const std::map<std::string, std::string>& files);
};

/// A command with its orders and --from, where it takes one.
[[nodiscard]] std::vector<std::string> with_orders(const std::string& command, const Case&, std::vector<std::string> more = {});

[[nodiscard]] Planned plan(Bench&, const Case&, std::vector<std::string> more = {});

}  // namespace coatday::soak
