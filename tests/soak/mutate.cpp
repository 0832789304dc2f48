#include "tests/soak/mutate.h"

#include <algorithm>
#include <cctype>

namespace coatday::soak {
namespace {

std::size_t line_start(const std::string& text, std::size_t at) {
  const std::size_t before = at == 0 ? std::string::npos : text.rfind('\n', at - 1);
  return before == std::string::npos ? 0 : before + 1;
}

std::size_t line_end(const std::string& text, std::size_t at) { return std::min(text.find('\n', at), text.size() - 1) + 1; }

void put_extreme(Random& random, std::string& text, std::size_t near) {
  static const std::string digits = "0123456789";
  const std::size_t at = text.find_first_of(digits, near);
  if (at == std::string::npos) return;
  const std::size_t end = std::min(text.find_first_not_of(digits + ".", at), text.size());
  text.replace(at, end - at,
               random.one_of({"0", "-1", "1e999", "nan", "inf", "99999999999999999999", "", "0.0000001", "1e308", "2147483648", "1/0",
                              "9999-12-31", "-0"}));
}

/// Every kind of byte comes up: control characters, halves of UTF-8, and what YAML gives a meaning.
char any_byte(Random& random) {
  static const std::string meaning = ":-#{}[],&*!|>'\"%@`\n\t \\";
  return random.chance(0.5) ? meaning[random.below(meaning.size())] : static_cast<char>(random.below(256));
}

}  // namespace

std::string mutated(Random& random, std::string text) {
  for (int changes = random.chance(0.7) ? 1 : random.between(2, 6); changes > 0 && !text.empty(); --changes) {
    const std::size_t at = random.below(text.size()), other = random.below(text.size());
    const std::size_t first = line_start(text, at), end = line_end(text, at);
    switch (random.between(0, 7)) {
      case 0:
        text[at] = static_cast<char>(text[at] ^ static_cast<char>(1U << random.below(8)));
        break;
      case 1:
        text.erase(at, 1 + random.below(4));
        break;
      case 2:
        text.insert(at, 1, any_byte(random));
        break;
      case 3:
        text.insert(first, text.substr(first, end - first));
        break;
      case 4:
        text.erase(first, end - first);
        break;
      case 5:
        text.insert(line_start(text, other), text.substr(first, end - first));
        break;
      case 6:
        text.insert(at, text.substr(other, random.below(80)));
        break;
      default:
        put_extreme(random, text, at);
    }
  }
  return text;
}

}  // namespace coatday::soak
