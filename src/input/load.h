#pragma once
// From files to a job. Every mistake is told with its place, all of them at once.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "climate/log.h"
#include "job/job.h"
#include "shop/rates.h"

namespace coatday::input {

/// One mistake: "order.yaml:14:11: error: unknown finish 'sealar'; did you mean 'sealer'?", the line and a caret under it.
struct Diagnostic {
  Location where;
  std::string message;
  std::string line;  ///< the text of that line; empty where there is none
};
/// As printed, three lines where the text is known. Columns count characters.
[[nodiscard]] std::string to_text(const Diagnostic&);

/// How files are read, so that tests and the fuzzer need no disk: the text, or nothing when it cannot be read.
using ReadFile = std::function<std::optional<std::string>(const std::filesystem::path&)>;
[[nodiscard]] ReadFile read_from_disk();

struct Loaded {
  std::optional<job::Job> job;  ///< only when there is no mistake
  std::vector<Diagnostic> mistakes;
  shop::Rates rates{};     ///< the shop's, of which a plan knows nothing
  climate::LogForm log{};  ///< how the shop says that its logger writes
};

/// Orders to be planned together, with the shop that all of them name, its air, and the finishes that the shop or any of them names; one or
/// more. `schedules` is the directory of shipped finishes. `set` changes keys of the shop or the order, "air.night=13 C" (see Overrides).
/// With a `shop`, that is the file which they have to name.
[[nodiscard]] Loaded load_orders(const std::vector<std::filesystem::path>& orders, const std::filesystem::path& schedules, const ReadFile&,
                                 const std::vector<std::string>& set = {}, const std::filesystem::path& shop = {});
[[nodiscard]] Loaded load_order(const std::filesystem::path& order, const std::filesystem::path& schedules, const ReadFile&);

/// A shop alone, with its air and the finishes that it names: a job without an order.
[[nodiscard]] Loaded load_shop(const std::filesystem::path& shop, const std::filesystem::path& schedules, const ReadFile&,
                               const std::vector<std::string>& set = {});

struct LoadedLog {
  climate::Log log;
  std::vector<Diagnostic> mistakes;  ///< no log where there is one
};
/// A logger's table: in the form that is told, else, as it may be another logger's, in the one that is found in it.
[[nodiscard]] LoadedLog load_log(const std::filesystem::path& file, const climate::LogForm&, const Zone&, const ReadFile&);

struct LoadedCatalogue {
  finish::Catalogue catalogue;
  std::vector<Diagnostic> mistakes;
};
/// The shipped finishes, then these files on top.
[[nodiscard]] LoadedCatalogue load_catalogue(const std::filesystem::path& schedules, const std::vector<std::filesystem::path>& own,
                                             const ReadFile&);

}  // namespace coatday::input
