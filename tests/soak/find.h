#pragma once
// What a find is, and what one run must not do.

#include <functional>
#include <optional>
#include <string>

#include "tests/soak/case.h"
#include "tests/soak/program.h"

namespace coatday::soak {

struct Complaint {
  std::string kind;  ///< one word with hyphens; finds of one kind count as one
  std::string what;  ///< a line for people
  std::string typed;
};

/// What is wrong with a run whatever the case: its end, its time, its memory, its form.
[[nodiscard]] std::optional<Complaint> complaint_of(const Run&);
/// Of a run over a file that was changed at random: messages without a place as well.
[[nodiscard]] std::optional<Complaint> complaint_of_mutant(const Run&);

}  // namespace coatday::soak
