#include "input/fields.h"

#include <fmt/core.h>

#include <algorithm>

#include "quantity/nearest.h"

namespace coatday::input {
namespace {

using Kind = Value::Kind;

constexpr std::size_t longest_list = 1000;  // no order of a small shop is longer, and its mistakes would take long

std::string_view kind_word(Kind kind) {
  switch (kind) {
    case Kind::text:
      return "a single text";
    case Kind::list:
      return "a list";
    case Kind::map:
      return "keys with values";
  }
  return "";
}

// [value, source]: a value, then a text. Where a list is expected, the value is itself a list.
bool has_source(const Value& value, bool expects_list) {
  if (value.kind != Kind::list || value.items.size() != 2 || value.items[1].kind != Kind::text) return false;
  return expects_list ? value.items[0].kind == Kind::list : true;
}

// Keys with a list as their value.
bool is_list_key(std::string_view key) { return key == "hazards" || key == "barriers" || key == "cans" || key == "bake"; }

}  // namespace

Fields::Fields(const Value& value, std::string what, const Keys& keys, Mistakes& mistakes)
    : value_(&value), what_(std::move(what)), mistakes_(&mistakes) {
  check_keys(keys);
}

Fields::Fields(const Value& value, std::string what, const Keys& keys, Mistakes& mistakes, Notes& notes, std::string path)
    : value_(&value), what_(std::move(what)), mistakes_(&mistakes), notes_(&notes), path_(std::move(path)) {
  check_keys(keys);
  for (const Entry& entry : value.entries) {
    const Value& inner = without_source(entry);
    notes_->places[this->path(entry.key)] = inner.where();
    notes_->latest.insert(this->path(entry.key));
    notes_->sources.erase(this->path(entry.key));
    if (&inner == &entry.value) continue;
    const std::string& source = entry.value.items[1].text;
    const auto known = notes_->known.find(source);
    notes_->sources[this->path(entry.key)] = known == notes_->known.end() ? source : known->second;
  }
}

void Fields::check_keys(const Keys& keys) {
  if (value_->kind != Kind::map) {
    mistakes_->add(value_->where(),
                   fmt::format("expected {} as keys with values ('key: value'), found {}", what_, kind_word(value_->kind)));
    return;
  }
  const std::vector<std::string> words(keys.begin(), keys.end());
  for (const Entry& entry : value_->entries) {
    if (std::ranges::find(keys, entry.key) != keys.end()) continue;
    mistakes_->add(entry.value.source->location(entry.at), unknown("key", entry.key, words, " in " + what_));
    if (auto meant = nearest_word(entry.key, words)) meant_.push_back(*std::move(meant));
  }
}

const Value& Fields::without_source(const Entry& entry) const {
  return notes_ != nullptr && has_source(entry.value, is_list_key(entry.key)) ? entry.value.items[0] : entry.value;
}

const Value* Fields::find(std::string_view key) const {
  const auto at = std::ranges::find(value_->entries, key, &Entry::key);
  return at == value_->entries.end() ? nullptr : &without_source(*at);
}

const Value* Fields::need(std::string_view key) const {
  const Value* value = find(key);
  const bool known = std::ranges::find(meant_, key) != meant_.end();
  if (value == nullptr && value_->kind == Kind::map && !known) mistakes_->add(where(), fmt::format("{} needs '{}'", what_, key));
  return value;
}

Location Fields::where(std::string_view key) const {
  const Value* value = find(key);
  return value == nullptr ? where() : value->where();
}

const std::string* Fields::text(std::string_view key) const {
  const Value* value = find(key);
  if (value == nullptr) return nullptr;
  if (value->kind == Kind::text) return &value->text;
  mistake(key, fmt::format("expected a single text for '{}', found {}", key, kind_word(value->kind)));
  return nullptr;
}

std::span<const Value> Fields::list(std::string_view key) const {
  const Value* value = find(key);
  if (value == nullptr) return {};
  if (value->kind == Kind::list && value->items.size() > longest_list) {
    mistake(key, fmt::format("more than {} items in '{}'", longest_list, key));
    return std::span(value->items).first(longest_list);
  }
  if (value->kind == Kind::list) return value->items;
  mistake(key, fmt::format("expected a list for '{}', found {}", key, kind_word(value->kind)));
  return {};
}

bool Fields::has_empty_list(std::string_view key) const {
  const Value* value = find(key);
  return value != nullptr && value->kind == Kind::list && value->items.empty();
}

std::optional<Fields> Fields::map(std::string_view key, std::string what, const Keys& keys) const {
  const Value* value = find(key);
  if (value == nullptr) return std::nullopt;
  if (notes_ == nullptr) return Fields(*value, std::move(what), keys, *mistakes_);
  return Fields(*value, std::move(what), keys, *mistakes_, *notes_, path(key));
}

std::string Fields::path(std::string_view key) const { return path_.empty() ? std::string(key) : fmt::format("{}.{}", path_, key); }

}  // namespace coatday::input
