#include <fmt/format.h>

#include <cmath>

#include "tests/soak/make.h"

namespace coatday::soak {
namespace {

constexpr double turn = 6.283185307179586;

/// Nobody's town: two sines and some noise.
struct Climate {
  double mean, season, day, damp;
  int offset_hours;
};

struct Hour {
  double celsius, percent;
};

Hour hour_of(const Climate& at, Random& random, int day_of_year, int hour) {
  const double season = -std::cos(turn * (day_of_year - 20) / 365.0), day = -std::cos(turn * (hour - 3) / 24.0);
  const double noise = random.between(-20, 20) / 10.0;
  const double percent = at.damp - 12 * day + random.between(-8, 8);
  return {at.mean + at.season * season + at.day * day + noise, std::min(100.0, std::max(12.0, percent))};
}

std::string csv_row(int month, int day, int hour, const Hour& h) {
  return fmt::format("{},{},{},{:.1f},{:.0f}\n", month, day, hour, h.celsius, h.percent);
}

std::string epw_row(int month, int day, int hour, const Hour& h) {
  return fmt::format("1999,{},{},{},0,?9,{:.1f},0,{:.0f},100000\n", month, day, hour, h.celsius, h.percent);
}

}  // namespace

std::string add_weather(Scene& scene) {
  Random& random = scene.random;
  const Climate at{static_cast<double>(random.between(4, 22)), static_cast<double>(random.between(2, 14)),
                   static_cast<double>(random.between(1, 6)), static_cast<double>(random.between(45, 80)), random.between(-9, 10)};
  const bool epw = random.chance(0.3);
  std::string file = epw ? fmt::format("LOCATION,Nowhere (invented),-,-,-,0,45.0,0.0,{}.0,100.0\n", at.offset_hours)
                         : fmt::format("# invented hours; utc_offset_h {} elev_m 100\nmonth,day,hour,t_C,rh_pct\n", at.offset_hours);
  int day_of_year = 0;
  const auto end = date::local_days(date::year(2000) / 1 / 1);
  for (auto day = date::local_days(date::year(1999) / 1 / 1); day < end; day += date::days(1), ++day_of_year) {
    const date::year_month_day ymd(day);
    const int month = static_cast<int>(static_cast<unsigned>(ymd.month())), of_month = static_cast<int>(static_cast<unsigned>(ymd.day()));
    for (int hour = 1; hour <= 24; ++hour) {
      const Hour h = hour_of(at, random, day_of_year, hour);
      file += epw ? epw_row(month, of_month, hour, h) : csv_row(month, of_month, hour, h);
    }
  }
  const std::string name = epw ? "weather.epw" : "weather.csv";
  scene.made.tables[name] = std::move(file);
  return name;
}

Tree add_log(Scene& scene) {
  Random& random = scene.random;
  const bool apart = random.chance(0.5), month_first = random.chance(0.5), fahrenheit = random.chance(0.5), share = random.chance(0.3);
  std::string file = fmt::format("{},Bench,Damp\n", apart ? "Day,Hour" : "Time");
  const int readings = random.between(3, 100), step = random.between(15, 90);
  When at = scene.start - date::days(random.between(0, 3));
  for (int i = 0; i < readings; ++i, at += std::chrono::minutes(step)) {
    const double celsius = 15 + 4 * std::sin(i * 0.3), percent = random.between(35, 60);
    const std::string day = date::format(month_first ? "%m/%d/%Y" : "%d/%m/%Y", at);
    file += fmt::format("{}{}{},{:.1f},{}\n", day, apart ? "," : " ", date::format("%H:%M", at), fahrenheit ? celsius * 1.8 + 32 : celsius,
                        share ? percent / 100 : percent);
  }
  scene.made.tables["readings.csv"] = std::move(file);
  Tree log = map();
  set(log, "file", "readings.csv");
  if (apart) set(log, "date", "Day");
  set(log, "time", apart ? "Hour" : "Time");
  set(log, "temperature", "Bench");
  set(log, "humidity", "Damp");
  set(log, "unit", fahrenheit ? "°F" : "°C");
  set(log, "dates", month_first ? "month first" : "day first");
  if (random.chance(0.5)) set(log, "clock", random.one_of({"shop", "standard", "utc"}));
  return log;
}

}  // namespace coatday::soak
