#include "input/earlier_plan.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include "input/mistakes.h"
#include "input/source.h"

namespace coatday::input {
namespace {

using Json = nlohmann::json;

// The first gives ids and starts in the same form.
constexpr std::array<std::string_view, 2> schemas{"coatday-plan/1", "coatday-plan/2"};

tl::unexpected<Diagnostic> wrong(const Location& where, std::string message, std::string_view line = {}) {
  return tl::make_unexpected(Diagnostic{where, std::move(message), std::string(line)});
}

// The text of a key, or null.
const std::string* text_of(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() ? nullptr : found->get_ptr<const std::string*>();
}

// The place where the text stops being JSON.
tl::unexpected<Diagnostic> no_json(const Source& source, std::size_t byte) {
  const Location where = source.location(std::min(byte > 0 ? byte - 1 : 0, source.text().size()));
  constexpr std::size_t shown = 200;  // one element stands on a line, and may be long
  const std::string_view line = source.line(where.line);
  return wrong(where, "this is not JSON; expected a plan as written by 'coatday plan --format json'",
               line.size() <= shown ? line : std::string_view());
}

}  // namespace

tl::expected<job::Starts, Diagnostic> read_earlier_plan(const std::filesystem::path& path, const ReadFile& read) {
  const Location file{path.string(), 0, 0};
  std::optional<std::string> text = read(path);
  if (!text) return wrong(file, fmt::format("cannot read the earlier plan {}", in_quotes(path.string())));
  const Source source(path.string(), *std::move(text));
  Json plan;
  try {
    plan = Json::parse(source.text());
  } catch (const Json::parse_error& error) {
    return no_json(source, error.byte);
  }
  const std::string* written = plan.is_object() ? text_of(plan, "schema") : nullptr;
  const auto events = plan.is_object() ? plan.find("events") : plan.end();
  if (written == nullptr || std::find(schemas.begin(), schemas.end(), *written) == schemas.end() || events == plan.end() ||
      !events->is_array()) {
    return wrong(file, "this is no plan; expected one as written by 'coatday plan --format json'");
  }
  job::Starts starts;
  for (const Json& event : *events) {
    const std::string* id = event.is_object() ? text_of(event, "id") : nullptr;
    const std::string* start = event.is_object() ? text_of(event, "start") : nullptr;
    const auto instant = parse_iso8601(start != nullptr ? *start : "");
    if (id == nullptr || !instant) return wrong(file, fmt::format("event {} of this plan has no id or no start", starts.size() + 1));
    starts.emplace(*id, *instant);
  }
  return starts;
}

}  // namespace coatday::input
