#include "planner/advice/changes.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

#include "job/place_support.h"
#include "job/stages.h"
#include "planner/tasks/effort.h"

namespace coatday::planner {

Change change(std::function<void(job::Job&, Instant&)> make, std::string text) {
  return {std::move(make), [text = std::move(text)](const job::Plan&) { return text; }};
}

std::optional<Hours> lateness(const job::Plan& plan) {
  if (plan.status != job::Status::planned) return std::nullopt;
  Hours worst(0);
  for (const job::PieceResult& piece : plan.pieces) {
    if (!piece.ready.slow.deliver) return std::nullopt;
    if (piece.slack) worst = std::max(worst, -*piece.slack);
  }
  return worst;
}

namespace {

/// Whether the coat of this step lies on one whose window closes with no way to make a missed one good.
bool window_without_remedy(const job::Job& job, const finish::Schedule& schedule, std::size_t step) {
  if (!schedule.steps[step].product) return false;
  for (std::size_t below = step; below-- > 0;) {
    const finish::Step& earlier = schedule.steps[below];
    const bool abraded = earlier.kind == finish::StepKind::prepare || earlier.kind == finish::StepKind::scuff;
    if (abraded && earlier.faces == finish::StepFaces::all) return false;
    const finish::Product* product = earlier.product ? job.catalogue.product(*earlier.product) : nullptr;
    if (product == nullptr) continue;
    return job::has_stage(*product, finish::Stage::recoat_close) && !job::has_stage(*product, finish::Stage::sand);
  }
  return false;
}

std::string scuff_text(const job::Plan& plan, const finish::Step& scuff, const Zone& zone) {
  Hours time(0);
  std::optional<Instant> first;
  for (const job::Event& event : plan.events) {
    if (event.step != scuff.id) continue;
    time += Hours(event.end - event.start);
    first = std::min(first.value_or(event.start), event.start);
  }
  return fmt::format("{}: {} in all{}", scuff.name, format_span(time), first ? ", from " + day_and_time(zone.to_local(*first)) : "");
}

}  // namespace

std::vector<ChangeSizes> scuffs(const job::Job& job) {
  std::set<std::string> used;
  for (const job::OrderPiece& piece : job.order.pieces) {
    for (const piece::Part& part : piece.piece.parts) used.insert(part.schedule);
  }
  std::vector<ChangeSizes> kinds;
  for (const std::string& id : used) {
    const finish::Schedule* schedule = job.catalogue.schedule(id);
    for (std::size_t s = 0; schedule != nullptr && s < schedule->steps.size(); ++s) {
      if (!window_without_remedy(job, *schedule, s)) continue;
      const finish::Step scuff = scuff_step(schedule->steps[s]);
      Change change;
      change.make = [id, s, scuff](job::Job& other, Instant&) {
        std::vector<finish::Step>& steps = other.catalogue.schedules.at(id).steps;
        steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(s), scuff);
      };
      change.text = [scuff, zone = job.shop.zone](const job::Plan& plan) { return scuff_text(plan, scuff, zone); };
      kinds.push_back({change});
    }
  }
  return kinds;
}

namespace {

std::string ready_text(const job::Plan& plan) { return plan.ready ? ": ready " + day_and_time(plan.shop.zone.to_local(*plan.ready)) : ""; }

/// "shelf and door"; of more than three the first two and how many more.
std::string names_of(const std::vector<std::string>& parts) {
  if (parts.size() == 1) return parts.front();
  if (parts.size() > 3) return fmt::format("{}, {} and {} more", parts[0], parts[1], parts.size() - 2);
  return parts.size() == 2 ? parts[0] + " and " + parts[1] : fmt::format("{}, {} and {}", parts[0], parts[1], parts[2]);
}

Change on_support(piece::Support support, const std::string& parts) {
  const bool hung = support == piece::Support::hooks;
  const std::string words = hung ? fmt::format("hang up {} (support: hooks): both sides are coated at once", parts)
                                 : fmt::format("lay {} on points (support: points): turned when tack-free", parts);
  return {[support](job::Job& other, Instant&) {
            for (job::OrderPiece& piece : other.order.pieces) {
              for (piece::Part& part : piece.piece.parts) {
                if (part.support == piece::Support::laid) part.support = support;
              }
            }
          },
          [words](const job::Plan& plan) { return words + ready_text(plan); }};
}

}  // namespace

std::vector<ChangeSizes> supports(const job::Job& job) {
  std::vector<std::string> laid;
  for (const job::OrderPiece& piece : job.order.pieces) {
    for (const piece::Part& part : piece.piece.parts) {
      if (part.support == piece::Support::laid) laid.push_back(part.name);
    }
  }
  std::vector<ChangeSizes> kinds;
  if (laid.empty() || !job.order.history.empty()) return kinds;
  for (const piece::Support support : {piece::Support::points, piece::Support::hooks}) {
    const auto takes = [support](const shop::DryingPlace& place) { return job::suits(support, place.kind); };
    if (std::any_of(job.shop.places.begin(), job.shop.places.end(), takes)) kinds.push_back({on_support(support, names_of(laid))});
  }
  return kinds;
}

ChangeSizes second_face_later(const job::Job& job) {
  ChangeSizes sizes;
  for (const int days : {2, 3, 4, 7}) {
    const Hours within = date::days(days);
    if (within <= job.shop.both_faces_within) continue;
    sizes.push_back({[within](job::Job& other, Instant&) { other.shop.both_faces_within = within; },
                     [days](const job::Plan& plan) {
                       return fmt::format("both faces within: {} days{}; one face is bare for longer, and a board may cup", days,
                                          ready_text(plan));
                     }});
  }
  return sizes;
}

ChangeSizes places(const job::Job& job, std::size_t p) {
  const shop::DryingPlace& place = job.shop.places[p];
  ChangeSizes sizes;
  for (const int more : std::set<int>{1, place.count, 3 * place.count}) {
    sizes.push_back(change([p, more](job::Job& other, Instant&) { other.shop.places[p].count += more; },
                           fmt::format("{} more '{}' to dry on", more, place.name)));
  }
  return sizes;
}

ChangeSizes another_day(const job::Job& job) {
  ChangeSizes sizes;
  for (const auto& [day, name] : {std::pair(date::Saturday, "Saturdays"), std::pair(date::Sunday, "Sundays")}) {
    const std::vector<shop::Shift>& week = job.shop.week;
    const auto on = [&week](date::weekday wanted) {
      return std::any_of(week.begin(), week.end(), [wanted](const shop::Shift& shift) { return shift.day == wanted; });
    };
    if (on(day) || !on(date::Friday)) continue;
    sizes.push_back(change(
        [added = day](job::Job& other, Instant&) {
          const std::vector<shop::Shift> before = other.shop.week;
          for (const shop::Shift& shift : before) {
            if (shift.day == date::Friday) other.shop.week.push_back({added, shift.from, shift.until});
          }
        },
        fmt::format("work on {} as on Fridays", name)));
  }
  return sizes;
}

ChangeSizes later_start(const job::Job& job, const job::Request& request) {
  ChangeSizes sizes;
  for (const int wait : {1, 2, 3, 5, 7, 10, 14, 21, 28}) {
    const Instant later = job.shop.zone.to_instant(job.shop.zone.to_local(request.from) + date::days(wait));
    sizes.push_back(change(
        [later](job::Job& other, Instant& from) {
          from = later;
          if (other.order.start) other.order.start = std::max(*other.order.start, from);
        },
        "start on " + day_and_time(job.shop.zone.to_local(later))));
  }
  return sizes;
}

}  // namespace coatday::planner
