#include "report/papers/page.h"

#include <algorithm>

#include "report/document/render_html.h"
#include "report/figures/drawing.h"
#include "report/figures/patterns.h"
#include "report/figures/timeline_section.h"
#include "report/figures/today.h"
#include "report/sections/advice.h"
#include "report/sections/cautions.h"
#include "report/sections/days.h"
#include "report/sections/findings.h"
#include "report/sections/hand_over.h"
#include "report/sections/ledger.h"
#include "report/sections/moved.h"
#include "report/sections/no_plan.h"
#include "report/sections/purchase.h"
#include "report/sections/summary.h"
#include "report/sections/vapour.h"
#include "report/sections/wood.h"

namespace coatday::report {
namespace {

using Sections = std::vector<Section>;

/// The pieces of one of several orders.
struct OrderPart {
  std::string name;
  std::vector<std::size_t> pieces;
};

std::vector<OrderPart> orders_of(const job::Job& job) {
  std::vector<OrderPart> orders;
  for (std::size_t i = 0; i < job.order.pieces.size(); ++i) {
    const std::string& name = job.order.pieces[i].order;
    auto order = std::find_if(orders.begin(), orders.end(), [&name](const OrderPart& o) { return o.name == name; });
    if (order == orders.end()) order = orders.insert(orders.end(), {name, {}});
    order->pieces.push_back(i);
  }
  return orders;
}

// Of several orders each has a section with its own dates, drawings and faces.
Sections order_sections(const job::Job& job, const job::Plan& plan, const std::vector<OrderPart>& orders, const Texts& texts) {
  Sections sections;
  for (const OrderPart& order : orders) {
    const ChosenPieces chosen{order.pieces};
    Section section{"order-" + std::to_string(sections.size() + 1), typed(order.name)};
    for (Section& part : present({hand_over(plan, texts, chosen), page::drawings(job, plan, texts, chosen), ledger(plan, texts, chosen)})) {
      part.id.clear();  // an id is there once
      section.blocks.emplace_back(std::move(part));
    }
    sections.push_back(std::move(section));
  }
  return sections;
}

Sections sections_of(const job::Job& job, const job::Plan& plan, const Beside& beside, const Texts& texts) {
  const std::vector<OrderPart> orders = orders_of(job);
  const bool several = orders.size() > 1, planned = !plan.events.empty();
  const auto when = [](bool condition, auto section) { return condition ? std::optional<Section>(std::move(section)) : std::nullopt; };
  Sections sections = present({page::patterns(), summary(plan, texts), no_plan(plan), proposals(plan),
                               when(planned, page::today(plan, texts)), when(!several, hand_over(plan, texts)),
                               page::timeline(plan, beside.air, texts), advice(plan, beside.advice, texts), days(plan, texts)});
  const Sections middle =
      several ? order_sections(job, plan, orders, texts) : present({page::drawings(job, plan, texts), ledger(plan, texts)});
  const Sections end = present({wood(job, beside.wood, texts), purchase(plan, texts), moved(plan, texts), vapour(plan, texts),
                                findings(plan.findings), cautions(plan)});
  sections.insert(sections.end(), middle.begin(), middle.end());
  sections.insert(sections.end(), end.begin(), end.end());
  return sections;
}

}  // namespace

std::string plan_page(const job::Job& job, const job::Plan& plan, const Beside& beside, Units units) {
  const Texts texts{units, plan.shop.zone};
  const Document document{typed(job.order.name), from_text(plan, texts), sections_of(job, plan, beside, texts)};
  return render_html(document,
                     {plan.shop.name, job.order.name + iso8601(plan.from, plan.shop.zone),
                      "Made by coatday from the order and the shop's air. Promise the safe dates. Labels and local codes count."});
}

}  // namespace coatday::report
