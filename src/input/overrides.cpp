#include "input/overrides.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "input/amounts.h"
#include "input/document.h"

namespace coatday::input {
namespace {

std::string one_a_line(const std::vector<std::string>& texts) {
  std::string all;
  for (std::string text : texts) {
    std::ranges::replace(text, '\n', ' ');  // a line a text
    all += text + "\n";
  }
  return all;
}

bool has(const Keys& keys, const std::string& key) { return std::ranges::find(keys, key) != keys.end(); }

// What an item of a list is called in its file.
const std::string* name_of(const Value& item) {
  for (const Entry& entry : item.entries) {
    const bool names = entry.key == "name" || entry.key == "piece" || entry.key == "part" || entry.key == "product";
    if (names && entry.value.kind == Value::Kind::text) return &entry.value.text;
  }
  return nullptr;
}

std::vector<std::string> names_in(const Value& list) {
  std::vector<std::string> names;
  for (const Value& item : list.items) {
    if (const std::string* name = name_of(item)) names.push_back(*name);
  }
  return names;
}

// The place of an item of the list: its number or its name. One past the end is a new one.
std::optional<std::size_t> item_of(const Value& list, const std::string& typed) {
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    const std::string* name = name_of(list.items[i]);
    if (name != nullptr && *name == typed) return i;
  }
  const auto number = parse_positive_count(typed);
  if (!number || static_cast<std::size_t>(*number) > list.items.size() + 1) return std::nullopt;
  return static_cast<std::size_t>(*number) - 1;
}

Value& entry_of(Value& map, const std::string& key, std::size_t at, const Source* source) {
  const auto found = std::ranges::find(map.entries, key, &Entry::key);
  if (found != map.entries.end()) return found->value;
  Value empty;
  empty.source = source;
  empty.at = at;
  empty.kind = Value::Kind::map;
  map.entries.push_back({key, at, std::move(empty)});
  return map.entries.back().value;
}

constexpr const char* first_of_orders = "orders";

}  // namespace

Overrides::Overrides(const std::vector<std::string>& texts, Mistakes& mistakes) : source_(set_name, one_a_line(texts)) {
  for (std::size_t i = 0; i < texts.size(); ++i) read(i, texts[i], mistakes);
}

void Overrides::read(std::size_t number, const std::string& text, Mistakes& mistakes) {
  const std::size_t sign = text.find('=');
  const Location start{set_name, static_cast<int>(number) + 1, 1};
  if (sign == std::string::npos || trim(text.substr(sign + 1)).empty()) {
    mistakes.add(start, "expected a key, '=' and a value, such as 'air.night=13 C'");
    return;
  }
  const std::string_view path = std::string_view(text).substr(0, sign);
  if (find_mistake(text) || text.find('\n') != std::string::npos) {
    mistakes.add(start, "expected one line of text to be set");
    return;
  }
  const std::string lines(number, '\n');
  const Source& source = sources_.emplace_back(set_name, lines + std::string(count_characters(path) + 1, ' ') + text.substr(sign + 1));
  Override one;
  std::size_t at = 0;
  for (const std::string_view segment : split(path, ".")) {
    const std::string_view name = trim(segment);
    const std::size_t blank = static_cast<std::size_t>(name.data() - segment.data());
    if (name.empty())
      return mistakes.add({set_name, start.line, static_cast<int>(at) + 1}, "a name is missing between the dots of this path");
    one.path.push_back({std::string(name), number + at + blank});
    at += count_characters(segment) + 1;
  }
  if (one.path.front().name == first_of_orders) {
    if (one.path.size() < 3) {
      return mistakes.add(start, "expected the number of an order and one of its keys after 'orders', such as 'orders.2.start=2027-03-01'");
    }
    one.order = one.path[1];
    one.path.erase(one.path.begin(), one.path.begin() + 2);
  }
  const bool again = std::ranges::any_of(set_, [&](const Override& other) {
    return number_of(other.order) == number_of(one.order) && std::ranges::equal(other.path, one.path, {}, &Segment::name, &Segment::name);
  });
  if (again) return mistakes.add(start, fmt::format("{} is set twice", in_quotes(trim(path))));
  auto value = read_document(source, mistakes);
  if (!value) return;
  one.value = *std::move(value);
  set_.push_back(std::move(one));
}

int Overrides::number_of(const std::optional<Segment>& order) { return order ? parse_positive_count(order->name).value_or(0) : 0; }

void Overrides::check_first_keys(const Keys& order, const Keys& shop, std::size_t orders, Mistakes& mistakes) const {
  for (const Override& one : set_) {
    const Segment& first = one.path.front();
    const Location where = one.value.source->location(first.at);
    if (one.order) {
      check_order(one, order, orders, mistakes);
    } else if (has(order, first.name)) {
      if (orders > 1) {
        mistakes.add(where, fmt::format("{0} is a key of an order, and {1} orders are planned; write 'orders.1.{2}' to 'orders.{1}.{2}'",
                                        in_quotes(first.name), orders, first.name));
      }
    } else if (!has(shop, first.name)) {
      std::vector<std::string> known(order.begin(), order.end());
      known.insert(known.end(), shop.begin(), shop.end());
      mistakes.add(where, unknown("key", first.name, known, " of the order or the shop"));
    }
  }
}

void Overrides::check_order(const Override& one, const Keys& of_orders, std::size_t orders, Mistakes& mistakes) const {
  const int number = number_of(one.order);
  if (number == 0 || static_cast<std::size_t>(number) > orders) {
    mistakes.add(one.value.source->location(one.order->at),
                 fmt::format("{} is no number of an order; expected 1{}", in_quotes(one.order->name),
                             orders > 1 ? fmt::format(" to {}, in the turn of the files", orders) : ""));
  }
  const Segment& first = one.path.front();
  if (has(of_orders, first.name)) return;
  const std::vector<std::string> known(of_orders.begin(), of_orders.end());
  mistakes.add(one.value.source->location(first.at), unknown("key", first.name, known, " of the order"));
}

const Value& Overrides::on_shop(const Value& file, const Keys& keys, const Keys& others, Mistakes& mistakes) {
  return on(
      file, [&](const Override& one) { return !one.order && has(keys, one.path.front().name) && !has(others, one.path.front().name); },
      mistakes);
}

const Value& Overrides::on_order(const Value& file, const Keys& keys, int number, Mistakes& mistakes) {
  const auto is_of = [&](const Override& one) {
    return has(keys, one.path.front().name) && (!one.order || number_of(one.order) == number);
  };
  return on(file, is_of, mistakes);
}

const Value& Overrides::on(const Value& file, const std::function<bool(const Override&)>& is_of, Mistakes& mistakes) {
  Value* changed = nullptr;
  for (const Override& one : set_) {
    if (!is_of(one)) continue;
    if (changed == nullptr) changed = &changed_.emplace_back(file);
    put(one, *changed, mistakes);
  }
  return changed == nullptr ? file : *changed;
}

void Overrides::put(const Override& one, Value& root, Mistakes& mistakes) const {
  Value* value = &root;
  for (const Segment& segment : one.path) {
    const Location where = one.value.source->location(segment.at);
    if (value->kind == Value::Kind::text)
      return mistakes.add(where, fmt::format("{} is a single text and has no keys", in_quotes(value->text)));
    if (value->kind == Value::Kind::map) {
      value = &entry_of(*value, segment.name, segment.at, one.value.source);
      continue;
    }
    const auto item = item_of(*value, segment.name);
    if (!item) {
      const std::string range = fmt::format(" in this list; number it from 1 to {}", value->items.size() + 1);
      const auto known = names_in(*value);
      return mistakes.add(where, unknown("item", segment.name, known, known.empty() ? range : " in this list"));
    }
    if (*item == value->items.size()) value->items.emplace_back(Value{one.value.source, segment.at, Value::Kind::map, {}, {}, {}});
    value = &value->items[*item];
  }
  *value = one.value;
}

}  // namespace coatday::input
