#pragma once
// A logger's file, as the shop's file names it.

#include <memory>

#include "climate/log.h"
#include "input/fields.h"
#include "input/files.h"

namespace coatday::input {

/// Of the key 'log': the file's name, or a map with it and what is told about its form. Null where it is not given, or after a mistake.
[[nodiscard]] std::shared_ptr<const climate::Log> read_log(const Fields& air, const std::filesystem::path& shop, const Zone&,
                                                           climate::LogForm&, Files&, Mistakes&);

}  // namespace coatday::input
