#pragma once
// One item of a finish file: a product, a schedule or a rule.

#include <map>
#include <string>

#include "input/value.h"

namespace coatday::input {

/// An item with the `sources` of its file.
struct FinishItem {
  std::string id;
  const Value* value = nullptr;
  const std::map<std::string, std::string>* sources = nullptr;

  /// The words that the file's `sources` have for a key, or the text itself.
  [[nodiscard]] std::string source_text(const std::string& text) const {
    const auto at = sources->find(text);
    return at == sources->end() ? text : at->second;
  }
};

}  // namespace coatday::input
