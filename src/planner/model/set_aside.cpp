#include "planner/model/set_aside.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

#include "job/stages.h"

namespace coatday::planner {

namespace {

using solver::Time;

constexpr int without_limit = 1'000'000;

int most_on_a_place(const PlaceChoice& choice) {
  int most = 1;
  for (const std::vector<shop::Laid>& rows : choice.packing.places) {
    most = std::max(most, std::accumulate(rows.begin(), rows.end(), 0, [](int sum, const shop::Laid& row) { return sum + row.count; }));
  }
  return most;
}

/// Parts that all of a kind of place takes, if they are like those of this load.
long room_for(const Load& load, const PlaceChoice& choice, const shop::DryingPlace& place, int steps) {
  if (choice.steps >= steps) return long{most_on_a_place(choice)} * place.count;
  return long{load.items} * place.count * (steps / std::max(1, choice.steps));
}

/// Kinds of places that loads share, and how many parts they take: each kind by the load of which it takes most.
struct Group {
  std::set<std::size_t> places;
  int parts = 0;
};

std::vector<Group> groups_of(const Loads& loads, Metres gap) {
  std::vector<Group> groups;
  std::map<std::size_t, long> most;
  for (const Load& load : loads.loads) {
    Group mine;
    for (const PlaceChoice& choice : load.choices) {
      const shop::DryingPlace& place = loads.places[choice.place].place;
      mine.places.insert(choice.place);
      long& here = most[choice.place];
      here = std::max(here, room_for(load, choice, place, steps_of(place, gap)));
    }
    std::erase_if(groups, [&mine](const Group& other) {
      const bool shares = std::any_of(other.places.begin(), other.places.end(), [&](std::size_t p) { return mine.places.contains(p); });
      if (shares) mine.places.insert(other.places.begin(), other.places.end());
      return shares;
    });
    groups.push_back(std::move(mine));
  }
  for (Group& group : groups) {
    long sum = 0;
    for (const std::size_t place : group.places) sum += most[place];
    group.parts = static_cast<int>(std::min<long>(sum, without_limit));
  }
  return groups;
}

/// The activities of which one does the task.
std::vector<int> activities(const Model& model, std::size_t task) {
  std::vector<int> all{static_cast<int>(task)};
  if (const auto crew = model.by_crew.find(task); crew != model.by_crew.end()) all.push_back(crew->second);
  return all;
}

/// What is done was packed, or worked on, before the plan begins.
bool is_over(const PlaceHold& place, const solver::Function& packed, const TaskGraph& graph, const Grid& grid) {
  if (place.until && graph.tasks[*place.until].done) return true;
  return packed->at(grid.up(graph.tasks[place.coat].done->end)) <= 0;
}

/// A resource for what is coated and not packed yet, with a hold for each coat of some loads.
class Room {
 public:
  Room(Model& model, const Loads& loads, const TaskGraph& graph, Clocks& clocks, const Grid& grid, solver::Tag tag)
      : model_(model), loads_(loads), graph_(graph), clocks_(clocks), grid_(grid), tag_(tag) {}

  /// The resource's index, and the least that it needs.
  std::pair<std::size_t, int> add(int parts, const std::set<std::size_t>* places) {
    const std::size_t room = model_.problem.resources.size();
    int largest = 0, done = 0;
    for (const PlaceHold& place : graph_.place_holds) {
      const Load& load = loads_.loads[place.load];
      if (places != nullptr && (load.choices.empty() || !places->contains(load.choices.front().place))) continue;
      if (!hold(place, static_cast<int>(room), load.items)) continue;
      largest = std::max(largest, load.items);
      if (graph_.tasks[place.coat].done) done += load.items;
    }
    const int least = std::max(largest, done);
    model_.problem.resources.push_back({std::max(least, parts), tag_, 0});
    return {room, least};
  }

 private:
  bool hold(const PlaceHold& place, int room, int items) {
    const Task& coat = graph_.tasks[place.coat];
    solver::Hold hold;
    hold.first = static_cast<int>(place.coat);
    hold.limit_from = {hold.first, solver::Edge::end};
    hold.limit = clocks_.wait_function(grid_, StageOf{job::stackable(*coat.product)}, coat, finish::Estimate::expected, Rounding::up);
    if (coat.done && is_over(place, hold.limit, graph_, grid_)) return false;
    if (place.until) hold.until = activities(model_, *place.until);
    hold.choices = {{room, items}};
    hold.tag = tag_;
    model_.problem.holds.push_back(std::move(hold));
    return true;
  }

  Model& model_;
  const Loads& loads_;
  const TaskGraph& graph_;
  Clocks& clocks_;
  const Grid& grid_;
  solver::Tag tag_;
};

}  // namespace

void add_set_aside(Model& model, const job::Job& job, const Loads& loads, const TaskGraph& graph, Clocks& clocks, const Grid& grid) {
  const int aside = job.shop.set_aside.value_or(0);
  if (aside == 0) return;
  const auto tag = static_cast<solver::Tag>(model.requirements.size());
  model.requirements.push_back({Requirement::Kind::set_aside, 0});
  Room room(model, loads, graph, clocks, grid, tag);
  const std::vector<Group> groups = groups_of(loads, job.shop.gap);
  int all = aside;
  for (const Group& group : groups) {
    all = std::min(all + group.parts, without_limit);
    if (groups.size() > 1) static_cast<void>(room.add(aside + group.parts, &group.places));
  }
  std::tie(model.room.emplace(), model.least_room) = room.add(all, nullptr);
}

bool tighten(Model& model, int parts) {
  if (!model.room || parts < model.least_room) return false;
  int& capacity = model.problem.resources[*model.room].capacity;
  if (parts >= capacity) return false;
  capacity = parts;
  return true;
}

}  // namespace coatday::planner
