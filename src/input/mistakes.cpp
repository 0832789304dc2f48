#include "input/mistakes.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "quantity/nearest.h"

namespace coatday::input {
namespace {

constexpr std::size_t longest_choice = 30;  // words
constexpr std::size_t most_kept = 10'000;   // mistakes
constexpr std::size_t most_shown = 100;

auto order_of(const Diagnostic& d) { return std::tie(d.where.file, d.where.line, d.where.column, d.message); }

}  // namespace

void Mistakes::add(Location where, std::string message) {
  if (count_++ < most_kept) found_.push_back({std::move(where), std::move(message), {}});
}

std::vector<Diagnostic> Mistakes::sorted() const {
  std::vector<Diagnostic> all = found_;
  std::ranges::sort(all, [](const Diagnostic& a, const Diagnostic& b) { return order_of(a) < order_of(b); });
  const auto same = [](const Diagnostic& a, const Diagnostic& b) { return order_of(a) == order_of(b); };
  all.erase(std::unique(all.begin(), all.end(), same), all.end());
  if (all.size() <= most_shown) return all;
  all[most_shown] = {{all[most_shown].where.file, 0, 0}, fmt::format("{} more mistakes are not shown", all.size() - most_shown), {}};
  all.resize(most_shown + 1);
  return all;
}

std::string unknown(std::string_view what, std::string_view typed, const std::vector<std::string>& known, std::string_view in) {
  const std::string found = fmt::format("unknown {} {}{}", what, in_quotes(typed), in);
  if (const auto meant = nearest_word(typed, known)) return fmt::format("{}; did you mean '{}'?", found, *meant);
  if (known.empty()) return found;
  if (known.size() > longest_choice) {
    return fmt::format("{}; of the {} that are known the nearest are {}", found, known.size(),
                       fmt::join(nearest_words(typed, known, 5), ", "));
  }
  return fmt::format("{}; expected {}{}", found, known.size() > 1 ? "one of " : "", fmt::join(known, ", "));
}

}  // namespace coatday::input
