#include "finish/coverage.h"

#include <array>

#include "finish/film.h"

namespace coatday::finish {
namespace {

constexpr std::string_view ufc = "UFC 3-410-04N (25 Oct 2004) par. 9-2.1";
constexpr std::string_view practice = "common practice, no source";

/// In the order of Method. 40 CFR 60.313 table 1 gives 0.25 for airless spray, where the UFC document gives 0.35.
constexpr std::array<Transfer, 10> transfers{{
    {0.95, practice},  // brush
    {0.90, practice},  // pad
    {0.85, practice},  // wipe
    {0.90, practice},  // roller
    {0.95, practice},  // pour
    {0.50, practice},  // aerosol
    {0.65, "least efficiency for which South Coast AQMD lets a gun count as high-volume low-pressure"},
    {0.25, ufc},  // air spray
    {0.35, ufc},  // airless spray
    {0.45, ufc},  // air-assisted airless spray
}};
static_assert(transfers.size() == static_cast<std::size_t>(Method::air_assisted_airless_spray) + 1);

}  // namespace

Transfer transfer(Method method) { return transfers.at(static_cast<std::size_t>(method)); }

Litres need(const Product& product, Method method, std::span<const Surface> surfaces) {
  SquareMetres as_flat_later_coat;
  for (const Surface& surface : surfaces) {
    const double first = surface.bare ? product.first_coat_factor * (surface.end_grain ? product.end_grain_factor : 1) : 1;
    as_flat_later_coat += surface.area * first;
  }
  return as_flat_later_coat / (product.spreading_rate() * transfer(method).efficiency);
}

Litres need(const Step& step, const Product& product, Method method, std::span<const Surface> surfaces) {
  return need(product, method, surfaces) * (product.spreading_rate() / spreading_rate(step, product));
}

}  // namespace coatday::finish
