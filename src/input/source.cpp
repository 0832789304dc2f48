#include "input/source.h"

#include <fmt/core.h>

#include <algorithm>
#include <utility>

namespace coatday::input {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t block = 64;  // bytes

unsigned byte(std::string_view text, std::size_t at) { return static_cast<unsigned char>(text[at]); }

bool continues(unsigned b) { return (b & 0xC0U) == 0x80U; }

// The smallest and largest second byte that may follow this first byte, which rules out overlong forms and surrogates.
std::pair<unsigned, unsigned> second_byte(unsigned first) {
  switch (first) {
    case 0xE0:
      return {0xA0, 0xBF};
    case 0xED:
      return {0x80, 0x9F};
    case 0xF0:
      return {0x90, 0xBF};
    case 0xF4:
      return {0x80, 0x8F};
    default:
      return {0x80, 0xBF};
  }
}

std::size_t size_by_first(unsigned first) {
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first < 0xE0) return 2;
  if (first >= 0xE0 && first < 0xF0) return 3;
  if (first >= 0xF0 && first < 0xF5) return 4;
  return 0;
}

// C0 but tab and line ends, DEL, and C1.
bool control(std::string_view text, std::size_t size) {
  const unsigned first = byte(text, 0);
  if (size == 1) return (first < 0x20 && first != '\t' && first != '\n' && first != '\r') || first == 0x7F;
  return size == 2 && first == 0xC2 && byte(text, 1) < 0xA0;
}

std::optional<std::string> wrong_character(std::string_view rest) {
  const std::size_t size = character_size(rest);
  if (size == 0) return fmt::format("byte 0x{:02X} is not UTF-8; save the file as UTF-8", byte(rest, 0));
  if (control(rest, size)) return fmt::format("control character 0x{:02X} is not allowed", byte(rest, size - 1));
  if (rest[0] == '\r' && !rest.substr(1).starts_with('\n'))
    return "a carriage return without a line feed; save the file with usual line ends";
  return std::nullopt;
}

}  // namespace

std::size_t count_characters(std::string_view text) {
  return static_cast<std::size_t>(std::ranges::count_if(text, [](char c) { return !continues(static_cast<unsigned char>(c)); }));
}

std::size_t character_size(std::string_view text) {
  if (text.empty()) return 0;
  const std::size_t size = size_by_first(byte(text, 0));
  if (size < 2) return size;
  if (text.size() < size) return 0;
  const auto [low, high] = second_byte(byte(text, 0));
  if (byte(text, 1) < low || byte(text, 1) > high) return 0;
  for (std::size_t i = 2; i < size; ++i) {
    if (!continues(byte(text, i))) return 0;
  }
  return size;
}

Source::Source(std::string name, std::string text) : name_(std::move(name)), text_(std::move(text)) {
  if (text_.starts_with(byte_order_mark)) text_.erase(0, byte_order_mark.size());
  blocks_.reserve(text_.size() / block + 1);
  Before before;
  for (std::size_t begin = 0; begin <= text_.size(); begin += block) {
    blocks_.push_back(before);
    const std::string_view here = std::string_view(text_).substr(begin, block);
    before.characters += count_characters(here);
    before.lines += static_cast<std::size_t>(std::ranges::count(here, '\n'));
    if (const std::size_t end = here.rfind('\n'); end != std::string_view::npos) before.line_start = begin + end + 1;
  }
}

std::size_t Source::characters_before(std::size_t at) const {
  const std::size_t start = at / block;
  return blocks_[start].characters + count_characters(std::string_view(text_).substr(start * block, at - start * block));
}

Location Source::location(std::size_t at) const {
  at = std::min(at, text_.size());
  if (at == text_.size() && text_.ends_with('\n')) --at;  // after the last line's end there is no line
  const Before& before = blocks_[at / block];
  const std::size_t begin = at / block * block;
  const std::string_view here = std::string_view(text_).substr(begin, at - begin);
  const std::size_t end = here.rfind('\n');
  const std::size_t start = end == std::string_view::npos ? before.line_start : begin + end + 1;
  const std::size_t line = before.lines + static_cast<std::size_t>(std::ranges::count(here, '\n')) + 1;
  return {name_, static_cast<int>(line), static_cast<int>(characters_before(at) - characters_before(start)) + 1};
}

std::string_view Source::line(int number) const {
  if (number < 1) return {};
  const auto ended = static_cast<std::size_t>(number) - 1;
  const auto after = std::ranges::partition_point(blocks_, [ended](const Before& before) { return before.lines < ended; });
  std::size_t start = after == blocks_.begin() ? 0 : static_cast<std::size_t>(after - blocks_.begin() - 1) * block;
  for (std::size_t lines = after == blocks_.begin() ? 0 : std::prev(after)->lines; lines < ended; ++lines) {
    start = text_.find('\n', start);
    if (start == std::string::npos) return {};
    ++start;
  }
  const std::size_t end = std::min(text_.find('\n', start), text_.size());
  std::string_view line = std::string_view(text_).substr(start, end - start);
  if (line.ends_with('\r')) line.remove_suffix(1);
  return line;
}

std::optional<TextMistake> find_mistake(std::string_view text) {
  if (text.size() > largest_file) return TextMistake{0, "this file is larger than 1 MiB"};
  for (std::size_t at = 0; at < text.size();) {
    const std::string_view rest = text.substr(at);
    if (auto message = wrong_character(rest)) return TextMistake{at, *std::move(message)};
    at += character_size(rest);
  }
  return std::nullopt;
}

}  // namespace coatday::input
