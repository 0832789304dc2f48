#include "climate/log_notes.h"

#include <fmt/core.h>

#include <algorithm>
#include <cstddef>

namespace coatday::climate {

std::string rows_text(std::vector<int> lines) {
  constexpr std::size_t most = 5;
  std::sort(lines.begin(), lines.end());
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  std::vector<std::string> ranges;
  std::size_t counted = 0;
  for (std::size_t i = 0; i < lines.size() && ranges.size() < most;) {
    std::size_t last = i;
    while (last + 1 < lines.size() && lines[last + 1] == lines[last] + 1) ++last;
    ranges.push_back(last == i ? std::to_string(lines[i]) : fmt::format("{}-{}", lines[i], lines[last]));
    counted += last + 1 - i;
    i = last + 1;
  }
  if (counted < lines.size()) ranges.push_back(fmt::format("{} more", lines.size() - counted));
  std::string words = lines.size() == 1 ? "row " : "rows ";
  for (std::size_t i = 0; i < ranges.size(); ++i) words += (i == 0 ? "" : i + 1 == ranges.size() ? " and " : ", ") + ranges[i];
  return words;
}

}  // namespace coatday::climate
