#include "report/papers/wood.h"

#include "report/sections/wood.h"

namespace coatday::report {

Document wood_of_order(const job::Job& job, const job::WoodFindings& wood, const Texts& texts) {
  return {typed(job.order.name) + ": its wood", {}, wood_sections(job, wood, texts)};
}

}  // namespace coatday::report
