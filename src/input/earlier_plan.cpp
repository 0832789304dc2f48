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
constexpr std::array<std::string_view, 3> schemas{"coatday-plan/1", "coatday-plan/2", "coatday-plan/3"};

tl::unexpected<Diagnostic> wrong(const Location& where, std::string message, std::string_view line = {}) {
  return tl::make_unexpected(Diagnostic{where, std::move(message), std::string(line)});
}

// The text of a key, or null.
const std::string* text_of(const Json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() ? nullptr : found->get_ptr<const std::string*>();
}

// Finds where a text stops being JSON, or has a number that is too large for one.
struct Fault : nlohmann::json_sax<Json> {
  bool null() override { return true; }
  bool boolean(bool) override { return true; }
  bool number_integer(std::int64_t) override { return true; }
  bool number_unsigned(std::uint64_t) override { return true; }
  bool number_float(double, const std::string&) override { return true; }
  bool string(std::string&) override { return true; }
  bool binary(Json::binary_t&) override { return true; }
  bool start_object(std::size_t) override { return true; }
  bool key(std::string&) override { return true; }
  bool end_object() override { return true; }
  bool start_array(std::size_t) override { return true; }
  bool end_array() override { return true; }
  bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& error) override {
    byte = position;
    constexpr int out_of_range = 406;  // of the library
    if (error.id == out_of_range) what = "this number is too large";
    return false;
  }
  std::size_t byte = 0;
  std::string what = "this is not JSON";
};

// The place where the text stops being JSON.
tl::unexpected<Diagnostic> no_json(const Source& source, const Fault& fault) {
  const Location where = source.location(std::min(fault.byte > 0 ? fault.byte - 1 : 0, source.text().size()));
  constexpr std::size_t shown = 200;  // one element stands on a line, and may be long
  const std::string_view line = source.line(where.line);
  return wrong(where, fault.what + "; expected a plan as written by 'coatday plan --format json'",
               line.size() <= shown ? line : std::string_view());
}

}  // namespace

tl::expected<job::Starts, Diagnostic> read_earlier_plan(const std::filesystem::path& path, const ReadFile& read) {
  const Location file{path.string(), 0, 0};
  FileText text = read(path);
  if (!text) return wrong(file, cannot_read(path, text.error()));
  const Source source(path.string(), *std::move(text));
  Fault fault;
  if (!Json::sax_parse(source.text(), &fault)) return no_json(source, fault);
  const Json plan = Json::parse(source.text());
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
