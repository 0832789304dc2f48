#pragma once
// Finish files: products, schedules and the rules of what goes over what.

#include <map>
#include <set>
#include <span>
#include <string>

#include "finish/catalogue.h"
#include "input/fields.h"

namespace coatday::input {

/// Files in the order in which later ones win.
[[nodiscard]] finish::Catalogue read_catalogue(std::span<const Value* const> files, Mistakes&);

/// One item of a finish file, with the file's `sources`.
struct FinishItem {
  std::string id;
  const Value* value = nullptr;
  const std::map<std::string, std::string>* sources = nullptr;
};

[[nodiscard]] std::map<std::string, finish::Product> read_products(std::span<const FinishItem> items, Mistakes&);
[[nodiscard]] finish::Schedule read_schedule(const FinishItem&, const std::map<std::string, finish::Product>& products, Mistakes&);
[[nodiscard]] finish::OverRule read_over_rule(const FinishItem&, const std::set<std::string>& families, Mistakes&);

template <class T>
std::vector<std::string> keys_of(const std::map<std::string, T>& map) {
  std::vector<std::string> keys;
  for (const auto& [key, value] : map) keys.push_back(key);
  return keys;
}

/// A source's words: those that the file's `sources` have for the key, or the text itself.
[[nodiscard]] std::string source_text(const std::map<std::string, std::string>& known, const std::string& text);

}  // namespace coatday::input
