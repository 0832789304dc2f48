#include "tests/soak/when.h"

#include <sstream>

namespace coatday::soak {
namespace {

template <class T>
std::optional<T> parsed(const std::string& text, const char* form) {
  std::istringstream in(text);
  T time{};
  in >> date::parse(form, time);
  if (in.fail()) return std::nullopt;
  return time;
}

}  // namespace

std::string stamp(When when) { return date::format("%Y-%m-%d %H:%M", when); }
std::string day_of(When when) { return date::format("%Y-%m-%d", when); }

std::optional<When> when_of(std::string_view text) {
  std::string clock(text.substr(0, 16));
  if (clock.size() == 10) clock += " 00:00";
  if (clock.size() != 16) return std::nullopt;
  clock[10] = ' ';
  return parsed<When>(clock, "%Y-%m-%d %H:%M");
}

std::optional<date::sys_seconds> instant_of(const std::string& text) { return parsed<date::sys_seconds>(text, "%Y-%m-%dT%H:%M:%S%Ez"); }

}  // namespace coatday::soak
