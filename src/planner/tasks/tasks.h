#pragma once
// What has to be done, in the trade's terms: tasks, and what ties them to each other. Nothing here says when.

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "job/step_id.h"
#include "planner/tasks/loads.h"
#include "planner/wood/wood_care.h"

namespace coatday::planner {

/// More people, and the hands-on time that a task then takes.
struct Crew {
  int people = 1;
  Minutes hands_on{0};
  bool may_pause = false;
};

struct Task {
  std::string id;  ///< text of `step_id`
  job::StepId step_id;
  job::EventKind kind = job::EventKind::other;
  std::string name;
  std::optional<std::size_t> piece;
  std::optional<std::size_t> load;
  std::vector<std::size_t> faces;
  std::string step;
  const finish::Product* product = nullptr;
  job::TimeConstants bodies;  ///< that a coat goes on
  bool on_wood = true;        ///< these are of wood; else of steel
  std::optional<finish::Method> method;
  int coat = 0;
  Minutes hands_on{0};  ///< set-up and clean-up not in it
  Minutes set_up{0};
  Minutes clean_up{0};
  int mixes = 0;
  std::optional<Micrometres> wet_film;  ///< a coat's, where its step asks for one
  finish::DryingFactor drying;          ///< and what that does to its drying
  std::optional<Litres> volume;         ///< a coat's, from the can
  std::optional<job::Vapour> vapour;    ///< a coat's that has solvent in it
  int people = 1;
  std::optional<Crew> crew;  ///< it may be done by these instead
  shop::Dust dust = shop::Dust::none;
  bool hot = false;
  bool heavy = false;  ///< too heavy for one person to lift
  bool may_pause = false;
  bool optional = false;               ///< a scuff for a missed window, or carrying in what is here already
  bool carries_in = false;             ///< brings in what is kept elsewhere
  bool milestone = false;              ///< takes no time and nobody: "may be delivered"
  bool delivers = false;               ///< the order's work of bringing the piece to its place
  std::optional<Instant> fixed_start;  ///< the shop's own work at its hour
  std::optional<Instant> not_before, not_after;
  std::string not_before_why;                    ///< where there is more to say than the hour
  std::optional<std::vector<RestSpan>> at_rest;  ///< a first coat starts only then: the wood is at rest
  std::optional<job::Done> done;
  std::optional<Instant> earlier_start;  ///< its start in an earlier plan
  std::optional<Hours> stand;
  std::optional<int> grit;
  std::vector<finish::BakeStage> bake;
  std::optional<piece::Support> support;
  std::string note;

  void identify(job::StepId of) {
    id = job::to_string(of);
    step_id = std::move(of);
  }
};

/// How long one task waits for another.
struct StageOf {
  finish::Stage stage;
};  ///< of the coat
struct Dried {
  Hours need{0};
};  ///< hours of the coat's drying clock
struct Elapsed {
  Hours hours{0};
};  ///< after its end
/// Until what was kept elsewhere is as warm as what was always here.
struct WarmedUp {
  Celsius from;
  job::TimeConstants bodies;
};
using Wait = std::variant<StageOf, Dried, Elapsed, WarmedUp>;

struct After {  ///< `task` starts no earlier than `wait` after the end of `other`
  std::size_t task = 0, other = 0;
  Wait wait;
  bool late = false;  ///< by the slow clock
  std::string reason;
};
struct Before {  ///< `task` starts no later than the limit after the end of `other`; a window, by the fast clock
  std::size_t task = 0, other = 0;
  Wait limit;
  std::optional<std::size_t> remedy;  ///< the optional scuff that makes a missed window good
  std::string reason;
};
struct PlaceHold {  ///< a place from the start of `coat` until `until` starts or the coat is dry to handle
  std::size_t coat = 0;
  std::optional<std::size_t> until;
  std::size_t load = 0;
};
/// When a piece may be delivered: by the expected clocks, and by the slow ones. A delivery that is work waits for the slow ones: it is agreed
/// days ahead.
struct Delivery {
  std::size_t piece = 0;
  std::size_t expected = 0, safe = 0;  ///< tasks
  std::optional<std::size_t> work;     ///< the task that brings the piece to its place, unless its hour is fixed
};

/// How a two-part product is mixed here. Both times are the worst in any air in which it may go on while the shop works.
struct Mixing {
  Hours pot_life{0};
  Hours induction{0};
};
using Mixings = std::map<const finish::Product*, Mixing>;

struct TaskGraph {
  std::vector<Task> tasks;
  std::vector<After> after;
  std::vector<Before> before;
  std::vector<PlaceHold> place_holds;
  std::vector<Delivery> deliveries;
  Mixings mixings;  ///< of the products with a pot life
  WoodCare wood;
};

/// Which side of a lying part goes first. The trade's rule: undersides and insides before outsides (Utah State University Extension HI 28).
enum class Sides { hidden_first, show_first };

/// Everything that the job asks for, over these loads.
[[nodiscard]] TaskGraph make_tasks(const job::Job&, const Loads&, Mixings, Sides = Sides::hidden_first, WoodCare = {});

}  // namespace coatday::planner
