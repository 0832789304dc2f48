#pragma once
// A small sound plan, written by hand: a table top on points, two legs on hooks, one finish, the same air day and night.

#include <string>
#include <string_view>

#include "job/plan.h"

namespace coatday::checker::test {

struct Small {
  job::Job job;
  job::Plan plan;

  [[nodiscard]] job::Event& event(std::string_view id);
  [[nodiscard]] std::size_t index(std::string_view id) const;
  [[nodiscard]] std::size_t face(std::string_view part, std::string_view name) const;
  [[nodiscard]] finish::Product& product();
  [[nodiscard]] finish::Step& step(std::string_view id);
  [[nodiscard]] shop::Work& shop_work(std::string_view id);
  [[nodiscard]] job::OrderWork& order_work(std::string_view id);

  void erase(std::string_view id);  ///< an event, and the places that it held
  job::Event& add_like(std::string_view id, std::string new_id);
  void move(std::string_view id, Instant start);  ///< with its places' beginning
  /// Stages, volumes, ledger, dates and purchase anew, by hand formulas: the air is the reference air, so every clock shows elapsed time.
  void settle();
  void count_visits();  ///< so that the plan says how many there are
};

/// Monday 11 January 2027 and the days after, at an hour of UTC.
[[nodiscard]] Instant at(int day, int hour, int minute = 0);

[[nodiscard]] climate::AirSeries reference_air(Instant from, Instant until);

[[nodiscard]] Small small_plan();

/// Gives the event this id.
void identify(job::Event&, std::string id);

}  // namespace coatday::checker::test
