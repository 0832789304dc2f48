#include "input/product_layers.h"

#include <fmt/core.h>

#include <optional>

#include "input/amounts.h"
#include "input/product.h"
#include "input/product_check.h"

namespace coatday::input {
namespace {

struct Layer {
  const FinishItem* item = nullptr;
  std::optional<std::size_t> base;  // the layer below
  std::optional<ProductDraft> draft;
  bool is_lost = false;  // the product that it is like is missing
};

constexpr std::size_t most_products = 2000;  // each is copied by those that are like it

using Top = std::map<std::string, std::size_t>;  // a product's last layer

const std::string* like_of(const Value& product, const Value** value) {
  for (const Entry& entry : product.entries) {
    if (entry.key != "like") continue;
    *value = &entry.value;
    return entry.value.kind == Value::Kind::text ? &entry.value.text : nullptr;
  }
  return nullptr;
}

std::vector<Layer> layers_of(std::span<const FinishItem> items, Top& top, Mistakes& mistakes) {
  std::vector<Layer> layers;
  for (const FinishItem& item : items) {
    const auto earlier = top.find(item.id);
    layers.push_back({&item, earlier == top.end() ? std::nullopt : std::optional(earlier->second), std::nullopt, false});
    top[item.id] = layers.size() - 1;
  }
  const std::vector<std::string> known = keys_of(top);
  for (Layer& layer : layers) {
    const Value* value = nullptr;
    const std::string* like = like_of(*layer.item->value, &value);
    layer.is_lost = value != nullptr && like == nullptr;
    if (layer.is_lost) mistakes.add(value->where(), "expected the id of a product");
    if (like == nullptr || (*like == layer.item->id && layer.base)) continue;
    const auto found = top.find(*like);
    if (found == top.end()) mistakes.add(value->where(), unknown("product", *like, known));
    layer.is_lost = found == top.end();
    layer.base = layer.is_lost ? std::nullopt : std::optional(found->second);
  }
  return layers;
}

// The layers below, down to one that is built or has no base; the lowest comes last. A circle is a mistake, and is cut.
std::vector<std::size_t> way_down(std::vector<Layer>& layers, std::size_t from, Mistakes& mistakes) {
  std::vector<std::size_t> way;
  for (std::optional<std::size_t> at = from; at && !layers[*at].draft; at = layers[*at].base) {
    if (way.size() == layers.size()) {
      const Value* value = nullptr;
      (void)like_of(*layers[*at].item->value, &value);
      mistakes.add(value->where(), fmt::format("the product '{}' is like itself, by way of what it is like", layers[*at].item->id));
      layers[*at].base.reset();
      layers[*at].is_lost = true;
      return way_down(layers, from, mistakes);
    }
    way.push_back(*at);
  }
  return way;
}

void build(std::vector<Layer>& layers, std::size_t from, Mistakes& mistakes) {
  const std::vector<std::size_t> way = way_down(layers, from, mistakes);
  for (auto at = way.rbegin(); at != way.rend(); ++at) {
    Layer& layer = layers[*at];
    layer.draft = layer.base ? *layers[*layer.base].draft : ProductDraft{};
    if (layer.is_lost) layer.draft->is_whole = false;
    add_layer(*layer.draft, layer.item->id, *layer.item->value, *layer.item->sources, mistakes);
  }
}

}  // namespace

std::map<std::string, finish::Product> read_products(std::span<const FinishItem> items, Mistakes& mistakes) {
  if (items.size() > most_products) {
    mistakes.add(items[most_products].value->where(), fmt::format("more than {} products", most_products));
    items = items.first(most_products);
  }
  Top top;
  std::vector<Layer> layers = layers_of(items, top, mistakes);
  std::map<std::string, finish::Product> products;
  for (const auto& [id, last] : top) {
    if (!layers[last].draft) build(layers, last, mistakes);
    products.emplace(id, complete(*layers[last].draft, mistakes));
  }
  return products;
}

}  // namespace coatday::input
