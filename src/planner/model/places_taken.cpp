#include "planner/model/places_taken.h"

#include <algorithm>

namespace coatday::planner {

PlacesTaken::PlacesTaken(const Loads& loads, Metres gap) {
  for (const SharedPlace& shared : loads.places) {
    steps_.push_back(steps_of(shared.place, gap));
    free_.emplace_back(static_cast<std::size_t>(shared.place.count), steps_.back());
  }
}

bool PlacesTaken::take(const Load& load) {
  return std::any_of(load.choices.begin(), load.choices.end(), [this](const PlaceChoice& choice) { return take(choice); });
}

bool PlacesTaken::take(const PlaceChoice& choice) {
  std::vector<int>& places = free_[choice.place];
  const int whole = steps_[choice.place];
  const int each = std::min(choice.steps, whole);
  auto wanted = static_cast<std::ptrdiff_t>((choice.steps + whole - 1) / whole);
  const auto takes = [each](int left) { return left >= each; };
  if (std::count_if(places.begin(), places.end(), takes) < wanted) return false;
  for (int& left : places) {
    if (wanted == 0) break;
    if (!takes(left)) continue;
    left -= each;
    --wanted;
  }
  return true;
}

}  // namespace coatday::planner
