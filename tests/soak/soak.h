#pragma once
// Many cases, several at once, and what came of them.

#include <csignal>
#include <set>

#include "tests/soak/examine.h"

namespace coatday::soak {

struct Settings {
  Program program;
  std::filesystem::path folder;  ///< of everything that is written
  std::uint64_t seed = 1;        ///< of the first case; the next has the next
  double minutes = 0;            ///< 0: by orders
  std::uint64_t orders = 0;
  int mutations_each = 10;  ///< of the files of each case
  unsigned workers = 1;
  std::string relation{};  ///< this alone is asked of each; empty: some of everything
  int most_tries = 300;    ///< of a shrinker
};

/// The finds of one kind.
struct Kind {
  std::uint64_t count = 0;
  std::set<std::uint64_t> seeds;
  std::string what, folder;  ///< of the first
};

struct Outcome {
  Counts counts;
  std::map<std::string, Kind> kinds;
  [[nodiscard]] std::uint64_t finds() const;
};

/// Says each new kind of find at once, and writes its shrunk case into finds/KIND-SEED/.
/// Set it, and the soak ends after the orders at hand.
volatile std::sig_atomic_t& stopped();

[[nodiscard]] Outcome soak(const Settings&);

/// The figures, and what was never used, as text. The last line sums it up.
[[nodiscard]] std::string report(const Outcome&, const Settings&, const Known&, const std::filesystem::path& every_key);

}  // namespace coatday::soak
