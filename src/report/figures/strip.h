#pragma once
// A week drawn from Monday to Sunday: rows below each other over one scale of time. Across, everything is a share of the width, so that it fits
// a phone and a sheet of paper alike without shrinking its text; down, it is in pixels.

#include <string>
#include <vector>

#include "job/air_forecast.h"
#include "quantity/text.h"
#include "report/document/element.h"
#include "report/figures/time_scale.h"
#include "report/figures/timeline.h"

namespace coatday::report::page {

/// What is drawn, the same for all weeks.
struct Chart {
  const job::Plan& plan;
  const job::AirForecast& air;  ///< empty where there is no plan
  Units units;
  std::vector<Row> rows;
  job::Range temperature{};  ///< °C, of all weeks
  job::Range humidity{};
};

/// Adds rows to a week, each below the one before. A row has a line of text and then its bars.
class Strip {
 public:
  static constexpr int line = 14;  ///< the text of a row
  static constexpr int bar = 12;

  Strip(Element figure, const Week& week);

  [[nodiscard]] const Week& week() const { return week_; }
  /// A row: its name, once in the margin or above the bars, and where its bars go.
  Element row(std::string_view name, std::string_view more, int height);
  /// A row of thin bars whose name is a finish's or such.
  Element thin_row(std::string_view name);
  static constexpr int thin = 6;
  void gap() { down_ += 8; }
  /// A row that is only a name.
  void heading(std::string_view name);
  /// A bar from one moment to another, cut to the week. Nothing where none of it is in the week.
  std::optional<Element> bar_at(Element row, std::string_view kind, Instant from, Instant until, int y, int height) const;
  /// A word at a moment of a row's line where there is room until the next word begins, `until`; narrow pages leave it out.
  void word_at(Element row, std::string_view word, Instant at, Instant until) const;
  /// Behind the rows, as high as all of them.
  Element behind() { return behind_; }
  [[nodiscard]] Element drawing() { return svg_; }
  void finish();

 private:
  Week week_;
  Element figure_, svg_, behind_, names_;
  int down_ = 0;
};

}  // namespace coatday::report::page
