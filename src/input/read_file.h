#pragma once
// How files are read, so that tests and the fuzzer need no disk.

#include <filesystem>
#include <functional>
#include <string>

#include <tl/expected.hpp>

namespace coatday::input {

/// The text of a file; or why it cannot be read, in words that follow "cannot read the file 'x'", or none.
using FileText = tl::expected<std::string, std::string>;
using ReadFile = std::function<FileText(const std::filesystem::path&)>;

/// Ordinary files alone: nothing is waited for, and no device is touched. One that is larger than any table of weather is not read.
[[nodiscard]] ReadFile read_from_disk();

/// "cannot read the file 'x': it is a folder"
[[nodiscard]] std::string cannot_read(const std::filesystem::path&, const std::string& why);

}  // namespace coatday::input
