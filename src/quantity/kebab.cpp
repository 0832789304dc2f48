#include "quantity/kebab.h"

namespace coatday {
namespace {

constexpr std::size_t longest_id = 60;

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool plain(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }

}  // namespace

std::string kebab(std::string_view name) {
  std::string id;
  bool gap = false;
  for (const char typed : name) {
    const char c = lower(typed);
    if (!plain(c)) {
      gap = true;
      continue;
    }
    if (id.size() >= longest_id) break;
    if (gap && !id.empty()) id += '-';
    gap = false;
    id += c;
  }
  return id;
}

}  // namespace coatday
