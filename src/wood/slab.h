#pragma once
// Moisture through the thickness of a board, as pure mathematics: one-dimensional diffusion with a resistance on each face.

#include <span>
#include <vector>

#include "quantity/quantity.h"

namespace coatday::wood {

using Seconds = Quantity<struct SecondsTag>;
using Diffusivity = Quantity<struct DiffusivityTag>;        ///< m²/s
using FilmResistance = Quantity<struct FilmResistanceTag>;  ///< s/m: (equilibrium - surface moisture content) / flow, both by volume
inline constexpr FilmResistance no_film{0};

/// What lies against one face. An infinite resistance seals it.
struct FaceCondition {
  MoistureContent equilibrium;  ///< of the air there
  FilmResistance film;
};

/// Constant over a step. Positions run from the back (z = -h/2) to the face (z = h/2).
struct SlabConditions {
  Diffusivity diffusivity;
  FaceCondition back, face;
};

/// The mean moisture content of equal cells through the thickness. Finite volumes of second order in the cells, in time a diagonally
/// implicit Runge-Kutta scheme of second order (stiffly accurate, two stages, L-stable) whose steps follow its embedded error. What
/// enters through the faces equals what the cells gain, to rounding. Source of the problem and its exact solutions: Crank, The Mathematics of
/// Diffusion, 1975, ch. 4, plane sheet with and without surface resistance. Moisture and heat do not change the diffusivity within a step.
class Slab {
 public:
  /// Uniform moisture. Thickness > 0, cells > 1.
  Slab(Metres thickness, MoistureContent initial, int cells = usual_cells);

  /// Moves on. Returns what came in by both faces, as a mean moisture content of the board. Time >= 0, diffusivity > 0.
  /// `tolerance`: the moisture content by which the embedded error of one step may be off.
  MoistureContent advance(const SlabConditions&, Seconds, MoistureContent tolerance = usual_tolerance);

  [[nodiscard]] Metres thickness() const { return thickness_; }
  [[nodiscard]] std::span<const double> cells() const { return moisture_; }  ///< moisture contents, from the back to the face
  [[nodiscard]] MoistureContent mean() const;
  [[nodiscard]] long steps() const { return steps_; }  ///< taken so far

  static constexpr int usual_cells = 24;
  static constexpr MoistureContent usual_tolerance{1e-3};

 private:
  /// Rates of exchange between neighbouring cells and with the air on each side, per second.
  struct Exchange {
    double between, back, face;
    double at_back, at_face;  ///< equilibria
  };
  struct Trial {
    double error;   ///< the embedded scheme's, in moisture content
    double gained;  ///< in moisture content
  };
  [[nodiscard]] Exchange exchange(const SlabConditions&) const;
  /// Of 1 - weight A, where A is the matrix of exchange.
  void factorise(const Exchange&, double weight);
  /// The rate that solves (1 - weight A) rate = what flows into the cells at `from`.
  void solve_rate(const Exchange&, const std::vector<double>& from, std::vector<double>& rate) const;
  [[nodiscard]] double inflow(const Exchange&, const std::vector<double>& at) const;
  /// One step, its result in stage_.
  Trial attempt(const Exchange&, double step);

  Metres thickness_;
  std::vector<double> moisture_;
  std::vector<double> first_, second_, stage_, pivot_;  ///< of a step
  double side_ = 0, back_ = 0, face_ = 0;               ///< of the last factors, times their weight
  double step_ = 0;                                     ///< seconds, as the last error allows; 0: none yet
  long steps_ = 0;
};

}  // namespace coatday::wood
