#pragma once
// A scheduling problem as pure mathematics: start times under minimum and maximum lags, resources and calendars. It knows no paint, no
// wood and no date. Tags are the caller's words for its constraints: what explains a contradiction is a set of tags.

#include <optional>
#include <string>
#include <vector>

#include "solver/base/monotone_function.h"

namespace coatday::solver {

using Tag = int;  ///< the caller's number for a requirement

struct Interval {  ///< [begin, end)
  Time begin = 0;
  Time end = 0;
};
using Intervals = std::vector<Interval>;  ///< sorted, disjoint, not touching

/// So much at all times (no activity may demand more, not even one of no length): people, places to dry. Working hours are in the activities' starts.
/// One laid out in equal segments is there for holds: what one takes of it is a stretch of one segment, or several whole ones (the amount
/// rounded up), the same all the time.
struct Resource {
  int capacity = 0;
  Tag tag = -1;
  int segment = 0;  ///< length of one, divides the capacity; 0: only the total counts
};

struct Demand {
  int resource = 0;
  int amount = 0;
};

/// Starts at a time in `starts` and ends at end(start) >= start, by the horizon. Demands hold during [start, end).
/// With a family and an `end_shared` it may run shared: from a start in `starts_shared` until end_shared(start), when another present
/// activity of its family ends in [start - sharing_gap, start]. It may run unshared even then.
struct Activity {
  Intervals starts;
  Function end;  ///< null: ends when it starts
  std::vector<Demand> demands;
  Tag tag = -1;
  int family = -1;             ///< activities of one family may share a set-up
  Function end_shared;         ///< the end without set-up; null: never shared
  Intervals starts_shared;     ///< allowed starts when shared; empty: as `starts`
  bool optional = false;       ///< takes part only, and then always, as the remedy of a missed window
  std::optional<Time> kept{};  ///< its start in an earlier schedule, to stay there where nothing is lost by it
};

enum class Edge { start, end };
struct Point {
  int activity = 0;
  Edge edge = Edge::start;
};

/// start(to) >= bound(p), where p is the start or the end of from.activity (which is not `to`) by from.edge; a null bound is p itself.
/// Holds where both take part.
struct MinimumLag {
  Point from;
  int to = 0;
  Function bound;
  Tag tag = -1;
};

/// start(to) <= bound(p), p as above. Holds where both take part. With a remedy, missing it makes that optional activity take part instead
/// (its own lags order it between the two). A remedy that is not optional takes part anyway: such a lag binds nothing.
struct MaximumLag {
  Point from;
  int to = 0;
  Function bound;
  Tag tag = -1;
  std::optional<int> remedy;
};

/// From start(first) until the earliest of the starts of `until` and limit(point `limit_from`), one of the choices is held, the same one throughout.
/// Nothing is held where `first` takes no part. An `until` or a `limit_from` that takes no part sets no end; with no end at all it is held
/// for ever; an end before start(first) holds nothing. A choice must be within its resource's capacity even if it is held for no time.
struct Hold {
  int first = 0;
  std::vector<int> until;  ///< none: until the limit alone
  Point limit_from;
  Function limit;               ///< null: until one of `until` starts
  std::vector<Demand> choices;  ///< any one of these
  Tag tag = -1;
};

/// An interval that an activity carries with it: [start - lead, tail(start)). Where it is empty it overlaps nothing.
struct Span {
  int activity = 0;
  Time lead = 0;  ///< begins so long before the start
  Function tail;  ///< of the activity's start; null: until the activity's end
};

/// No span of the left may overlap a span of the right: dust and wet film, sparks and vapour. Two of one side may overlap, and a span
/// never excludes another of the same activity.
struct Exclusion {
  std::vector<Span> left, right;
  Tag tag = -1;
};

/// Just one of the branches is taken: its activities take part, those that stand only in other branches do not. No activity stands in two alternatives,
/// and none in an alternative is optional, a remedy or of a goal. A branch may be empty.
struct Alternative {
  std::vector<std::vector<int>> branches;
  Tag tag = -1;
};

/// Lateness is weight * max(0, start(activity) - due). A due time is never a limit: a hard one is a maximum lag from a fixed activity.
struct Goal {
  int activity = 0;
  Time due = unreachable;
  double weight = 1;
  Tag tag = -1;
};

struct Problem {
  Time origin = 0;   ///< nothing starts before it but what `starts` allows explicitly (so it limits no schedule)
  Time horizon = 0;  ///< nothing may end after
  Time sharing_gap = 0;
  std::vector<Resource> resources;
  std::vector<Activity> activities;
  std::vector<MinimumLag> minimum_lags;
  std::vector<MaximumLag> maximum_lags;
  std::vector<Hold> holds;
  std::vector<Exclusion> exclusions;
  std::vector<Alternative> alternatives;
  std::vector<Goal> goals;
};

struct Assignment {
  Time start = 0;
  Time end = 0;
  bool present = true;  ///< false: it takes no part, as it is optional or another branch is taken
  bool shared = false;  ///< ran without set-up
};

/// Part of a resource that is laid out: [begin, begin + length) of each of some segments.
struct Stretch {
  std::vector<int> segments;  ///< from 0; several only where they are taken whole
  int begin = 0;
  int length = 0;
};

struct Schedule {
  std::vector<Assignment> activities;
  std::vector<int> hold_choice;       ///< per hold, an index into its choices; -1 where its activity takes no part
  std::vector<Stretch> hold_stretch;  ///< per hold; of no segments where nothing is laid out, or for no time. Empty: not laid out yet
};

}  // namespace coatday::solver
