#include "tests/climate/year.h"
#include "tests/support/source_dir.h"

#include <array>
#include <fstream>
#include <iterator>

#include <gtest/gtest.h>

namespace coatday::climate {

std::string year_text(const std::string& comment, const std::string& header, const std::function<std::string(int, int, int)>& row) {
  constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  std::string text = comment + "\n" + header + "\n";
  for (int month = 1; month <= 12; ++month)
    for (int day = 1; day <= days[static_cast<std::size_t>(month - 1)]; ++day)
      for (int hour = 1; hour <= 24; ++hour)
        text += std::to_string(month) + "," + std::to_string(day) + "," + std::to_string(hour) + "," + row(month, day, hour) + "\n";
  return text;
}

OutdoorYear constant_year(const std::string& row) {
  return OutdoorYear::parse(year_text("# utc_offset_h 0", "month,day,hour,t_C,rh_pct", [&](int, int, int) { return row; }), "nowhere")
      .value();
}

std::string sample_text(const std::string& file) {
  std::ifstream in(source_dir() + "/samples/climate/" + file, std::ios::binary);
  EXPECT_TRUE(in) << file;
  return std::string(std::istreambuf_iterator<char>(in), {});
}

}  // namespace coatday::climate
