#include "cli/view.h"

#include <utility>

#include "report/papers/report.h"

namespace coatday::cli {

Outcome answer(const View& view, std::string text) {
  return {view.finished ? status_of(view.plan(), view.arguments.strict) : done, std::move(text), ""};
}

std::string reasons(const View& view) { return report::plan_text(view.plan(), view.order(), view.style); }

}  // namespace coatday::cli
