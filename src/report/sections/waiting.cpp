#include "report/sections/waiting.h"

#include <fmt/core.h>

#include <algorithm>
#include <iterator>
#include <string_view>
#include <tuple>
#include <unordered_map>

#include "report/sections/faces.h"
#include "report/words.h"

namespace coatday::report {
namespace {

/// A step that has to wait for an earlier one.
struct Wait {
  const job::Event* first;
  const job::Event* next;
  const job::AfterEvent* reason;
};

// The waits over this moment: the earlier step is done, and what the later one waits for is not reached.
std::vector<Wait> waits_over(const job::Plan& plan, Instant moment) {
  std::unordered_map<std::string_view, const job::Event*> over;  // a large plan asks this for each of its days
  for (const job::Event& event : plan.events) {
    if (event.end <= moment) over.emplace(event.id, &event);
  }
  std::vector<Wait> found;
  for (const job::Event& next : plan.events) {
    if (next.start < moment) continue;
    for (const job::AfterEvent& reason : next.after) {
      if (reason.earliest <= moment) continue;
      if (const auto first = over.find(reason.event); first != over.end()) found.push_back({first->second, &next, &reason});
    }
  }
  return found;
}

bool same_load(const Wait& w) { return w.first->piece == w.next->piece && w.first->load == w.next->load; }

// What comes next for each earlier step: its own load before other work, then what starts first.
std::vector<Wait> next_of_each(const std::vector<Wait>& waits) {
  std::vector<Wait> chosen;
  for (const Wait& wait : waits) {
    const auto rank = [](const Wait& w) { return std::make_tuple(!same_load(w), w.next->start, -w.reason->earliest.time_since_epoch()); };
    const auto old = std::find_if(chosen.begin(), chosen.end(), [&wait](const Wait& w) { return w.first == wait.first; });
    if (old == chosen.end()) {
      chosen.push_back(wait);
    } else if (rank(wait) < rank(*old)) {
      *old = wait;
    }
  }
  return chosen;
}

/// The same step on several loads.
struct SharedWait {
  std::string first, next;
  std::vector<std::string> loads;
  Instant earliest;
  bool same_time = true;
  bool dries = false;
};

// Adds those that are not there yet, in the order of the plan's faces.
void add_parts(const job::Plan& plan, const job::Event& event, std::vector<std::string>& parts) {
  for (const std::size_t face : event.faces) {
    const std::string part = part_text(plan, plan.faces[face]);
    if (std::find(parts.begin(), parts.end(), part) == parts.end()) parts.push_back(part);
  }
}

// The load, or those of its parts that have a face in this coat: a first side may leave a part out.
std::string coated(const job::Plan& plan, const job::Event& coat) {
  std::vector<std::string> here, all;
  add_parts(plan, coat, here);
  for (const job::Event& other : plan.events) {
    if (other.piece == coat.piece && other.load == coat.load) add_parts(plan, other, all);
  }
  return here.empty() || here.size() == all.size() ? coat.load_name : listed(here);
}

std::vector<SharedWait> shared(const job::Plan& plan, const std::vector<Wait>& waits) {
  std::vector<SharedWait> groups;
  for (const Wait& wait : waits) {
    const auto same = [&wait](const SharedWait& g) { return g.first == wait.first->name && g.next == wait.next->name; };
    auto group = std::find_if(groups.begin(), groups.end(), same);
    if (group == groups.end()) {
      const bool dries = job::is_coat(wait.first->kind);
      group = groups.insert(group, SharedWait{wait.first->name, wait.next->name, {}, wait.reason->earliest, true, dries});
    }
    group->same_time = group->same_time && group->earliest == wait.reason->earliest;
    group->earliest = std::min(group->earliest, wait.reason->earliest);
    if (wait.first->load.empty()) continue;
    const std::string load = coated(plan, *wait.first);
    if (std::find(group->loads.begin(), group->loads.end(), load) == group->loads.end()) group->loads.push_back(load);
  }
  return groups;
}

std::string on_loads(const std::vector<std::string>& loads) {
  if (loads.empty()) return "";
  if (loads.size() <= 3) return " on " + listed(loads);
  return fmt::format(" on {}, {} and {} more", loads[0], loads[1], loads.size() - 2);
}

std::string wait_text(const job::Plan& plan, const SharedWait& wait, LocalDay today) {
  return wait.first + on_loads(wait.loads) + (wait.dries ? " dries; " : " rests; ") + wait.next + " from " +
         instant_text(wait.earliest, plan.shop.zone, today) + (wait.same_time ? "" : " on");
}

Minutes working_minutes(const job::Plan& plan, Instant from, Instant until) {
  Minutes sum{0};
  for (const shop::WorkingTime& w : plan.working) {
    const Instant begin = std::max(w.begin, from);
    const Instant end = std::min(w.end, until);
    if (begin < end) sum += std::chrono::floor<Minutes>(end - begin);
  }
  return sum;
}

constexpr Minutes worth_telling{15};

// What holds up the steps that start at the end of the gap, until shortly before: the last of each step's waits.
std::vector<Wait> waits_that_end_with(const job::Plan& plan, Instant from, Instant until) {
  std::vector<Wait> last;
  for (const Wait& wait : waits_over(plan, from)) {
    if (wait.next->start != until || wait.reason->earliest > until) continue;
    const auto old = std::find_if(last.begin(), last.end(), [&wait](const Wait& w) { return w.next == wait.next; });
    if (old == last.end()) {
      last.push_back(wait);
    } else if (wait.reason->earliest > old->reason->earliest) {
      *old = wait;
    }
  }
  std::erase_if(last, [&](const Wait& wait) { return working_minutes(plan, wait.reason->earliest, until) >= worth_telling; });
  return last;
}

// Of each load, what its last coat waits for: the coats beneath it dry in its shade.
std::vector<Wait> of_last_coats(const std::vector<Wait>& waits) {
  std::vector<Wait> last;
  std::copy_if(waits.begin(), waits.end(), std::back_inserter(last), [&waits](const Wait& wait) {
    return std::none_of(waits.begin(), waits.end(), [&wait](const Wait& other) {
      return other.first->load == wait.first->load && other.first->piece == wait.first->piece && other.first->end > wait.first->end;
    });
  });
  return last;
}

// No clock holds up what starts then: closing time, the air or other work does.
std::string held_up(const job::Plan& plan, Instant until) {
  const auto next = std::find_if(plan.events.begin(), plan.events.end(), [until](const job::Event& e) { return e.start == until; });
  if (next == plan.events.end() || next->why.empty()) return "nothing to do on this order";
  return next->name + ": " + next->why;
}

}  // namespace

std::string idle_text(const job::Plan& plan, Instant from, Instant until) {
  if (working_minutes(plan, from, until) < worth_telling) return "";
  const LocalDay today = local_day(from, plan.shop.zone);
  std::string words;
  for (const SharedWait& wait : shared(plan, waits_that_end_with(plan, from, until)))
    words += (words.empty() ? "" : "; ") + wait_text(plan, wait, today);
  return words.empty() ? held_up(plan, until) : words;
}

std::vector<std::string> night_text(const job::Plan& plan, Instant from) {
  std::vector<std::string> words;
  const LocalDay today = local_day(from, plan.shop.zone);
  for (const SharedWait& wait : shared(plan, of_last_coats(next_of_each(waits_over(plan, from)))))
    words.push_back(wait_text(plan, wait, today));
  return words;
}

std::string kept_by(const job::Plan& plan, Instant from) {
  const auto next = std::find_if(plan.events.begin(), plan.events.end(), [from](const job::Event& e) { return e.start >= from; });
  if (next == plan.events.end() || next->kept_by.empty()) return "";
  return fmt::format("{}{}: {}", next->name, next->load.empty() ? "" : " (" + next->load_name + ")", next->kept_by);
}

bool anything_dries(const job::Plan& plan, Instant from, Instant until) {
  return std::any_of(plan.events.begin(), plan.events.end(), [&](const job::Event& event) {
    if (!job::is_coat(event.kind) || event.end > from) return false;
    const auto& last = event.stages.expected[finish::Stage::pack] ? event.stages.expected[finish::Stage::pack]
                                                                  : event.stages.expected[finish::Stage::recoat];
    return last && *last > from && from < until;
  });
}

}  // namespace coatday::report
