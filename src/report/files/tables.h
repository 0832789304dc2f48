#pragma once
// What the reports say, as tables for spreadsheets (RFC 4180): a header row, amounts as plain numbers with the unit in the column's name.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report {

/// The take-off, a row for each face. `pieces` are their names.
[[nodiscard]] std::string area_csv(const std::vector<job::FaceEntry>&, const std::vector<std::string>& pieces);
/// A row for each size of can, then one for each other thing. What a finish needs stands in its first row alone, so that a sum is right.
[[nodiscard]] std::string buy_csv(const job::Plan&, Units);
/// The calendar's entries, each with its day and hours in the shop's time. The header row is the mark of a file of ours.
[[nodiscard]] std::string calendar_csv(const job::Plan&, const std::string& order, Units);
[[nodiscard]] std::string calendar_csv_header();

}  // namespace coatday::report
