#pragma once
// A logger's file, as the shop's file names it.

#include <memory>

#include "climate/log.h"
#include "input/fields.h"
#include "input/files.h"

namespace coatday::input {

/// Reads the key 'log': the name of the file, or a map with the name and the form of the file. Null where it is not given, or after a mistake.
[[nodiscard]] std::shared_ptr<const climate::Log> read_log(const Fields& air, const std::filesystem::path& shop, const Zone&,
                                                           climate::LogForm&, Files&, Mistakes&);

}  // namespace coatday::input
