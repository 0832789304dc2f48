#pragma once
// What a command sees when it writes: what it needs, made ready.

#include <filesystem>
#include <optional>

#include "cli/arguments.h"
#include "cli/outcome.h"
#include "climate/log.h"
#include "input/open.h"
#include "planner/planner.h"
#include "report/document/document.h"
#include "report/document/lines.h"
#include "report/words.h"

namespace coatday::cli {

struct View {
  const Arguments& arguments;
  Instant now;
  std::filesystem::path schedules{};  ///< the directory of shipped finishes
  input::Opened files{};              ///< empty where nothing was named
  report::TextStyle style{};
  std::optional<climate::Log> log{};                   ///< where a logger's table was named
  std::optional<planner::FinishedPlan> finished{};     ///< where the command needs a plan and orders were named
  std::optional<planner::FinishedPlan> without_set{};  ///< the plan without the keys that are set, where the command compares the two

  [[nodiscard]] const job::Job& job() const { return files.job; }
  [[nodiscard]] const job::Plan& plan() const { return finished->plan(); }
  [[nodiscard]] const job::Advice& advice() const { return finished->advice(); }
  [[nodiscard]] bool is_planned() const { return plan().status == job::Status::planned; }
  [[nodiscard]] const std::string& order() const { return files.job.order.name; }
};

/// The text for standard output, with the exit status that the plan gives.
[[nodiscard]] Outcome answer(const View&, std::string text);
[[nodiscard]] Outcome answer(const View&, const report::Document&);
/// Units and zone for a paper.
[[nodiscard]] report::Texts texts(const View&);
/// The reasons why there is no plan, as people read them.
[[nodiscard]] std::string reasons(const View&);

}  // namespace coatday::cli
