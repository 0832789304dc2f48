#include "planner/advice/lateness_advice.h"

#include <algorithm>

#include <fmt/core.h>

#include "planner/advice/air.h"
#include "planner/advice/hands.h"
#include "planner/advice/trials.h"
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

class LatenessAdviser {
 public:
  LatenessAdviser(const job::Job& job, const job::Request& request, const job::Plan& plan)
      : job_(job), request_(request), plan_(plan), late_(lateness(plan)), trials_(job, request.from, {plans_for(job)}) {}

  std::vector<std::string> run() {
    if (late_ && *late_ <= Hours(0)) return {};
    const std::vector<ChangeSizes> kinds = all();
    for (const ChangeSizes& sizes : kinds) try_sizes(sizes);
    if (enough_.empty()) try_pairs(kinds);
    std::vector<std::string> result = std::move(enough_.empty() ? helpful_ : enough_);
    if (late_) result.push_back(later_date());
    return result;
  }

 private:
  /// What asks least of the maker comes first.
  [[nodiscard]] std::vector<ChangeSizes> all() const {
    std::vector<ChangeSizes> kinds = scuffs(job_);
    const std::vector<ChangeSizes> laid_otherwise = supports(job_);
    kinds.insert(kinds.end(), laid_otherwise.begin(), laid_otherwise.end());
    if (!laid_otherwise.empty()) kinds.push_back(second_face_later(job_));
    kinds.push_back(warmth(job_, plan_));
    kinds.push_back(dryness(job_, plan_));
    for (std::size_t p = 0; p < job_.shop.places.size(); ++p) kinds.push_back(places(job_, p));
    kinds.push_back(hands(job_, request_));
    kinds.push_back(another_day(job_));
    if (plan_.status != job::Status::planned) kinds.push_back(later_start(job_, request_));
    return kinds;
  }

  struct Attempt {
    Hours late{0};
    std::string text;
  };

  /// How late the order is with the changes; nothing where they give no sound plan.
  [[nodiscard]] std::optional<Attempt> attempt(std::initializer_list<const Change*> changes) {
    const auto trial = trials_.run({changes.begin(), changes.size()}, [](const job::Plan& plan) { return lateness(plan).has_value(); });
    if (!trial) return std::nullopt;
    return Attempt{*lateness(trial->plan), trial->text};
  }

  /// The smallest change that is enough; else the smallest that helps, and the one that helps most.
  void try_sizes(const ChangeSizes& sizes) {
    std::vector<std::string> helps;
    std::optional<Hours> best = late_;
    for (const Change& change : sizes) {
      const std::optional<Attempt> trial = attempt({&change});
      if (!trial) continue;
      if (trial->late <= Hours(0)) return enough_.push_back(trial->text);
      if (best && trial->late > *best - Hours(1)) continue;
      best = trial->late;
      if (helps.size() == 2) helps.pop_back();
      helps.push_back(fmt::format("{} (then {} late)", trial->text, format_span(trial->late)));
    }
    helpful_.insert(helpful_.end(), helps.begin(), helps.end());
  }

  /// Two changes together, where the largest of both kinds are enough: the smallest of them that are.
  void try_pairs(const std::vector<ChangeSizes>& kinds) {
    int tried = 0;
    for (std::size_t a = 0; a < kinds.size(); ++a) {
      for (std::size_t b = a + 1; b < kinds.size(); ++b) {
        if (kinds[a].empty() || kinds[b].empty()) continue;
        if (enough_.size() == most_pairs_shown || tried++ == most_pairs) return;
        const std::optional<Attempt> trial = attempt({&kinds[a].back(), &kinds[b].back()});
        if (trial && trial->late <= Hours(0)) enough_.push_back(smallest(kinds[a], kinds[b]).value_or(*trial).text);
      }
    }
  }

  /// The smallest of the first kind that is enough with the largest of the second, then the smallest of the second with it.
  [[nodiscard]] std::optional<Attempt> smallest(const ChangeSizes& one, const ChangeSizes& other) {
    const auto enough = [this](const Change& a, const Change& b) {
      std::optional<Attempt> trial = attempt({&a, &b});
      return trial && trial->late <= Hours(0) ? trial : std::nullopt;
    };
    for (const Change& a : one) {
      if (!enough(a, other.back())) continue;
      for (const Change& b : other) {
        if (auto trial = enough(a, b)) return trial;
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] std::string later_date() const {
    std::string words;
    for (const job::PieceResult& piece : plan_.pieces) {
      if (!piece.slack || *piece.slack >= Hours(0)) continue;
      words += fmt::format("{} {} for {}", words.empty() ? "promise" : ",", piece.name,
                           day_and_time(job_.shop.zone.to_local(*piece.ready.slow.deliver)));
    }
    return words;
  }

  const job::Job& job_;
  const job::Request& request_;
  const job::Plan& plan_;
  std::optional<Hours> late_;
  Trials trials_;
  std::vector<std::string> enough_, helpful_;
};

}  // namespace

std::vector<std::string> advise_when_late(const job::Job& job, const job::Request& request, const job::Plan& plan) {
  const auto refused = [](const job::Finding& finding) { return finding.severity == job::Severity::error; };
  if (plan.faces.size() > most_faces_when_late || std::any_of(plan.findings.begin(), plan.findings.end(), refused)) return {};
  return LatenessAdviser(job, request, plan).run();
}

}  // namespace coatday::planner
