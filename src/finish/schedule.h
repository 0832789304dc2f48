#pragma once
// A finishing schedule: the ordered steps of a finish.

#include <optional>
#include <string>
#include <vector>

#include "finish/product.h"

namespace coatday::finish {

enum class StepKind { prepare, fill, stain, seal, topcoat, prime, paint, scuff, bake, other };
[[nodiscard]] std::string_view word(StepKind);
template <>
std::span<const std::string_view> words<StepKind>();

/// Which faces a step is for. Only a step that adds no film may leave faces out without an exception in the order.
enum class StepFaces { all, show };

struct BakeStage {
  Celsius temperature;
  Hours duration{0};
};

struct Step {
  std::string id;    ///< unique in its schedule
  std::string name;  ///< "clear coat 2", "sand to 180"
  StepKind kind = StepKind::prepare;
  std::optional<std::string> product;  ///< id; none for dry work
  StepFaces faces = StepFaces::all;
  std::optional<Method> method;  ///< the first that both product and shop have, where none is said
  std::optional<int> grit;
  std::optional<SquareMetresPerHour> work_rate;  ///< dry work by area ...
  std::optional<Hours> takes;                    ///< ... or a fixed time per part
  std::optional<Hours> wait;                     ///< at least so long after the step before (elapsed, on top of the stages)
  std::optional<Stage> after_stage;  ///< the stage that the coats before must have reached; default: sand for abrading, recoat for a coat
  std::optional<Hours> within;       ///< must begin within this after the step before ended
  double thinner_share = 0;          ///< this coat alone, on top of the product's own
  std::optional<Micrometres> wet_film, dry_film;  ///< of this coat, instead of its product's own; see finish/film.h
  bool dusty = false;
  bool hot = false;  ///< sparks or flame
  std::vector<BakeStage> bake;
  std::string note;  ///< "makes powder, does not clog"
  std::string source;
  Location where;
};

enum class Suits { wood, metal };

struct Schedule {
  std::string id;
  std::string name;
  Suits suits = Suits::wood;
  std::string use;  ///< what it is good for, in a line
  std::vector<Step> steps;
  std::string source;
  Location where;
};

}  // namespace coatday::finish
