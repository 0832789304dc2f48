#include "report/papers/air_fit.h"

#include <fmt/core.h>

namespace coatday::report {
namespace {

using climate::Fitted;
using climate::RoomFit;

/// Without the sign of a zero.
std::string rounded(double value, int decimals) {
  std::string text = fmt::format("{:.{}f}", value, decimals);
  return text.find_first_not_of("-0.") == std::string::npos && text.starts_with('-') ? text.substr(1) : text;
}

std::string kelvins(double difference, Units units) {
  return units == Units::us ? rounded(difference * 9 / 5, 2) + " °F" : rounded(difference, 2) + " K";
}

/// As finely as a good log has it.
std::string time_text(double hours) { return rounded(hours, hours < 99.95 ? 1 : 0) + " h"; }
std::string gain_text(double kilograms) { return rounded(1000 * kilograms, 0) + " g/h"; }
std::string water_text(double ratio) { return rounded(1000 * ratio, 2) + " g/kg"; }

template <class Write>
std::string residual_text(const Fitted& fitted, const Write& write) {
  return fmt::format("off by {} (RMS), at most {}, {} on the mean, measured less modelled", write(fitted.rms), write(fitted.worst),
                     write(fitted.bias));
}

std::string used(const Fitted& fitted, const char* what) {
  return fmt::format("from {} readings over {} {}, in {}", fitted.readings, unbroken(format_span(fitted.hours)), what,
                     counted(fitted.spans, "span", "spans"));
}

void add_time_constant(Facts& facts, const RoomFit& fit, Units units) {
  constexpr const char* label = "time constant";
  if (!fit.time_constant) return facts.facts.push_back({label, Phrase("not known: ", Mark::caution) + fit.time_constant.error()});
  const Fitted& fitted = *fit.time_constant;
  facts.facts.push_back({label, Phrase(time_text(fitted.value), Mark::strong) +
                                    fmt::format(", in 19 of 20 cases {} to {}; ", time_text(fitted.low), time_text(fitted.high)) +
                                    used(fitted, "with the heater off")});
  facts.facts.push_back({{}, residual_text(fitted, [units](double k) { return kelvins(k, units); })});
  if (fit.settles_at) {
    facts.facts.push_back({{},
                           "No air outdoors is stated, so it was taken to be the same at all hours; the decay tends to " +
                               format_temperature(*fit.settles_at, units) + "."});
  }
}

void add_moisture_gain(Facts& facts, const RoomFit& fit) {
  constexpr const char* label = "moisture gain";
  if (!fit.moisture_gain) return facts.facts.push_back({label, Phrase("not known: ", Mark::caution) + fit.moisture_gain.error()});
  const Fitted& fitted = *fit.moisture_gain;
  facts.facts.push_back({label, Phrase(gain_text(fitted.value), Mark::strong) +
                                    fmt::format(", in 19 of 20 cases {} to {}; ", gain_text(fitted.low), gain_text(fitted.high)) +
                                    used(fitted, "of humidity")});
  facts.facts.push_back({{}, residual_text(fitted, water_text)});
  facts.facts.push_back(
      {{},
       fmt::format(
           "It rests on the volume and the air changes in the shop file, which the humidity alone cannot separate from the gain: twice "
           "the changes with twice the gain settle alike. A sensor that reads 3 % RH too much adds {}.",
           gain_text(fit.sensor))});
  if (fitted.low <= 0 && fitted.high >= 0) facts.facts.push_back({{}, "It may as well be none."});
  if (fitted.high < 0) {
    facts.facts.push_back(
        {{}, {"Water goes that the model does not know of: look at the air changes, the sensor, a dehumidifier.", Mark::caution}});
  }
}

std::string keys(const RoomFit& fit) {
  std::string text;
  if (fit.time_constant) text = "time constant: " + time_text(fit.time_constant->value);
  if (fit.moisture_gain && fit.moisture_gain->value > 0)
    text += (text.empty() ? "" : "   ") + ("moisture gain: " + gain_text(fit.moisture_gain->value));
  return unbroken(text);
}

Facts about_log(const job::Job& job, const climate::Log& log, Units units) {
  Facts facts{{{"log", climate::span_text(log, job.shop.zone)}}};
  for (const std::string& note : log.notes) facts.facts.push_back({{}, note});
  if (job.room->outdoors) {
    facts.facts.push_back({"outdoors", job.room->outdoors->describe(units) +
                                           "; where the weather of those days was another, the values are off by more than their ranges"});
  }
  return facts;
}

}  // namespace

Document air_fit(const job::Job& job, const climate::Log& log, const RoomFit& fit, Units units) {
  Facts values;
  add_time_constant(values, fit, units);
  add_moisture_gain(values, fit);
  Section next{"next", {}, {}, {}};
  if (const std::string text = keys(fit); !text.empty()) next.blocks.emplace_back(Facts{{{"for the shop file", text}}});
  next.blocks.emplace_back(Paragraph{"Measured, modelled and outdoors of every reading, for a plot: --format csv"});
  return {typed(job.shop.name) + Phrase("  what " + log.name + " says of the room", Mark::faint),
          {},
          {{"log", {}, {}, {about_log(job, log, units)}}, {"values", {}, {}, {values}}, next}};
}

}  // namespace coatday::report
