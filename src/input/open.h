#pragma once
// From files to a job. Each file is read once. All mistakes of all files come back together, each with its place.

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

#include "climate/log.h"
#include "input/diagnostic.h"
#include "input/read_file.h"
#include "job/job.h"
#include "job/plan.h"
#include "shop/rates.h"

namespace coatday::input {

/// All that the files say.
struct Opened {
  job::Job job;            ///< with the catalogue; without orders, or without a shop, where none was opened
  shop::Rates rates{};     ///< what the shop charges; a plan does not need it
  climate::LogForm log{};  ///< how the shop says that its logger writes
};
using Opening = tl::expected<Opened, std::vector<Diagnostic>>;

/// What else is wrong with a job whose files have no mistake, at places in them. It is told like their mistakes.
using Judge = std::function<std::vector<job::Finding>(const job::Job&)>;

/// One or more orders that are planned together, the shop that all of them name, its air, and the finishes that the shop or any order names.
/// `schedules` is the directory of shipped finishes. `set` changes keys of the shop or the order, "air.night=13 C" (see Overrides).
/// When `shop` is given, the orders must name that file.
[[nodiscard]] Opening open_orders(const std::vector<std::filesystem::path>& orders, const std::filesystem::path& schedules, const ReadFile&,
                                  const std::vector<std::string>& set = {}, const std::filesystem::path& shop = {},
                                  const Judge& judge = nullptr);

/// A shop alone, with its air and the finishes that it names: a job without an order.
[[nodiscard]] Opening open_shop(const std::filesystem::path& shop, const std::filesystem::path& schedules, const ReadFile&,
                                const std::vector<std::string>& set = {});

/// The finishes alone: the shipped ones, then these files on top. Only `job.catalogue` is filled.
[[nodiscard]] Opening open_catalogue(const std::vector<std::filesystem::path>& own, const std::filesystem::path& schedules,
                                     const ReadFile&);

/// A logger's table in the given form. If it does not fit, the form is found from the table itself: it may come from another logger.
[[nodiscard]] tl::expected<climate::Log, std::vector<Diagnostic>> open_log(const std::filesystem::path& file, const climate::LogForm&,
                                                                           const Zone&, const ReadFile&);

}  // namespace coatday::input
