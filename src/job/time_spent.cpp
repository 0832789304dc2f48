#include "job/time_spent.h"

namespace coatday::job {

std::string_view word(TimeCause cause) {
  switch (cause) {
    case TimeCause::drying:
      return "drying";
    case TimeCause::air:
      return "air";
    case TimeCause::closed:
      return "closed";
    case TimeCause::place:
      return "place";
    case TimeCause::set_aside:
      return "set aside";
    case TimeCause::hands:
      return "hands";
    case TimeCause::spray_gun:
      return "spray gun";
    case TimeCause::exhaust:
      return "exhaust";
    case TimeCause::dust:
      return "dust";
    case TimeCause::hot_work:
      return "hot work";
    case TimeCause::limit:
      return "limit";
    case TimeCause::visit:
      return "visit";
    case TimeCause::rest:
      return "rest";
    case TimeCause::start:
      return "start";
    case TimeCause::work:
      break;
  }
  return "work";
}

}  // namespace coatday::job
