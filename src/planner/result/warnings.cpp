#include "planner/result/warnings.h"

#include <fmt/core.h>

#include "finish/application_limits.h"

namespace coatday::planner {

void write_warnings(job::Plan& plan, const Clocks& clocks) {
  for (const job::Event& event : plan.events) {
    if (event.product.empty()) continue;
    const finish::Product& product = plan.products.at(event.product);
    const finish::Conditions met = clocks.conditions(product, event.bodies, plan.faces[event.faces.front()].wood);
    const auto words = finish::blush_warning(product, met, event.start, event.end, plan.shop.units);
    if (!words) continue;
    const std::string message = fmt::format("{} on {}: {}", event.name, day_and_time(plan.shop.zone.to_local(event.start)), *words);
    plan.findings.push_back({"blush", job::Severity::warning, message, event.load_name, {}});
  }
  for (const job::PieceResult& piece : plan.pieces) {
    if (!piece.slack || *piece.slack >= Hours(0)) continue;
    const std::string message = fmt::format("the safe date of {} is {} after the promise", piece.name, format_span(-*piece.slack));
    plan.findings.push_back({"late", job::Severity::warning, message, piece.name, {}});
  }
}

}  // namespace coatday::planner
