// Any bytes as an order with its files: mistakes with their places must come out, or a job, and of a small job a plan that the checker passes.
// The input is cut at lines "=== NAME" into files; what stands before the first such line is order.yaml.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <map>
#include <string>
#include <string_view>

#include "checker/check.h"
#include "input/open.h"
#include "planner/make/make_plan.h"

namespace {

using Folder = std::map<std::string, std::string>;

Folder cut(std::string_view bytes) {
  constexpr std::string_view mark = "=== ";
  Folder folder;
  std::string* file = &folder["order.yaml"];
  while (!bytes.empty()) {
    const std::size_t end = bytes.find('\n');
    const std::string_view line = bytes.substr(0, end == std::string_view::npos ? end : end + 1);
    bytes.remove_prefix(line.size());
    if (!line.starts_with(mark)) {
      *file += line;
      continue;
    }
    const std::size_t name_end = line.find_last_not_of("\r\n");
    file = &folder[std::string(line.substr(mark.size(), name_end + 1 - mark.size()))];
  }
  return folder;
}

// No mistake is without a place, and what was not opened has a mistake.
bool is_sound(const coatday::input::Opening& opened) {
  if (opened) return true;
  for (const auto& mistake : opened.error()) {
    if (mistake.where.file.empty() || mistake.message.empty() || to_text(mistake).empty()) return false;
  }
  return !opened.error().empty();
}

// Large orders are planned elsewhere; here many small ones count.
bool is_small(const coatday::job::Job& job) {
  int items = 0;
  for (const auto& piece : job.order.pieces) {
    for (const auto& part : piece.piece.parts) items += part.count;
  }
  return items <= 40 && job.shop.work.size() <= 10;
}

bool plans_soundly(const coatday::job::Job& job) {
  const coatday::Instant new_year = date::sys_days(date::year(2027) / 1 / 4);
  const coatday::job::Plan plan = coatday::planner::make_plan(job, {job.order.start.value_or(new_year)});
  return plan.status != coatday::job::Status::planned || coatday::checker::check(plan, job).empty();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const Folder folder = cut({reinterpret_cast<const char*>(data), size});
  const auto read = [&folder](const std::filesystem::path& path) -> coatday::input::FileText {
    const auto at = folder.find(path.string());
    if (at == folder.end()) return tl::make_unexpected(std::string());
    return at->second;
  };
  const coatday::input::Opening opened = coatday::input::open_orders({"order.yaml"}, "schedules", read);
  if (!is_sound(opened)) std::abort();
  if (opened && is_small(opened->job) && !plans_soundly(opened->job)) std::abort();
  return 0;
}
