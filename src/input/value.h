#pragma once
// What a file holds: text, lists, and maps from keys to values, each with its place.

#include <cstddef>
#include <string>
#include <vector>

#include "input/source.h"

namespace coatday::input {

struct Entry;

struct Value {
  enum class Kind { text, list, map };
  const Source* source = nullptr;  ///< outlives the value
  std::size_t at = 0;              ///< byte
  Kind kind = Kind::text;
  std::string text;
  std::vector<Value> items;
  std::vector<Entry> entries;  ///< as in the file; every key once, every value given

  [[nodiscard]] Location where() const { return source->location(at); }
};

struct Entry {
  std::string key;
  std::size_t at = 0;
  Value value;
};

}  // namespace coatday::input
