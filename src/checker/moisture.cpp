// Wood: at rest before its first coat, and never one face coated for so long that it cups beyond its limit.
//
// An explicit scheme of its own on a coarse grid, over the shop's air from its source.

#include <algorithm>
#include <cmath>
#include <vector>

#include <fmt/core.h>

#include "checker/checks.h"
#include "piece/heat.h"
#include "wood/cup.h"
#include "wood/film.h"
#include "wood/moisture.h"
#include "wood/movement.h"

namespace coatday::checker {

namespace {

constexpr std::chrono::hours hour{1};
constexpr MoistureContent moisture_slack{0.0015};  // between two schemes on their own grids
constexpr double cup_slack = 1.1;
constexpr Metres least_cup{5e-5};
constexpr Metres thinnest{0.001};  // thinner is veneer, at rest at once

struct Board {
  std::vector<double> moisture;
  double cell = 0;

  /// Of about a millimetre; in thin wood twelve, so that their mean follows the air closely enough.
  Board(Metres thickness, MoistureContent all_through)
      : moisture(std::clamp<std::size_t>(static_cast<std::size_t>(thickness.value() * 1000), 12, 24), all_through.value()),
        cell(thickness.value() / static_cast<double>(moisture.size())) {}

  [[nodiscard]] double mean() const {
    double sum = 0;
    for (const double m : moisture) sum += m;
    return sum / static_cast<double>(moisture.size());
  }

  /// Films on top of still air, at the test's temperature.
  void lie(const climate::Air& air, double seconds, wood::Diffusivity at_test, double back_film, double face_film) {
    const double usual = wood::diffusion_across(wood::film_test_temperature).middle.value();
    const double d = at_test.value() * wood::diffusion_across(air.temperature).middle.value() / usual;
    const double outside = wood::equilibrium_moisture(air).value(), film = wood::film_factor(air.temperature);
    const double back = 1 / (wood::still_air.value() + film * back_film + cell / (2 * d));
    const double face = 1 / (wood::still_air.value() + film * face_film + cell / (2 * d));
    const int steps = std::max(1, static_cast<int>(std::ceil(seconds * d / (0.25 * cell * cell))));
    for (int s = 0; s < steps; ++s) explicit_step(seconds / steps, d / cell, outside, back, face);
  }

  void explicit_step(double dt, double conductance, double outside, double back, double face) {
    double from_below = dt / cell * back * (outside - moisture.front());
    for (std::size_t i = 0; i < moisture.size(); ++i) {
      const bool last = i + 1 == moisture.size();
      const double from_above = dt / cell * (last ? face * (outside - moisture[i]) : conductance * (moisture[i + 1] - moisture[i]));
      moisture[i] += from_below + from_above;
      from_below = -from_above;
    }
  }
};

wood::Diffusivity middle() { return wood::diffusion_across(wood::film_test_temperature).middle; }

class MoistureJudge {
 public:
  MoistureJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {}

  void run() {
    read_air();
    for (const auto& [id, load] : facts_.loads) {
      for (const auto& [part, count] : load.items) {
        if (judged(*part) && !part->solid.readings.empty()) rested(load, *part);
      }
    }
    for (std::size_t f = 0; f < facts_.faces.size(); ++f) {
      const piece::Part& part = *facts_.faces[f].part;
      const bool board = facts_.faces[f].face.face.name == "face" && judged(part);
      const bool excepted = facts_.faces[f].face.exception || (facts_.faces[f].opposite && exception_across(f));
      if (board && part.solid.cup_limit && facts_.faces[f].opposite && !excepted) flat(f, *facts_.faces[f].opposite);
    }
  }

 private:
  [[nodiscard]] static bool judged(const piece::Part& part) {
    const bool known = !part.kept_at || !part.solid.readings.empty();
    return known && part.wood() && part.solid.core == piece::Core::solid && piece::section(part.shape).thickness >= thinnest;
  }
  [[nodiscard]] bool exception_across(std::size_t f) const { return facts_.faces[*facts_.faces[f].opposite].face.exception.has_value(); }

  /// A reading without a day is of the day on which the plan, or the piece's own order, begins.
  [[nodiscard]] Instant begins(std::size_t piece) const {
    return std::max(facts_.plan.from, facts_.job.order.pieces[piece].start.value_or(facts_.plan.from));
  }

  [[nodiscard]] MoistureContent read(const piece::Part& part, Instant begins, Instant& at) const {
    Instant latest = Instant::min();
    for (const piece::MeterReading& reading : part.solid.readings) latest = std::max(latest, reading.at.value_or(begins));
    double sum = 0, count = 0;
    for (const piece::MeterReading& reading : part.solid.readings) {
      if (latest - reading.at.value_or(begins) >= std::chrono::hours(24)) continue;
      sum += reading.moisture.value();
      ++count;
    }
    at = std::clamp<Instant>(latest, begins - date::days(365), begins);
    return MoistureContent(sum / count);
  }

  /// Bare in the shop's air since it was read, or for two months where it was not.
  [[nodiscard]] double lain_until(const piece::Part& part, Instant begins, Instant t) const {
    Instant from = std::chrono::floor<std::chrono::hours>(facts_.plan.from) - date::days(60);
    MoistureContent all_through;
    const bool measured = !part.solid.readings.empty();
    if (measured) all_through = read(part, begins, from);
    if (from >= t) return measured ? all_through.value() : equilibrium(t, t + date::days(7));
    if (!measured) all_through = MoistureContent(equilibrium(from, std::min(t, from + date::days(60))));
    Board board(piece::section(part.shape).thickness, all_through);
    lie(board, from, t, middle(), 0, 0);
    return board.mean();
  }

  [[nodiscard]] double equilibrium(Instant from, Instant until) const {
    double sum = 0, hours = 0;
    for (Instant at = from; at < until; at += hour, ++hours) sum += wood::equilibrium_moisture(air(at)).value();
    return sum / std::max(1.0, hours);
  }

  [[nodiscard]] const job::OrderPiece& piece_of(const LoadFacts& load) const {
    return facts_.job.order.pieces[facts_.plan.faces[load.faces.front()].piece];
  }

  void rested(const LoadFacts& load, const piece::Part& part) {
    std::optional<std::size_t> first;
    for (const std::size_t i : load.events) {
      if (facts_.event(i).done && facts_.event(i).step_id.kind != job::StepId::Kind::carry_in) return;  // begun is begun
      if (facts_.coat(i) && !first) first = i;
    }
    if (!first) return;
    const Instant start = facts_.event(*first).start, in_hour = std::chrono::floor<std::chrono::hours>(start);
    const double now = lain_until(part, begins(facts_.plan.faces[load.faces.front()].piece), start),
                 shop = equilibrium(in_hour, in_hour + date::days(7));
    const MoistureContent band = piece_of(load).moisture_band;
    if (std::abs(now - shop) <= (band + moisture_slack).value()) return;
    out_.push_back({"wood-not-at-rest", fmt::format("{}: {} is {:.1f} % moist then, and the shop's air leads to {:.1f} %",
                                                    facts_.name(*first), part.name, 100 * now, 100 * shop)});
  }

  void flat(std::size_t face, std::size_t back) {
    std::map<std::string, int> counts;
    double film = 0;
    const auto coats = coats_on(face), across = coats_on(back);
    for (std::size_t k = 0; k < std::min(coats.size(), across.size()); ++k) {
      const double before = film;
      const auto known = wood::film_class(facts_.events[coats[k]].product->family);
      if (!known || known->finish.empty()) continue;
      ++counts[std::string(known->finish)];
      film = 0;
      for (const auto& [finish, count] : counts) {
        if (const auto one = wood::film_of(finish, count, middle())) film += one->resistance.value();
      }
      auto first = coats[k], second = across[k];
      if (facts_.event(first).start > facts_.event(second).start) std::swap(first, second);
      if (first != second && !facts_.event(second).done && !facts_.said_missed(first, second))
        between(*facts_.faces[face].part, first, second, film, before);
    }
  }

  [[nodiscard]] std::vector<std::size_t> coats_on(std::size_t face) const {
    std::vector<std::size_t> coats;
    for (const std::size_t i : facts_.faces[face].events) {
      if (facts_.coat(i)) coats.push_back(i);
    }
    return coats;
  }

  void between(const piece::Part& part, std::size_t first, std::size_t second, double coated, double other) {
    const Instant from = facts_.event(first).end, until = facts_.event(second).start;
    const wood::Species* species = wood::find_species(part.species.value_or(""));
    const auto* board = std::get_if<piece::Board>(&part.shape);
    const auto* top = std::get_if<piece::RoundTop>(&part.shape);
    if (species == nullptr || (board == nullptr && top == nullptr) || until <= from) return;
    const Metres thickness = board != nullptr ? board->thickness : top->thickness, width = board != nullptr ? board->width : top->diameter;
    const double coefficient = wood::coefficient_across(*species, part.solid.cut.value_or(wood::flat_cut));
    const MoistureContent initial(
        lain_until(part, begins(facts_.plan.faces[facts_.event(first).faces.front()].piece), facts_.event(first).start));
    const wood::DiffusionBand band = wood::diffusion_across(wood::film_test_temperature);
    for (const wood::Diffusivity how_fast : {band.low, band.middle, band.high}) {
      Board lying(thickness, initial);
      lie(lying, from, until, how_fast, other, coated);
      const Metres cup = wood::sag(wood::free_curvature(lying.moisture, coefficient, thickness), width);
      if (std::abs(cup.value()) <= cup_slack * part.solid.cup_limit->value() + least_cup.value()) continue;
      return out_.push_back(
          {"cups-between-coats",
           fmt::format("{}: by then {} has cupped {:.2f} mm with one face coated, and its limit is {:.2f} mm", facts_.name(second),
                       part.name, 1000 * std::abs(cup.value()), 1000 * part.solid.cup_limit->value())});
    }
  }

  /// From moment to moment: thin wood changes within minutes.
  void lie(Board& board, Instant from, Instant until, wood::Diffusivity at_test, double back_film, double face_film) const {
    for (Instant at = from; at < until;) {
      const Instant next = std::min<Instant>(until, std::chrono::floor<std::chrono::hours>(at) + hour);
      board.lie(air(at), std::chrono::duration<double>(next - at).count(), at_test, back_film, face_film);
      at = next;
    }
  }

  /// The mean of the hour that holds it.
  [[nodiscard]] const climate::Air& air(Instant t) const { return hours_[static_cast<std::size_t>((t - since_) / hour)]; }

  void read_air() {
    since_ = std::chrono::floor<std::chrono::hours>(facts_.plan.from) - date::days(60);
    for (std::size_t f = 0; f < facts_.faces.size(); ++f) {
      Instant read_at = since_;
      const piece::Part& part = *facts_.faces[f].part;
      if (!part.solid.readings.empty()) static_cast<void>(read(part, begins(facts_.plan.faces[f].piece), read_at));
      since_ = std::min<Instant>(since_, std::chrono::floor<std::chrono::hours>(read_at));
    }
    Instant until = facts_.plan.from;
    for (const job::Event& event : facts_.plan.events) until = std::max(until, event.end);
    until += date::days(9);
    const auto source = facts_.job.air(since_, until + hour);
    for (Instant t = since_; t < until; t += hour) hours_.push_back(source->mean(t, t + hour));
  }

  const PlanFacts& facts_;
  Breaches& out_;
  Instant since_;
  std::vector<climate::Air> hours_;
};

bool asks(const FaceFacts& face) { return face.part->wood() && (face.part->solid.cup_limit || !face.part->solid.readings.empty()); }

}  // namespace

void check_moisture(const PlanFacts& facts, Breaches& out) {
  if (facts.job.air && std::any_of(facts.faces.begin(), facts.faces.end(), asks)) MoistureJudge(facts, out).run();
}

}  // namespace coatday::checker
