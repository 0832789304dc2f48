#pragma once
// The face ledger as data: which coat goes to which face.

#include <optional>
#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report {

/// A film or colour coat of a schedule.
struct LedgerColumn {
  std::string step;
  std::string product;
  std::string name;
  bool film = false;

  [[nodiscard]] bool same(const LedgerColumn& o) const { return step == o.step && product == o.product; }
};

/// Faces of one part that get the same coats on the same days.
struct LedgerRow {
  const job::FaceEntry* part = nullptr;
  std::string faces;                          ///< "edges and ends"
  std::vector<std::optional<Instant>> coats;  ///< by column; none: a hole
  const piece::Exception* exception = nullptr;
};

/// Parts that are finished alike.
struct LedgerBlock {
  std::vector<LedgerColumn> columns;
  std::vector<LedgerRow> rows;
};

[[nodiscard]] std::vector<LedgerBlock> ledger_blocks(const job::Plan&);

}  // namespace coatday::report
