#pragma once
// The files of one reading. Each is read once and kept until the end, because values point into it.

#include <deque>
#include <map>
#include <optional>
#include <string>

#include "input/document.h"
#include "input/mistakes.h"
#include "input/read_file.h"

namespace coatday::input {

class Files {
 public:
  explicit Files(const ReadFile& read) : read_(read) {}

  /// The text of a file. Nothing, and a mistake at `named`, when it cannot be read.
  const Source* text(const std::filesystem::path& path, const Location& named, Mistakes& mistakes);
  /// The values of a file. Null when it has mistakes, which are added the first time only.
  const Value* values(const std::filesystem::path& path, const Location& named, Mistakes& mistakes);
  /// Puts the text of its line to each mistake.
  void quote_lines(std::vector<Diagnostic>& mistakes) const;

 private:
  const ReadFile& read_;
  std::deque<Source> sources_;
  std::deque<Value> values_;
  std::map<std::string, const Source*> source_of_;
  std::map<std::string, const Value*> value_of_;
};

/// The path of a file that another file names, relative to the directory of that other file.
[[nodiscard]] std::filesystem::path beside(const std::filesystem::path& file, const std::string& name);

}  // namespace coatday::input
