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

class Quay {
 public:
  Quay(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model, const solver::Schedule& schedule)
      : loads_(loads), graph_(graph), model_(model), schedule_(schedule) {
    for (const SharedPlace& shared : loads.places) {
      steps_.push_back(steps_of(shared.place, gap));
      held_.emplace_back(static_cast<std::size_t>(shared.place.count));
    }
  }

  std::optional<std::vector<Berth>> run() {
    std::vector<Berth> all = wanted();
    for (Berth& berth : all) {
      if (!moor(berth)) return std::nullopt;
    }
    return all;
  }

  /// Where the schedule has them; single steps (hooks, whole places) as they come.
  std::vector<Berth> as_laid_out() {
    std::vector<Berth> all = wanted();
    for (Berth& berth : all) {
      if (const solver::Stretch& stretch = schedule_.hold_stretch[berth.hold]; !stretch.segments.empty()) {
        berth.numbers = stretch.segments;
        berth.begin = stretch.begin;
      } else {
        moor(berth);
      }
    }
    return all;
  }

 private:
  [[nodiscard]] const solver::Assignment& activity(int a) const { return schedule_.activities[static_cast<std::size_t>(a)]; }

  [[nodiscard]] std::vector<Berth> wanted() const {
    std::vector<Berth> result;
    for (std::size_t h = 0; h < model_.keep_of_hold.size(); ++h) {
      if (schedule_.hold_choice[h] < 0) continue;
      const solver::Hold& hold = model_.problem.holds[h];
      Time until = hold.limit->at(activity(hold.first).end);
      for (const int taken : hold.until) {
        if (activity(taken).present) until = std::min(until, activity(taken).start);
      }
      const Time from = activity(hold.first).start;
      if (until > from)
        result.push_back({model_.keep_of_hold[h], h, static_cast<std::size_t>(schedule_.hold_choice[h]), {}, 0, from, until});
    }
    std::stable_sort(result.begin(), result.end(), [](const Berth& a, const Berth& b) { return a.from < b.from; });
    return result;
  }

  bool moor(Berth& berth) {
    const std::size_t load = graph_.keeps[berth.keep].load;
    const PlaceChoice& choice = loads_.loads[load].choices[berth.choice];
    for (auto& stretches : held_[choice.place]) std::erase_if(stretches, [&](const Stretch& s) { return s.until <= berth.from; });
    const int whole = steps_[choice.place];
    const auto before = last_.find({load, choice.place});
    const bool back = before != last_.end() && free(choice.place, before->second.numbers, before->second.begin, choice.steps);
    if (back) {
      berth.numbers = before->second.numbers;
      berth.begin = before->second.begin;
    } else if (choice.steps >= whole) {
      take_whole(choice, berth);
    } else {
      take_stretch(choice, berth);
    }
    if (berth.numbers.empty()) return false;
    const int length = std::min(choice.steps, whole);
    for (const int n : berth.numbers) {
      held_[choice.place][static_cast<std::size_t>(n)].push_back({berth.begin, berth.begin + length, berth.until});
    }
    last_[{load, choice.place}] = berth;
    return true;
  }

  [[nodiscard]] bool free(std::size_t place, const std::vector<int>& numbers, int begin, int steps) const {
    return std::all_of(numbers.begin(), numbers.end(), [&](int n) {
      const std::vector<Stretch>& held = held_[place][static_cast<std::size_t>(n)];
      return std::none_of(held.begin(), held.end(), [&](const Stretch& s) { return s.begin < begin + steps && begin < s.end; });
    });
  }

  void take_whole(const PlaceChoice& choice, Berth& berth) const {
    const std::vector<std::vector<Stretch>>& places = held_[choice.place];
    for (std::size_t n = 0; n < places.size() && berth.numbers.size() < choice.packing.places.size(); ++n) {
      if (places[n].empty()) berth.numbers.push_back(static_cast<int>(n));
    }
    if (berth.numbers.size() < choice.packing.places.size()) berth.numbers.clear();
  }

  /// In the smallest gap that takes it, so that whole places stay free.
  void take_stretch(const PlaceChoice& choice, Berth& berth) {
    int tightest = steps_[choice.place] + 1;
    for (std::size_t n = 0; n < held_[choice.place].size(); ++n) {
      std::vector<Stretch>& held = held_[choice.place][n];
      std::sort(held.begin(), held.end(), [](const Stretch& a, const Stretch& b) { return a.begin < b.begin; });
      int begin = 0;
      for (std::size_t i = 0; i <= held.size(); ++i) {
        const int gap = (i < held.size() ? held[i].begin : steps_[choice.place]) - begin;
        if (gap >= choice.steps && gap < tightest) {
          tightest = gap;
          berth.numbers = {static_cast<int>(n)};
          berth.begin = begin;
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
  std::map<std::pair<std::size_t, std::size_t>, Berth> last_;
};

}  // namespace

std::optional<std::vector<Berth>> berths(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                         const solver::Schedule& schedule) {
  return Quay(gap, loads, graph, model, schedule).run();
}

std::vector<Berth> berths_as_laid_out(Metres gap, const Loads& loads, const TaskGraph& graph, const Model& model,
                                      const solver::Schedule& schedule) {
  return Quay(gap, loads, graph, model, schedule).as_laid_out();
}

}  // namespace coatday::planner
