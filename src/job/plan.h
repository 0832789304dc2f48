#pragma once
// A plan: what is done when to which face, and what follows from it. It holds all that is needed to judge it without the planner.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "climate/air.h"
#include "climate/surface.h"
#include "finish/catalogue.h"
#include "finish/film.h"
#include "finish/law.h"
#include "job/job.h"
#include "job/step_id.h"
#include "job/time_spent.h"
#include "piece/piece.h"
#include "shop/packing.h"
#include "shop/shop.h"

namespace coatday::job {

enum class EventKind { prepare, fill, stain, seal, topcoat, prime, paint, scuff, turn, bake, other };
[[nodiscard]] std::string_view word(EventKind);
[[nodiscard]] bool is_coat(EventKind);  ///< fill to paint: something wet goes on

using StageInstants = finish::PerStage<std::optional<Instant>>;

/// What a coat lies on, by time constant, to the minute, each once: 0 follows the room's air. Its wait is over when it is on all of them, its
/// window closes when it does on one.
using TimeConstants = std::vector<Hours>;

/// Must not start before another event's stage; `stage` is empty for the event's end (plus `rest`).
struct AfterEvent {
  std::string event;
  std::optional<finish::Stage> stage;
  Instant earliest;
  std::string reason;  ///< "dry to recoat", "glue sets 24 h"
  bool late = false;   ///< by the slow clock
};
/// Must start before another event's stage closes, by the fast clock, or a limit passes.
struct BeforeEvent {
  std::string event;
  std::optional<finish::Stage> stage;
  Instant latest;
  std::string reason;
};

/// What a coat gives off, and the fresh air that keeps it under the shop's share of the lower explosive limit. No clearance.
struct Vapour {
  Litres solvent;  ///< liquid, thinner included
  Grams mass;
  CubicMetres air;             ///< that thins all of it
  CubicMetresPerHour airflow;  ///< while it is put on, as if each bit's solvent left at once
  Minutes pauses{0};           ///< longer at it than the hands need, for the exhaust's sake
};

struct Event {
  std::string id;  ///< stable; the text of `step_id`
  StepId step_id;
  EventKind kind = EventKind::other;
  std::string name;                  ///< "clear coat 2", "turn", "glue up"
  std::optional<std::size_t> piece;  ///< index; none: the shop's own work
  std::string load;                  ///< the parts that move together: "top", "legs x4", "door 1-8"
  std::string
      load_name;  ///< the load beside others: with its piece where another has a part of that name; its piece where it is of no load
  std::vector<std::size_t> faces;  ///< indices into Plan::faces
  std::string step;                ///< id of the schedule's step; empty for other work
  std::string product;             ///< id; empty for dry work
  int coat = 0;                    ///< which coat of this product on these faces, from 1; 0: none
  Instant start, end;
  Minutes set_up{0};    ///< at the start, 0 where shared
  Minutes clean_up{0};  ///< at the end
  int people = 1;
  bool film = false;
  bool hot = false;
  shop::Dust dust = shop::Dust::none;
  bool may_pause = false;
  bool done = false;      ///< from the history
  bool fixed = false;     ///< the shop's own work at its own hour
  bool delivers = false;  ///< brings the piece to its place
  std::optional<finish::Method> method;
  std::optional<int> grit;
  std::optional<Instant> wipe_by;  ///< for what is wiped off
  std::vector<finish::BakeStage> bake;
  finish::PerEstimate<StageInstants> stages;  ///< a coat's
  TimeConstants bodies;                       ///< that a coat lies on
  std::optional<Micrometres> wet_film;        ///< of a coat, where its step asks for one
  finish::DryingFactor drying;                ///< and how many times as long it dries as its record says
  std::optional<Litres> volume;               ///< from the can
  std::optional<Vapour> vapour;               ///< a coat's that has solvent in it
  int mixes = 0;                              ///< batches of a two-part product within its pot life
  std::optional<piece::Support> support;
  std::vector<AfterEvent> after;
  std::vector<BeforeEvent> before;
  std::vector<std::string> cautions;  ///< keys into Plan::cautions
  std::string why;                    ///< one sentence: what decided this start
  std::string kept_by;                ///< the part of it that names a place, people or the air in the way; empty: none of these is
  std::string note;
};

struct FaceEntry {
  std::string id;
  std::size_t piece = 0;
  std::string part;  ///< as in the ledger: "top", "door 1-8"
  std::string part_id;
  std::string face;
  std::optional<std::size_t> opposite;
  std::string material;  ///< species id or "steel"
  bool wood = true;
  SquareMetres area;  ///< coated, all items of the entry
  bool end_grain = false;
  int coats = 0;  ///< planned film coats
  std::optional<piece::Exception> exception;
};

struct HandOver {
  std::optional<Instant> handle, wrap, deliver, careful_use, full_use;
};

struct PieceResult {
  std::string id;
  std::string name;
  std::string order;  ///< its order's name where several are planned together; else empty
  std::optional<Instant> due;
  finish::PerEstimate<HandOver> ready;  ///< without a fast delivery, which waits for hands as well
  std::optional<Hours> slack;           ///< from delivery by the slow clock until due; negative when late
};

/// Dry to handle, and spaced, until the next step or dry to pack.
struct StoodAside {
  Instant from, until;
};

/// One place held while a load, or some of it, dries.
struct PlaceUse {
  std::size_t event;  ///< the coat that began it
  std::string place;  ///< "rack 3"; "points" where there is one
  Instant from, until;
  bool across = false;               ///< shared by stretches of its width
  std::vector<shop::Laid> laid;      ///< what lies where on it; an item is a part of the piece, by index
  std::optional<StoodAside> then{};  ///< what lay on it; none where its next step begins, or it may be packed, by then
};

struct Bought {
  Litres size;
  int count = 0;
  std::optional<Money> price;  ///< of one
};
struct Purchase {
  std::string product;
  std::string part;  ///< two-part products: "base", "hardener"; else empty
  SquareMetres area;
  Litres need;
  Litres on_hand;
  std::vector<Bought> buy;
  Litres left_over;
  std::optional<Litres> spare{};  ///< a can of this size among them, since less than a twentieth would be left without it
  std::optional<Money> cost;
};
/// Abrasives, rags, points: things that are counted.
struct Sundry {
  std::string name;
  int count = 0;
  std::string unit;
  std::string source;
};

enum class Severity { note, warning, error };
struct Finding {
  std::string code;  ///< kebab case, stable
  Severity severity = Severity::warning;
  std::string message;
  std::string subject;  ///< "table / top / underside"
  Location where;
};

/// What became of the starts of an earlier plan. What is recorded as done and what has a fixed hour is not counted.
struct Move {
  std::size_t event;  ///< index into Plan::events
  Instant was;
};
struct Changes {
  std::vector<Move> moved;  ///< by their new start
  std::size_t stayed = 0;
  std::size_t added = 0;    ///< events that the earlier plan did not have
  std::size_t unknown = 0;  ///< events of the earlier plan that this one does not have
};

/// Somebody comes to the finishing room and works there, until nobody's hands are on anything. Of what is still to be done.
struct Visit {
  Instant from, until;
  Minutes work{0};                  ///< in which hands are on something
  std::vector<std::size_t> events;  ///< indices into Plan::events, by start; the shop's own work is not among them
};

/// Open days pass without a coat until this one. A wait that goes on over a Monday is named again there.
struct Wait {
  LocalDay day;          ///< the first of them in its week
  std::size_t step;      ///< the coat that comes next: index into Plan::events
  std::string reason;    ///< one sentence: what decided its start
  bool air_fits = true;  ///< the coat's finish may go on at some working hour of that day
  std::string air;       ///< else what the air of that day has against it, where that is known
};

/// A change that would help, where nothing fits or it is late.
struct Proposal {
  std::string words;
  std::vector<std::string> set;  ///< the same as keys of the files, "air.night=13 °C" each; empty: no key says it
  std::optional<Instant> ready;  ///< of the plan with it: everything may be delivered, by the slow clocks
};

enum class Status { planned, impossible, not_found };

struct Plan {
  Instant from;
  Instant until;  ///< the air covers [from, until)
  shop::Shop shop;
  std::vector<shop::WorkingTime> working;  ///< that the plan could use
  climate::AirSeries air;
  std::map<Hours, climate::Surface> surfaces;       ///< what lags behind the air: wood, steel, cans, by time constant; over the same rows
  std::map<std::string, finish::Product> products;  ///< those in use
  std::vector<PieceResult> pieces;
  std::vector<FaceEntry> faces;
  std::vector<Event> events;  ///< by start
  std::vector<PlaceUse> places;
  std::vector<Purchase> purchase;
  std::vector<Sundry> sundries;
  std::vector<Finding> findings;
  std::vector<Visit> visits;                    ///< by time
  std::vector<Wait> waits;                      ///< by day
  std::vector<TimeSpent> time_spent;            ///< of each order
  std::optional<Changes> changes;               ///< against the earlier plan, where there was one
  std::map<std::string, std::string> cautions;  ///< key -> text
  Status status = Status::planned;
  std::vector<std::string> contradiction;  ///< infeasible: the requirements, in the user's words
  std::string in_short;                    ///< the step that cannot be in time, where one can be named
  std::vector<Proposal> proposals;         ///< what asks least of the maker first
  bool proven = false;  ///< none is less late, nor ready on an earlier day, with the parts in these loads and the faces in this order
  std::optional<Instant> ready;             ///< objective: everything may be delivered, by the slow clocks
  std::optional<Instant> ready_bound;       ///< nothing can be ready before
  std::optional<Instant> ready_bound_here;  ///< the same with these loads and this order of faces
  int days_late_bound = 0;                  ///< so many days late, all pieces together, are beyond help with these loads
  bool search_cut_off = false;              ///< by the request's guard: another machine may find another plan
  bool help_cut_off = false;                ///< some proposals would have taken too long to plan
  Hours seconds_spent{0};
};

/// Local days between what was promised and the delivery; 1 where it is late on its day, 0 where it is not late.
[[nodiscard]] int days_late(const Zone&, Instant due, Instant delivered);
[[nodiscard]] int days_late(const Plan&, const PieceResult&);

/// Nothing of the piece is left to do. It is out of the days, and keeps its dates.
[[nodiscard]] bool is_finished(const Plan&, std::size_t piece);

}  // namespace coatday::job
