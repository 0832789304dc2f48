#include "planner/result/place_assignment.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace coatday::planner {

namespace {

using solver::Time;

/// Steps of one place that are held.
struct Stretch {
  int begin = 0, end = 0;
  Time until = 0;
};

class PlaceAssigner {
 public:
  PlaceAssigner(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule)
      : loads_(loads), graph_(graph), model_(model), schedule_(schedule) {
    for (const SharedPlace& shared : loads.places) {
      steps_.push_back(steps_of(shared.place, gap));
      held_.emplace_back(static_cast<std::size_t>(shared.place.count));
    }
  }

  std::optional<std::vector<PlaceAssignment>> run() {
    std::vector<PlaceAssignment> all = wanted();
    for (PlaceAssignment& assignment : all) {
      if (!place(assignment)) return std::nullopt;
    }
    return all;
  }

  /// Where the schedule has them; single steps (hooks, whole places) as they come.
  std::vector<PlaceAssignment> as_laid_out() {
    std::vector<PlaceAssignment> all = wanted();
    for (PlaceAssignment& assignment : all) {
      if (const solver::Stretch& stretch = schedule_.hold_stretch[assignment.hold]; !stretch.segments.empty()) {
        assignment.numbers = stretch.segments;
        assignment.begin = stretch.begin;
      } else {
        place(assignment);
      }
    }
    return all;
  }

 private:
  [[nodiscard]] const solver::Assignment& activity(int a) const { return schedule_.activities[static_cast<std::size_t>(a)]; }

  [[nodiscard]] std::vector<PlaceAssignment> wanted() const {
    std::vector<PlaceAssignment> result;
    for (std::size_t h = 0; h < model_.place_hold_of.size(); ++h) {
      if (schedule_.hold_choice[h] < 0) continue;
      const solver::Hold& hold = model_.problem.holds[h];
      Time until = hold.limit->at(activity(hold.first).end);
      for (const int taken : hold.until) {
        if (activity(taken).present) until = std::min(until, activity(taken).start);
      }
      const Time from = activity(hold.first).start;
      if (until > from)
        result.push_back({model_.place_hold_of[h], h, static_cast<std::size_t>(schedule_.hold_choice[h]), {}, 0, from, until});
    }
    std::stable_sort(result.begin(), result.end(), [](const PlaceAssignment& a, const PlaceAssignment& b) { return a.from < b.from; });
    return result;
  }

  bool place(PlaceAssignment& assignment) {
    const std::size_t load = graph_.place_holds[assignment.place_hold].load;
    const PlaceChoice& choice = loads_.loads[load].choices[assignment.choice];
    for (auto& stretches : held_[choice.place]) std::erase_if(stretches, [&](const Stretch& s) { return s.until <= assignment.from; });
    const int whole = steps_[choice.place];
    const auto before = last_.find({load, choice.place});
    const bool back = before != last_.end() && free(choice.place, before->second.numbers, before->second.begin, choice.steps);
    if (back) {
      assignment.numbers = before->second.numbers;
      assignment.begin = before->second.begin;
    } else if (choice.steps >= whole) {
      take_whole(choice, assignment);
    } else {
      take_stretch(choice, assignment);
    }
    if (assignment.numbers.empty()) return false;
    const int length = std::min(choice.steps, whole);
    for (const int n : assignment.numbers) {
      held_[choice.place][static_cast<std::size_t>(n)].push_back({assignment.begin, assignment.begin + length, assignment.until});
    }
    last_[{load, choice.place}] = assignment;
    return true;
  }

  [[nodiscard]] bool free(std::size_t place, const std::vector<int>& numbers, int begin, int steps) const {
    return std::all_of(numbers.begin(), numbers.end(), [&](int n) {
      const std::vector<Stretch>& held = held_[place][static_cast<std::size_t>(n)];
      return std::none_of(held.begin(), held.end(), [&](const Stretch& s) { return s.begin < begin + steps && begin < s.end; });
    });
  }

  void take_whole(const PlaceChoice& choice, PlaceAssignment& assignment) const {
    const std::vector<std::vector<Stretch>>& places = held_[choice.place];
    for (std::size_t n = 0; n < places.size() && assignment.numbers.size() < choice.packing.places.size(); ++n) {
      if (places[n].empty()) assignment.numbers.push_back(static_cast<int>(n));
    }
    if (assignment.numbers.size() < choice.packing.places.size()) assignment.numbers.clear();
  }

  /// In the smallest gap that takes it, so that whole places stay free.
  void take_stretch(const PlaceChoice& choice, PlaceAssignment& assignment) {
    int tightest = steps_[choice.place] + 1;
    for (std::size_t n = 0; n < held_[choice.place].size(); ++n) {
      std::vector<Stretch>& held = held_[choice.place][n];
      std::sort(held.begin(), held.end(), [](const Stretch& a, const Stretch& b) { return a.begin < b.begin; });
      int begin = 0;
      for (std::size_t i = 0; i <= held.size(); ++i) {
        const int gap = (i < held.size() ? held[i].begin : steps_[choice.place]) - begin;
        if (gap >= choice.steps && gap < tightest) {
          tightest = gap;
          assignment.numbers = {static_cast<int>(n)};
          assignment.begin = begin;
        }
        if (i < held.size()) begin = std::max(begin, held[i].end);
      }
    }
  }

  const Loads& loads_;
  const TaskGraph& graph_;
  const Model& model_;
  const solver::Schedule& schedule_;
  std::vector<int> steps_;                               // by kind of place
  std::vector<std::vector<std::vector<Stretch>>> held_;  // by kind of place and number
  std::map<std::pair<std::size_t, std::size_t>, PlaceAssignment> last_;
};

}  // namespace

std::optional<std::vector<PlaceAssignment>> assign_places(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                                          const solver::Schedule& schedule) {
  return PlaceAssigner(gap, loads, graph, model, schedule).run();
}

std::vector<PlaceAssignment> places_as_laid_out(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                                const solver::Schedule& schedule) {
  return PlaceAssigner(gap, loads, graph, model, schedule).as_laid_out();
}

}  // namespace coatday::planner
