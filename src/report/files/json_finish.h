#pragma once
// A finish in the JSON, and its stages by key.

#include "finish/product.h"
#include "report/files/json_parts.h"

namespace coatday::report {

[[nodiscard]] const char* stage_key(finish::Stage);
/// Every stage by its key.
template <class T, class Convert>
[[nodiscard]] Json stages_json(const finish::PerStage<T>& stages, const Convert& convert) {
  Json out = Json::object();
  for (std::size_t i = 0; i < finish::stage_count; ++i) {
    const auto stage = static_cast<finish::Stage>(i);
    out[stage_key(stage)] = convert(stages[stage]);
  }
  return out;
}

[[nodiscard]] Json finish_json(const finish::Product&);

}  // namespace coatday::report
