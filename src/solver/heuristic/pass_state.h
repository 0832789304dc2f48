#pragma once
// What a pass knows and has placed so far. Pass places activities in it, Repair takes them out again.

#include "solver/base/bounds.h"
#include "solver/heuristic/earliest_fit.h"
#include "solver/heuristic/pass_settings.h"

namespace coatday::solver {

/// A place for an activity, and what the activity would break there.
struct Proposal {
  std::optional<Candidate> candidate;
  std::vector<int> missed;     ///< maximum lags that it misses and must keep
  std::vector<int> windows;    ///< maximum lags that it misses and that have a remedy
  std::vector<int> overtaken;  ///< minimum lags to placed activities that would start too early
  std::vector<int> outrun;     ///< maximum lags to placed activities that would start too late
  bool late = false;           ///< it starts after the activity's latest start
  NoRoom why;                  ///< if there is no candidate
  [[nodiscard]] bool sound() const { return candidate && missed.empty() && overtaken.empty() && outrun.empty() && !late; }
};

struct PassState {
  PassState(const Network&, const Bounds&, const PassSettings&);
  PassState(const PassState&) = delete;
  PassState& operator=(const PassState&) = delete;

  const Network& network;
  const Bounds& bounds;
  const PassSettings& settings;
  PartialSchedule partial;
  Lookahead lookahead;
  EarliestFit fit;
  std::vector<int> unplaced_predecessors;  ///< by activity: how many
  std::vector<char> remedy_used;           ///< by maximum lag
  std::vector<int> firmness;               ///< by maximum lag: what is left of PassSettings::firmness

  /// The earliest start that the lags from placed activities allow.
  [[nodiscard]] Time lower_bound(int activity, bool shared) const;
  [[nodiscard]] bool fixed(int activity) const { return bounds.earliest(activity) == bounds.latest(activity); }
  /// Whether a goes before b, by their keys.
  [[nodiscard]] bool before(int a, int b) const;
};

}  // namespace coatday::solver
