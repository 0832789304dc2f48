#pragma once
// How files are read, so that tests and the fuzzer need no disk.

#include <filesystem>
#include <functional>
#include <optional>
#include <string>

namespace coatday::input {

/// The text of a file, or nothing when it cannot be read.
using ReadFile = std::function<std::optional<std::string>(const std::filesystem::path&)>;
[[nodiscard]] ReadFile read_from_disk();

}  // namespace coatday::input
