#pragma once
// The front door of the planner: of planner/, other rooms include this file alone.

#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "checker/check.h"
#include "job/advice.h"
#include "job/plan.h"
#include "job/request.h"
#include "job/wood_findings.h"

namespace coatday::planner {

/// The checker found our own plan wrong. That is a bug, and nobody may see the plan.
struct Faults {
  std::vector<checker::Breach> breaches;
};

/// Only a Finisher makes one, behind finish_plan(). Whoever holds it holds a plan that the checker found sound, or the reasons why there is none.
class FinishedPlan {
 public:
  [[nodiscard]] const job::Plan& plan() const { return plan_; }        ///< with what the wood gives cause to warn of
  [[nodiscard]] const job::Advice& advice() const { return advice_; }  ///< empty where none was asked for

 private:
  FinishedPlan(job::Plan plan, job::Advice advice) : plan_(std::move(plan)), advice_(std::move(advice)) {}
  friend class Finisher;

  job::Plan plan_;
  job::Advice advice_;
};

/// Plans the job, adds what its wood gives cause to warn of, has the plan checked, and tries what would help, as far as the request asks.
/// A job with mistakes, and one that cannot be planned, give a plan whose status and findings say so.
[[nodiscard]] tl::expected<FinishedPlan, Faults> finish_plan(const job::Job&, const job::Request&);

/// What is wrong with a job, found without planning it. An error is what no plan can mend.
[[nodiscard]] std::vector<job::Finding> validate(const job::Job&);

/// What the order's history says that cannot be so: an unknown event, one recorded twice, one that begins too soon. Each at its entry.
[[nodiscard]] std::vector<job::Finding> history_mistakes(const job::Job&);

/// The faces of every part and their areas.
[[nodiscard]] std::vector<job::FaceEntry> take_off(const job::Job&);

/// How the wood of a planned job fares; empty where there is no plan.
[[nodiscard]] job::WoodFindings wood_findings(const job::Job&, const FinishedPlan&);

}  // namespace coatday::planner
