#include "input/files.h"

#include <fmt/core.h>

#include <fstream>
#include <utility>

namespace coatday::input {
namespace {

constexpr std::size_t longest_line = std::size_t{64} * 1024;  // bytes that are copied to show a part of them

}  // namespace

const Source* Files::text(const std::filesystem::path& path, const Location& named, Mistakes& mistakes) {
  const auto known = source_of_.find(path.string());
  if (known != source_of_.end()) return known->second;
  std::optional<std::string> text = read_(path);
  if (!text) {
    mistakes.add(named, fmt::format("cannot read the file {}", in_quotes(path.string())));
    return nullptr;
  }
  sources_.emplace_back(path.string(), *std::move(text));
  return source_of_[path.string()] = &sources_.back();
}

const Value* Files::values(const std::filesystem::path& path, const Location& named, Mistakes& mistakes) {
  const auto known = value_of_.find(path.string());
  if (known != value_of_.end()) return known->second;
  const Source* source = text(path, named, mistakes);
  if (source == nullptr) return nullptr;
  std::optional<Value> value = read_document(*source, mistakes);
  if (!value) return value_of_[path.string()] = nullptr;
  values_.push_back(*std::move(value));
  return value_of_[path.string()] = &values_.back();
}

void Files::quote_lines(std::vector<Diagnostic>& mistakes) const {
  for (Diagnostic& mistake : mistakes) {
    const auto source = source_of_.find(mistake.where.file);
    if (source == source_of_.end()) continue;
    const std::string_view line = source->second->line(mistake.where.line);
    if (line.size() <= longest_line) mistake.line = line;
  }
}

std::filesystem::path beside(const std::filesystem::path& file, const std::string& name) {
  return (file.parent_path() / name).lexically_normal();
}

// No file fills the memory: beyond this the text is cut off, which every reader then finds to be too large or not whole.
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
