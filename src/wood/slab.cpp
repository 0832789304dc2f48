#include "wood/slab.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>

namespace coatday::wood {
namespace {

const double diagonal = 1 - std::sqrt(0.5);  // makes the scheme L-stable and of second order
constexpr double most_growth = 5, least_growth = 0.2, caution = 0.9;
constexpr int most_steps = 1'000'000;  // in one call: conditions that need more are no wood

}  // namespace

Slab::Slab(Metres thickness, MoistureContent initial, int cells)
    : thickness_(thickness), moisture_(static_cast<std::size_t>(cells), initial.value()) {
  if (!(thickness > Metres(0)) || cells < 2) throw std::invalid_argument("a slab needs a thickness and two cells");
  for (auto* scratch : {&first_, &second_, &stage_, &pivot_}) scratch->resize(moisture_.size());
}

MoistureContent Slab::mean() const {
  return MoistureContent(std::accumulate(moisture_.begin(), moisture_.end(), 0.0) / static_cast<double>(moisture_.size()));
}

Slab::Exchange Slab::exchange(const SlabConditions& conditions) const {
  const double cell = thickness_.value() / static_cast<double>(moisture_.size()), diffusivity = conditions.diffusivity.value();
  const auto open = [&](const FaceCondition& side) { return 1 / (cell * (side.film.value() + cell / (2 * diffusivity))); };
  return {diffusivity / (cell * cell), open(conditions.back), open(conditions.face), conditions.back.equilibrium.value(),
          conditions.face.equilibrium.value()};
}

// From both ends to the middle at once: two chains that do not wait for each other take half the time of one.
void Slab::factorise(const Exchange& x, double weight) {
  const std::size_t n = pivot_.size(), half = n / 2;
  const double side = weight * x.between;
  if (side == side_ && weight * x.back == back_ && weight * x.face == face_) return;
  side_ = side;
  back_ = weight * x.back;
  face_ = weight * x.face;
  const double own = 1 + 2 * side, squared = side * side;
  double low = pivot_.front() = 1 / (1 + side + back_), high = pivot_.back() = 1 / (1 + side + face_);
  for (std::size_t i = 1; i < half; ++i) {
    pivot_[i] = low = 1 / (own - squared * low);
    pivot_[n - 1 - i] = high = 1 / (own - squared * high);
  }
  if (n % 2 == 1) pivot_[half] = 1 / (own - squared * high);
}

void Slab::solve_rate(const Exchange& x, const std::vector<double>& from, std::vector<double>& rate) const {
  const std::size_t n = from.size(), half = n / 2;
  const double side = side_, between = x.between;
  const auto above = [&from, between](std::size_t i) { return between * (from[i + 1] - from[i]); };  // what flows into cell i from the next
  double low = rate[0] = (x.back * (x.at_back - from[0]) + above(0)) * pivot_[0];
  double high = rate[n - 1] = (x.face * (x.at_face - from[n - 1]) - above(n - 2)) * pivot_[n - 1];
  for (std::size_t i = 1, j = n - 2; i < half; ++i, --j) {
    rate[i] = low = (above(i) - above(i - 1) + side * low) * pivot_[i];
    rate[j] = high = (above(j) - above(j - 1) + side * high) * pivot_[j];
  }
  if (n % 2 == 1) high = (above(half) - above(half - 1) + side * high) * pivot_[half];
  const double below_middle = pivot_[half - 1], at_middle = pivot_[half], both = 1 - side * side * below_middle * at_middle;
  rate[half - 1] = (low + side * below_middle * high) / both;
  rate[half] = (high + side * at_middle * low) / both;
  if (n % 2 == 1) rate[half + 1] += side * pivot_[half + 1] * rate[half];
  low = rate[half - 1];
  high = rate[n - half];
  for (std::size_t i = half - 1, j = n - half; i-- > 0;) {
    ++j;
    rate[i] = low = rate[i] + side * pivot_[i] * low;
    rate[j] = high = rate[j] + side * pivot_[j] * high;
  }
}

double Slab::inflow(const Exchange& x, const std::vector<double>& at) const {
  return (x.back * (x.at_back - at.front()) + x.face * (x.at_face - at.back())) / static_cast<double>(at.size());
}

Slab::Trial Slab::attempt(const Exchange& x, double step) {
  const std::size_t n = moisture_.size();
  factorise(x, diagonal * step);
  solve_rate(x, moisture_, first_);
  for (std::size_t i = 0; i < n; ++i) stage_[i] = moisture_[i] + (1 - diagonal) * step * first_[i];
  solve_rate(x, stage_, second_);
  double error = 0;
  for (std::size_t i = 0; i < n; ++i) {
    error = std::max(error, diagonal * step * std::abs(second_[i] - first_[i]));
    stage_[i] += diagonal * step * second_[i];  // the scheme's last stage is its result
  }
  const double first_back = moisture_.front() + diagonal * step * first_.front();
  const double first_face = moisture_.back() + diagonal * step * first_.back();
  const double at_first = (x.back * (x.at_back - first_back) + x.face * (x.at_face - first_face)) / static_cast<double>(n);
  return {error, step * ((1 - diagonal) * at_first + diagonal * inflow(x, stage_))};
}

MoistureContent Slab::advance(const SlabConditions& conditions, Seconds time, MoistureContent tolerance) {
  if (!(conditions.diffusivity > Diffusivity(0)) || !(time >= Seconds(0)))
    throw std::invalid_argument("a slab moves on in time, by diffusion");
  const Exchange x = exchange(conditions);
  double left = time.value(), gained = 0;
  if (step_ <= 0) step_ = left;
  for (int taken = 0; left > 0; ++taken) {
    if (taken == most_steps) throw std::runtime_error("moisture through the thickness: too many steps");
    const double step = step_ > 0.999 * left ? left : step_;
    const Trial trial = attempt(x, step);
    step_ = step * std::clamp(caution * std::sqrt(tolerance.value() / trial.error), least_growth, most_growth);
    if (trial.error > tolerance.value()) continue;
    moisture_.swap(stage_);
    gained += trial.gained;
    left -= step;
    ++steps_;
  }
  return MoistureContent(gained);
}

}  // namespace coatday::wood
