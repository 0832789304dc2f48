// The front door: what comes out of it was checked.
#include "planner/planner.h"

#include <gtest/gtest.h>

#include <type_traits>

#include "tests/support/jobs.h"

namespace coatday::planner {
namespace {

static_assert(!std::is_default_constructible_v<FinishedPlan>);
static_assert(!std::is_constructible_v<FinishedPlan, job::Plan>);
static_assert(!std::is_constructible_v<FinishedPlan, job::Plan, job::Advice>);

}  // namespace
}  // namespace coatday::planner
