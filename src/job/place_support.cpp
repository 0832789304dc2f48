#include "job/place_support.h"

namespace coatday::job {

bool suits(piece::Support support, shop::PlaceKind kind) {
  switch (support) {
    case piece::Support::points:
      return kind == shop::PlaceKind::points;
    case piece::Support::hooks:
      return kind == shop::PlaceKind::hooks;
    case piece::Support::laid:
      return kind == shop::PlaceKind::rack || kind == shop::PlaceKind::floor;
  }
  return false;
}

}  // namespace coatday::job
