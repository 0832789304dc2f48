#pragma once
// The older names of open.h, until all callers have moved.

#include <optional>

#include "input/open.h"

namespace coatday::input {

struct Loaded {
  std::optional<job::Job> job;  ///< only when there is no mistake
  std::vector<Diagnostic> mistakes;
  shop::Rates rates{};
  climate::LogForm log{};
};
inline Loaded loaded(Opening opening) {
  if (!opening) return {{}, opening.error(), {}, {}};
  return {std::move(opening->job), {}, opening->rates, std::move(opening->log)};
}
inline Loaded load_orders(const std::vector<std::filesystem::path>& orders, const std::filesystem::path& schedules, const ReadFile& read,
                          const std::vector<std::string>& set = {}, const std::filesystem::path& shop = {}) {
  return loaded(open_orders(orders, schedules, read, set, shop));
}
inline Loaded load_shop(const std::filesystem::path& shop, const std::filesystem::path& schedules, const ReadFile& read,
                        const std::vector<std::string>& set = {}) {
  return loaded(open_shop(shop, schedules, read, set));
}

struct LoadedLog {
  climate::Log log;
  std::vector<Diagnostic> mistakes;
};
inline LoadedLog load_log(const std::filesystem::path& file, const climate::LogForm& form, const Zone& zone, const ReadFile& read) {
  auto log = open_log(file, form, zone, read);
  return log ? LoadedLog{*std::move(log), {}} : LoadedLog{{}, log.error()};
}

struct LoadedCatalogue {
  finish::Catalogue catalogue;
  std::vector<Diagnostic> mistakes;
};
inline LoadedCatalogue load_catalogue(const std::filesystem::path& schedules, const std::vector<std::filesystem::path>& own,
                                      const ReadFile& read) {
  Opening opening = open_catalogue(own, schedules, read);
  return opening ? LoadedCatalogue{std::move(opening->job.catalogue), {}} : LoadedCatalogue{{}, opening.error()};
}

}  // namespace coatday::input
