#include "input/catalogue.h"

#include <fmt/core.h>

#include <deque>
#include <map>
#include <set>

#include "input/amounts.h"
#include "input/fields.h"
#include "input/names.h"
#include "input/over_rule.h"
#include "input/product_layers.h"
#include "input/schedule.h"

namespace coatday::input {
namespace {

using SourceTable = std::map<std::string, std::string>;

struct Contents {
  std::deque<SourceTable> sources;  // of each file; stays in place
  std::vector<FinishItem> products;
  std::vector<FinishItem> schedules;
  std::vector<FinishItem> rules;
};

SourceTable read_sources(const Fields& file) {
  SourceTable table;
  const Value* given = file.find("sources");
  if (given == nullptr) return table;
  Keys keys;
  for (const Entry& entry : given->entries) keys.push_back(entry.key);
  const auto sources = file.map("sources", "the sources", keys);
  for (const std::string_view key : keys) sources->take(key, table[std::string(key)], parse_name);
  return table;
}

std::vector<FinishItem> items_by_id(const Fields& file, std::string_view key, const SourceTable& sources, Mistakes& mistakes) {
  std::vector<FinishItem> items;
  const Value* given = file.find(key);
  if (given == nullptr) return items;
  if (given->kind != Value::Kind::map) file.mistake(key, fmt::format("expected ids with their {} ('id: ...')", key));
  for (const Entry& entry : given->entries) {
    if (entry.key != kebab(entry.key)) {
      mistakes.add(given->source->location(entry.at),
                   fmt::format("{} is no id; expected small letters, digits and hyphens", in_quotes(entry.key)));
    }
    items.push_back({entry.key, &entry.value, &sources});
  }
  return items;
}

template <class T>
void append(std::vector<T>& to, const std::vector<T>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

void read_file(const Value& value, Contents& contents, Mistakes& mistakes) {
  const Fields file(value, "a finish file", finish_keys(), mistakes);
  const SourceTable& sources = contents.sources.emplace_back(read_sources(file));
  append(contents.products, items_by_id(file, "products", sources, mistakes));
  append(contents.schedules, items_by_id(file, "schedules", sources, mistakes));
  for (const Value& rule : file.list("over")) contents.rules.push_back({"", &rule, &sources});
}

}  // namespace

const Keys& finish_keys() {
  static const Keys keys{"products", "schedules", "over", "sources"};
  return keys;
}

finish::Catalogue read_catalogue(std::span<const Value* const> files, Mistakes& mistakes) {
  Contents contents;
  for (const Value* file : files) read_file(*file, contents, mistakes);
  finish::Catalogue catalogue;
  catalogue.products = read_products(contents.products, mistakes);
  for (const FinishItem& item : contents.schedules) {
    catalogue.schedules.insert_or_assign(item.id, read_schedule(item, catalogue.products, mistakes));
  }
  std::set<std::string> families{"any"};
  for (const auto& [id, product] : catalogue.products) families.insert({id, product.family});
  for (const FinishItem& item : contents.rules) catalogue.over.push_back(read_over_rule(item, families, mistakes));
  return catalogue;
}

}  // namespace coatday::input
