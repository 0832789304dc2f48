#pragma once
// A scheduling problem as pure mathematics: start times under minimum and maximum lags, resources and calendars. It knows no paint, no wood
// and no date. A tag is the caller's number for a requirement; a set of tags explains a contradiction.

#include <optional>
#include <string>
#include <vector>

#include "solver/base/presence.h"

namespace coatday::solver {

using Tag = int;  ///< the caller's number for a requirement

/// People, or places to dry. `capacity` is there at all times, and no activity may demand more, not even one that lasts no time. The starts
/// of activities know the working hours.
/// A resource may be laid out in equal segments, for holds. A hold then takes a stretch of one segment, or several whole segments (the
/// amount rounded up), and keeps it for its whole time.
struct Resource {
  int capacity = 0;
  Tag tag = -1;
  int segment = 0;  ///< length of one segment, divides the capacity; 0: only the total counts
};

struct Demand {
  int resource = 0;
  int amount = 0;
};

/// Starts at a time in `starts` and ends at end(start) >= start, by the horizon. Its demands last during [start, end).
/// An activity with a family and an `end_shared` may share a set-up: it then runs from a start in `starts_shared` until end_shared(start).
/// That needs another activity of the family that takes part and ends in [start - sharing_gap, start]. It may run unshared even then.
struct Activity {
  Intervals starts;
  Function end;  ///< null: ends when it starts
  std::vector<Demand> demands;
  Tag tag = -1;
  int family = -1;             ///< activities of one family may share a set-up
  Function end_shared;         ///< the end without set-up; null: never shared
  Intervals starts_shared;     ///< allowed starts when shared; empty: the same as `starts`
  bool optional = false;       ///< takes part exactly when it is the remedy of a missed window
  std::optional<Time> kept{};  ///< its start in an earlier schedule; it should stay there if that costs nothing
};

enum class Edge { start, end };
struct Point {
  int activity = 0;
  Edge edge = Edge::start;
};

/// start(to) >= bound(p), where p is the start or end (`from.edge`) of another activity, from.activity. A null bound is p itself. Binds
/// where both take part.
struct MinimumLag {
  Point from;
  int to = 0;
  Function bound;
  Tag tag = -1;
};

/// start(to) <= bound(p), with p as in MinimumLag. Binds where both take part. A lag with a remedy may be missed: its optional remedy then
/// takes part, and the lags of the remedy order it between the two. A lag binds nothing if its remedy is not optional.
struct MaximumLag {
  Point from;
  int to = 0;
  Function bound;
  Tag tag = -1;
  std::optional<int> remedy;
};

/// One of the choices is held, the same one throughout, from start(first) until the earliest of the starts of `until` and
/// limit(limit_from).
/// Nothing is held if `first` takes no part. An `until` or `limit_from` that takes no part sets no end. A hold without an end lasts for
/// ever, and a hold that ends before start(first) takes nothing. A choice must be within the capacity even if it is held for no time.
struct Hold {
  int first = 0;
  std::vector<int> until;  ///< empty: only the limit ends it
  Point limit_from;
  Function limit;               ///< null: only the starts of `until` end it
  std::vector<Demand> choices;  ///< one of these is held
  Tag tag = -1;
};

/// An interval that moves with its activity: [start - lead, tail(start)). An empty interval overlaps nothing.
struct Span {
  int activity = 0;
  Time lead = 0;  ///< it begins so long before the start
  Function tail;  ///< of the activity's start; null: until the activity's end
};

/// No span of the left may overlap a span of the right: dust and wet film, sparks and vapour. Spans on the same side may overlap. A span
/// never excludes another span of the same activity.
struct Exclusion {
  std::vector<Span> left, right;
  Tag tag = -1;
};

/// A schedule takes exactly one of the branches. Its activities take part; those that are only in other branches do not. No activity is in
/// two alternatives. None in an alternative is optional, a remedy or the activity of a goal. A branch may be empty.
struct Alternative {
  std::vector<std::vector<int>> branches;
  Tag tag = -1;
};

/// A goal that waits its turn beside others: it could be reached at `soonest`, were it alone.
struct Turn {
  Time younger = 0;  ///< it came so much later than the oldest: its waiting begins later
  Time soonest = 0;
  Time day = 1;  ///< the length of one
};

/// Lateness is weight * max(0, start(activity) - due). A due time is never a limit. For a hard limit, use a maximum lag from a fixed
/// activity.
struct Goal {
  int activity = 0;
  Time due = unreachable;
  double weight = 1;
  Tag tag = -1;
  std::optional<Turn> turn{};  ///< solve() finds out `soonest`
  int group = -1;              ///< of goals with one group and no due, only the last counts by the day; -1: a group of its own
};

struct Problem {
  Time origin = 0;   ///< nothing starts earlier unless `starts` allows it, so it limits no schedule
  Time horizon = 0;  ///< nothing may end later
  Time sharing_gap = 0;
  std::vector<Resource> resources;
  std::vector<Activity> activities;
  std::vector<MinimumLag> minimum_lags;
  std::vector<MaximumLag> maximum_lags;
  std::vector<Hold> holds;
  std::vector<Exclusion> exclusions;
  std::vector<Alternative> alternatives;
  std::vector<Goal> goals;
  std::optional<Presence> presence;  ///< null: visits do not matter
};

struct Assignment {
  Time start = 0;
  Time end = 0;
  bool present = true;  ///< false: it takes no part, as it is optional or in another branch
  bool shared = false;  ///< ran without set-up
};

/// A part of a resource that is laid out: [begin, begin + length) of each of its segments.
struct Stretch {
  std::vector<int> segments;  ///< from 0; several only if they are taken whole
  int begin = 0;
  int length = 0;
};

struct Schedule {
  std::vector<Assignment> activities;
  std::vector<int> hold_choice;       ///< by hold: an index into its choices; -1 if its activity takes no part
  std::vector<Stretch> hold_stretch;  ///< by hold; without segments if it needs none. Empty: not laid out yet
};

}  // namespace coatday::solver
