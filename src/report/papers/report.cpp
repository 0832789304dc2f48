#include "report/papers/report.h"

#include "report/document/render_text.h"
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

namespace coatday::report {
namespace {

/// What comes first stands right below the title: nothing does.
const Section apart;

}  // namespace

std::string plan_text(const job::Plan& plan, const std::string& order, const TextStyle& style, const job::Advice& help) {
  const Texts texts{style.units, plan.shop.zone};
  const Document document{typed(order), from_text(plan, texts),
                          present({summary(plan, texts), no_plan(plan), proposals(plan), advice(plan, help, texts), moved(plan, texts),
                                   days(plan, texts), ledger(plan, texts), purchase(plan, texts), hand_over(plan, texts),
                                   vapour(plan, texts), findings(plan.findings), cautions(plan)})};
  return render_text(document, style);
}

std::string buy_text(const job::Plan& plan, const std::string& order, const TextStyle& style) {
  const Texts texts{style.units, plan.shop.zone};
  Document document{typed(order), {}, present({apart, no_plan(plan), purchase(plan, texts)})};
  if (document.sections.size() == 1) document.sections.push_back(Section{"buy", "Nothing to buy."});
  return render_text(document, style);
}

std::string findings_text(const std::vector<job::Finding>& all, const std::string& order, const TextStyle& style) {
  const Section none{"findings", "Findings", {}, {Paragraph{"Both faces, products, supports and places agree."}}, Media::both, Media::page};
  return render_text(Document{typed(order), {}, {apart, findings(all).value_or(none)}}, style);
}

std::string breaches_text(const std::vector<checker::Breach>& breaches, const TextStyle& style) {
  List list;
  for (const checker::Breach& breach : breaches) list.items.emplace_back(breach.code + ": " + breach.message);
  const char* bug =
      "This is a bug in coatday: its own check refuses the plan, which is therefore not shown. Please report it with the order.";
  return render_text(Document{{}, {}, {Section{"", {}, {}, {Paragraph{bug}, list}}}}, style);
}

}  // namespace coatday::report
