#include "tests/soak/shrink.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <utility>

namespace coatday::soak {
namespace {

using Path = std::vector<std::size_t>;

void each_path(const Tree& tree, Path& path, std::vector<Path>& all) {
  for (std::size_t i = 0; i < tree.children.size(); ++i) {
    path.push_back(i);
    all.push_back(path);
    each_path(tree.children[i], path, all);
    path.pop_back();
  }
}

Tree* at(Tree& root, const Path& path) {
  Tree* tree = &root;
  for (const std::size_t i : path) {
    if (i >= tree->children.size()) return nullptr;
    tree = &tree->children[i];
  }
  return tree;
}

std::size_t size_of(const Tree& tree) {
  std::size_t size = 0;
  each(tree, [&size](const Tree&) { ++size; });
  return size;
}

/// "7 days" becomes "3 days"; nothing where there is no number above 1 to halve.
std::optional<std::string> halved(const std::string& text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || number < 2 || text.find_first_of(":/-.") != std::string::npos) return std::nullopt;
  return std::to_string(number / 2) + std::string(end, static_cast<std::size_t>(text.data() + text.size() - end));
}

struct Shrinker {
  Case best;
  const StillFound& still;
  int most, tries = 0;

  [[nodiscard]] bool spent() const { return tries >= most; }

  bool accept(const Case& smaller) {
    if (spent() || smaller == best) return false;
    ++tries;
    if (!still(smaller)) return false;
    best = smaller;
    return true;
  }

  bool drop_orders() {
    bool any = false;
    for (std::size_t i = best.orders.size(); i-- > 0 && best.orders.size() > 1;) {
      Case smaller = best;
      smaller.trees.erase(smaller.orders[i]);
      smaller.orders.erase(smaller.orders.begin() + static_cast<std::ptrdiff_t>(i));
      any = accept(smaller) || any;
    }
    return any;
  }

  bool drop_tables() {
    bool any = false;
    for (const auto& [name, table] : Case(best).tables) {
      Case smaller = best;
      smaller.tables.erase(name);
      any = accept(smaller) || any;
    }
    return any;
  }

  /// Lines of a file that is no tree, such as a mutant; of the others a table is dropped whole.
  bool drop_lines() {
    bool any = false;
    for (const auto& [name, text] : Case(best).tables) {
      if (!best.trees.empty()) return any;
      for (std::size_t size = text.size() / 2; size > 0 && !spent(); size /= 2) {
        for (std::size_t from = 0; from < best.tables[name].size() && !spent();) {
          Case smaller = best;
          std::string& lines = smaller.tables[name];
          const std::size_t end = lines.find('\n', std::min(from + size, lines.size()) - 1);
          lines.erase(from, end == std::string::npos ? end : end + 1 - from);
          if (accept(smaller)) {
            any = true;
          } else {
            from = end == std::string::npos ? best.tables[name].size() : end + 1;
          }
        }
      }
    }
    return any;
  }

  /// Half of the items of each list and map at a time, then each.
  bool drop_from(const std::string& file, const Path& parent) {
    const Tree* tree = at(best.trees.at(file), parent);
    if (tree == nullptr) return false;
    bool any = false;
    for (std::size_t size = tree->children.size(); size > 0 && !spent(); size /= 2) {
      for (std::size_t from = 0; from < at(best.trees.at(file), parent)->children.size() && !spent();) {
        Case smaller = best;
        auto& children = at(smaller.trees.at(file), parent)->children;
        const std::size_t until = std::min(from + size, children.size());
        children.erase(children.begin() + static_cast<std::ptrdiff_t>(from), children.begin() + static_cast<std::ptrdiff_t>(until));
        if (accept(smaller)) {
          any = true;
        } else {
          from += size;
        }
      }
    }
    return any;
  }

  /// Lists by halves, the outer first.
  bool drop_items() {
    bool any = false;
    for (const auto& [file, tree] : Case(best).trees) {
      std::vector<Path> paths;
      Path path;
      each_path(tree, path, paths);
      std::stable_sort(paths.begin(), paths.end(), [](const Path& a, const Path& b) { return a.size() < b.size(); });
      for (const Path& one : paths) {
        const Tree* there = at(best.trees.at(file), one);
        if (there != nullptr && there->kind == Tree::Kind::list) any = drop_from(file, one) || any;
      }
    }
    return any;
  }

  struct Place {
    std::string file;
    Path path;
    std::size_t size;
  };

  [[nodiscard]] std::vector<Place> places_by_size() {
    std::vector<Place> places;
    for (auto& [file, tree] : best.trees) {
      std::vector<Path> paths;
      Path path;
      each_path(tree, path, paths);
      for (Path& one : paths) places.push_back({file, one, size_of(*at(tree, one))});
    }
    std::stable_sort(places.begin(), places.end(), [](const Place& a, const Place& b) { return a.size > b.size; });
    return places;
  }

  /// Whatever can be left out, the large before the small.
  bool drop_children() {
    bool any = false;
    std::vector<Place> places = places_by_size();
    for (std::size_t i = 0; i < places.size() && !spent();) {
      Path parent = places[i].path;
      const std::size_t index = parent.back();
      parent.pop_back();
      Case smaller = best;
      auto& children = at(smaller.trees.at(places[i].file), parent)->children;
      children.erase(children.begin() + static_cast<std::ptrdiff_t>(index));
      if (accept(smaller)) {
        any = true;
        places = places_by_size();
      } else {
        ++i;
      }
    }
    return any;
  }

  /// What a shop has to have, as simple as can be.
  bool calm_down() {
    Tree air = map(), hours = map();
    Tree& constant = set(air, "constant", map());
    set(constant, "temperature", "20 °C");
    set(constant, "humidity", "45 %");
    set(hours, "mon-fri", "08:00-17:00");
    bool any = false;
    for (const auto& [key, value] : {std::pair{"air", air}, {"hours", hours}, {"time zone", text("UTC")}}) {
      Case simpler = best;
      const auto shop = simpler.trees.find("shop.yaml");
      if (shop == simpler.trees.end() || find(shop->second, key) == nullptr) continue;
      set(shop->second, key, value);
      any = accept(simpler) || any;
    }
    return any;
  }

  bool halve_numbers() {
    bool any = false;
    for (const auto& [file, tree] : Case(best).trees) {
      std::vector<Path> paths;
      Path path;
      each_path(tree, path, paths);
      for (const Path& one : paths) {
        Case smaller = best;
        Tree* value = at(smaller.trees.at(file), one);
        const auto half = value == nullptr ? std::nullopt : halved(value->text);
        if (!half) continue;
        value->text = *half;
        any = accept(smaller) || any;
      }
    }
    return any;
  }
};

}  // namespace

Shrunk shrink(const Case& found, const StillFound& still, int most_tries) {
  Shrinker shrinker{found, still, most_tries};
  bool smaller = true;
  while (smaller && !shrinker.spent()) {
    smaller = shrinker.calm_down();
    smaller = shrinker.drop_orders() || smaller;
    smaller = shrinker.drop_items() || smaller;
    smaller = shrinker.drop_tables() || smaller;
    smaller = shrinker.drop_children() || smaller;
    smaller = shrinker.drop_lines() || smaller;
    if (!smaller) smaller = shrinker.halve_numbers();
  }
  return {std::move(shrinker.best), shrinker.tries};
}

}  // namespace coatday::soak
