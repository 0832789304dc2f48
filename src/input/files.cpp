#include "input/files.h"

#include <fmt/core.h>

#include <utility>

#include "input/own_file.h"

namespace coatday::input {
namespace {

constexpr std::size_t longest_line = std::size_t{64} * 1024;  // bytes that are copied to show a part of them

}  // namespace

const Source* Files::text(const std::filesystem::path& path, const Location& named, Mistakes& mistakes) {
  const auto known = source_of_.find(path.string());
  if (known != source_of_.end()) return known->second;
  FileText text = read_(path);
  if (!text) {
    mistakes.add(named, cannot_read(path, text.error()));
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

const Value* Files::values_of(const FileKind& kind, const std::filesystem::path& path, const Location& named, Mistakes& mistakes) {
  const Source* source = text(path, named, mistakes);
  if (source == nullptr) return nullptr;
  if (source->text().size() <= largest_file && has_a_key(source->text(), kind.keys)) return values(path, named, mistakes);
  const bool large = source->text().size() > largest_file;
  mistakes.add(named, large ? fmt::format("the file {} is larger than 1 MiB; no {} is", in_quotes(path.string()), kind.what)
                            : fmt::format("the file {} is no {}; expected keys such as '{}:'", in_quotes(path.string()), kind.what,
                                          kind.keys.front()));
  return nullptr;
}

void Files::wrong_table(const Source& table, const climate::ReadError& error, Mistakes& mistakes) {
  const Location whole{table.name(), 0, 0};
  mistakes.add(error.foreign ? whole : Location{table.name(), error.line, error.column}, error.message);
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
