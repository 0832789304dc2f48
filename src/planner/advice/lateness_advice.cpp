#include "planner/advice/lateness_advice.h"

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "job/advice.h"
#include "planner/advice/air.h"
#include "planner/advice/amounts.h"
#include "planner/advice/hands.h"
#include "planner/advice/trials.h"
#include "planner/advice/work_changes.h"
#include "planner/tasks/loads.h"

namespace coatday::planner {

namespace {

/// Beyond this planning again for each change would keep people waiting.
constexpr std::size_t most_faces_when_late = 150;
/// Pairs of changes that are tried, and shown.
constexpr int most_pairs = 15;
constexpr std::size_t most_pairs_shown = 2;

/// So many steps are planned for advice in all, so that a larger order does not keep people waiting for its advice.
constexpr std::size_t most_steps = 1500;
constexpr int least_plans = 3, most_trials = 40;

int plans_for(const job::Job& job) {
  std::size_t steps = 1;
  for (const Load& load : make_loads(job, Batching::fit).loads) steps += load.schedule->steps.size();
  return std::clamp(static_cast<int>(most_steps / steps), least_plans, most_trials);
}

using Proposals = std::vector<job::Proposal>;

/// Where a plan was made, only what its orders wait for.
bool waits_for(const job::Plan& plan, const std::string& place) {
  const auto waits = [&place](const job::TimeSpent& spent) {
    return std::any_of(spent.shares.begin(), spent.shares.end(),
                       [&place](const job::TimeShare& share) { return share.cause == job::TimeCause::place && share.place == place; });
  };
  return plan.time_spent.empty() || std::any_of(plan.time_spent.begin(), plan.time_spent.end(), waits);
}

/// Gained where nothing was planned at all.
constexpr Hours a_plan{1e6};

class LatenessAdviser {
 public:
  LatenessAdviser(const job::Job& job, const job::Request& request, const job::Plan& plan)
      : job_(job), request_(request), plan_(plan), late_(lateness(plan)), trials_(job, request, {plans_for(job)}) {}

  LatenessAdvice run() {
    Proposals proposals = try_all();
    return {std::move(proposals), trials_.cut_off()};
  }

 private:
  Proposals try_all() {
    if (late_ && *late_ <= Hours(0)) return {};
    if (!late_) {
      if (const auto found = try_pauses()) return *found;
    }
    const std::vector<ChangeSizes> kinds = by_size();
    for (const ChangeSizes& sizes : kinds) try_sizes(sizes);
    const std::vector<Amount> amounts = by_number();
    for (const Amount& amount : amounts) try_amount(amount);
    const ChangeSizes last = last_resort();
    try_sizes(last);
    if (enough_.empty()) try_pairs(kinds, amounts, last);
    Proposals result = std::move(enough_.empty() ? helpful_ : enough_);
    if (late_) result.push_back(later_date());
    return result;
  }

  /// No other change makes a shift long enough for work that may not rest. Where it may, and there is still no plan, all others go with it.
  [[nodiscard]] std::optional<Proposals> try_pauses() {
    ChangeSizes rests = pauses(job_, request_.from);
    if (rests.empty()) return std::nullopt;
    try_sizes(rests);
    if (!enough_.empty() || !helpful_.empty()) return std::move(enough_.empty() ? helpful_ : enough_);
    with_all_ = std::move(rests.front());
    return std::nullopt;
  }

  /// What asks least of the maker comes first.
  [[nodiscard]] std::vector<ChangeSizes> by_size() const {
    std::vector<ChangeSizes> kinds = scuffs(job_);
    const std::vector<ChangeSizes> laid_otherwise = supports(job_);
    kinds.insert(kinds.end(), laid_otherwise.begin(), laid_otherwise.end());
    if (plan_.status != job::Status::planned || !laid_otherwise.empty()) kinds.push_back(second_face_later(job_));
    kinds.push_back(work_when_handled(job_));
    if (plan_.status != job::Status::planned) {
      for (ChangeSizes& later : later_work(job_)) kinds.push_back(std::move(later));
    }
    kinds.push_back(warmth(job_, plan_));
    kinds.push_back(dryness(job_, plan_));
    return kinds;
  }

  /// Places that no step waits for would gain nothing.
  [[nodiscard]] std::vector<Amount> by_number() const {
    std::vector<Amount> amounts;
    for (std::size_t p = 0; p < job_.shop.places.size(); ++p) {
      if (waits_for(plan_, job_.shop.places[p].name)) amounts.push_back(places(job_, p));
    }
    amounts.push_back(people(job_));
    return amounts;
  }

  [[nodiscard]] ChangeSizes last_resort() const {
    ChangeSizes sizes = hands_for_two_hours(job_, request_);
    const auto add = [&sizes](ChangeSizes more) { sizes.insert(sizes.end(), more.begin(), more.end()); };
    add(another_day(job_));
    add(no_days_off(job_));
    if (plan_.status != job::Status::planned) add(later_start(job_, request_));
    return sizes;
  }

  /// How late the order is with the changes; nothing where they give no sound plan.
  [[nodiscard]] std::optional<Trial> attempt(std::initializer_list<const Change*> changes) {
    std::vector<const Change*> all(changes);
    if (with_all_) all.insert(all.begin(), &*with_all_);
    return trials_.run(all, plans);
  }
  static bool plans(const job::Plan& plan) { return lateness(plan).has_value(); }
  static Hours late(const Trial& trial) { return *lateness(trial.plan); }

  /// Whether the files with these keys give it, too; then it is to be said.
  bool tell(const Trial& trial, const std::string& caution) {
    const auto sure = trials_.as_set(trial, plans);
    if (!sure || (late_ && late(*sure) > *late_ - job::noticeable && late(*sure) > Hours(0))) return false;
    const bool enough = late(*sure) <= Hours(0);
    std::string words = sure->text;
    if (!enough) words += fmt::format(" (then {} late)", format_span(late(*sure)));
    if (sure->plan.ready) words += ": ready " + day_and_time(job_.shop.zone.to_local(*sure->plan.ready));
    if (!caution.empty()) words += "; " + caution;
    (enough ? enough_ : helpful_).push_back({std::move(words), sure->set, sure->plan.ready});
    return true;
  }

  /// The smallest change that is enough; else the smallest that helps, and the one that helps most.
  void try_sizes(const ChangeSizes& sizes) {
    std::vector<std::pair<Trial, const Change*>> helps;
    std::optional<Hours> best = late_;
    for (const Change& change : sizes) {
      std::optional<Trial> trial = attempt({&change});
      if (!trial) continue;
      if (late(*trial) <= Hours(0)) {
        if (tell(*trial, change.caution)) return;
        continue;
      }
      if (best && late(*trial) > *best - job::noticeable) continue;
      best = late(*trial);
      if (helps.size() == 2) helps.pop_back();
      helps.emplace_back(*std::move(trial), &change);
    }
    for (const auto& [trial, change] : helps) tell(trial, change->caution);
  }

  void try_amount(const Amount& amount) {
    std::map<int, Trial> known;
    const auto gain = [&](int more) -> std::optional<Hours> {
      const Change change = amount.change(more);
      std::optional<Trial> trial = attempt({&change});
      if (!trial) return std::nullopt;
      const Hours gained = late_.value_or(a_plan) - late(*trial);
      const bool enough = late(*trial) <= Hours(0);
      known.emplace(more, *std::move(trial));
      return enough ? std::max(gained, job::noticeable) : gained;
    };
    for (const int more : worth_having(3 * amount.now, job::noticeable, gain)) {
      if (tell(known.at(more), "") && !enough_.empty()) return;
    }
  }

  /// Two changes together, where the largest of both kinds are enough: the smallest of them that are.
  void try_pairs(std::vector<ChangeSizes> kinds, const std::vector<Amount>& amounts, const ChangeSizes& last) {
    for (const Amount& amount : amounts) kinds.push_back(doubling(amount));
    kinds.push_back(last);
    int tried = 0;
    for (std::size_t a = 0; a < kinds.size(); ++a) {
      for (std::size_t b = a + 1; b < kinds.size(); ++b) {
        if (kinds[a].empty() || kinds[b].empty()) continue;
        if (enough_.size() == most_pairs_shown || tried++ == most_pairs) return;
        const std::optional<Trial> trial = attempt({&kinds[a].back(), &kinds[b].back()});
        if (trial && late(*trial) <= Hours(0)) tell(smallest(kinds[a], kinds[b]).value_or(*trial), "");
      }
    }
  }

  /// The smallest of the first kind that is enough with the largest of the second, then the smallest of the second with it.
  [[nodiscard]] std::optional<Trial> smallest(const ChangeSizes& one, const ChangeSizes& other) {
    const auto enough = [this](const Change& a, const Change& b) {
      std::optional<Trial> trial = attempt({&a, &b});
      return trial && late(*trial) <= Hours(0) ? trial : std::nullopt;
    };
    for (const Change& a : one) {
      if (!enough(a, other.back())) continue;
      for (const Change& b : other) {
        if (auto trial = enough(a, b)) return trial;
      }
    }
    return std::nullopt;
  }

  /// This plan keeps it. The keys are named where a plan made with them keeps it, too.
  [[nodiscard]] job::Proposal later_date() {
    job::Proposal later;
    Trial trial{job_, request_.from, {}, "", {}};
    for (std::size_t p = 0; p < plan_.pieces.size(); ++p) {
      const job::PieceResult& piece = plan_.pieces[p];
      if (!piece.slack || *piece.slack >= Hours(0)) continue;
      const Instant ready = *piece.ready.slow.deliver;
      later.words +=
          fmt::format("{} {} for {}", later.words.empty() ? "promise" : ",", piece.name, day_and_time(job_.shop.zone.to_local(ready)));
      trial.set.push_back(fmt::format("{}.promised={}", path_of_piece(job_, p), day_and_hour(ready, job_.shop.zone)));
    }
    const auto in_time = [](const job::Plan& plan) { return lateness(plan) == Hours(0); };
    if (request_.reread && trials_.as_set(trial, in_time)) later.set = trial.set;
    later.ready = plan_.ready;
    return later;
  }

  const job::Job& job_;
  const job::Request& request_;
  const job::Plan& plan_;
  std::optional<Hours> late_;
  Trials trials_;
  std::optional<Change> with_all_;
  Proposals enough_, helpful_;
};

}  // namespace

LatenessAdvice advise_when_late(const job::Job& job, const job::Request& request, const job::Plan& plan) {
  const auto refused = [](const job::Finding& finding) { return finding.severity == job::Severity::error; };
  if (plan.faces.size() > most_faces_when_late || std::any_of(plan.findings.begin(), plan.findings.end(), refused)) return {};
  return LatenessAdviser(job, request, plan).run();
}

}  // namespace coatday::planner
