#pragma once
// What the checker knows before it judges: the job's own records beside each row of the plan, and what its own clocks say.

#include <initializer_list>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "checker/check.h"
#include "checker/coat_thickness.h"
#include "checker/drying_clock.h"
#include "checker/surface.h"

namespace coatday::checker {

using Breaches = std::vector<Breach>;

/// Times may differ by so much, because the plan may have rounded to the minute.
inline constexpr std::chrono::seconds rounding{60};
inline constexpr Minutes grid{5};
/// A stage that is not reached while the air is known.
inline constexpr Instant never = Instant::max() - std::chrono::hours(24);

struct FaceFacts {
  const piece::Part* part = nullptr;
  const finish::Schedule* schedule = nullptr;
  piece::PartFace face;                 ///< as the part's shape, masks and exceptions have it
  int items = 0;                        ///< of the part, in this entry
  std::optional<std::size_t> opposite;  ///< the entry across the wood, found anew
  std::vector<std::size_t> events;      ///< steps on this face, by start; no turns
};

struct EventFacts {
  const finish::Step* step = nullptr;        ///< none: a turn, a remedy scuff, other work
  const finish::Product* product = nullptr;  ///< of a coat; none: dry
  const shop::Work* work = nullptr;          ///< the order's or the shop's
  std::string load;                          ///< key into PlanFacts::loads; empty: none
  shop::Dust dust = shop::Dust::none;        ///< as the plan or the job says, the dustier
  bool hot = false;
  job::StageInstants stages, fast, slow;  ///< by the checker's own clocks
  job::TimeConstants bodies;              ///< of a coat: what it goes on, from the parts' shapes
  bool own_clock = false;                 ///< false: no coat, or it ended before the air begins; then the checker takes the plan's times
};

struct LoadFacts {
  std::vector<std::size_t> events;  ///< by start, turns too
  std::vector<std::size_t> faces;
  std::map<const piece::Part*, int> items;
  piece::Support support = piece::Support::points;
  bool mixed = false;  ///< its parts rest on different things
};

struct OrderWorkFacts {
  std::size_t piece = 0;
  const job::OrderWork* work = nullptr;
  std::optional<std::size_t> event;
};

/// Lives no longer than the plan and the job.
struct PlanFacts {
  PlanFacts(const job::Plan&, const job::Job&);

  const job::Plan& plan;
  const job::Job& job;
  std::vector<FaceFacts> faces;    ///< as Plan::faces
  std::vector<EventFacts> events;  ///< as Plan::events
  std::map<std::string, LoadFacts> loads;
  std::vector<OrderWorkFacts> order_work;
  std::vector<std::optional<std::size_t>> shop_work;  ///< as Shop::work: its event
  std::vector<shop::WorkingTime> working;
  Clocks clocks;                          ///< in the room's air
  std::map<Hours, ThermalBody> surfaces;  ///< all that lags behind it, cans too
  /// The air at these surfaces. Where the plan's temperatures agree these are taken, because limits and factors have steps.
  std::map<Hours, climate::AirSeries> surface_air;
  std::map<Hours, Clocks> lagging;  ///< the clocks in it

  [[nodiscard]] const job::Event& event(std::size_t i) const { return plan.events[i]; }
  [[nodiscard]] bool coat(std::size_t i) const { return events[i].product != nullptr; }
  /// From its step and the record of its product.
  [[nodiscard]] Film film(std::size_t coat) const { return {events[coat].step, *events[coat].product}; }
  /// When a coat reaches a stage on all that it lies on; its window closes on the first of them.
  [[nodiscard]] std::optional<Instant> clock(std::size_t coat, finish::Stage, Estimate) const;
  /// When the drying clock of a coat shows so many hours wherever it lies.
  [[nodiscard]] std::optional<Instant> dried(std::size_t coat, Hours, Estimate) const;
  /// When a coat reaches the first of these stages that its product has. `never` where the air ends first; the coat's end where it has none.
  [[nodiscard]] Instant reached(std::size_t coat, std::initializer_list<finish::Stage>, Estimate = Estimate::expected) const;
  /// The coat that lies on a face when an event comes to it.
  [[nodiscard]] std::optional<std::size_t> coat_below(std::size_t face, std::size_t event) const;
  /// May it be split at breaks? A coat and a turn may not, whatever the plan says. Other work may where the job allows it.
  [[nodiscard]] bool pauses(std::size_t event) const;
  /// Time at work: all of it, or the working hours in it where it may pause.
  [[nodiscard]] std::vector<shop::WorkingTime> at_work(std::size_t event) const;
  [[nodiscard]] std::chrono::seconds hands_on(std::size_t event) const;
  [[nodiscard]] bool concerns(const job::OrderWork&, const LoadFacts&) const;
  [[nodiscard]] bool concerns(const job::OrderWork&, std::size_t face) const;

  /// Whether a limit between them began with what was already done, and the plan says that it is missed.
  [[nodiscard]] bool said_missed(std::size_t before, std::size_t event) const;

  [[nodiscard]] std::string when(Instant) const;  ///< Mon 11 Jan 08:00, in the shop's zone
  [[nodiscard]] std::string name(std::size_t event) const;
  [[nodiscard]] std::string face_name(std::size_t face) const;

 private:
  void look_up_faces();
  void look_up_events();
  void gather_loads();
  void find_work();
  void compute_surfaces();
  void time_events();
  [[nodiscard]] const Clocks& clocks_on(Hours body) const { return body > Hours(0) ? lagging.at(body) : clocks; }
};

}  // namespace coatday::checker
