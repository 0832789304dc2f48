#include "climate/fit_damp.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

#include "climate/fit_span.h"
#include "climate/psychrometrics.h"

namespace coatday::climate {
namespace {

// The water gained is linear in what it is fitted to, so one pass finds it.

constexpr Hours fewest_damp_hours{6};                           // judgement: less says little
constexpr RelativeHumidity below_set_point{0.03};               // so far below its set point a dehumidifier does not run (judgement)
constexpr RelativeHumidity nearly_damp{0.97};                   // above it water may condense unseen (judgement)
constexpr RelativeHumidity sensor_error{0.03};                  // of a simple logger (judgement)
constexpr RelativeHumidity display_deviation{0.01 * 0.288675};  // the standard deviation that a display of 1 % leaves: 1 / sqrt(12)

/// Water is start * `start` + `driven` (by outdoors) + gain * `gained`.
struct Course {
  double measured = 0, start = 1, driven = 0, gained = 0;
};

double water(const Reading& reading, Pascals pressure) {
  return humidity_ratio({reading.temperature, *reading.humidity}, pressure).value();
}

std::vector<Course> courses(const std::vector<FitRow>& rows, const FitSpan& span, const Moisture& room, const OutdoorYear& outdoors) {
  const Pascals pressure = outdoors.pressure();
  std::vector<Course> all;
  Course course;
  for (std::size_t i = span.first; i < span.last; ++i) {
    const Reading& reading = rows[i].measured;
    course.measured = water(reading, pressure);
    if (i > span.first) {
      const double mass = dry_air(room.volume, reading.temperature, HumidityRatio(course.measured), pressure).value();
      const FitSteps steps = fit_steps(rows[i - 1].measured.time, reading.time);
      const double left = std::exp(-room.air_changes * steps.each.count());
      for (const Instant t : steps.middles) {
        const double outside = humidity_ratio(outdoors.at(t), pressure).value();
        course.start *= left;
        course.driven = outside + (course.driven - outside) * left;
        course.gained = course.gained * left + (1 - left) / (room.air_changes * mass);
      }
    }
    all.push_back(course);
  }
  return all;
}

/// A span's start that fits best, as it follows from what is measured and less so much for each unit of gain.
struct Start {
  double of_measured = 0, of_gained = 0;
};

Start start_of(const std::vector<Course>& span) {
  double ys = 0, gs = 0, ss = 0;
  for (const Course& c : span) ys += (c.measured - c.driven) * c.start, gs += c.gained * c.start, ss += c.start * c.start;
  return {ys / ss, gs / ss};
}

struct Gain {
  double value = 0;
  double square = 0;  // of what a unit of it does, each span's start taken out
};

Gain best_gain(const std::vector<std::vector<Course>>& spans) {
  double product = 0, square = 0;
  for (const std::vector<Course>& span : spans) {
    const Start start = start_of(span);
    for (const Course& c : span) {
      const double gained = c.gained - start.of_gained * c.start;
      product += gained * (c.measured - c.driven - start.of_measured * c.start);
      square += gained * gained;
    }
  }
  return {product / square, square};
}

double saturated(const FitRow& row, Pascals pressure) {
  return humidity_ratio({row.measured.temperature, RelativeHumidity(1)}, pressure).value();
}

/// Puts what is modelled into the rows of a span, and what is left into the residuals.
void model(const std::vector<Course>& span, const Gain& gain, Pascals pressure, FitRow* row, FitResiduals& left) {
  const Start start = start_of(span);
  left.next_span();
  for (const Course& c : span) {
    const double modelled = c.driven + gain.value * c.gained + (start.of_measured - gain.value * start.of_gained) * c.start;
    left.add(c.measured - modelled);
    const auto humidity = relative_humidity(row->measured.temperature, HumidityRatio(std::max(modelled, 0.0)), pressure);
    row->modelled_humidity = std::min(humidity, RelativeHumidity(1));
    ++row;
  }
}

std::optional<std::string> untold(const KnownRoom& known, const std::vector<FitRow>& rows) {
  if (!known.outdoors) return "it needs the air outdoors, and the shop file has no 'outdoors'";
  if (!known.room.moisture) return "it needs the room's 'volume' and 'air changes' in the shop file";
  const bool any = std::any_of(rows.begin(), rows.end(), [](const FitRow& row) { return row.measured.humidity.has_value(); });
  if (!any) return "the log has no humidity";
  return std::nullopt;
}

std::string too_few(Hours hours, RelativeHumidity most) {
  return fmt::format("the log has {} of humidity below {} (above, water condenses or a dehumidifier runs); at least {} are needed",
                     format_span(hours), format_humidity(most), format_span(fewest_damp_hours));
}

}  // namespace

tl::expected<Fitted, std::string> fit_moisture_gain(const KnownRoom& known, RoomFit& fit) {
  if (auto reason = untold(known, fit.rows)) return tl::make_unexpected(*std::move(reason));
  const Moisture& room = *known.room.moisture;
  const Pascals pressure = known.outdoors->pressure();
  const RelativeHumidity most = room.dehumidifier ? std::min(nearly_damp, room.dehumidifier->set_point - below_set_point) : nearly_damp;
  const auto spans = fit_spans(fit.rows, [most](const FitRow& row) { return row.measured.humidity && *row.measured.humidity <= most; });
  if (hours_of(fit.rows, spans) < fewest_damp_hours) return tl::make_unexpected(too_few(hours_of(fit.rows, spans), most));
  std::vector<std::vector<Course>> all;
  for (const FitSpan& span : spans) all.push_back(courses(fit.rows, span, room, *known.outdoors));
  const Gain gain = best_gain(all);
  FitResiduals left;
  double most_water = 0;  // that the air of the readings could hold, on the mean
  std::size_t readings = 0;
  for (std::size_t s = 0; s < spans.size(); ++s) {
    model(all[s], gain, pressure, &fit.rows[spans[s].first], left);
    for (std::size_t i = spans[s].first; i < spans[s].last; ++i, ++readings) most_water += saturated(fit.rows[i], pressure);
  }
  most_water /= static_cast<double>(readings);
  const FitRow& any = fit.rows[spans.front().first];
  const double mass = dry_air(room.volume, any.measured.temperature, HumidityRatio(all.front().front().measured), pressure).value();
  fit.sensor = most_water * sensor_error.value() * room.air_changes * mass;
  const double least = most_water * display_deviation.value();
  const double half = 2 * std::sqrt(left.variance(least * least, spans.size() + 1) / gain.square);
  Fitted fitted{gain.value, gain.value - half, gain.value + half};
  left.tell(fitted);
  fitted.hours = hours_of(fit.rows, spans);
  fitted.spans = spans.size();
  return fitted;
}

}  // namespace coatday::climate
