#include "input/read_file.h"

#include <fstream>

namespace coatday::input {

// A huge file must not fill the memory. The text is cut off at a limit; every reader then reports it as too large or incomplete.
ReadFile read_from_disk() {
  return [](const std::filesystem::path& path) -> std::optional<std::string> {
    constexpr std::size_t most = std::size_t{64} * 1024 * 1024;  // bytes; plans of large orders are larger than any order
    constexpr std::size_t chunk = std::size_t{64} * 1024;
    std::ifstream file(path, std::ios::binary);
    std::error_code error;
    if (!file || std::filesystem::is_directory(path, error)) return std::nullopt;
    std::string text;
    while (file && text.size() < most) {
      const std::size_t before = text.size();
      text.resize(before + chunk);
      file.read(text.data() + before, static_cast<std::streamsize>(chunk));
      text.resize(before + static_cast<std::size_t>(file.gcount()));
    }
    if (file.bad()) return std::nullopt;
    return text;
  };
}

}  // namespace coatday::input
