#pragma once
// Somebody carries in what is kept elsewhere. It warms up before it is coated; dry work may begin while it is cold.

#include "planner/tasks/tasks.h"

namespace coatday::planner {

struct CarriedIn {
  std::size_t task = 0;
  std::vector<After> warming;  ///< what the load's first coat waits for; the coat itself is filled in later
};

/// Adds the task that brings in the parts of a load that are kept elsewhere; nothing where all are in the shop.
[[nodiscard]] std::optional<CarriedIn> carry_in(const job::Job&, const Loads&, std::size_t load, TaskGraph&);

/// Adds a task for each product whose cans stand elsewhere, before its first coat.
void bring_in_cans(const job::Job&, TaskGraph&);

}  // namespace coatday::planner
