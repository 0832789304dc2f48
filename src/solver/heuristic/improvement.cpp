#include "solver/heuristic/improvement.h"

#include <algorithm>
#include <array>

#include "solver/heuristic/justify.h"

namespace coatday::solver {
namespace {

constexpr int plain_passes = 6;       // three rules, each with short and with generous holds
constexpr int large_size = 1000;      // activities
constexpr int most_justified = 1000;  // activities; with more, the time is better spent on other passes
constexpr int few_jobs = 4;           // fewer jobs are not worth moving against each other
constexpr double hopeless = 1.03;     // a schedule so much later than the best is not worth another pass

}  // namespace

Improvement::Improvement(const Network& network, const Bounds& bounds, Budget& budget, Incumbent& incumbent)
    : network_(network),
      bounds_(bounds),
      budget_(budget),
      incumbent_(incumbent),
      random_(budget.limits().seed),
      urgency_(urgency(network, bounds)),
      job_(jobs(network, urgency_)),
      boost_(urgency_.size(), 0) {
  for (const int job : job_) job_count_ = std::max(job_count_, job + 1);
  if (urgency_.empty()) return;
  const auto [low, high] = std::minmax_element(urgency_.begin(), urgency_.end());
  breadth_ = std::max(1.0, *high - *low);
}

void Improvement::find(int most) {
  const int last = std::max(plain_passes, passes()) - 1;
  const auto may_try = [&] {
    return may_go_on(tried_, last) || (tried_ < plain_passes && !budget_.stopped());
  };  // the plain passes ignore the clock
  for (int pass = 0; pass < most && !incumbent_.best() && may_try(); ++pass) try_once(settings(tried_++));
}

void Improvement::improve(int most) {
  if (incumbent_.best() && (best_settings_.key.empty() || !(remembered_ == incumbent_.best()->score))) {  // the best came from elsewhere
    remember(incumbent_.best()->schedule, best_settings_.key.empty() ? by_rule(0) : best_settings_);
  }
  for (int pass = 1; pass <= most && !unbeatable() && may_go_on(pass, passes()); ++pass) {
    if (incumbent_.proven() && ++since_proven_ > passes()) return;  // only the lesser aims can still improve
    try_once(settings(pass));
  }
}

// A large problem has longer passes, so a quick call makes fewer of them.
int Improvement::passes() const {
  return std::max(plain_passes, budget_.limits().passes * large_size / std::max(large_size, network_.size));
}

bool Improvement::may_go_on(int pass, int most) const {
  return budget_.extended() ? !budget_.share_spent() : pass <= most && !budget_.guarded();
}

bool Improvement::many_jobs() const { return job_count_ >= few_jobs; }

PassSettings Improvement::settings(int pass) {
  const bool plain = pass < plain_passes;
  PassSettings d = incumbent_.best() && !plain && random_.chance(many_jobs() ? 0.3 : 0.8) ? by_best() : by_rule(pass);
  d.at_leisure = pass < plain_passes && !incumbent_.best();
  d.patience_each = budget_.limits().unscheduling_per_activity;
  d.patience_all = budget_.limits().unscheduling_per_activity + 8 * network_.size;
  follow_precedence(network_, d.key);
  return d;
}

PassSettings Improvement::by_rule(int pass) {
  const bool plain = pass < plain_passes;
  PassSettings d;
  d.generous = (pass % 2 == 1) != (network_.size > large_size);  // a large problem starts with what fails less often
  d.key = urgency_;
  const Rule rule = plain ? plain_rule(pass) : any_rule();
  d.in_time = rule == Rule::in_time || rule == Rule::in_turn;
  const bool by_job = rule == Rule::by_job || (rule == Rule::in_turn && plain);
  for (std::size_t i = 0; by_job && i < d.key.size(); ++i) d.key[i] += 2 * breadth_ * job_[i];
  if (rule == Rule::in_time && !plain && random_.chance(0.5)) d.pull = 0.2 * random_.unit();
  if (rule == Rule::in_turn && !plain) {
    vary_turns(d);
  } else if (!plain) {
    shake(d.key, breadth_ * (0.05 + 0.3 * random_.unit()) * (by_job ? 4 : 1));
  }
  const double firm = !plain && random_.chance(0.5) ? random_.unit() : 0;
  for (std::size_t i = 0; i < network_.problem.maximum_lags.size(); ++i) d.firmness.push_back(random_.chance(firm) ? 3 : 0);
  if (plain || random_.chance(0.5)) {
    for (std::size_t i = 0; i < d.key.size(); ++i) d.key[i] -= boost_[i] * breadth_ / 4;
  }
  return d;
}

// Lets the jobs overlap more or less, in a varied order. Often the last jobs run together, so that there is work for everybody to the end.
void Improvement::vary_turns(PassSettings& d) {
  const double each = (incumbent_.best() ? spread_ : breadth_) / job_count_ * (0.3 + 2 * random_.unit());
  const double last = job_count_ * (random_.chance(0.5) ? 1 : 0.6 + 0.4 * random_.unit());
  const double noise = random_.chance(0.3) ? 0 : 10 * random_.unit();
  std::vector<double> turn;
  for (int job = 0; job < job_count_; ++job) turn.push_back(each * (std::min<double>(job, last) + noise * random_.unit()));
  for (std::size_t i = 0; i < d.key.size(); ++i) d.key[i] += turn[at(job_[i])];
  if (random_.chance(0.5)) shake(d.key, each * 5 * random_.unit());
  if (random_.chance(0.6)) d.pull = 0.03 * random_.unit();
}

// Most often the rule that led to the best schedule.
Improvement::Rule Improvement::any_rule() {
  const bool in_time = incumbent_.best() && best_settings_.in_time;
  if (random_.chance(!in_time ? 0.3 : network_.size > large_size ? 0.8 : 0.5)) {
    return many_jobs() && random_.chance(0.8) ? Rule::in_turn : Rule::in_time;
  }
  return random_.chance(0.5) ? Rule::by_job : Rule::by_urgency;
}

// Many jobs go in turn: a pass finishes what it began before it begins more, and fills the time between. A large problem starts in time, as
// such a pass seldom takes anything out again.
Improvement::Rule Improvement::plain_rule(int pass) const {
  using Rules = std::array<Rule, 3>;
  const bool many = many_jobs();
  const Rules small = many ? Rules{Rule::by_urgency, Rule::in_turn, Rule::in_time} : Rules{Rule::by_urgency, Rule::by_job, Rule::in_time};
  const Rules large{many ? Rule::in_turn : Rule::in_time, Rule::by_urgency, Rule::by_job};
  return (network_.size > large_size ? large : small).at(at(pass / 2));
}

// The order of the best schedule with a small change: everywhere, within a stretch of time, or for some jobs.
PassSettings Improvement::by_best() {
  PassSettings d = best_settings_;
  if (random_.chance(0.2)) d.generous = !d.generous;
  // A pass in time never waits for something more urgent.
  if (d.in_time && network_.size <= large_size && random_.chance(0.4)) d.in_time = false;
  if (d.in_time && random_.chance(0.5)) d.pull = 0.3 * random_.unit();
  if (random_.chance(0.3)) {
    for (int& times : d.firmness) times = random_.chance(0.2) ? 3 - times : times;
  }
  const double move = random_.unit();
  if (move < 0.3) {
    const double size = random_.unit();
    shake(d.key, spread_ * (0.005 + 0.3 * size * size * size));  // mostly small
  } else if (move < 0.6 || (budget_.extended() && !many_jobs())) {
    shake_window(d.key);
  } else {
    move_jobs(d.key);
  }
  return d;
}

void Improvement::shake(Keys& keys, double by) {
  for (double& key : keys) key += by * random_.unit();
}

void Improvement::shake_window(Keys& keys) {
  const double width = spread_ * (0.02 + 0.2 * random_.unit());
  const double begin = *std::min_element(keys.begin(), keys.end()) + spread_ * random_.unit() - width / 2;
  for (double& key : keys) {
    if (key >= begin && key < begin + width) key = begin + width * random_.unit();
  }
}

// Moves late jobs earlier, and a few others in any direction.
void Improvement::move_jobs(Keys& keys) {
  std::vector<double> by(at(job_count_), 0);
  for (std::size_t i = 1 + random_.below(3); i > 0; --i) {
    by[random_.below(by.size())] = spread_ * 0.3 * (random_.unit() - 0.5);
  }
  for (const Goal& goal : network_.problem.goals) {
    const auto a = at(goal.activity);
    const double late = best_settings_.key[a] - goal.due;
    if (late > 0 && random_.chance(0.3)) by[at(job_[a])] = -late * random_.unit();
  }
  for (std::size_t i = 0; i < keys.size(); ++i) keys[i] += by[at(job_[i])];
}

void Improvement::try_once(PassSettings settings) {
  std::optional<Schedule> made = pass(settings);
  if (made && budget_.extended() && network_.size <= most_justified) justify(std::move(settings), std::move(*made));
}

// Moves everything late and makes a pass in that order, as long as that gives a better schedule.
void Improvement::justify(PassSettings settings, Schedule schedule) {
  Score reached = score(network_.problem, schedule);
  for (int again = 0; again < 4 && !budget_.spent(); ++again) {
    if (reached.ready > incumbent_.best()->score.ready * hopeless) return;
    settings.key = justified(network_, bounds_, schedule);
    follow_precedence(network_, settings.key);
    std::optional<Schedule> made = pass(settings);
    if (!made) return;
    const Score again_reached = score(network_.problem, *made);
    if (!(again_reached < reached)) return;
    reached = again_reached;
    schedule = std::move(*made);
  }
}

std::optional<Schedule> Improvement::pass(const PassSettings& settings) {
  PassState state(network_, bounds_, settings);
  PassResult made = Pass(state, budget_, failure_counts_).run();
  budget_.count();
  if (!made.schedule) {
    if (made.stuck >= 0 && !incumbent_.best()) boost_[at(made.stuck)] += 1;
    return std::nullopt;
  }
  const Score reached = score(network_.problem, *made.schedule);
  // Also an equal one: it has another order to vary.
  if (!incumbent_.best() || reached <= incumbent_.best()->score) remember(*made.schedule, settings);
  incumbent_.offer(*made.schedule, reached);
  if (!incumbent_.best()) return std::nullopt;
  return std::move(made.schedule);
}

void Improvement::remember(const Schedule& schedule, const PassSettings& settings) {
  remembered_ = score(network_.problem, schedule);
  best_settings_ = settings;
  best_settings_.key = urgency_;
  double low = unreachable, high = -unreachable;
  for (std::size_t i = 0; i < urgency_.size(); ++i) {
    const Assignment& run = schedule.activities[i];
    if (!run.present) continue;
    best_settings_.key[i] = run.start;
    low = std::min<double>(low, run.start);
    high = std::max<double>(high, run.start);
  }
  spread_ = std::max(1.0, high - low);
}

// Whether every goal is at its earliest start and every set-up is shared.
bool Improvement::unbeatable() const {
  if (!incumbent_.best()) return false;
  if (incumbent_.best()->score.setups > 0) return false;
  const std::vector<Goal>& goals = network_.problem.goals;
  return std::all_of(goals.begin(), goals.end(), [&](const Goal& goal) {
    const Assignment& run = incumbent_.best()->schedule.activities[at(goal.activity)];
    return run.present && run.start == bounds_.earliest(goal.activity);
  });
}

}  // namespace coatday::solver
