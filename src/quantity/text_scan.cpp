#include "quantity/text_scan.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <system_error>
#include <utility>

namespace coatday::text {
namespace {

constexpr std::size_t longest_quote = 60;
constexpr std::size_t longest_text = 200;  // no measurement is longer; what is, is left as it is and then refused

// In this order: the last two look at what the first ones wrote.
constexpr std::pair<std::string_view, std::string_view> signs[] = {
    {"\t", " "},      {"\r", " "},      {"\n", " "},     {"\u00a0", " "}, {"\u2009", " "}, {"\u202f", " "}, {"\u2212", "-"},
    {"²", "2"},       {"³", "3"},       {"\u00b5", "u"}, {"\u03bc", "u"}, {"½", " 1/2"},   {"¼", " 1/4"},   {"¾", " 3/4"},
    {"⅛", " 1/8"},    {"⅜", " 3/8"},    {"⅝", " 5/8"},   {"⅞", " 7/8"},   {"\u2044", "/"}, {"\u2032", "'"}, {"\u2019", "'"},
    {"\u2033", "\""}, {"\u201d", "\""}, {"''", "\""},    {"'-", "' "},
};

void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
}

struct Fraction {
  unsigned numerator = 0;
  unsigned denominator = 1;
  std::string_view rest;
};

std::optional<std::pair<unsigned, std::string_view>> read_whole(std::string_view text) {
  unsigned value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc()) return std::nullopt;
  return std::pair(value, text.substr(static_cast<std::size_t>(end - text.data())));
}

std::optional<Fraction> read_fraction(std::string_view text) {
  const auto above = read_whole(text);
  if (!above || !above->second.starts_with('/')) return std::nullopt;
  const auto below = read_whole(above->second.substr(1));
  if (!below || below->first == 0) return std::nullopt;
  return Fraction{above->first, below->first, below->second};
}

double value_of(const Fraction& f) { return double{1} * f.numerator / f.denominator; }

std::optional<Amount> read_decimal(std::string_view text) {
  const std::size_t size = std::min(text.find_first_not_of("0123456789."), text.size());
  double value = 0;  // from_chars sees digits and points only: no sign, exponent, inf or nan
  const auto [end, error] = std::from_chars(text.data(), text.data() + size, value, std::chars_format::fixed);
  if (error != std::errc() || end != text.data() + size) return std::nullopt;
  return Amount{value, text.substr(0, size).find('.') == std::string_view::npos, text.substr(size)};
}

std::optional<Amount> read_unsigned_amount(std::string_view text) {
  if (const auto fraction = read_fraction(text)) return Amount{value_of(*fraction), false, fraction->rest};
  auto amount = read_decimal(text);
  if (!amount || !amount->whole || amount->rest.empty()) return amount;
  const bool joined = amount->rest.front() == ' ' || amount->rest.front() == '-';
  const auto fraction = joined ? read_fraction(amount->rest.substr(1)) : std::nullopt;
  if (!fraction) return amount;
  if (fraction->numerator >= fraction->denominator) return std::nullopt;  // 2 9/8 is a slip
  return Amount{amount->value + value_of(*fraction), false, fraction->rest};
}

}  // namespace

std::string plain(std::string_view typed) {
  std::string text(typed);
  if (text.size() > longest_text) return text;
  for (const auto& [from, to] : signs) replace_all(text, from, to);
  text.erase(std::unique(text.begin(), text.end(), [](char a, char b) { return a == ' ' && b == ' '; }), text.end());
  replace_all(text, " /", "/");
  replace_all(text, "/ ", "/");
  if (text.starts_with(' ')) text.erase(0, 1);
  if (text.ends_with(' ')) text.pop_back();
  return text;
}

std::string quoted(std::string_view text) {
  std::string out = "'";
  for (const char c : text) {
    const bool starts_character = (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    const bool full = out.size() > longest_quote && (starts_character || out.size() > 2 * longest_quote);
    if (full) return out + "…'";
    const bool control = static_cast<unsigned char>(c) < 0x20U || c == 0x7F;
    out += control ? ' ' : c;
  }
  return out + "'";
}

std::optional<Amount> read_amount(std::string_view text) {
  if (!text.starts_with('-')) return read_unsigned_amount(text);
  auto amount = read_unsigned_amount(text.substr(1));
  if (amount) amount->value = -amount->value;
  return amount;
}

}  // namespace coatday::text
