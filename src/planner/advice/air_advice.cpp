#include "planner/advice/air_advice.h"

#include <algorithm>
#include <map>

#include "job/compare.h"
#include "planner/advice/air.h"
#include "planner/advice/amounts.h"
#include "planner/advice/another_product.h"
#include "planner/advice/hands.h"
#include "planner/advice/trials.h"

namespace coatday::planner {

namespace {

// Beyond, planning again and again would keep people waiting. What comes with a plan without being asked for may take a second (judgement).
constexpr std::size_t most_faces = 1200, events_at_once = 800, most_steps_at_once = 300;
constexpr int least_air_plans = 6, most_plans = 40;
/// Conflicts and passes that make the plans of small orders comparable. Judgement, from the samples.
constexpr long search = 1000;

/// A larger order has fewer plans made, so that its advice takes hardly longer.
Trials::Budget budget(std::size_t events, bool thorough) {
  constexpr std::size_t most_events = 800;  // in all plans
  const auto plans = std::clamp(static_cast<int>(most_events / std::max(events, std::size_t{1})), least_air_plans, most_plans);
  constexpr double seconds_when_asked = 5;
  Trials::Budget all{thorough ? plans : most_plans, thorough ? search : 0};
  if (thorough) all.seconds = seconds_when_asked;
  return all;
}

/// In one of a kind, as many products are tried in place of others.
constexpr std::size_t most_products = 1;
constexpr Hours least_gain{1};
constexpr Hours any{-1e9};  // gain, or loss

/// Hours until everything may be delivered in which nobody is at work on it.
Hours waiting(const job::Plan& plan) {
  Hours idle(*plan.ready - plan.from);
  Instant until = plan.from;
  for (const job::Event& event : plan.events) {  // by start
    const Instant start = std::max(event.start, until), end = std::min(event.end, *plan.ready);
    if (end <= start) continue;
    idle -= Hours(end - start);
    until = end;
  }
  return idle;
}

/// Until it is ready the shop's air is damper than the reference air at some time.
bool damp(const job::Plan& plan) {
  const auto rows = plan.air.rows();
  return std::any_of(rows.begin(), rows.end(), [&](const climate::AirRow& row) {
    return row.from >= plan.from && row.from < *plan.ready && row.air.humidity > finish::reference_air.humidity;
  });
}

class AirAdviser {
 public:
  AirAdviser(const job::Job& job, const job::Request& request, const job::Plan& plan)
      : job_(job),
        plan_(plan),
        all_(request.advice == job::AdviceDepth::thorough),
        ready_(*plan.ready),
        trials_(job, request, budget(plan.events.size(), all_)) {}

  job::Advice run() {
    try_all();
    advice_.cut_off = trials_.cut_off();
    return std::move(advice_);
  }

 private:
  void try_all() {
    if (all_) search_alone();
    if (!all_ && waiting(plan_) < job::noticeable) return nothing_to_gain();
    const Waits waits = sum_of_waits();
    const bool crowded = waits.hands + waits.all_places() > waits.air;
    if (crowded) add_amounts(waits);
    if (!all_ || waits_in_good_air()) add_air_and_products();
    if (!crowded) add_amounts(waits);
  }

  struct Help {
    Hours sooner{0};
    Trial trial;
  };

  /// For what the orders wait, in all.
  struct Waits {
    Hours air{0}, hands{0};
    std::map<std::string, Hours> places;

    [[nodiscard]] Hours all_places() const {
      Hours sum{0};
      for (const auto& [place, time] : places) sum += time;
      return sum;
    }
  };

  void add_air_and_products() {
    const std::size_t before = advice_.suggestions.size();
    add_air();
    if (!all_ && advice_.suggestions.size() == before && !waits_in_good_air()) return;
    for (std::size_t i = before; i < advice_.suggestions.size(); ++i)
      advice_.waits_for_air = std::max(advice_.waits_for_air.value_or(Hours(0)), advice_.suggestions[i].sooner);
    add_products();
    std::stable_sort(advice_.suggestions.begin() + static_cast<std::ptrdiff_t>(before), advice_.suggestions.end(),
                     [](const job::Suggestion& a, const job::Suggestion& b) { return a.sooner > b.sooner; });
  }

  /// What the search that every trial has does for the plan as it is: not to be shown as a change's gain.
  void search_alone() {
    const auto same = attempt(change([](job::Job&, Instant&) {}, ""), any);
    if (!same || same->sooner <= Hours(0)) return;
    ready_ = *same->trial.plan.ready;
    advice_.searched = ready_;
  }

  void nothing_to_gain() { advice_.waits_for_air = Hours(0); }

  bool waits_in_good_air() {
    const auto ideal = attempt(good_air(), any);
    if (!ideal) return false;
    advice_.waits_for_air = std::max(Hours(0), ideal->sooner);
    return ideal->sooner >= job::noticeable;
  }

  /// Heat by night alone is the smaller change: heat throughout has to gain an hour more.
  void add_air() {
    const auto throughout = best(warmth(job_, plan_, Heated::throughout));
    const auto at_night = throughout || all_ ? best(warmth(job_, plan_, Heated::at_night)) : std::nullopt;
    add(at_night, true);
    if (!at_night || (throughout && throughout->sooner >= at_night->sooner + least_gain)) add(throughout, true);
    if (all_ || damp(plan_)) add(best(dryness(job_, plan_)), true);
  }

  /// What is done was done with the products as they are.
  void add_products() {
    if (!job_.order.history.empty()) return;
    std::vector<ChangeSizes> kinds = another_product(job_);
    if (!all_ && kinds.size() > most_products) kinds.resize(most_products);
    for (const ChangeSizes& sizes : kinds) add(best(sizes), false);
  }

  /// Said where the files with its keys give it, too.
  void add(const std::optional<Help>& help, bool air) {
    const auto sure = help ? trials_.as_set(help->trial, gains(job::noticeable)) : std::nullopt;
    if (!sure) return;
    advice_.suggestions.push_back(suggestion(*sure));
    advice_.suggestions.back().air = air;
  }

  [[nodiscard]] Waits sum_of_waits() const {
    Waits waits;
    for (const job::TimeSpent& spent : plan_.time_spent) {
      for (const job::TimeShare& share : spent.shares) {
        waits.air += share.cause == job::TimeCause::air ? share.time : share.slower;
        if (share.cause == job::TimeCause::hands) waits.hands += share.time;
        if (share.cause == job::TimeCause::place) waits.places[share.place] += share.time;
      }
    }
    return waits;
  }

  /// Of what the orders wait for a day or more.
  void add_amounts(const Waits& waits) {
    if (!all_ && plan_.events.size() > most_steps_at_once) return;
    for (std::size_t p = 0; p < job_.shop.places.size(); ++p) {
      const auto place = waits.places.find(job_.shop.places[p].name);
      if (place != waits.places.end() && place->second >= job::noticeable) add_amount(places(job_, p));
    }
    if (waits.hands >= job::noticeable) add_amount(people(job_));
  }

  void add_amount(const Amount& amount) {
    std::map<int, Help> known;
    const auto gain = [&](int more) -> std::optional<Hours> {
      const auto help = attempt(amount.change(more), job::noticeable);
      if (!help) return std::nullopt;
      return known.emplace(more, *help).first->second.sooner;
    };
    for (const int more : worth_having(3 * amount.now, job::noticeable, gain)) add(known.at(more), false);
  }

  /// What the change does. Nothing where that gives no plan, gains less than `least`, or no more plans may be made.
  std::optional<Help> attempt(const Change& change, Hours least) {
    const Change* const changes[] = {&change};
    auto trial = trials_.run(changes, gains(least));
    if (!trial) return std::nullopt;
    const Hours sooner(ready_ - *trial->plan.ready);
    return Help{sooner, *std::move(trial)};
  }

  [[nodiscard]] Trials::Worth gains(Hours least) const {
    return [this, least](const job::Plan& plan) { return plan.ready && Hours(ready_ - *plan.ready) >= least; };
  }

  [[nodiscard]] job::Suggestion suggestion(const Trial& trial) const {
    job::Suggestion help;
    help.words = trial.text;
    help.set = trial.set;
    help.start = trial.from;
    help.ready = *trial.plan.ready;
    help.sooner = Hours(ready_ - *trial.plan.ready);
    help.buys = job::buy_changes(plan_, trial.plan);
    help.dearer = job::dearer(plan_, trial.plan);
    help.heat = more_heat(trial.plan);
    return help;
  }

  [[nodiscard]] std::optional<job::Heat> more_heat(const job::Plan& changed) const {
    const Instant from = std::max(plan_.from, changed.from), until = std::max(*plan_.ready, *changed.ready);
    const auto was = job::heat_used(plan_, from, until), now = job::heat_used(changed, from, until);
    if (!was || !now) return std::nullopt;
    job::Heat more{now->kilowatt_hours - was->kilowatt_hours, {}};
    if (was->cost && now->cost) more.cost = *now->cost - *was->cost;
    return more;
  }

  /// What makes it ready soonest; of those within an hour the smallest. Of one of a kind the largest alone.
  std::optional<Help> best(const ChangeSizes& sizes) {
    std::vector<Help> helps;
    for (const Change& change : sizes) {
      if (!all_ && &change != &sizes.back()) continue;
      if (auto help = attempt(change, job::noticeable)) helps.push_back(std::move(*help));
    }
    const auto most = std::max_element(helps.begin(), helps.end(), [](const Help& a, const Help& b) { return a.sooner < b.sooner; });
    if (most == helps.end()) return std::nullopt;
    return *std::find_if(helps.begin(), helps.end(), [&](const Help& help) { return help.sooner >= most->sooner - least_gain; });
  }

  const job::Job& job_;
  const job::Plan& plan_;
  bool all_;
  Instant ready_;
  job::Advice advice_;
  Trials trials_;
};

}  // namespace

job::Advice advise_on_air(const job::Job& job, const job::Request& request, const job::Plan& plan) {
  if (plan.status != job::Status::planned || !plan.ready) return {};
  const bool thorough = request.advice == job::AdviceDepth::thorough;
  job::Advice too_large;
  too_large.too_large = true;
  if (thorough ? plan.faces.size() > most_faces : plan.events.size() > events_at_once) return too_large;
  return AirAdviser(job, request, plan).run();
}

}  // namespace coatday::planner
