#include "planner/model/start_calendar.h"

#include <algorithm>

#include "finish/application_limits.h"
#include "planner/tasks/mixing.h"

namespace coatday::planner {

namespace {

/// Work of a given length that rests while the shop is closed.
class PausingEnd final : public solver::MonotoneFunction {
 public:
  PausingEnd(const solver::Intervals& working, solver::Time steps) : working_(working), steps_(steps) {
    solver::Time sum = 0;
    for (const solver::Interval& shift : working_) {
      worked_.push_back(sum);
      sum += shift.end - shift.begin;
    }
    total_ = sum;
  }

  [[nodiscard]] solver::Time at(solver::Time start) const override {
    const solver::Time target = worked_before(start) + steps_;
    if (target > total_) return solver::unreachable;
    // The shift in which the target is reached: the last that begins with less work done.
    const auto after = std::lower_bound(worked_.begin(), worked_.end(), target);
    const auto shift = static_cast<std::size_t>(after - worked_.begin()) - 1;
    return working_[shift].begin + (target - worked_[shift]);
  }

 private:
  [[nodiscard]] solver::Time worked_before(solver::Time t) const {
    const auto next =
        std::upper_bound(working_.begin(), working_.end(), t, [](solver::Time v, const solver::Interval& w) { return v < w.begin; });
    if (next == working_.begin()) return 0;
    const auto shift = static_cast<std::size_t>(next - working_.begin()) - 1;
    return worked_[shift] + std::min(t, working_[shift].end) - working_[shift].begin;
  }

  solver::Intervals working_;
  solver::Time steps_;
  std::vector<solver::Time> worked_;
  solver::Time total_ = 0;
};

}  // namespace

Calendar::Calendar(const shop::Shop& shop, const Grid& grid, solver::Time past, solver::Time horizon) : horizon_(horizon) {
  const auto hours = [&](solver::Time from, solver::Time until) {
    solver::Intervals all;
    for (const shop::WorkingTime& shift : shop::working_time(shop, grid.instant(from), grid.instant(until))) {
      const solver::Interval on_grid{grid.up(shift.begin), grid.down(shift.end)};
      if (on_grid.begin < on_grid.end) all.push_back(on_grid);
    }
    return all;
  };
  working_ = hours(0, horizon);
  past_and_coming_ = past < 0 ? hours(past, horizon) : working_;
}

solver::Intervals Calendar::unbroken(solver::Time steps) const { return starts_within(working_, steps); }

solver::Intervals Calendar::pausing(solver::Time steps, solver::Time until) const {
  solver::Intervals starts = cut(working_, 0, until);
  solver::Time left = steps;
  while (!starts.empty() && left > 0) {
    solver::Interval& last = starts.back();
    const solver::Time take = std::min(left, last.end - last.begin);
    left -= take;
    last.end -= take;
    if (left == 0) ++last.end;
    if (last.begin >= last.end) starts.pop_back();
  }
  return starts;
}

solver::Function Calendar::pausing_end(solver::Time steps) const { return std::make_shared<PausingEnd>(working_, steps); }

solver::Intervals air_allows(const finish::Product& product, const Mixing* mixing, const finish::Conditions& met, const Grid& grid) {
  const climate::AirSeries& air = *met.room;
  const std::vector<bool> rows = finish::allowed_rows(product, met);
  solver::Intervals open;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (!rows[r] || (mixing != nullptr && !keeps_to(*mixing, product, air.rows()[r].air))) continue;
    const Instant from = air.rows()[r].from;
    const solver::Interval row{grid.up(from), grid.down(from + climate::AirSeries::step)};
    if (!open.empty() && open.back().end >= row.begin) {
      open.back().end = row.end;
    } else {
      open.push_back(row);
    }
  }
  return open;
}

solver::Intervals starts_within(const solver::Intervals& open, solver::Time steps) {
  solver::Intervals starts;
  for (const solver::Interval& interval : open) {
    if (interval.end - interval.begin >= steps) starts.push_back({interval.begin, interval.end - steps + 1});
  }
  return starts;
}

solver::Intervals intersection(const solver::Intervals& a, const solver::Intervals& b) {
  solver::Intervals result;
  for (std::size_t i = 0, j = 0; i < a.size() && j < b.size();) {
    const solver::Interval both{std::max(a[i].begin, b[j].begin), std::min(a[i].end, b[j].end)};
    if (both.begin < both.end) result.push_back(both);
    (a[i].end < b[j].end ? i : j)++;
  }
  return result;
}

solver::Intervals cut(const solver::Intervals& open, solver::Time from, solver::Time until) { return intersection(open, {{from, until}}); }

}  // namespace coatday::planner
