#include "input/own_file.h"

#include <algorithm>

namespace coatday::input {
namespace {

constexpr std::string_view before_a_key = " \t{'\"";
constexpr std::string_view after_a_key = " \t'\"";

bool begins_with(std::string_view line, std::string_view key) {
  line.remove_prefix(std::min(line.find_first_not_of(before_a_key), line.size()));
  if (!line.starts_with(key)) return false;
  line.remove_prefix(key.size());
  line.remove_prefix(std::min(line.find_first_not_of(after_a_key), line.size()));
  return line.starts_with(':');
}

}  // namespace

bool has_a_key(std::string_view text, const Keys& keys) {
  while (!text.empty()) {
    const std::string_view line = text.substr(0, text.find('\n'));
    if (std::ranges::any_of(keys, [line](std::string_view key) { return begins_with(line, key); })) return true;
    text.remove_prefix(std::min(line.size() + 1, text.size()));
  }
  return false;
}

}  // namespace coatday::input
