#include "planner/result/in_the_way.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

namespace coatday::planner {

namespace {

using solver::Blocker;
using solver::Time;
using Kind = Requirement::Kind;

std::optional<Kind> kind_of(const Blocker& blocker, const Model& model) {
  if (blocker.tag < 0) return std::nullopt;
  return model.requirements[static_cast<std::size_t>(blocker.tag)].kind;
}

int rank(const Blocker& blocker, const Model& model) {
  const auto kind = kind_of(blocker, model);
  if (kind == Kind::place) return 0;
  if (kind == Kind::people) return 1;
  if (blocker.rule == Blocker::Rule::limit) return 3;
  return blocker.rule == Blocker::Rule::set_up ? 4 : 2;
}

}  // namespace

std::string name_with_load(const job::Event& event) {
  return event.load_name.empty() ? event.name : fmt::format("{} ({})", event.name, event.load_name);
}

const Blocker* first_of(const std::vector<Blocker>& blockers, const Model& model) {
  const auto first = std::min_element(blockers.begin(), blockers.end(),
                                      [&model](const Blocker& a, const Blocker& b) { return rank(a, model) < rank(b, model); });
  return first == blockers.end() ? nullptr : &*first;
}

InTheWay::InTheWay(const job::Plan& plan, const TaskGraph& graph, const Model& model, solver::Blockers& blockers, const Grid& grid)
    : plan_(plan), graph_(graph), model_(model), blockers_(blockers), grid_(grid) {
  for (const job::Event& event : plan.events) event_by_id_[event.id] = &event;
}

std::optional<Obstacle> InTheWay::at(std::size_t task, Time start) {
  const std::vector<Blocker> failing = blockers_.failing(static_cast<int>(task), start);
  const Blocker* blocker = first_of(failing, model_);
  if (blocker == nullptr) return std::nullopt;
  if (blocker->rule == Blocker::Rule::limit) return has_to_follow(task, start, *blocker);
  return Obstacle{words(task, start, *blocker), is_scarce(*blocker)};
}

bool InTheWay::is_scarce(const Blocker& blocker) const {
  if (blocker.rule == Blocker::Rule::set_up || blocker.rule == Blocker::Rule::limit) return false;
  switch (*kind_of(blocker, model_)) {
    case Kind::place:
    case Kind::set_aside:
    case Kind::people:
    case Kind::spray_gun:
      return true;
    default:
      return false;
  }
}

std::string InTheWay::words(std::size_t task, Time start, const Blocker& blocker) const {
  if (blocker.rule == Blocker::Rule::set_up) return "from one set-up with " + names(blocker);
  if (blocker.rule == Blocker::Rule::limit) return fmt::format("{} would have to follow by {}", names(blocker), when(blocker.until));
  switch (*kind_of(blocker, model_)) {
    case Kind::place:
      return no_place(blocker, start);
    case Kind::set_aside:
      return in_use("no room is left to stand parts aside", blocker, start);
    case Kind::people:
      return no_hands(task, blocker, start);
    case Kind::spray_gun:
      return in_use("the spray gun is in use", blocker, start);
    case Kind::airflow:
      return in_use("the exhaust carries off other vapour", blocker, start);
    default:
      return kept_off(task, blocker, start);
  }
}

/// What comes later is in the way where there is too little time before it.
std::string InTheWay::in_use(const char* what, const Blocker& blocker, Time start) const {
  if (blocker.from > start) return fmt::format("too little time is left before {} at {}", names(blocker), when(blocker.from));
  return fmt::format("{}: {} until {}", what, names(blocker), when(blocker.until));
}

std::string InTheWay::no_place(const Blocker& blocker, Time start) const {
  const Requirement& place = model_.requirements[static_cast<std::size_t>(blocker.tag)];
  std::set<std::string> loads;
  for (const int activity : blocker.activities) loads.insert(event(activity) == nullptr ? "other work" : event(activity)->load_name);
  std::string who;
  for (const std::string& load : loads) who += (who.empty() ? "" : load == *loads.rbegin() ? " and " : ", ") + load;
  const char* dry = loads.size() == 1 ? "dries" : "dry";
  const std::string& kind = plan_.shop.places[place.index].name;
  if (blocker.from > start) return fmt::format("no {} free for so long: {} {} there from {}", kind, who, dry, when(blocker.from));
  return fmt::format("no {} free: {} {} there until {}", kind, who, dry, when(blocker.until));
}

std::string InTheWay::no_hands(std::size_t task, const Blocker& blocker, Time start) const {
  const int people = plan_.shop.people, wanted = graph_.tasks[task].people;
  const std::string busy = wanted > 1    ? fmt::format("it needs {} people", wanted)
                           : people == 1 ? "nobody is free"
                           : people == 2 ? "both people are at work"
                                         : fmt::format("all {} people are at work", people);
  return in_use(busy.c_str(), blocker, start);
}

std::string InTheWay::kept_off(std::size_t t, const Blocker& blocker, Time start) const {
  const Task& task = graph_.tasks[t];
  if (kind_of(blocker, model_) == Kind::vapour) return vapour(task, blocker);
  if (task.product == nullptr) {
    if (blocker.from > start) return fmt::format("its dust would settle on {} at {}", names(blocker), when(blocker.from));
    return fmt::format("{} {} wet until {}, and dust would spoil that", names(blocker), blocker.activities.size() == 1 ? "is" : "are",
                       when(blocker.until));
  }
  if (blocker.from > start) return fmt::format("it would still be wet when {} makes dust at {}", names(blocker), when(blocker.from));
  return fmt::format("the dust of {} settles until {}", names(blocker), when(blocker.until));
}

/// The times hold the span that the shop keeps clear.
std::string InTheWay::vapour(const Task& task, const Blocker& blocker) const {
  const std::string clear = format_span(plan_.shop.hot_work_clear);
  if (task.product == nullptr)
    return fmt::format("there is vapour of {}; hot work keeps off until {}, {} after it", names(blocker), when(blocker.until), clear);
  return fmt::format("{} makes sparks; with {} of fire watch it is over at {}", names(blocker), clear, when(blocker.until));
}

Obstacle InTheWay::has_to_follow(std::size_t task, Time start, const Blocker& limit) {
  const solver::Follower follower = blockers_.follower(static_cast<int>(task), start, limit);
  const std::string name = names(limit), own = name_with_load(*event(static_cast<int>(task)));
  const std::string by = fmt::format("{} would have to follow by {}", name == own ? "its second side" : name, when(limit.until));
  if (!follower.last_open) return {by + ", and no working hours suit it by then", true};
  const Blocker* blocker = first_of(follower.blockers, model_);
  if (blocker == nullptr) return {by, false};  // what would keep that from being done is not known
  return {by + ", and " + words(static_cast<std::size_t>(limit.activities.front()), *follower.last_open, *blocker), is_scarce(*blocker)};
}

const job::Event* InTheWay::event(int activity) const {
  const auto task = static_cast<std::size_t>(activity);
  if (task >= graph_.tasks.size()) return nullptr;
  const auto found = event_by_id_.find(graph_.tasks[task].id);
  return found == event_by_id_.end() ? nullptr : found->second;
}

/// Of vapour that is there already no task speaks.
std::string InTheWay::name(int activity) const {
  return event(activity) == nullptr ? "what is done already" : name_with_load(*event(activity));
}

std::string InTheWay::names(const Blocker& blocker) const {
  const std::size_t count = blocker.activities.size();
  const std::string first = name(blocker.activities.front());
  if (count == 1) return first;
  return count == 2 ? first + " and " + name(blocker.activities.back()) : fmt::format("{} and {} more", first, count - 1);
}

std::string InTheWay::when(Time t) const { return day_and_time(plan_.shop.zone.to_local(grid_.instant(t))); }

}  // namespace coatday::planner
