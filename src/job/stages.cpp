#include "job/stages.h"

#include <initializer_list>

namespace coatday::job {

using finish::Product;
using finish::Stage;

bool has_stage(const Product& product, Stage stage) {
  return product.reference().hours[stage].has_value() && product.law(finish::clock_of(stage)).has_value();
}

namespace {

Stage first_of(const Product& product, std::initializer_list<Stage> stages) {
  for (const Stage stage : stages) {
    if (has_stage(product, stage)) return stage;
  }
  return Stage::tack_free;
}

}  // namespace

Stage wet_until(const Product& p) { return first_of(p, {Stage::tack_free, Stage::handle, Stage::recoat}); }
Stage vapour_until(const Product& p) { return first_of(p, {Stage::handle, Stage::recoat, Stage::tack_free}); }
Stage sandable(const Product& p) { return first_of(p, {Stage::sand, Stage::recoat, Stage::handle}); }
Stage recoatable(const Product& p) { return first_of(p, {Stage::recoat, Stage::sand, Stage::handle}); }
Stage handled(const Product& p) { return first_of(p, {Stage::handle, Stage::recoat, Stage::tack_free}); }
Stage stackable(const Product& p) { return first_of(p, {Stage::pack, Stage::recoat, Stage::handle}); }
Stage keeps_place(const Product& p, const shop::Shop& shop) { return shop.set_aside == 0 ? stackable(p) : handled(p); }
Stage turnable(const Product& p, piece::Support support) { return support == piece::Support::points ? wet_until(p) : handled(p); }

std::string dry_to(Stage stage) {
  switch (stage) {
    case Stage::tack_free:
      return "tack-free";
    case Stage::handle:
      return "dry to handle";
    case Stage::sand:
      return "dry to sand";
    case Stage::recoat:
      return "dry to recoat";
    case Stage::recoat_close:
      return "its recoat window closes";
    case Stage::pack:
      return "print-free";
    case Stage::light_use:
      return "fit for light use";
    case Stage::full_cure:
      return "fully cured";
  }
  return "";
}

}  // namespace coatday::job
