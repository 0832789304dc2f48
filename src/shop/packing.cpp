#include "shop/packing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace coatday::shop {
namespace {

constexpr Metres rounding(1e-9);  // three times 0.1 m do fit into 0.3 m
constexpr Metres least(0.001);    // and no row is endless
constexpr Metres anything(1e6);   // a side that is not given

enum class Turned { lengthwise, crosswise };

struct Row {
  std::size_t place;
  Metres x, along;
  Metres used_across;
};

class Packer {
 public:
  Packer(const DryingPlace& place, const std::vector<Item>& items, Metres gap, Turned turned)
      : place_(place), length_(place.length.value_or(anything) + gap), width_(place.width.value_or(anything) + gap) {
    for (const Item& item : items) sizes_.push_back(laid_as({item.length + gap, item.width + gap, item.count}, turned));
    counts_.reserve(items.size());
    for (const Item& item : items) counts_.push_back(item.count);
  }

  std::optional<Packing> run() {
    std::vector<std::size_t> order(sizes_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return sizes_[a].along > sizes_[b].along; });
    for (const std::size_t item : order) {
      if (!lay(item)) return std::nullopt;
    }
    if (packing_.places.size() == 1 && place_.length) packing_.used = taken_.front();
    return std::move(packing_);
  }

 private:
  struct Size {
    Metres along, across;
  };

  [[nodiscard]] bool fits(const Size& size) const { return size.along <= length_ + rounding && size.across <= width_ + rounding; }

  [[nodiscard]] Size laid_as(const Item& item, Turned turned) const {
    const Metres longer = std::max({item.length, item.width, least}), shorter = std::max(std::min(item.length, item.width), least);
    const Size along{longer, shorter}, across{shorter, longer};
    const Size& wanted = turned == Turned::lengthwise ? along : across;
    return fits(wanted) ? wanted : turned == Turned::lengthwise ? across : along;
  }

  bool lay(std::size_t item) {
    if (!fits(sizes_[item])) return false;
    for (std::size_t r = 0; r < rows_.size() && counts_[item] > 0; ++r) fill(rows_[r], item);
    for (std::size_t p = 0; counts_[item] > 0;) {
      if (!new_row(p, sizes_[item].along)) return false;
      fill(rows_.back(), item);
    }
    return true;
  }

  void fill(Row& row, std::size_t item) {
    const Size& size = sizes_[item];
    if (size.along > row.along + rounding) return;
    const int count = std::min(counts_[item], room_across(row, size.across));
    if (count == 0) return;
    packing_.places[row.place].push_back({item, count, row.x, row.used_across, size.along, size.across});
    row.used_across += size.across * count;
    counts_[item] -= count;
  }

  [[nodiscard]] int room_across(const Row& row, Metres across) const {
    if (!place_.width) return row.used_across == Metres(0) ? 1 : 0;
    return static_cast<int>(std::floor((width_ - row.used_across + rounding) / across));
  }

  /// On the first place that has room, not before p.
  bool new_row(std::size_t& p, Metres along) {
    while (p < taken_.size() && !has_room(p, along)) ++p;
    if (p == taken_.size()) {
      if (static_cast<int>(p) == place_.count) return false;
      taken_.emplace_back(0);
      packing_.places.emplace_back();
    }
    rows_.push_back({p, taken_[p], along, Metres(0)});
    taken_[p] += along;
    return true;
  }

  [[nodiscard]] bool has_room(std::size_t p, Metres along) const { return place_.length && taken_[p] + along <= length_ + rounding; }

  const DryingPlace& place_;
  Metres length_, width_;
  std::vector<Size> sizes_;
  std::vector<int> counts_;  // still to be laid
  std::vector<Row> rows_;
  std::vector<Metres> taken_;  // of each place's length
  Packing packing_;
};

/// One thing a hook.
std::optional<Packing> hang(const DryingPlace& place, const std::vector<Item>& items) {
  Packing packing;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Metres longer = std::max(items[i].length, items[i].width);
    if (place.length && longer > *place.length + rounding) return std::nullopt;
    if (static_cast<std::size_t>(items[i].count) + packing.places.size() > static_cast<std::size_t>(place.count)) return std::nullopt;
    packing.places.resize(packing.places.size() + static_cast<std::size_t>(items[i].count),
                          {{i, 1, Metres(0), Metres(0), longer, std::min(items[i].length, items[i].width)}});
  }
  return packing;
}

bool better(const Packing& a, const Packing& b) {
  return a.places.size() != b.places.size() ? a.places.size() < b.places.size() : a.used < b.used;
}

}  // namespace

std::string_view word(PlaceKind kind) {
  static constexpr std::array<std::string_view, 4> words{"points", "hooks", "rack", "floor"};
  return words[static_cast<std::size_t>(kind)];
}

std::optional<Packing> pack(const DryingPlace& place, const std::vector<Item>& items, Metres gap) {
  if (place.kind == PlaceKind::hooks) return hang(place, items);
  auto best = Packer(place, items, gap, Turned::lengthwise).run();
  auto other = Packer(place, items, gap, Turned::crosswise).run();
  if (!best || (other && better(*other, *best))) best = std::move(other);
  return best;
}

}  // namespace coatday::shop
