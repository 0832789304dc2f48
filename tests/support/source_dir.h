#pragma once
// Where the project's own files are, for tests that read them.

#include <string>

namespace coatday {

[[nodiscard]] const std::string& source_dir();

}  // namespace coatday
