#include "tests/solver/cross_check.h"

#include <algorithm>

#include "solver/base/violations.h"
#include "solver/solve.h"
#include "tests/solver/any_problem.h"
#include "tests/solver/exhaustive.h"
#include "tests/solver/verify.h"

namespace coatday::solver::test {
namespace {

constexpr double most_to_exhaust = 20'000;

bool better(const Score& a, const Score& b) { return a.lateness < b.lateness || (a.lateness <= b.lateness && a.ready < b.ready); }

std::string text(const Score& s) {
  return "lateness " + std::to_string(s.lateness) + ", ready " + std::to_string(s.ready) + ", total " + std::to_string(s.total) +
         ", setups " + std::to_string(s.setups);
}

class Check {
 public:
  explicit Check(const Problem& problem) : p_(problem) {
    if (size_of(problem) <= most_to_exhaust) truth_ = exhaust(problem);
  }

  std::vector<std::string> run() {
    judge("ready_bound", ready_bound(p_));
    Limits quick;
    quick.passes = 5;
    judge("quick", solve(p_, quick));
    Limits extended;
    extended.work = 500;
    judge("extended", solve(p_, extended));
    if (Search::supports(p_)) search();
    agree();
    return std::move(complaints_);
  }

 private:
  void complain(const std::string& who, const std::string& what) { complaints_.push_back(who + ": " + what); }

  void judge(const std::string& who, Time bound) {
    if (truth_ && truth_->feasible && bound > truth_->least_ready)
      complain(who, "ready from " + std::to_string(bound) + ", but one is ready at " + std::to_string(truth_->least_ready));
    bounds_.emplace_back(who, bound);
  }

  void judge(const std::string& who, const Outcome& outcome) {
    if (const auto* found = std::get_if<Found>(&outcome)) {
      judge(who, found->schedule);
      judge(who, found->ready_bound);
      if (found->score != score(p_, found->schedule)) complain(who, "a score that is not that of its schedule");
      if (found->proven) proven_.emplace_back(who, found->score);
    } else if (std::holds_alternative<Contradiction>(outcome)) {
      impossible(who);
    } else {
      judge(who, std::get<NotFound>(outcome).ready_bound);
    }
  }

  void judge(const std::string& who, const Schedule& schedule) {
    for (const std::string& fault : violations(p_, schedule)) complain(who, fault);
    const Score reached = score(p_, schedule);
    found_.emplace_back(who, reached);
    if (truth_ && (!truth_->feasible || reached < truth_->best)) complain(who, "a schedule better than the best: " + text(reached));
  }

  void impossible(const std::string& who) {
    impossible_.push_back(who);
    if (truth_ && truth_->feasible) complain(who, "a contradiction where there is a schedule: " + text(truth_->best));
  }

  // To the end, if that is not far.
  void search() {
    Search search(p_);
    Verifier verifier(p_, search.solver());
    if (truth_ && truth_->feasible) verifier.hear(truth_->schedule);
    std::optional<Score> best;
    SearchResult last;
    for (int call = 0; call < 30 && !last.exhausted; ++call) {
      last = search.improve(best, nullptr, {500, 0, nullptr});
      judge("search", last.ready_bound);
      if (truth_ && truth_->feasible && last.lateness_bound > truth_->best.lateness + 1e-6) complain("search", "a lateness bound too high");
      if (!last.schedule) continue;
      judge("search", *last.schedule);
      best = score(p_, *last.schedule);
    }
    for (const std::string& complaint : verifier.complaints()) complain("verifier", complaint);
    if (last.infeasible) impossible("search");
    if (last.exhausted && best) proven_.emplace_back("search", *best);
    // What fits in total but cannot be laid out ends the search without a proof.
    const bool laid_out = std::any_of(p_.resources.begin(), p_.resources.end(), [](const Resource& r) { return r.segment > 0; });
    if (truth_ && !last.exhausted && !laid_out) complain("search", "not exhausted");
    if (truth_ && last.exhausted && truth_->feasible && !best) complain("search", "exhausted without a schedule");
  }

  void agree() {
    for (const auto& [who, reached] : found_) {
      for (const std::string& other : impossible_) complain(other, "a contradiction, but a schedule by " + who);
      for (const auto& [other, least] : proven_) {
        if (better(reached, least)) complain(other, "proven " + text(least) + ", but " + who + " has " + text(reached));
      }
      for (const auto& [other, bound] : bounds_) {
        if (bound > reached.ready) complain(other, "bound " + std::to_string(bound) + ", but " + who + " has " + text(reached));
      }
    }
    for (const auto& [who, least] : proven_) {
      if (truth_ && better(truth_->best, least)) complain(who, "proven " + text(least) + ", but the best is " + text(truth_->best));
    }
  }

  const Problem& p_;
  std::optional<Exhausted> truth_;
  std::vector<std::pair<std::string, Score>> found_, proven_;
  std::vector<std::pair<std::string, Time>> bounds_;
  std::vector<std::string> impossible_, complaints_;
};

}  // namespace

std::vector<std::string> cross_check(const Problem& problem) { return Check(problem).run(); }

}  // namespace coatday::solver::test
