#include "climate/fit_cooling.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "climate/fit_span.h"

namespace coatday::climate {
namespace {

// Judgement: less says little.
constexpr Hours fewest_hours_off{4};
constexpr Kelvins least_difference{2};
constexpr Kelvins above_set_point{1};  // warmer than its set point by this, the heater does not run

constexpr double shortest = 0.1, longest = 2000;     // h; no room is quicker or slower (judgement)
constexpr double display_variance = 0.1 * 0.1 / 12;  // K²: the variance that a display of 0.1 K leaves
constexpr double within = 4;                         // variances: 2 standard deviations

/// The way of a room without heat, for any time constant: the start of each span, and without outdoors what all tend to, fit themselves.
class Cooling {
 public:
  Cooling(const std::vector<FitRow>& rows, std::vector<FitSpan> spans, const OutdoorYear* outdoors)
      : rows_(rows), spans_(std::move(spans)), has_outdoors_(outdoors != nullptr) {
    for (const FitSpan& span : spans_) {
      for (std::size_t i = span.first + 1; i < span.last; ++i) {
        FitSteps steps = fit_steps(rows_[i - 1].measured.time, rows_[i].measured.time);
        Way way{steps.each, steps.middles.size(), {}};
        if (outdoors != nullptr)
          for (const Instant t : steps.middles) way.outside.push_back(outdoors->at(t).temperature.value());
        ways_.push_back(std::move(way));
      }
    }
  }

  [[nodiscard]] std::size_t unknowns() const { return spans_.size() + (has_outdoors_ ? 1 : 2); }
  [[nodiscard]] const std::vector<FitSpan>& spans() const { return spans_; }

  /// What is left with this time constant; `modelled` takes each reading's temperature where it is given, `end` what all tend to.
  FitResiduals residuals(double time_constant, std::vector<double>* modelled, double* end) const {
    const std::vector<Course> courses = run(time_constant);
    const double settled = has_outdoors_ ? 0 : tends_to(courses);
    if (end != nullptr) *end = settled;
    FitResiduals left;
    std::size_t at = 0;
    for (const FitSpan& span : spans_) {
      left.next_span();
      const double start = best_start(courses, span, at, settled);
      for (std::size_t i = span.first; i < span.last; ++i, ++at) {
        const double here = start * courses[at].start + courses[at].driven + settled * courses[at].end;
        left.add(measured(i) - here);
        if (modelled != nullptr) modelled->push_back(here);
      }
    }
    return left;
  }

 private:
  struct Way {
    Hours each{0};
    std::size_t steps = 0;
    std::vector<double> outside;
  };
  /// The temperature is start * `start` + `driven` (by outdoors) + what it tends to * `end`.
  struct Course {
    double start = 1, driven = 0, end = 0;
  };

  [[nodiscard]] double measured(std::size_t row) const { return rows_[row].measured.temperature.value(); }

  [[nodiscard]] std::vector<Course> run(double time_constant) const {
    std::vector<Course> all;
    std::size_t way = 0;
    for (const FitSpan& span : spans_) {
      Course course;
      all.push_back(course);
      for (std::size_t i = span.first + 1; i < span.last; ++i, ++way) {
        const double left = std::exp(-ways_[way].each.count() / time_constant);
        for (const double outside : ways_[way].outside) course.driven = outside + (course.driven - outside) * left;
        course.start *= std::pow(left, static_cast<double>(ways_[way].steps));
        if (!has_outdoors_) course.end = 1 - course.start;
        all.push_back(course);
      }
    }
    return all;
  }

  [[nodiscard]] double best_start(const std::vector<Course>& courses, const FitSpan& span, std::size_t at, double settled) const {
    double product = 0, square = 0;
    for (std::size_t i = span.first; i < span.last; ++i, ++at) {
      product += (measured(i) - courses[at].driven - settled * courses[at].end) * courses[at].start;
      square += courses[at].start * courses[at].start;
    }
    return product / square;
  }

  /// Least squares with each span's start taken out.
  [[nodiscard]] double tends_to(const std::vector<Course>& courses) const {
    double product = 0, square = 0;
    std::size_t begin = 0;
    for (const FitSpan& span : spans_) {
      double ys = 0, es = 0, ss = 0;
      for (std::size_t i = span.first, at = begin; i < span.last; ++i, ++at) {
        ys += measured(i) * courses[at].start, es += courses[at].end * courses[at].start, ss += courses[at].start * courses[at].start;
      }
      for (std::size_t i = span.first; i < span.last; ++i, ++begin) {
        const double end = courses[begin].end - es / ss * courses[begin].start;
        product += end * (measured(i) - ys / ss * courses[begin].start);
        square += end * end;
      }
    }
    return square > 0 ? product / square : 0;
  }

  const std::vector<FitRow>& rows_;
  std::vector<FitSpan> spans_;
  bool has_outdoors_;
  std::vector<Way> ways_;
};

double squares(const Cooling& cooling, double log_time) { return cooling.residuals(std::exp(log_time), nullptr, nullptr).squares(); }

constexpr int grid = 160;
double grid_point(int i) { return std::log(shortest) + std::log(longest / shortest) * i / grid; }

/// The least squares, of a grid and then by golden section about its best point.
double best(const Cooling& cooling) {
  int least = 0;
  double fewest = squares(cooling, grid_point(0));
  for (int i = 1; i <= grid; ++i) {
    const double here = squares(cooling, grid_point(i));
    if (here < fewest) fewest = here, least = i;
  }
  double low = grid_point(std::max(least - 1, 0)), high = grid_point(std::min(least + 1, grid));
  constexpr double golden = 0.6180339887498949;
  for (int i = 0; i < 40; ++i) {
    const double a = high - golden * (high - low), b = low + golden * (high - low);
    (squares(cooling, a) < squares(cooling, b) ? high : low) = squares(cooling, a) < squares(cooling, b) ? b : a;
  }
  return (low + high) / 2;
}

/// Where the squares pass a limit on the way from the best towards an end of the grid; the end itself where they do not.
double passes(const Cooling& cooling, double from, double limit, double end) {
  double inside = from, outside = from;
  const double step = std::log(longest / shortest) / grid * (end > from ? 1 : -1);
  while (squares(cooling, outside) <= limit) {
    if (std::abs(end - outside) <= std::abs(step)) return end;
    inside = outside, outside += step;
  }
  for (int i = 0; i < 30; ++i) {
    const double middle = (inside + outside) / 2;
    (squares(cooling, middle) <= limit ? inside : outside) = middle;
  }
  return inside;
}

std::string none_left(const std::vector<FitRow>& rows, const std::vector<FitSpan>& spans, const std::function<bool(const FitRow&)>& off) {
  if (std::none_of(rows.begin(), rows.end(), off))
    return "the heater is on all the time: by the timetable, and nowhere is the room 1 K above its set point";
  if (spans.empty()) return "nowhere in the log is the heater off for 2 h on end with readings no more than 3 h apart";
  return fmt::format("the heater is off for {} of the log; at least {} are needed", format_span(hours_of(rows, spans)),
                     format_span(fewest_hours_off));
}

/// What drives the room in those hours: how far it is from outdoors, or, where that is not known, how far it falls.
Kelvins drive(const std::vector<FitRow>& rows, const std::vector<FitSpan>& spans) {
  Kelvins most;
  for (const FitSpan& span : spans) {
    for (std::size_t i = span.first; i < span.last; ++i) {
      const Celsius other = rows[i].outdoors.value_or(rows[span.first].measured.temperature);
      most = std::max(most, Kelvins(std::abs((rows[i].measured.temperature - other).value())));
    }
  }
  return most;
}

std::string unbounded(double low, double high) {
  const bool open_low = low <= shortest * 1.001, open_high = high >= longest * 0.999;
  if (open_low && open_high) return "any time constant fits the log as well as any other";
  if (open_high) return fmt::format("the log does not bound it: anything above {} fits as well", format_span(Hours(low)));
  return fmt::format("the log does not bound it: anything below {} fits as well", format_span(Hours(high)));
}

}  // namespace

tl::expected<Fitted, std::string> fit_time_constant(const KnownRoom& known, const Zone& zone, RoomFit& fit) {
  std::vector<FitRow>& rows = fit.rows;
  const auto off = [&](const FitRow& row) {
    const auto set_point = known.heating.set_point(zone.to_local(row.measured.time));
    return !set_point || row.measured.temperature > *set_point + above_set_point;
  };
  const std::vector<FitSpan> spans = fit_spans(rows, off);
  if (hours_of(rows, spans) < fewest_hours_off) return tl::make_unexpected(none_left(rows, spans, off));
  if (drive(rows, spans) < least_difference) {
    return tl::make_unexpected(fmt::format("no temperature difference: with the heater off the room is never more than {:.1f} K {}",
                                           drive(rows, spans).value(), known.outdoors ? "from outdoors" : "from where it began"));
  }
  const Cooling cooling(rows, spans, known.outdoors ? &*known.outdoors : nullptr);
  const double log_time = best(cooling);
  std::vector<double> modelled;
  double end = 0;
  const FitResiduals left = cooling.residuals(std::exp(log_time), &modelled, &end);
  const double limit = left.squares() + within * left.variance(display_variance, cooling.unknowns());
  Fitted fitted{std::exp(log_time), std::exp(passes(cooling, log_time, limit, grid_point(0))),
                std::exp(passes(cooling, log_time, limit, grid_point(grid)))};
  if (fitted.low <= shortest * 1.001 || fitted.high >= longest * 0.999) return tl::make_unexpected(unbounded(fitted.low, fitted.high));
  left.tell(fitted);
  fitted.hours = hours_of(rows, spans);
  fitted.spans = spans.size();
  if (!known.outdoors) fit.settles_at = Celsius(end);
  std::size_t at = 0;
  for (const FitSpan& span : spans)
    for (std::size_t i = span.first; i < span.last; ++i) rows[i].modelled = Celsius(modelled[at++]);
  return fitted;
}

}  // namespace coatday::climate
