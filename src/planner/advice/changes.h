#pragma once
// What a maker could change, as changes of the job: levers of one kind each, the smallest change first.

#include <functional>

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// One change of a job; `words` may look at the plan that it leads to.
struct Change {
  std::function<void(job::Job&, Instant& from)> make;
  std::function<std::string(const job::Plan&)> words;
  std::function<bool(const job::Plan&)> counts{};  ///< whether that plan stands for the change; null: always
};
[[nodiscard]] Change change(std::function<void(job::Job&, Instant&)> make, std::string words);

/// Of one kind, the smallest first.
using Lever = std::vector<Change>;

/// How late the whole order is, on the late side; nothing where a piece never gets ready.
[[nodiscard]] std::optional<Hours> lateness(const job::Plan&);

/// A scuff where a recoat window closes and nothing makes a missed one good.
[[nodiscard]] std::vector<Lever> scuffs(const job::Job&);
/// Heat, outside the heated hours or all day, up to what they are heated to, and drier air: as the keys of the shop file would have it. What
/// a logger has read stays as it is.
enum class Heated { at_night, throughout, either };
[[nodiscard]] Lever warmth(const job::Job&, const job::Plan&, Heated = Heated::either);
[[nodiscard]] Lever dryness(const job::Job&, const job::Plan&);
[[nodiscard]] std::string at_night_words(const job::Job&, Celsius);
[[nodiscard]] std::string throughout_words(const job::Job&, Celsius);
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
[[nodiscard]] std::vector<Lever> another_product(const job::Job&);
/// Somebody for two hours of one day, one more person, two more. Plans with one more to see when there would be something for them to do.
[[nodiscard]] Lever hands(const job::Job&, const job::Request&);
[[nodiscard]] Lever places(const job::Job&, std::size_t place);
/// Friday's hours on a Saturday or a Sunday that has none.
[[nodiscard]] Lever another_day(const job::Job&);
[[nodiscard]] Lever later_start(const job::Job&, const job::Request&);

}  // namespace coatday::planner
