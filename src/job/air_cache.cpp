#include "job/air_cache.h"

#include <optional>

namespace coatday::job {

namespace {

using climate::Air;
using climate::AirSeries;

/// A source with its half hours.
struct Kept {
  Instant from, until;  ///< of the source
  std::unique_ptr<climate::AirSource> source;
  AirSeries rows;
};

class CachedAir final : public climate::AirSource {
 public:
  explicit CachedAir(std::shared_ptr<const Kept> kept) : kept_(std::move(kept)) {}

  [[nodiscard]] Air at(Instant t) const override { return kept_->source->at(t); }
  [[nodiscard]] Air mean(Instant from, Instant until) const override {
    return has_row(from, until) ? kept_->rows.at(from).air : kept_->source->mean(from, until);
  }
  [[nodiscard]] climate::Origin origin(Instant t) const override { return kept_->source->origin(t); }
  [[nodiscard]] std::optional<climate::RoomWork> work(Instant from, Instant until) const override {
    return has_row(from, until) ? kept_->rows.work(kept_->rows.index(from)) : kept_->source->work(from, until);
  }
  [[nodiscard]] std::string describe(Units units) const override { return kept_->source->describe(units); }

 private:
  [[nodiscard]] bool has_row(Instant from, Instant until) const {
    const bool whole = from == AirSeries::row_start(from) && until == from + AirSeries::step;
    return whole && from >= kept_->rows.begin() && from < kept_->rows.end();
  }

  std::shared_ptr<const Kept> kept_;
};

constexpr date::days further{28};

}  // namespace

AirMaker cached_air(AirMaker make) {
  return [make = std::move(make), kept = std::make_shared<std::shared_ptr<const Kept>>()](
             Instant from, Instant until) -> std::unique_ptr<climate::AirSource> {
    std::shared_ptr<const Kept>& known = *kept;
    const bool within = known && from >= known->from && until <= known->until;
    const bool holds_it = !known || (from <= known->from && until >= known->until);
    if (!within && !holds_it) return make(from, until);
    if (!within) {
      const Instant reach = until + further;
      auto source = make(from, reach);
      AirSeries rows(*source, from, reach - AirSeries::step);
      known = std::make_shared<const Kept>(Kept{from, reach, std::move(source), std::move(rows)});
    }
    return std::make_unique<CachedAir>(known);
  };
}

}  // namespace coatday::job
