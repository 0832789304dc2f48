#pragma once
// The pieces of the JSON plan. Inside this room only; its header costs two seconds to compile.

#include <nlohmann/json.hpp>
#include <optional>

#include "job/advice.h"
#include "job/plan.h"

namespace coatday::report {

using Json = nlohmann::ordered_json;

[[nodiscard]] inline Json instant_json(Instant t, const Zone& zone) { return iso8601(t, zone); }
[[nodiscard]] inline Json instant_json(const std::optional<Instant>& t, const Zone& zone) { return t ? Json(iso8601(*t, zone)) : Json(); }
[[nodiscard]] inline Json hours_json(const std::optional<Hours>& h) { return h ? Json(h->count()) : Json(); }
[[nodiscard]] inline Json text_or_null(const std::string& text) { return text.empty() ? Json() : Json(text); }
/// The key of what lags behind the air by its time constant: "30 min".
[[nodiscard]] std::string body_key(Hours time_constant);

[[nodiscard]] Json purchase_json(const job::Plan&, const job::Purchase&);
[[nodiscard]] Json finding_json(const job::Finding&);
[[nodiscard]] Json result_json(const job::Plan&);
[[nodiscard]] Json advice_json(const job::Plan&, const job::Advice&);

}  // namespace coatday::report
