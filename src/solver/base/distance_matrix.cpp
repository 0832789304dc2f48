#include "solver/base/distance_matrix.h"

#include <algorithm>
#include <utility>

namespace coatday::solver {
namespace {

constexpr int every_start = unreachable;
constexpr int many = 2048;         // stretches
constexpr Time far = 100'000'000;  // small enough that the sum of two fits into Time

// Halves the starts from `first` to `last` down to stretches of `stride`. look(first, last, shared, whole) says whether to look into the
// halves.
template <typename Look>
void look_into(Time first, Time last, Time stride, bool shared, const Look& look) {
  const bool whole = last - first < stride;
  if (!look(first, last, shared, whole) || whole) return;
  const Time half = ((last - first) / stride + 1) / 2 * stride;
  look_into(first, first + half - 1, stride, shared, look);
  look_into(first + half, last, stride, shared, look);
}

// The same for all starts that calendars and bounds allow.
template <typename Look>
void each_stretch(const Activity& activity, Time first, Time last, Time stride, const Look& look) {
  for (const bool shared : {false, true}) {
    if (shared && !may_share(activity)) continue;
    for (const Interval& i : starts_of(activity, shared)) {
      const Time begin = std::max(i.begin, first), until = std::min(i.end - 1, last);
      if (begin <= until) look_into(begin, until, stride, shared, look);
    }
  }
}

Time stride(Time first, Time last, int stretches) { return last > first ? 1 + (last - first) / stretches : 1; }

// bound(point) - start, unshared and shared, if that is the same for all starts.
std::optional<std::pair<Time, Time>> constant_reaches(const Activity& activity, Edge edge, const Function& bound) {
  const std::optional<Time> lag = constant_lag(bound);
  if (!lag) return std::nullopt;
  if (edge == Edge::start) return std::pair(*lag, *lag);
  const std::optional<Time> alone = constant_lag(activity.end), shared = may_share(activity) ? constant_lag(activity.end_shared) : alone;
  return alone && shared ? std::optional(std::pair(*alone + *lag, *shared + *lag)) : std::nullopt;
}

}  // namespace

Time least_reach(const Network& network, const Bounds& bounds, const Point& point, const Function& bound, int stretches) {
  const Activity& activity = network.activity(point.activity);
  if (const auto constant = constant_reaches(activity, point.edge, bound)) return std::min(constant->first, constant->second);
  Time least = far;
  const Time first = bounds.earliest(point.activity), last = bounds.latest(point.activity);
  each_stretch(activity, first, last, stride(first, last, stretches), [&](Time begin, Time end, bool shared, bool whole) {
    const Time reach = value_of(bound, value_of(activity, point.edge, begin, shared)) - end;
    if (whole) least = std::min(least, reach);
    return reach < least;
  });
  return least;
}

Time greatest_reach(const Network& network, const Bounds& bounds, const Point& point, const Function& bound, int stretches) {
  const Activity& activity = network.activity(point.activity);
  if (const auto constant = constant_reaches(activity, point.edge, bound)) return std::max(constant->first, constant->second);
  Time greatest = -far;
  const Time first = bounds.earliest(point.activity), last = bounds.latest(point.activity);
  each_stretch(activity, first, last, stride(first, last, stretches), [&](Time begin, Time end, bool shared, bool whole) {
    const Time reach = value_of(bound, value_of(activity, point.edge, end, shared)) - begin;
    if (whole) greatest = std::max(greatest, reach);
    return reach > greatest;
  });
  return greatest;
}

std::vector<Time> shortest_runs(const Network& network, const Bounds& bounds) {
  std::vector<Time> result;
  for (int a = 0; a < network.size; ++a) {
    const Time least = network.certain(a) ? least_reach(network, bounds, {a, Edge::end}, nullptr, every_start) : 0;
    result.push_back(least == far ? 0 : least);
  }
  return result;
}

DistanceMatrix::DistanceMatrix(const Network& network, const Bounds& bounds)
    : size_(solver::at(network.size)), paths_(size_ * size_, unrelated) {
  const auto required = [&](int a) { return network.certain(a); };
  for (int a = 0; a < network.size; ++a) raise(a, a, 0);
  for (const MinimumLag& lag : network.problem.minimum_lags) {
    const int from = lag.from.activity;
    if (required(from) && required(lag.to)) raise(from, lag.to, std::min(far, least_reach(network, bounds, lag.from, lag.bound, many)));
  }
  for (std::size_t i = 0; i < network.force.size(); ++i) {
    const MaximumLag& lag = network.problem.maximum_lags[i];
    const int from = lag.from.activity;
    if (network.force[i] != Force::hard || !required(from) || !required(lag.to)) continue;
    const Time most = greatest_reach(network, bounds, lag.from, lag.bound, many);
    if (most < far) raise(lag.to, from, std::max(-far, -most));
  }
  close();
}

// Floyd and Warshall.
void DistanceMatrix::close() {
  for (std::size_t k = 0; k < size_; ++k) {
    for (std::size_t a = 0; a < size_; ++a) {
      const Time first = paths_[a * size_ + k];
      if (first == unrelated || a == k) continue;
      Time* const from_a = &paths_[a * size_];
      const Time* const from_k = &paths_[k * size_];
      for (std::size_t b = 0; b < size_; ++b) {
        const Time through = from_k[b] == unrelated ? unrelated : std::min(far, first + from_k[b]);
        from_a[b] = std::max(from_a[b], through);
      }
    }
  }
  for (std::size_t a = 0; a < size_; ++a) consistent_ = consistent_ && paths_[a * size_ + a] <= 0;
}

bool DistanceMatrix::add(int a, int b, Time least) {
  if (least <= at(a, b)) return true;
  if (at(b, a) != unrelated && at(b, a) + least > 0) return consistent_ = false;
  for (int i = 0; i < static_cast<int>(size_); ++i) {
    if (at(i, a) == unrelated) continue;
    const Time first = at(i, a) + least;
    for (int j = 0; j < static_cast<int>(size_); ++j) {
      if (at(b, j) != unrelated) raise(i, j, std::min(far, first + at(b, j)));
    }
  }
  return true;
}

}  // namespace coatday::solver
