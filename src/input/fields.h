#pragma once
// The keys of one item in a file. A reader asks for each by name and gives a parser; wrong values and unknown keys become mistakes.

#include <initializer_list>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "input/mistakes.h"
#include "input/value.h"

namespace coatday::input {

using Keys = std::vector<std::string_view>;

/// In finish files a value may be written [value, source]. This keeps what is known about the path of each key ("times.recoat").
struct Notes {
  std::map<std::string, std::string> known;    ///< the file's `sources`
  std::map<std::string, std::string> sources;  ///< path -> source
  std::map<std::string, Location> places;      ///< path -> where the value stands
  std::set<std::string> latest;                ///< the paths that the last layer gave
};

class Fields {
 public:
  /// `what` names the item in messages: "the product 'x'", "a drying place". `keys` are all that it may have.
  Fields(const Value& value, std::string what, const Keys& keys, Mistakes& mistakes);
  /// For finish files: values with sources, noted under `path`.
  Fields(const Value& value, std::string what, const Keys& keys, Mistakes& mistakes, Notes& notes, std::string path);

  [[nodiscard]] const std::string& what() const { return what_; }
  /// The item's first line.
  [[nodiscard]] Location where() const { return value_->where(); }
  /// Of a key's value, or the item's own where the key is not given.
  [[nodiscard]] Location where(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const { return find(key) != nullptr; }
  /// A mistake at the key's value.
  void mistake(std::string_view key, std::string message) const { mistakes_->add(where(key), std::move(message)); }

  /// The value of a key with its source taken off, or null.
  [[nodiscard]] const Value* find(std::string_view key) const;
  /// The same; it is a mistake of the item if the key is missing.
  const Value* need(std::string_view key) const;
  /// The text of a key's value. Null, and a mistake unless the key is not given.
  [[nodiscard]] const std::string* text(std::string_view key) const;

  /// Puts the value into `into` when it is given and right, and says whether it was. `parse` takes a string_view and gives an expected
  /// value or a message.
  template <class T, class Parse>
  bool take(std::string_view key, T& into, Parse parse) const {
    const std::string* typed = text(key);
    if (typed == nullptr) return false;
    auto parsed = parse(std::string_view(*typed));
    if (!parsed) {
      mistake(key, parsed.error());
      return false;
    }
    into = *std::move(parsed);
    return true;
  }
  /// The same for a key that the item needs.
  template <class T, class Parse>
  bool must(std::string_view key, T& into, Parse parse) const {
    return need(key) != nullptr && take(key, into, parse);
  }

  /// The items of a list, none where the key is not given.
  [[nodiscard]] std::span<const Value> list(std::string_view key) const;
  [[nodiscard]] bool has_empty_list(std::string_view key) const;
  /// The keys of a map; none where the key is not given.
  [[nodiscard]] std::optional<Fields> map(std::string_view key, std::string what, const Keys& keys) const;

 private:
  void check_keys(const Keys& keys);
  [[nodiscard]] const Value& without_source(const Entry& entry) const;
  [[nodiscard]] std::string path(std::string_view key) const;

  const Value* value_;
  std::string what_;
  Mistakes* mistakes_;
  Notes* notes_ = nullptr;
  std::string path_;
  std::vector<std::string> meant_;  ///< known keys that unknown ones probably mean: they are not missing as well
};

/// Reads each text of a list with a parser; wrong ones become mistakes and are left out.
template <class Parse>
auto each_text(std::span<const Value> list, Mistakes& mistakes, Parse parse) {
  std::vector<typename decltype(parse(std::string_view()))::value_type> all;
  for (const Value& item : list) {
    if (item.kind != Value::Kind::text) {
      mistakes.add(item.where(), "expected a single text here");
      continue;
    }
    auto parsed = parse(std::string_view(item.text));
    if (!parsed) {
      mistakes.add(item.where(), parsed.error());
      continue;
    }
    all.push_back(*std::move(parsed));
  }
  return all;
}

}  // namespace coatday::input
