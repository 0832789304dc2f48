#pragma once
// What is decided before a search: how parts come together in loads, and which side of a lying part goes first.

#include <functional>

#include "planner/make/make_plan.h"
#include "planner/tasks/tasks.h"

namespace coatday::planner {

struct Variant {
  Batching batching = Batching::fit;
  Sides sides = Sides::hidden_first;
};

/// As most orders are planned.
[[nodiscard]] inline bool is_usual(const Variant& v) { return v.batching == Batching::fit && v.sides == Sides::hidden_first; }

/// Plans one variant within the time of the request, or quickly where it has none.
using PlanVariant = std::function<job::Plan(const job::Request&, const Variant&, Purpose)>;

/// The variant in which the history and an earlier plan were made, as far as one has all their steps.
[[nodiscard]] Variant begun_variant(const job::Job&, const job::Request&);

/// Plans the usual variant, or the one in which the history and an earlier plan were made. Where nothing is begun it also tries the others: if
/// there is time to search or the usual variant gives no plan, it takes another that is an hour less late, or ready an hour earlier; with few
/// steps that could be ready on a better day, it glances at them and takes one that gains a day. A finding says what was tried.
[[nodiscard]] job::Plan best_variant(const job::Job&, const job::Request&, Purpose, const PlanVariant&);

}  // namespace coatday::planner
