#pragma once
// A load: the parts of one piece that go through the same schedule together because they fit the drying places together.

#include <string>
#include <vector>

#include "job/load_items.h"
#include "job/plan.h"
#include "shop/packing.h"

namespace coatday::planner {

/// So many items of one part.
struct LoadPart {
  std::size_t part = 0;  ///< index in the piece
  int first = 0;         ///< items first .. first + count - 1
  int count = 0;
  std::string label;  ///< "top", "leg x4", "door 9-16"
};

/// Loads share a place by stretches of its length, counted in steps. A place without a length is a single step.
inline constexpr Metres stretch_step(0.01);
[[nodiscard]] int steps_of(const shop::DryingPlace&, Metres gap);

/// How the whole load lies on one kind of a shop's places (an index into Shop::places).
struct PlaceChoice {
  std::size_t place = 0;
  shop::Packing packing;  ///< its items are the load's parts
  int steps = 0;          ///< a stretch of one place, or whole places
};

struct Load {
  std::size_t piece = 0;
  std::string id;  ///< stable: what it holds, by job::load_id
  job::LoadItems holds;
  std::string label;      ///< "top, rail x2"
  std::string load_name;  ///< as Event::whose
  std::vector<LoadPart> parts;
  const finish::Schedule* schedule = nullptr;
  piece::Support support = piece::Support::points;
  std::vector<PlaceChoice> choices;  ///< empty: it fits nowhere
  std::vector<std::size_t> faces;    ///< indices into the face entries
  int items = 0;
  int turning_people = 1;
  job::TimeConstants bodies;  ///< of its parts
};

/// A kind of place as loads share it: by stretches of its length, or of its width where that leaves more room.
struct SharedPlace {
  shop::DryingPlace place;  ///< length and width are swapped where it is turned
  bool turned = false;
};

struct Loads {
  std::vector<SharedPlace> places;  ///< as Shop::places
  std::vector<Load> loads;
  std::vector<job::FaceEntry> faces;
  std::vector<piece::Face> shapes;  ///< of each face entry: its pass, whether it shows
};

/// How parts come together in loads.
enum class Batching {
  fit,         ///< together where places and the longest shift allow, else in equal batches
  one_part,    ///< likewise, but no two parts together
  half,        ///< likewise, in twice as many batches
  whole_part,  ///< one load a part, all its items: the take-off
  one_item     ///< one item of each part, alone: a relaxation whose times can only be earlier
};
/// What was done together stays together, and apart from what was not done with it.
[[nodiscard]] Loads make_loads(const job::Job&, Batching);

/// The loads of a piece of which something is recorded as done.
[[nodiscard]] std::vector<job::LoadItems> recorded_loads(const job::Job&, const std::string& piece);

}  // namespace coatday::planner
