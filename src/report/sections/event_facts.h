#pragma once
// What is said of a step, fact by fact; what does not apply is empty.

#include <string>
#include <string_view>
#include <vector>

#include "job/plan.h"
#include "quantity/text.h"

namespace coatday::report {

struct EventFacts {
  std::string subject;                ///< "top underside; leg x4 all round"
  std::string how;                    ///< "brush, 4.5 fl oz, 1 person"
  std::string ends;                   ///< where that is on another day
  std::string surface;                ///< "steel at 15-17 °C"
  std::string wet;                    ///< "wipe off by 08:40; wet until 10:04"
  std::string next;                   ///< "turn from 10:04; clear 1 from Thu 21 Jan 21:58"
  std::string last;                   ///< of a coat that nothing follows: when the hand may come
  std::string resting;                ///< "dries on rack 1-4 until 10:25"
  std::string vapour;                 ///< of its solvent
  std::vector<std::string> cautions;  ///< short, in the order of the event's
};
[[nodiscard]] EventFacts event_facts(const job::Plan&, const job::Event&, Units);

[[nodiscard]] std::string joined(const std::vector<std::string>&, std::string_view between);

}  // namespace coatday::report
