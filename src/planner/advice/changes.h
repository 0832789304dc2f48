#pragma once
// What a maker could change, as changes of the job. Changes of one kind differ in size; the smallest comes first.

#include <functional>

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// One change of a job; `text` may look at the plan that it leads to.
struct Change {
  std::function<void(job::Job&, Instant& from)> make;
  std::function<std::string(const job::Plan&)> text;
  std::function<bool(const job::Plan&)> counts{};  ///< whether that plan stands for the change; null: always
};
[[nodiscard]] Change change(std::function<void(job::Job&, Instant&)> make, std::string text);

/// One kind of change in several sizes, the smallest first.
using ChangeSizes = std::vector<Change>;

/// How late the whole order is by the slow clocks. Returns nothing where a piece never gets ready.
[[nodiscard]] std::optional<Hours> lateness(const job::Plan&);

/// A scuff where a recoat window closes and nothing makes a missed one good.
[[nodiscard]] std::vector<ChangeSizes> scuffs(const job::Job&);
/// Heat, outside the heated hours or all day, up to what they are heated to, and drier air: as the keys of the shop file would have it. What
/// a logger has read stays as it is.
enum class Heated { at_night, throughout, either };
[[nodiscard]] ChangeSizes warmth(const job::Job&, const job::Plan&, Heated = Heated::either);
[[nodiscard]] ChangeSizes dryness(const job::Job&, const job::Plan&);
[[nodiscard]] std::string at_night_text(const job::Job&, Celsius);
[[nodiscard]] std::string throughout_text(const job::Job&, Celsius);
/// The same where outdoor air comes through a room: by its heater, within what it can do where that is told, and by a dehumidifier, its own,
/// or one that is large enough. None where that is already set so dry.
[[nodiscard]] bool has_room(const job::Job&);
[[nodiscard]] bool has_moisture(const job::Job&);
[[nodiscard]] Change heated_at_night(const job::Job&, Celsius);
[[nodiscard]] Change heated_throughout(const job::Job&, Celsius);
[[nodiscard]] std::optional<Change> dehumidifier_at(const job::Job&, RelativeHumidity);
/// 23 °C or warmer and 30 to 50 % RH at all hours: the reference air, or what dries faster without being unusual.
[[nodiscard]] Change good_air();
/// Another product of the same role in place of one that is used, faster drying by its record, on the same material in some schedule, and
/// with nothing that validate() refuses or warns of anew: what it goes over and under, both faces, methods, food. Fastest last.
[[nodiscard]] std::vector<ChangeSizes> another_product(const job::Job&);
/// Somebody for two hours of one day, one more person, two more. Plans with one more to see when there would be something for them to do.
[[nodiscard]] ChangeSizes hands(const job::Job&, const job::Request&);
[[nodiscard]] ChangeSizes places(const job::Job&, std::size_t place);
/// Friday's hours on a Saturday or a Sunday that has none.
[[nodiscard]] ChangeSizes another_day(const job::Job&);
[[nodiscard]] ChangeSizes later_start(const job::Job&, const job::Request&);

}  // namespace coatday::planner
