#pragma once
// What is asked of the planner beside the job.

#include <atomic>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "job/job.h"
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

/// The job as its files would have it with keys set otherwise, "air.night=13 C" each. Returns nothing where that is a mistake.
using Reread = std::function<std::optional<Job>(const std::vector<std::string>& set)>;

/// What is tried beside the plan, from nothing upwards: what would make a plan possible; what would make it in time; how a plan in time could be
/// ready sooner, with the largest change of each kind (quick) or with all sizes of it (thorough). Thorough advice also searches longer, so that
/// the plans of a small order can be compared.
enum class AdviceDepth { none, when_impossible, when_late, quick, thorough };

struct Request {
  Instant from;  ///< nothing that is not done starts before
  AdviceDepth advice = AdviceDepth::none;
  double seconds = 0;  ///< to go on searching after the first good plan; the answer then depends on the machine
  long work = 0;       ///< without seconds: conflicts and passes for a small order's plan; the same answer on every machine
  double guard = 4;    ///< without seconds: the search is cut off after so many on the processor, whatever work is left
  std::optional<Starts> earlier_starts{};           ///< of an earlier plan: steps keep them unless something forces them to move
  std::function<void(const Progress&)> progress{};  ///< called on every better plan or bound
  Reread reread{};  ///< advice that keys can say is given only where the files read with them give such a plan; null: as changed in memory
  const std::atomic<bool>* stop = nullptr;  ///< raised: the best plan so far is taken
};

}  // namespace coatday::job
