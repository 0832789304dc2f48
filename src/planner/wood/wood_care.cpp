#include "planner/wood/wood_care.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/core.h>

#include "job/step_id.h"
#include "job/time_step.h"
#include "planner/wood/coating.h"
#include "planner/wood/cupping.h"
#include "planner/wood/readiness.h"

namespace coatday::planner {
namespace {

/// How far the shop's air goes either way over a plan, and how far bare wood follows it.
struct Swing {
  MoistureContent driest_air{1}, dampest_air{0};
  MoistureRange wood;
  double diffusion = 0, film = 0;  ///< means
};

constexpr date::days plan_span{60};

/// From `begin` on, the first moment at which the part may be coated.
Swing swing_of(std::span<const BareHour> wood, Instant begin, AirHours& shop) {
  Swing swing;
  swing.wood = range_from(wood, begin);
  const auto hours = shop.between(begin, wood.back().until);
  for (const wood::AirSpan& hour : hours) {
    swing.driest_air = std::min(swing.driest_air, hour.equilibrium);
    swing.dampest_air = std::max(swing.dampest_air, hour.equilibrium);
    swing.diffusion += hour.diffusion / static_cast<double>(hours.size());
    swing.film += hour.film / static_cast<double>(hours.size());
  }
  return swing;
}

struct Films2 {
  wood::FilmResistance coated, other;
};

/// Until the cup passes the limit, in air that stays as it is; `longest` where it does not by then.
Hours until_cupped(const wood::Board& board, const Films2& films, MoistureContent air, const Swing& swing, wood::Diffusivity at_test,
                   Metres limit, Hours longest) {
  constexpr Minutes step{5};
  wood::Slab slab(board.thickness, board.initial);
  const auto against = [&](wood::FilmResistance film) { return wood::FaceCondition{air, wood::still_air + film * swing.film}; };
  const wood::SlabConditions conditions{at_test * swing.diffusion, against(films.other), against(films.coated)};
  for (Hours gone{0}; gone < longest; gone += step) {
    slab.advance(conditions, wood::Seconds(std::chrono::duration<double>(step).count()));
    const Metres cup = wood::sag(wood::free_curvature(slab.cells(), board.coefficient, board.thickness), board.width);
    if (std::abs(cup.value()) > limit.value()) return gone;
  }
  return longest;
}

/// By the worst of air, wood and diffusivity.
Hours longest_with_one_face(const piece::Part& part, const Films2& films, const Swing& swing, Hours longest) {
  const wood::DiffusionBand band = wood::diffusion_across(wood::film_test_temperature);
  Hours least = longest;
  for (const auto& [wood, air] : {std::pair(swing.wood.dampest, swing.driest_air), std::pair(swing.wood.driest, swing.dampest_air)}) {
    for (const wood::Diffusivity how_fast : {band.low, band.middle, band.high}) {
      least = std::min(least, until_cupped(*board_of(part, wood), films, air, swing, how_fast, *part.solid.cup_limit, longest));
    }
  }
  return least;
}

bool faces_alike(const piece::Part& part) {
  return std::none_of(part.exceptions.begin(), part.exceptions.end(),
                      [](const piece::Exception& e) { return e.face == "face" || e.face == "underside"; });
}

class Carer {
 public:
  Carer(const job::Job& job, Instant from, Instant until) : job_(job), from_(from), until_(until), shop_(job.air, known_since(job, from)) {}

  WoodCare run() {
    for (std::size_t p = 0; p < job_.order.pieces.size(); ++p) {
      const job::OrderPiece& piece = job_.order.pieces[p];
      for (std::size_t i = 0; i < piece.piece.parts.size(); ++i) part({p, i}, piece, piece.piece.parts[i]);
    }
    return std::move(care_);
  }

 private:
  void part(WoodCare::PartOfPiece at, const job::OrderPiece& piece, const piece::Part& part) {
    const bool limited = part.solid.cup_limit && board_of(part, {}) && faces_alike(part) && !unknown_moisture(part);
    if (!part.wood() || part.solid.core != piece::Core::solid || (part.solid.readings.empty() && !limited)) return;
    const Instant from = std::max(from_, piece.start.value_or(from_));
    const job::WoodReady ready = readiness(part, piece.moisture_band, from, shop_);
    const Instant rests = ready.measured ? std::max(from, ready.ready_at.expected.value_or(from)) : from;
    const auto hours = bare_hours(part, piece.moisture_band, from, limited ? std::max(rests + plan_span, until_) : until_, shop_);
    if (ready.measured) {
      care_.rests[at] = rest_of(ready);
      care_.rests[at].at_rest = spans_at_rest(hours);
    }
    if (!limited) return;
    lags(at, part, swing_of(hours, rests, shop_), care_.one_face);
    if (!job_.order.history.empty()) lags(at, part, swing_of(hours, from, shop_), care_.one_face_begun);
  }

  static Rest rest_of(const job::WoodReady& ready) {
    const bool moist = ready.now > ready.shop;
    const MoistureContent near = moist ? ready.shop + ready.band : ready.shop - ready.band;
    return {ready.ready,
            ready.ready_at.expected,
            {},
            fmt::format("the wood is {} moist, the shop's air leads to {}, and it is within {} of that", moisture_text(ready.now),
                        moisture_text(ready.shop), moisture_text(ready.band)),
            fmt::format("go on at {} or {}; measured or calculated {} now; stickered, all faces open", moisture_text(near),
                        moist ? "less" : "more", moisture_text(ready.now))};
  }

  void lags(WoodCare::PartOfPiece at, const piece::Part& part, const Swing& swing, WoodCare::OneFaces& limits) {
    const finish::Schedule* schedule = job_.catalogue.schedule(part.schedule);
    std::map<std::string, int> counts;
    wood::FilmResistance before = wood::no_film;
    for (const finish::Step& step : schedule->steps) {
      const finish::Product* product = step.product ? job_.catalogue.product(*step.product) : nullptr;
      const std::string finish = product == nullptr ? "" : films_.finish_of(*product);
      if (finish.empty()) continue;
      ++counts[finish];
      wood::FilmResistance after = wood::no_film;
      for (const auto& [name, count] : counts) after += films_.of(name, count);
      const Hours longest = longest_with_one_face(part, {after, before}, swing, job_.shop.both_faces_within);
      if (longest < job_.shop.both_faces_within) limits[{at, step.id}] = {longest, *part.solid.cup_limit};
      before = after;
    }
  }

  const job::Job& job_;
  Instant from_, until_;
  AirHours shop_;
  Films films_;
  WoodCare care_;
};

bool asks_for_care(const job::Job& job) {
  return std::any_of(job.order.pieces.begin(), job.order.pieces.end(), [](const job::OrderPiece& piece) {
    return std::any_of(piece.piece.parts.begin(), piece.piece.parts.end(),
                       [](const piece::Part& part) { return !part.solid.readings.empty() || part.solid.cup_limit; });
  });
}

}  // namespace

WoodCare wood_care(const job::Job& job, Instant from, Instant until) {
  return asks_for_care(job) ? Carer(job, from, until).run() : WoodCare();
}

bool is_begun(const job::Order& order, const std::string& piece_id, const job::LoadItems& items) {
  return std::any_of(order.history.begin(), order.history.end(), [&](const job::Done& done) {
    const auto id = job::parse_step_id(done.event);
    return id && id->piece == piece_id && id->kind != job::StepId::Kind::carry_in && job::within(items, job::items_of(id->load));
  });
}

std::vector<std::string> never_at_rest(const job::Job& job, const WoodCare& care) {
  std::vector<std::string> words;
  for (const auto& [at, rest] : care.rests) {
    if (rest.until) continue;
    const piece::Piece& piece = job.order.pieces[at.first].piece;
    words.push_back(
        fmt::format("{} / {}: {} at no time within a year; dry it elsewhere, change the shop's air, or give a wider 'moisture band'",
                    piece.name, piece.parts[at.second].name, rest.why));
  }
  return words;
}

}  // namespace coatday::planner
