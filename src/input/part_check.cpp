#include "input/part_check.h"

#include <fmt/core.h>

#include <algorithm>
#include <set>

#include "shop/packing.h"

namespace coatday::input {
namespace {

using piece::Part;
using shop::PlaceKind;

void check_faces(const Part& part, Mistakes& mistakes) {
  std::map<std::string, SquareMetres> left;
  for (const piece::Face& face : piece::faces_of(part.shape)) left[face.name] = face.area;
  const std::vector<std::string> names = keys_of(left);
  constexpr SquareMetres rounding(1e-9);
  for (const piece::Mask& mask : part.masks) {
    const auto face = left.find(mask.face);
    if (face == left.end()) {
      mistakes.add(mask.where, unknown("face", mask.face, names));
      continue;
    }
    face->second -= mask.area;
    if (face->second + rounding < SquareMetres(0))
      mistakes.add(mask.where, fmt::format("more is masked than the face '{}' has", mask.face));
  }
  std::set<std::string> excepted;
  for (const piece::Exception& exception : part.exceptions) {
    if (!left.contains(exception.face)) mistakes.add(exception.where, unknown("face", exception.face, names));
    if (!excepted.insert(exception.face).second) {
      mistakes.add(exception.where, fmt::format("two exceptions for the face {}", in_quotes(exception.face)));
    }
  }
}

std::string material(const Part& part) { return part.wood() ? "wood" : "metal"; }

void check_methods(const finish::Schedule& schedule, const Common& common, const Surroundings& around, Mistakes& mistakes) {
  const auto has = [&around](finish::Method m) { return std::ranges::find(around.shop->methods, word(m)) != around.shop->methods.end(); };
  for (const finish::Step& step : schedule.steps) {
    const finish::Product* product = step.product ? around.catalogue.product(*step.product) : nullptr;
    if (product == nullptr) continue;
    const auto can = [&has](const auto& rate) { return has(rate.first); };
    if (step.method && !has(*step.method)) {
      mistakes.add(common.schedule_at, fmt::format("the step '{}' of '{}' is put on by {}, which the shop does not have", step.name,
                                                   schedule.id, word(*step.method)));
    } else if (!step.method && std::ranges::none_of(product->work_rates, can)) {
      mistakes.add(common.schedule_at,
                   fmt::format("the step '{}' of '{}' can be put on by no method that the shop has", step.name, schedule.id));
    }
  }
}

void check_schedule(const Part& part, const Common& common, const Surroundings& around, Mistakes& mistakes) {
  const finish::Schedule* schedule = around.catalogue.schedule(part.schedule);
  if (schedule == nullptr) return;
  if (part.wood() != (schedule->suits == finish::Suits::wood)) {
    mistakes.add(part.where, fmt::format("the schedule '{}' is for {}; the part '{}' is of {}", schedule->id,
                                         part.wood() ? "metal" : "wood", part.name, material(part)));
  }
  if (around.shop != nullptr) check_methods(*schedule, common, around, mistakes);
}

bool bears(PlaceKind place, piece::Support support) {
  switch (support) {
    case piece::Support::points:
      return place == PlaceKind::points;
    case piece::Support::hooks:
      return place == PlaceKind::hooks;
    case piece::Support::laid:
      return place == PlaceKind::rack || place == PlaceKind::floor;
  }
  return false;
}

void check_place(const Part& part, const Common& common, const Surroundings& around, Mistakes& mistakes) {
  if (around.shop == nullptr) return;
  const piece::Footprint size = piece::footprint(part.shape);
  bool any = false;
  for (const shop::DryingPlace& place : around.shop->places) {
    if (!bears(place.kind, part.support)) continue;
    if (shop::pack(place, {{size.length, size.width, 1}}, around.shop->gap)) return;
    any = true;
  }
  if (any) {
    mistakes.add(part.where, fmt::format("the part '{}' ({} by {}) is too big for every drying place for 'support: {}'", part.name,
                                         format_length(size.length, around.shop->units), format_length(size.width, around.shop->units),
                                         word(part.support)));
    return;
  }
  const std::string_view needed = part.support == piece::Support::laid ? "rack or floor" : word(part.support);
  mistakes.add(common.support_at.line == 0 ? part.where : common.support_at,
               fmt::format("the shop has no drying place of kind {} for 'support: {}'", needed, word(part.support)));
}

}  // namespace

void check_part(const Part& part, const Common& common, const Surroundings& around, Mistakes& mistakes) {
  check_faces(part, mistakes);
  check_schedule(part, common, around, mistakes);
  check_place(part, common, around, mistakes);
}

}  // namespace coatday::input
