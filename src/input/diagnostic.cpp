#include "input/diagnostic.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "input/source.h"

namespace coatday::input {
namespace {

constexpr std::size_t longest_quote = 60;  // characters
constexpr std::size_t widest = 100;        // characters of a printed line

// The characters of a line; what is no character prints as '?'.
std::vector<std::string_view> characters(std::string_view text) {
  std::vector<std::string_view> all;
  while (!text.empty()) {
    const std::size_t size = character_size(text);
    const bool printable = size > 0 && (static_cast<unsigned char>(text[0]) >= 0x20 || text[0] == '\t') && text[0] != 0x7F;
    all.push_back(printable ? text.substr(0, size) : std::string_view("?"));
    text.remove_prefix(std::max<std::size_t>(size, 1));
  }
  return all;
}

// Cut around the caret, which moves with the cut.
void cut(std::vector<std::string_view>& line, std::size_t& caret) {
  if (line.size() <= widest) return;
  const std::size_t last_start = line.size() - widest;
  const std::size_t start = std::min(caret > widest / 2 ? caret - widest / 2 : 0, last_start);
  line.erase(line.begin() + static_cast<std::ptrdiff_t>(start + widest), line.end());
  line.erase(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(start));
  if (start > 0) line.front() = "…";
  if (start < last_start) line.back() = "…";
  caret -= start;
}

}  // namespace

std::string to_text(const Diagnostic& d) {
  if (d.where.line == 0) return fmt::format("{}: error: {}", d.where.file, d.message);
  const std::string head = fmt::format("{}:{}:{}: error: {}", d.where.file, d.where.line, d.where.column, d.message);
  if (d.line.empty()) return head;
  std::vector<std::string_view> line = characters(d.line);
  std::size_t caret = std::min(static_cast<std::size_t>(std::max(d.where.column, 1)) - 1, line.size());
  cut(line, caret);
  std::string under;
  for (std::size_t i = 0; i < caret; ++i) under += i < line.size() && line[i] == "\t" ? '\t' : ' ';
  return fmt::format("{}\n{}\n{}^", head, fmt::join(line, ""), under);
}

std::string in_quotes(std::string_view typed) {
  std::string text(typed);
  std::ranges::replace_if(
      text, [](char c) { return c == '\n' || c == '\t'; }, ' ');
  std::vector<std::string_view> all = characters(text);
  const bool too_long = all.size() > longest_quote;
  if (too_long) all.resize(longest_quote);
  return fmt::format("'{}{}'", fmt::join(all, ""), too_long ? "…" : "");
}

}  // namespace coatday::input
