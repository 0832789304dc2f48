#pragma once
// What is asked of the planner beside the job.

#include <atomic>
#include <functional>
#include <map>
#include <optional>
#include <string>

#include "quantity/time.h"

namespace coatday::job {

/// The events of an earlier plan by their ids, with their starts.
using Starts = std::map<std::string, Instant>;

/// How far the search has come.
struct Progress {
  std::optional<Instant> ready;  ///< of the best plan so far: everything may be delivered
  std::optional<Instant> bound;  ///< nothing can be ready before
  double seconds = 0;
};

struct Request {
  Instant from;        ///< nothing that is not done starts before
  bool insist = true;  ///< where the quick search finds nothing, search on for a plan or the proof that there is none
  double seconds = 0;  ///< to go on searching after the first good plan; the answer then depends on the machine
  long work = 0;       ///< without seconds: conflicts and passes to spend on a small order's quick plan; the same answer on every machine
  std::function<void(const Progress&)> progress{};  ///< called on every better plan or bound
  const std::atomic<bool>* stop = nullptr;          ///< raised: the best plan so far will do
  std::optional<Starts> keep{};                     ///< an earlier plan: what need not move stays where it was
  bool trial = false;                               ///< a plan to be compared: without reasons, and without a bound
};

}  // namespace coatday::job
