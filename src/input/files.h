#pragma once
// The files of one reading. Each is read once and kept until the end, because values point into it.

#include <deque>
#include <map>
#include <optional>
#include <string>

#include "climate/csv.h"
#include "input/document.h"
#include "input/fields.h"
#include "input/mistakes.h"
#include "input/read_file.h"

namespace coatday::input {

/// "shop file", with the keys that may stand in it.
struct FileKind {
  std::string_view what;
  Keys keys;
};

class Files {
 public:
  explicit Files(const ReadFile& read) : read_(read) {}

  /// The text of a file. Nothing, and a mistake at `named`, when it cannot be read.
  const Source* text(const std::filesystem::path& path, const Location& named, Mistakes& mistakes);
  /// The values of a file. Null when it has mistakes, which are added the first time only.
  const Value* values(const std::filesystem::path& path, const Location& named, Mistakes& mistakes);
  /// The same for a file that another one names. Nothing of it is shown where it has none of these keys: it is no such file.
  const Value* values_of(const FileKind& kind, const std::filesystem::path& path, const Location& named, Mistakes& mistakes);
  /// Adds what is wrong with a table.
  static void wrong_table(const Source& table, const climate::ReadError& error, Mistakes& mistakes);
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
