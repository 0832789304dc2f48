// climate.csv: monthly means of the weather files beside the samples.

#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>

#include "climate/outdoor.h"
#include "climate/psychrometrics.h"
#include "tests/published/values.h"
#include "tests/support/source_dir.h"

namespace coatday::published {
namespace {

using namespace date::literals;

const climate::OutdoorYear& year(const Value& v) {
  static std::map<std::string, climate::OutdoorYear> known;
  const std::string& file = v.text("file");
  const auto found = known.find(file);
  if (found != known.end()) return found->second;
  std::ifstream in(source_dir() + "/samples/climate/" + file, std::ios::binary);
  auto read = climate::OutdoorYear::parse(std::string(std::istreambuf_iterator<char>(in), {}), file);
  if (!read) throw std::runtime_error(v.place + ": " + read.error().message);
  return known.emplace(file, *std::move(read)).first->second;
}

int hours_from_utc(const Value& v) {
  const std::string& file = v.text("file");
  return file.starts_with("seattle") ? -8 : file.starts_with("denver") ? -7 : -6;
}

/// The mean over the month's hours of the file.
template <class Of>
double mean(const Value& v, const Of& of) {
  const auto first = 2027_y / date::month(static_cast<unsigned>(v.number("month"))) / 1;
  const std::chrono::hours offset(hours_from_utc(v));
  const Instant from = date::sys_days(first) - offset, until = date::sys_days(first + date::months(1)) - offset;
  double sum = 0;
  for (Instant t = from + Minutes(30); t < until; t += std::chrono::hours(1)) sum += of(year(v).at(t));
  return sum / static_cast<double>((until - from) / std::chrono::hours(1));
}

const Computations computations{
    {"monthly_temperature", [](const Value& v) { return mean(v, [](const climate::Air& air) { return air.temperature.value(); }); }},
    {"monthly_humidity", [](const Value& v) { return mean(v, [](const climate::Air& air) { return 100 * air.humidity.value(); }); }},
    {"monthly_humidity_warmed",
     [](const Value& v) {
       return mean(v, [warm = Celsius(v.number("t_C"))](const climate::Air& air) {
         return 100 * climate::relative_humidity(std::max(air.temperature, warm), climate::humidity_ratio(air)).value();
       });
     }},
};

class Climate : public testing::TestWithParam<Group> {};
TEST_P(Climate, Agrees) { check(GetParam(), computations); }
INSTANTIATE_TEST_SUITE_P(Published, Climate, testing::ValuesIn(group({"climate.csv"})), group_name);

}  // namespace
}  // namespace coatday::published
