#include "input/files.h"

#include <fmt/core.h>

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

}  // namespace coatday::input
