#include "cli/view.h"

#include <utility>

#include "report/document/render_text.h"
#include "report/papers/report.h"

namespace coatday::cli {

Outcome answer(const View& view, std::string text) {
  return {view.finished ? status_of(view.plan(), view.arguments.strict) : done, std::move(text), ""};
}

Outcome answer(const View& view, const report::Document& document) { return answer(view, report::render_text(document, view.style)); }

report::Texts texts(const View& view) { return {view.style.units, view.job().shop.zone}; }

std::string reasons(const View& view) { return report::plan_text(view.plan(), view.order(), view.style); }

}  // namespace coatday::cli
