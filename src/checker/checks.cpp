#include "checker/checks.h"

#include <array>

namespace coatday::checker {

std::span<const Check> checks() {
  static constexpr std::array all{
      Check{"coverage", check_coverage},
      Check{"steps", check_steps},
      Check{"both faces", check_both_faces},
      Check{"ledger", check_ledger},
      Check{"stages", check_stages},
      Check{"waits", check_waits},
      Check{"turns", check_turns},
      Check{"places", check_places},
      Check{"set aside", check_set_aside},
      Check{"limits", check_limits},
      Check{"surfaces", check_surfaces},
      Check{"warming", check_warming},
      Check{"dust and heat", check_dust_and_heat},
      Check{"hours", check_hours},
      Check{"people", check_people},
      Check{"shop work", check_shop_work},
      Check{"order work", check_order_work},
      Check{"history", check_history},
      Check{"loads", check_loads},
      Check{"volumes", check_volumes},
      Check{"vapour", check_vapour},
      Check{"purchase", check_purchase},
      Check{"ready", check_ready},
      Check{"visits", check_visits},
      Check{"rate factors", check_rate_factors},
      Check{"moisture", check_moisture},
  };
  return all;
}

}  // namespace coatday::checker
