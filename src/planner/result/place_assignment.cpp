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
  PlaceAssigner(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule,
                const std::vector<Time>& packed)
      : loads_(loads), graph_(graph), model_(model), schedule_(schedule), packed_(packed) {
    for (const SharedPlace& shared : loads.places) {
      steps_.push_back(steps_of(shared.place, gap));
      held_.emplace_back(static_cast<std::size_t>(shared.place.count));
    }
    stays_ = held_;
  }

  std::optional<std::vector<PlaceAssignment>> run() {
    std::vector<PlaceAssignment> all = wanted();
    for (PlaceAssignment& assignment : all) {
      if (!place(assignment)) return std::nullopt;
    }
    leave(all);
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
    leave(all);
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
        result.push_back({model_.place_hold_of[h], h, static_cast<std::size_t>(schedule_.hold_choice[h]), {}, 0, from, until, {}});
    }
    std::stable_sort(result.begin(), result.end(), [](const PlaceAssignment& a, const PlaceAssignment& b) { return a.from < b.from; });
    return result;
  }

  [[nodiscard]] const PlaceChoice& choice_of(const PlaceAssignment& assignment) const {
    return loads_.loads[graph_.place_holds[assignment.place_hold].load].choices[assignment.choice];
  }

  bool place(PlaceAssignment& assignment) {
    const PlaceChoice& choice = choice_of(assignment);
    for (Held* all : {&held_, &stays_}) {
      for (auto& stretches : (*all)[choice.place]) std::erase_if(stretches, [&](const Stretch& s) { return s.until <= assignment.from; });
    }
    find_room(choice, assignment);
    if (assignment.numbers.empty()) return false;
    const int end = assignment.begin + std::min(choice.steps, steps_[choice.place]);
    for (const int n : assignment.numbers) {
      held_[choice.place][static_cast<std::size_t>(n)].push_back({assignment.begin, end, assignment.until});
      if (!model_.room) continue;
      std::vector<Stretch>& stays = stays_[choice.place][static_cast<std::size_t>(n)];
      std::erase_if(stays, [&](const Stretch& s) { return s.begin < end && assignment.begin < s.end; });
      stays.push_back({assignment.begin, end, packed_[assignment.place_hold]});
    }
    last_[{graph_.place_holds[assignment.place_hold].load, choice.place}] = assignment;
    return true;
  }

  /// What is dry to handle stays where it lies as long as there is other room.
  void find_room(const PlaceChoice& choice, PlaceAssignment& assignment) {
    const auto before = last_.find({graph_.place_holds[assignment.place_hold].load, choice.place});
    const bool back = before != last_.end() && free(held_, choice, before->second) && free(stays_, choice, before->second);
    if (back) {
      assignment.numbers = before->second.numbers;
      assignment.begin = before->second.begin;
    } else if (choice.steps >= steps_[choice.place]) {
      take_whole(choice, assignment);
    } else {
      std::vector<std::vector<Stretch>> both = held_[choice.place];
      for (std::size_t n = 0; n < both.size(); ++n)
        both[n].insert(both[n].end(), stays_[choice.place][n].begin(), stays_[choice.place][n].end());
      take_stretch(both, choice, assignment);
      if (assignment.numbers.empty()) take_stretch(held_[choice.place], choice, assignment);
    }
  }

  using Held = std::vector<std::vector<std::vector<Stretch>>>;  // by kind of place and number

  static bool free(const Held& held, const PlaceChoice& choice, const PlaceAssignment& at) {
    return std::all_of(at.numbers.begin(), at.numbers.end(), [&](int n) {
      const std::vector<Stretch>& here = held[choice.place][static_cast<std::size_t>(n)];
      return std::none_of(here.begin(), here.end(),
                          [&](const Stretch& s) { return s.begin < at.begin + choice.steps && at.begin < s.end; });
    });
  }

  void take_whole(const PlaceChoice& choice, PlaceAssignment& assignment) const {
    const std::size_t wanted = choice.packing.places.size();
    for (const bool cleared : {false, true}) {
      for (std::size_t n = 0; n < held_[choice.place].size() && assignment.numbers.size() < wanted; ++n) {
        const bool is_free = held_[choice.place][n].empty() && stays_[choice.place][n].empty() != cleared;
        if (is_free) assignment.numbers.push_back(static_cast<int>(n));
      }
    }
    if (assignment.numbers.size() < wanted) assignment.numbers.clear();
    std::sort(assignment.numbers.begin(), assignment.numbers.end());
  }

  /// In the smallest gap that takes it, so that whole places stay free.
  void take_stretch(const std::vector<std::vector<Stretch>>& places, const PlaceChoice& choice, PlaceAssignment& assignment) const {
    int tightest = steps_[choice.place] + 1;
    for (std::size_t n = 0; n < places.size(); ++n) {
      std::vector<Stretch> held = places[n];
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

  /// Who has room enough sets parts aside as soon as they are dry to handle. Else they stay until the place is wanted.
  void leave(std::vector<PlaceAssignment>& all) const {
    for (PlaceAssignment& one : all) {
      for (const int n : one.numbers) one.left.push_back(model_.room ? std::max(one.until, wanted_again(all, one, n)) : one.until);
    }
  }

  /// When the next load comes to its place, or it needs none any more.
  [[nodiscard]] Time wanted_again(const std::vector<PlaceAssignment>& all, const PlaceAssignment& one, int n) const {
    Time first = packed_[one.place_hold];
    const int steps = std::min(choice_of(one).steps, steps_[choice_of(one).place]);
    for (const PlaceAssignment& other : all) {
      const PlaceChoice& choice = choice_of(other);
      const bool later = other.from >= one.until && other.from < first && choice.place == choice_of(one).place;
      if (!later || std::find(other.numbers.begin(), other.numbers.end(), n) == other.numbers.end()) continue;
      const bool over_it = other.begin < one.begin + steps && one.begin < other.begin + std::min(choice.steps, steps_[choice.place]);
      if (over_it) first = other.from;
    }
    return first;
  }

  const Loads& loads_;
  const TaskGraph& graph_;
  const Model& model_;
  const solver::Schedule& schedule_;
  const std::vector<Time>& packed_;
  std::vector<int> steps_;  // by kind of place
  Held held_;               // until dry to handle
  Held stays_;              // until dry to pack, where room to stand aside is short
  std::map<std::pair<std::size_t, std::size_t>, PlaceAssignment> last_;
};

}  // namespace

std::optional<std::vector<PlaceAssignment>> assign_places(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                                          const solver::Schedule& schedule, const std::vector<Time>& packed) {
  return PlaceAssigner(gap, loads, graph, model, schedule, packed).run();
}

std::vector<PlaceAssignment> places_as_laid_out(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                                const solver::Schedule& schedule, const std::vector<Time>& packed) {
  return PlaceAssigner(gap, loads, graph, model, schedule, packed).as_laid_out();
}

}  // namespace coatday::planner
