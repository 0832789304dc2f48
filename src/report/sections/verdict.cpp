#include "report/sections/verdict.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "report/words.h"

namespace coatday::report {
namespace {

bool nothing_left(const job::Plan& plan) {
  return std::all_of(plan.events.begin(), plan.events.end(), [](const job::Event& event) { return event.done || !event.piece; });
}

std::string days(int count) { return counted(static_cast<std::size_t>(count), "day", "days"); }

/// Several orders, and nobody was promised a day.
bool waits_its_turn(const job::Plan& plan) {
  std::set<std::string> orders;
  bool promised = false;
  for (const job::PieceResult& piece : plan.pieces) {
    orders.insert(piece.order);
    promised = promised || piece.due.has_value();
  }
  return orders.size() > 1 && !promised;
}

/// The search did not come to its end, and no bound says that it need not.
std::string cut_off_text(const job::Plan& plan) {
  return plan.search_cut_off ? "; the search ended early, a longer one may find better (--effort)" : "";
}

std::string late_text(const job::Plan& plan, int late, int sum) {
  const int sure = std::min(sum, plan.days_late_bound);
  const bool all = sure == sum || plan.proven;
  const std::string text = plan.pieces.size() == 1 ? "late by " + days(sum)
                                                   : fmt::format("{} of {} pieces late, {} in all", late, plan.pieces.size(), days(sum));
  if (all) return text + "; no plan with these batches is less late";
  return (sure == 0 ? text : text + fmt::format("; at least {} of them cannot be avoided", days(sure))) + cut_off_text(plan);
}

int days_between(const job::Plan& plan, Instant from, Instant until) {
  return static_cast<int>((local_day(until, plan.shop.zone) - local_day(from, plan.shop.zone)).count());
}

std::string ready_text(const job::Plan& plan) {
  if (!plan.ready || !plan.ready_bound) return "";
  const int sooner = days_between(plan, *plan.ready_bound, *plan.ready);
  if (sooner <= 0) return "no earlier day is possible with these people, places and air";
  if (plan.proven || (plan.ready_bound_here && days_between(plan, *plan.ready_bound_here, *plan.ready) <= 0))
    return "no earlier day is possible with these people, places, batches and air";
  return fmt::format("could at most be ready {} sooner (not before {})", days(sooner),
                     date_text(local_day(*plan.ready_bound, plan.shop.zone))) +
         cut_off_text(plan);
}

}  // namespace

std::string verdict_text(const job::Plan& plan) {
  if (plan.status == job::Status::impossible) return "impossible; the reasons stand below";
  if (plan.status == job::Status::not_found) return "not found; there may be one all the same";
  if (nothing_left(plan)) return "nothing is left to do";
  int late = 0, sum = 0;
  for (const job::PieceResult& piece : plan.pieces) {
    const int own = job::days_late(plan, piece);
    late += own > 0 ? 1 : 0;
    sum += own;
  }
  if (late > 0) return late_text(plan, late, sum);
  return waits_its_turn(plan) ? "each order as soon as its turn allows" : ready_text(plan);
}

}  // namespace coatday::report
