#pragma once
// A part as it is looked at, drawn from its own sizes in pixels: what shows first, and what does not. Edges and ends are folded out.

#include <optional>
#include <string>
#include <vector>

#include "piece/shape.h"
#include "quantity/text.h"

namespace coatday::report::page {

struct Point {
  double x = 0, y = 0;
};
/// A closed line: corners, or a circle about the only one.
struct Loop {
  std::vector<Point> corners;
  double radius = 0;
};

/// What is seen of a face. Of several loops the inner ones are holes.
struct Patch {
  std::string face;
  std::vector<Loop> loops;
  Point middle;               ///< where a figure may stand ...
  double room = 0, tall = 0;  ///< ... so wide and so tall
  std::vector<Loop> lines{};  ///< drawn on it: a panel's outline
};
struct View {
  std::string title;  ///< "from above"
  std::vector<Patch> patches;
  double width = 0, height = 0;
};

/// Pixels for a metre. What is thin is drawn no thinner than can be seen.
struct DrawingScale {
  double pixels = 100;
  [[nodiscard]] double operator()(Metres m, double least = 5) const;
};

/// One or two views that show every face of the shape at least once.
[[nodiscard]] std::vector<View> views_of(const piece::Shape&, DrawingScale);
/// The longest line of its views, in metres, for one scale over several parts.
[[nodiscard]] Metres longest_of(const piece::Shape&);

}  // namespace coatday::report::page
