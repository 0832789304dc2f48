#include "climate/csv.h"

#include <charconv>
#include <cmath>
#include <system_error>
#include <utility>

namespace coatday::climate {
namespace {

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\r'; }

bool continues_character(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

/// Bytes of the UTF-8 character at `at`, 0 where it is none. Overlong forms pass: they do no harm in a message.
std::size_t character_size(std::string_view text, std::size_t at) {
  const auto first = static_cast<unsigned char>(text[at]);
  const std::size_t size = first < 0x80U ? 1 : first < 0xC2U ? 0 : first < 0xE0U ? 2 : first < 0xF0U ? 3 : first < 0xF5U ? 4 : 0;
  if (at + size > text.size()) return 0;
  for (std::size_t i = 1; i < size; ++i)
    if (!continues_character(text[at + i])) return 0;
  return size;
}

/// A character of UTF-8, or a byte that is none: Latin-1 where that has a letter or sign, else '?'.
std::string printable_character(std::string_view character) {
  const auto first = static_cast<unsigned char>(character[0]);
  if (first < 0x20U || first == 0x7FU) return "?";
  if (first < 0x80U || character.size() > 1) return std::string(character);
  if (first < 0xA0U) return "?";
  return {static_cast<char>(0xC0U | (first >> 6U)), static_cast<char>(0x80U | (first & 0x3FU))};
}

}  // namespace

ReadError error_at(std::string_view text, std::size_t byte, std::string message) {
  const std::string_view before = text.substr(0, byte);
  const auto last_end = before.rfind('\n');
  const std::string_view in_line = last_end == std::string_view::npos ? before : before.substr(last_end + 1);
  const auto characters = in_line.size() - static_cast<std::size_t>(std::count_if(in_line.begin(), in_line.end(), continues_character));
  return {static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1, static_cast<int>(characters) + 1, std::move(message)};
}

const CsvRow* CsvReader::next() {
  constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
  if (at_ == 0 && text_.starts_with(byte_order_mark)) at_ = byte_order_mark.size();
  while (at_ < text_.size() && !open_quote_) {
    read_row();
    const bool blank = row_.fields.size() == 1 && row_.fields.front().text.empty();
    if (!blank && !open_quote_) return &row_;
  }
  return nullptr;
}

void CsvReader::read_row() {
  row_.line = line_;
  row_.fields.clear();
  if (text_[at_] == '#') {
    const std::size_t end = std::min(text_.find('\n', at_), text_.size());
    row_.fields.push_back({trimmed(text_.substr(at_, end - at_)), at_});
    at_ = end;
  } else {
    for (bool more = true; more && !open_quote_;) {
      skip_blanks();
      row_.fields.push_back(at_ < text_.size() && text_[at_] == '"' ? quoted_field() : plain_field());
      more = at_ < text_.size() && text_[at_] == separator_;
      if (more) ++at_;
    }
  }
  ++at_;  // the line's end
  ++line_;
}

void CsvReader::skip_blanks() {
  while (at_ < text_.size() && text_[at_] != separator_ && is_blank(text_[at_])) ++at_;
}

CsvField CsvReader::plain_field() {
  const std::size_t from = at_;
  while (!ends_field(at_)) ++at_;
  return {trimmed(text_.substr(from, at_ - from)), from};
}

/// What follows the closing quote, against the standard, is kept rather than lost.
CsvField CsvReader::quoted_field() {
  const std::size_t from = at_++;
  std::string content;
  while (true) {
    const std::size_t quote = text_.find('"', at_);
    if (quote == std::string_view::npos) {
      open_quote_ = from;
      return {{}, from};
    }
    content += text_.substr(at_, quote - at_);
    line_ += static_cast<int>(
        std::count(text_.begin() + static_cast<std::ptrdiff_t>(at_), text_.begin() + static_cast<std::ptrdiff_t>(quote), '\n'));
    at_ = quote + 1;
    if (at_ >= text_.size() || text_[at_] != '"') break;
    content += '"';
    ++at_;
  }
  content += plain_field().text;
  unquoted_.push_back(std::move(content));
  return {trimmed(unquoted_.back()), from};
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  return text;
}

std::optional<double> decimal(std::string_view text) {
  std::string pointed;
  if (std::count(text.begin(), text.end(), ',') == 1) {
    pointed = text;
    pointed[text.find(',')] = '.';
    text = pointed;
  }
  if (text.size() > 1 && text[0] == '+' && text[1] != '-') text.remove_prefix(1);  // from_chars knows no '+'
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::string printable(std::string_view text) {
  std::string result;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t size = std::max<std::size_t>(character_size(text, i), 1);
    result += printable_character(text.substr(i, size));
    i += size;
  }
  return result;
}

std::string shown(std::string_view text) {
  constexpr std::size_t longest = 40;
  std::string result = "'";
  for (std::size_t i = 0; i < text.size();) {
    if (result.size() > longest) return result + "…'";
    const std::size_t size = std::max<std::size_t>(character_size(text, i), 1);
    result += printable_character(text.substr(i, size));
    i += size;
  }
  return result + "'";
}

std::optional<ReadError> unreadable_lines(std::string_view text) {
  if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return ReadError{1, 1, "the text is in UTF-16; expected UTF-8", true};
  const auto back = text.find('\r');
  if (back == std::string_view::npos || text.find('\n') != std::string_view::npos) return std::nullopt;
  return ReadError{1, 1, "its lines end in carriage returns without line feeds; save the file with usual line ends", true};
}

}  // namespace coatday::climate
