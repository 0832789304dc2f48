#include "planner/advice/hands.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

#include "job/time_step.h"
#include "planner/make/make_plan.h"

namespace coatday::planner {

namespace {

constexpr std::chrono::hours help{2};
constexpr std::size_t most_days = 3;

struct Stretch {
  Instant from, until;
};

/// When more people are at work than there are now.
std::vector<Stretch> beyond(const job::Plan& plan, int people) {
  std::set<Instant> edges;
  for (const job::Event& event : plan.events) edges.insert({event.start, event.end});
  std::vector<Stretch> stretches;
  for (auto edge = edges.begin(); edge != edges.end() && std::next(edge) != edges.end(); ++edge) {
    int busy = 0;
    for (const job::Event& event : plan.events) busy += event.start <= *edge && *edge < event.end ? event.people : 0;
    if (busy > people) stretches.push_back({*edge, *std::next(edge)});
  }
  return stretches;
}

Hours sum(const std::vector<Stretch>& stretches) {
  Hours all(0);
  for (const Stretch& s : stretches) all += Hours(s.until - s.from);
  return all;
}

/// The part of them within two hours from then on.
Hours within(const std::vector<Stretch>& stretches, Instant from) {
  Hours all(0);
  for (const Stretch& s : stretches) all += std::max(Hours(0), Hours(std::min(s.until, from + help) - std::max(s.from, from)));
  return all;
}

/// Two hours in which there would be most to do; of each day one, the best days first.
std::vector<Instant> best_times(const Zone& zone, const std::vector<Stretch>& stretches) {
  std::map<LocalDay, std::pair<Hours, Instant>> days;
  for (const Stretch& s : stretches) {
    const Hours use = within(stretches, s.from);
    auto& best = days.emplace(day_of(zone.to_local(s.from)), std::pair(Hours(0), s.from)).first->second;
    if (use > best.first) best = {use, s.from};
  }
  std::vector<std::pair<Hours, Instant>> order;
  for (const auto& [day, best] : days) order.emplace_back(-best.first, best.second);
  std::sort(order.begin(), order.end());
  std::vector<Instant> times;
  for (const auto& [use, time] : order) times.push_back(time);
  if (times.size() > most_days) times.resize(most_days);
  return times;
}

/// Nobody that is not there can be asked: at all other times one person has other work.
void away(job::Job& job, const std::string& id, Instant from, Instant until) {
  if (until <= from) return;
  shop::Work work;
  work.id = work.name = id;
  work.start = from;
  work.takes = Hours(until - from);
  job.shop.work.push_back(std::move(work));
}

/// When the last work of a plan is over, and some days more, so that a plan made with the help for two hours alone has room.
Instant end_of(const job::Plan& plan) {
  Instant end = plan.from;
  for (const job::Event& event : plan.events) end = std::max(end, event.end);
  return end + date::days(28);
}

Change for_two_hours(const job::Job& job, Instant time, Instant from, Instant end) {
  const Instant begin = job::at_whole_step(from);  // of the plan
  const LocalTime local = job.shop.zone.to_local(time);
  Change change;
  change.make = [=](job::Job& other, Instant&) {
    ++other.shop.people;
    away(other, "away-before", begin, time);
    away(other, "away-after", time + help, end);
  };
  change.text = [local](const job::Plan&) {
    return fmt::format("an extra pair of hands on {}-{}", day_and_time(local), clock_time(local + help));
  };
  change.counts = [end](const job::Plan& plan) {
    return std::all_of(plan.events.begin(), plan.events.end(), [end](const job::Event& event) { return event.end <= end; });
  };
  return change;
}

Change for_good(int people, int more) {
  Change change;
  change.make = [more](job::Job& other, Instant&) { other.shop.people += more; };
  change.text = [people, more](const job::Plan& plan) {
    return fmt::format("{} in the shop, needed for {} in all", more == 1 ? "one more person" : fmt::format("{} more people", more),
                       format_span(sum(beyond(plan, people))));
  };
  change.set = {fmt::format("people={}", people + more)};
  return change;
}

}  // namespace

ChangeSizes hands_for_two_hours(const job::Job& job, const job::Request& request) {
  ChangeSizes sizes;
  job::Job helped = job;
  ++helped.shop.people;
  const job::Plan plan = make_plan(helped, job::Request{request.from}, Purpose::compare);
  if (lateness(plan)) {
    for (const Instant time : best_times(job.shop.zone, beyond(plan, job.shop.people))) {
      sizes.push_back(for_two_hours(job, time, request.from, end_of(plan)));
    }
  }
  return sizes;
}

Amount people(const job::Job& job) {
  const int now = job.shop.people;
  return {now, [now](int more) { return for_good(now, more); }};
}

}  // namespace coatday::planner
