#include "input/air_log.h"

#include <array>
#include <utility>

#include "input/amounts.h"
#include "input/choices.h"

namespace coatday::input {
namespace {

using namespace std::string_view_literals;

Parsed<climate::LogClock> parse_clock(std::string_view typed) {
  constexpr std::array words{"shop"sv, "standard"sv, "utc"sv};
  return choose(typed, "clock", words).map([](std::size_t i) { return static_cast<climate::LogClock>(i); });
}

Parsed<climate::DateOrder> parse_date_order(std::string_view typed) {
  constexpr std::array words{"day first"sv, "month first"sv};
  return choose(typed, "order of dates", words).map([](std::size_t i) { return static_cast<climate::DateOrder>(i); });
}

Parsed<climate::Scale> parse_scale(std::string_view typed) {
  constexpr std::array words{"°C"sv, "°F"sv, "C"sv, "F"sv};
  return choose(typed, "unit of temperature", words).map([](std::size_t i) { return static_cast<climate::Scale>(i % 2); });
}

/// The name of the file; how its table is to be read goes into `form`.
std::optional<std::string> read_form(const Fields& air, climate::LogForm& form) {
  std::string file;
  if (air.find("log")->kind == Value::Kind::text) {
    if (!air.take("log", file, parse_name)) return std::nullopt;
    return file;
  }
  const auto log = air.map("log", "the logger's file", {"file", "date", "time", "temperature", "humidity", "unit", "clock", "dates"});
  const bool named = log->must("file", file, parse_name);
  log->take("date", form.date, parse_name);
  log->take("time", form.time, parse_name);
  log->take("temperature", form.temperature, parse_name);
  log->take("humidity", form.humidity, parse_name);
  log->take("unit", form.scale, parse_scale);
  log->take("clock", form.clock, parse_clock);
  log->take("dates", form.dates, parse_date_order);
  if (!form.date.empty() && form.time.empty()) log->mistake("date", "'date' is for a date apart from its time; write 'time' as well");
  if (!named) return std::nullopt;
  return file;
}

}  // namespace

std::shared_ptr<const climate::Log> read_log(const Fields& air, const std::filesystem::path& shop, const Zone& zone, climate::LogForm& form,
                                             Files& files, Mistakes& mistakes) {
  if (!air.has("log")) return nullptr;
  const auto name = read_form(air, form);
  if (!name) return nullptr;
  const auto path = beside(shop, *name);
  const Value* value = air.find("log");
  const Source* csv = files.text(path, value->where(), mistakes);
  if (csv == nullptr) return nullptr;
  auto log = climate::read_log(csv->text(), path.filename().string(), form, zone);
  if (log) return std::make_shared<const climate::Log>(*std::move(log));
  Files::wrong_table(*csv, log.error(), mistakes);
  return nullptr;
}

}  // namespace coatday::input
