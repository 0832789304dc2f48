#include "quantity/text_kind.h"

#include <fmt/core.h>

#include <algorithm>
#include <string>
#include <vector>

#include "quantity/nearest.h"
#include "quantity/text_scan.h"

namespace coatday::text {
namespace {

std::string_view without_leading_space(std::string_view text) { return text.starts_with(' ') ? text.substr(1) : text; }

auto error(std::string_view found, std::string_view what, const Kind& kind) {
  return tl::make_unexpected(fmt::format("{} {}; expected {} such as {}", quoted(found), what, kind.name, kind.example));
}

auto unreadable(std::string_view typed, const Kind& kind) {
  if (typed.find(',') != std::string_view::npos) return error(typed, "has a comma, which is not a decimal point", kind);
  return error(typed, fmt::format("is not {}", kind.name), kind);
}

auto unknown_unit(std::string_view word, const Kind& kind) {
  std::vector<std::string> words;
  for (const Unit& unit : kind.units) words.emplace_back(unit.word);
  if (const auto meant = nearest_word(word, words)) {
    return tl::make_unexpected(fmt::format("unknown unit {}; did you mean '{}'?", quoted(word), *meant));
  }
  return tl::make_unexpected(fmt::format("unknown unit {}; expected {} such as {}", quoted(word), kind.name, kind.example));
}

bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string_view unit_word(std::string_view text, const Kind& kind) {
  if (!kind.chain) return text;
  if (text.starts_with('\'') || text.starts_with('"')) return text.substr(0, 1);
  const auto end = std::find_if_not(text.begin(), text.end(), letter);
  return text.substr(0, static_cast<std::size_t>(end - text.begin()));
}

const Unit* find_unit(std::string_view word, const Kind& kind) {
  const auto at = std::ranges::find(kind.units, word, &Unit::word);
  return at == kind.units.end() ? nullptr : &*at;
}

double size_of(const Unit& unit) { return unit.numerator / unit.denominator; }

struct Part {
  Amount amount;
  const Unit* unit = nullptr;
  [[nodiscard]] double value() const { return (amount.value - unit->zero) * unit->numerator / unit->denominator; }
};

// 5 ft 8 in, but not 8 in 5 ft, 5.5 ft 8 in, 5 ft 14 in, 5 ft -8 in.
bool may_follow(const Part& next, const Part& last) {
  const double limit = size_of(*last.unit);
  return last.amount.whole && last.amount.value >= 0 && size_of(*next.unit) < limit && next.amount.value >= 0 && next.value() < limit;
}

Parsed<double> in_range(double value, std::string_view typed, const Kind& kind) {
  const bool high_enough = kind.bound == Low::included ? value >= kind.low : value > kind.low;
  if (high_enough && value <= kind.high) return value + 0.0;  // + 0.0 turns -0 into 0
  return tl::make_unexpected(fmt::format("{} is out of range; expected {} {}", quoted(typed), kind.name, kind.range));
}

Parsed<Part> read_part(std::string_view text, std::string_view typed, const Kind& kind) {
  auto amount = read_amount(text);
  if (!amount) return unreadable(typed, kind);
  amount->rest = without_leading_space(amount->rest);
  if (amount->rest.empty()) return error(text, "has no unit", kind);
  const std::string_view word = unit_word(amount->rest, kind);
  if (word.empty() || typed.find(',') != std::string_view::npos) return unreadable(typed, kind);
  const Unit* unit = find_unit(word, kind);
  if (unit == nullptr) return unknown_unit(word, kind);
  amount->rest = without_leading_space(amount->rest.substr(word.size()));
  return Part{*amount, unit};
}

}  // namespace

Parsed<double> parse(std::string_view typed, const Kind& kind) {
  const std::string text = plain(typed);
  if (text.empty()) return tl::make_unexpected(fmt::format("nothing is given; expected {} such as {}", kind.name, kind.example));
  Parsed<Part> last = read_part(text, typed, kind);
  if (!last) return tl::make_unexpected(last.error());
  double total = last->value();
  while (!last->amount.rest.empty()) {
    Parsed<Part> next = read_part(last->amount.rest, typed, kind);
    if (!next) return tl::make_unexpected(next.error());
    if (!may_follow(*next, *last)) return error(typed, "has parts that do not go together", kind);
    total += next->value();
    last = next;
  }
  return in_range(total, typed, kind);
}

}  // namespace coatday::text
