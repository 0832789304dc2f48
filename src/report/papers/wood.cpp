#include "report/papers/wood.h"

#include "report/document/render_text.h"
#include "report/sections/wood.h"

namespace coatday::report {

std::string wood_text(const job::Job& job, const job::Plan& plan, const job::WoodFindings& wood, const TextStyle& style) {
  const Texts texts{style.units, plan.shop.zone};
  return render_text(Document{typed(job.order.name) + ": its wood", {}, wood_sections(job, wood, texts)}, style);
}

}  // namespace coatday::report
