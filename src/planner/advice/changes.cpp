#include "planner/advice/changes.h"

#include <algorithm>
#include <set>

#include <fmt/core.h>

#include "job/place_support.h"
#include "job/stages.h"
#include "planner/advice/air_keys.h"
#include "planner/tasks/effort.h"

namespace coatday::planner {

Change change(std::function<void(job::Job&, Instant&)> make, std::string text, std::vector<std::string> set) {
  return {std::move(make), [text = std::move(text)](const job::Plan&) { return text; }, nullptr, std::move(set)};
}

std::string day_and_hour(Instant t, const Zone& zone) {
  const std::string text = iso8601(std::chrono::ceil<std::chrono::minutes>(t), zone);
  return text.substr(0, 10) + " " + text.substr(11, 5);
}

std::string path_of_piece(const job::Job& job, std::size_t piece) {
  const std::vector<job::OrderPiece>& pieces = job.order.pieces;
  const std::string& name = pieces[piece].order;
  if (name.empty()) return fmt::format("pieces.{}", piece + 1);
  int order = 1;
  std::size_t first = 0;
  for (std::size_t p = 1; p <= piece; ++p) {
    if (pieces[p].order == pieces[p - 1].order) continue;
    ++order;
    first = p;
  }
  return fmt::format("orders.{}.pieces.{}", order, piece - first + 1);
}

std::string names_of(const std::vector<std::string>& parts) {
  if (parts.size() == 1) return parts.front();
  if (parts.size() > 3) return fmt::format("{}, {} and {} more", parts[0], parts[1], parts.size() - 2);
  return parts.size() == 2 ? parts[0] + " and " + parts[1] : fmt::format("{}, {} and {}", parts[0], parts[1], parts[2]);
}

ChangeSizes doubling(const Amount& amount) {
  ChangeSizes sizes;
  for (int more = 1; more <= 3 * amount.now; more *= 2) sizes.push_back(amount.change(more));
  return sizes;
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

std::vector<std::string> set_support(const job::Job& job, piece::Support support) {
  std::vector<std::string> set;
  for (std::size_t p = 0; p < job.order.pieces.size(); ++p) {
    const std::vector<piece::Part>& parts = job.order.pieces[p].piece.parts;
    for (std::size_t m = 0; m < parts.size(); ++m) {
      if (parts[m].support != piece::Support::laid) continue;
      set.push_back(
          fmt::format("{}.parts.{}.support={}", path_of_piece(job, p), m + 1, support == piece::Support::hooks ? "hooks" : "points"));
    }
  }
  return set;
}

Change on_support(const job::Job& job, piece::Support support, const std::string& parts) {
  const bool hung = support == piece::Support::hooks;
  const std::string words = hung ? fmt::format("hang up {} (support: hooks): both sides are coated at once", parts)
                                 : fmt::format("lay {} on points (support: points): turned when tack-free", parts);
  return change(
      [support](job::Job& other, Instant&) {
        for (job::OrderPiece& piece : other.order.pieces) {
          for (piece::Part& part : piece.piece.parts) {
            if (part.support == piece::Support::laid) part.support = support;
          }
        }
      },
      words, set_support(job, support));
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
    if (std::any_of(job.shop.places.begin(), job.shop.places.end(), takes)) kinds.push_back({on_support(job, support, names_of(laid))});
  }
  return kinds;
}

ChangeSizes second_face_later(const job::Job& job) {
  ChangeSizes sizes;
  for (const int days : {2, 3, 4, 7}) {
    const Hours within = date::days(days);
    if (within <= job.shop.both_faces_within) continue;
    const std::string text = fmt::format("{} days", days);
    sizes.push_back(change([within](job::Job& other, Instant&) { other.shop.both_faces_within = within; }, "both faces within: " + text,
                           {"both faces within=" + text}));
    sizes.back().caution = "one face is bare for longer, and a board may cup";
  }
  return sizes;
}

namespace {

/// A place by its name, where a path of keys can hold that.
std::string path_of(const shop::DryingPlace& place, std::size_t p) {
  const bool plain = place.name.find_first_of(".=\"") == std::string::npos && std::isdigit(static_cast<unsigned char>(place.name[0])) == 0;
  return plain ? place.name : std::to_string(p + 1);
}

}  // namespace

Amount places(const job::Job& job, std::size_t p) {
  const shop::DryingPlace& place = job.shop.places[p];
  return {place.count, [p, path = path_of(place, p), name = place.name, now = place.count](int more) {
            return change([p, more](job::Job& other, Instant&) { other.shop.places[p].count += more; },
                          fmt::format("{} more '{}' to dry on", more, name), {fmt::format("drying places.{}.count={}", path, now + more)});
          }};
}

ChangeSizes no_days_off(const job::Job& job) {
  if (job.shop.closed.empty()) return {};
  return {
      change([](job::Job& other, Instant&) { other.shop.closed.clear(); }, "work on the days on which the shop is closed", {"closed=[]"})};
}

namespace {

std::string hours_on(const std::vector<shop::Shift>& week, date::weekday day) {
  std::string hours;
  for (const shop::Shift& shift : week) {
    if (shift.day == day) hours += (hours.empty() ? "" : ", ") + hours_text(shift.from, shift.until);
  }
  return hours;
}

}  // namespace

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
        fmt::format("work on {} as on Fridays", name),
        {fmt::format("hours.{}={}", day == date::Saturday ? "sat" : "sun", hours_on(week, date::Friday))}));
  }
  return sizes;
}

namespace {

/// No order starts before it.
std::vector<std::string> starts_from(const job::Job& job, Instant later) {
  std::vector<std::string> set;
  const std::vector<job::OrderPiece>& pieces = job.order.pieces;
  for (std::size_t p = 0; p < pieces.size(); ++p) {
    if (p > 0 && pieces[p].order == pieces[p - 1].order) continue;
    const std::string path = path_of_piece(job, p);
    const Instant start = std::max(later, pieces[p].start.value_or(later));
    set.push_back(path.substr(0, path.find("pieces.")) + "start=" + day_and_hour(start, job.shop.zone));
  }
  return set;
}

}  // namespace

ChangeSizes later_start(const job::Job& job, const job::Request& request) {
  ChangeSizes sizes;
  for (const int wait : {1, 2, 3, 5, 7, 10, 14, 21, 28}) {
    const Instant later = job.shop.zone.to_instant(job.shop.zone.to_local(request.from) + date::days(wait));
    sizes.push_back(change(
        [later](job::Job& other, Instant& from) {
          from = later;
          if (other.order.start) other.order.start = std::max(*other.order.start, from);
        },
        "start on " + day_and_time(job.shop.zone.to_local(later)), starts_from(job, later)));
  }
  return sizes;
}

}  // namespace coatday::planner
