#include "planner/tasks/mixing.h"

#include <algorithm>

#include "finish/application_limits.h"
#include "finish/clock.h"
#include "planner/tasks/effort.h"

namespace coatday::planner {

namespace {

/// It stands in the schedule of a part.
bool is_used(const job::Job& job, const std::string& product) {
  const auto by_step = [&](const finish::Step& step) { return step.product == product; };
  const auto by_part = [&](const piece::Part& part) {
    const finish::Schedule* schedule = job.catalogue.schedule(part.schedule);
    return schedule != nullptr && std::any_of(schedule->steps.begin(), schedule->steps.end(), by_step);
  };
  return std::any_of(job.order.pieces.begin(), job.order.pieces.end(), [&](const job::OrderPiece& piece) {
    return std::any_of(piece.piece.parts.begin(), piece.piece.parts.end(), by_part);
  });
}

/// The rows of the shop's hours.
std::vector<std::size_t> at_work(const job::Job& job, const climate::AirSeries& air, Instant from) {
  std::vector<std::size_t> rows;
  for (const shop::WorkingTime& shift : shop::working_time(job.shop, from, air.end())) {
    for (Instant t = shift.begin; t < shift.end; t += climate::AirSeries::step) rows.push_back(air.index(t));
    rows.push_back(air.index(shift.end - std::chrono::seconds(1)));
  }
  return rows;
}

}  // namespace

Mixings mixings_in(const job::Job& job, const climate::AirSeries& air, Instant from) {
  Mixings result;
  std::vector<std::size_t> rows;
  for (const auto& [id, product] : job.catalogue.products) {
    if (!product.pot_life || !is_used(job, id)) continue;
    if (rows.empty()) rows = at_work(job, air, from);
    const std::vector<bool> allowed = finish::allowed_rows(product, air);
    std::optional<Mixing> mixing;
    for (const std::size_t row : rows) {
      if (!allowed[row]) continue;
      const climate::Air& here = air.rows()[row].air;
      const Mixing now{*finish::pot_life(product, here), finish::induction(product, here)};
      if (!mixing) mixing = now;
      mixing->pot_life = std::min(mixing->pot_life, now.pot_life);
      mixing->induction = std::max(mixing->induction, now.induction);
    }
    result[&product] = mixing.value_or(as_recorded(product));
  }
  return result;
}

bool keeps_to(const Mixing& mixing, const finish::Product& product, const climate::Air& air) {
  constexpr Hours second{1.0 / 3600};
  return *finish::pot_life(product, air) + second >= mixing.pot_life && finish::induction(product, air) <= mixing.induction + second;
}

}  // namespace coatday::planner
