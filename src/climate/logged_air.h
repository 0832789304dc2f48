#pragma once
// A logger's readings where there are any, the next source of air where there are none, and between the two a step that fades.

#include <memory>
#include <optional>
#include <vector>

#include "climate/log.h"

namespace coatday::climate {

/// One quantity of a log over time: straight between readings that are no more than longest_log_bridge apart.
class Track {
 public:
  struct Point {
    Instant time;
    double value = 0;
  };
  /// The points on both sides of an instant, null where there is none. A point at that very instant is the one before.
  struct Neighbours {
    const Point* before = nullptr;
    const Point* after = nullptr;
  };

  explicit Track(std::vector<Point> points) : points_(std::move(points)) {}

  [[nodiscard]] Neighbours around(Instant) const;
  /// None where the log has no reading near enough.
  [[nodiscard]] std::optional<double> at(Instant) const;
  [[nodiscard]] const std::vector<Point>& points() const { return points_; }

 private:
  std::vector<Point> points_;  // by time
};

/// Beyond the log's readings the next source's air is moved by the step between the two where they meet: its temperature by a difference, its
/// vapour pressure by a ratio, both fading exponentially. In a gap the steps at both ends fade towards each other. Where the log has a
/// temperature but no humidity, the vapour pressure is the next source's. Above saturation the humidity is capped at 1.
class LoggedAir final : public AirSource {
 public:
  /// Judgement: a shop forgets over hours what the model of it did not know.
  static constexpr Hours fading{4};
  /// How far outside a span the next source is asked.
  static constexpr std::chrono::hours reach{48};

  /// `next` must cover what will be asked, widened by `reach`.
  LoggedAir(std::shared_ptr<const Log> log, std::unique_ptr<AirSource> next);

  [[nodiscard]] Air at(Instant) const override;
  /// Exact for the straight lines between readings.
  [[nodiscard]] Air mean(Instant from, Instant until) const override;
  [[nodiscard]] Origin origin(Instant) const override;
  /// The next source's, where no reading says what the air was.
  [[nodiscard]] std::optional<RoomWork> work(Instant from, Instant until) const override;
  [[nodiscard]] std::string describe(Units) const override;

 private:
  std::shared_ptr<const Log> log_;
  std::unique_ptr<AirSource> next_;
  Track temperature_, humidity_;
};

}  // namespace coatday::climate
