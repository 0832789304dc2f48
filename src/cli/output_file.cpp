#include "cli/output_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <system_error>

#include "report/document/lines.h"

namespace coatday::cli {
namespace {

namespace fs = std::filesystem;
using Written = tl::expected<void, std::string>;

constexpr std::size_t head_bytes = 4096;  // in which a mark stands

std::string in_quotes(const fs::path& path) { return "'" + path.string() + "'"; }
std::string failure(const std::string& path, const std::string& reason) { return in_quotes(path) + " cannot be written: " + reason; }
std::string system_text(int error) { return std::generic_category().message(error); }

/// Where a link leads to, so that the link stays.
fs::path resolved(const std::string& path) {
  std::error_code error;
  const fs::path target = fs::canonical(path, error);
  return error ? fs::path(path) : target;
}

fs::path folder_of(const fs::path& file) { return file.has_parent_path() ? file.parent_path() : fs::path("."); }

/// The beginning of a file; none where it cannot be read.
std::optional<std::string> head_of(const fs::path& file) {
  std::FILE* in = std::fopen(file.c_str(), "rbe");
  if (in == nullptr) return std::nullopt;
  std::array<char, head_bytes> bytes{};
  const std::size_t read = std::fread(bytes.data(), 1, bytes.size(), in);
  const bool good = std::ferror(in) == 0;
  std::fclose(in);
  return good ? std::optional(std::string(bytes.data(), read)) : std::nullopt;
}

/// Until its end Ctrl-C and the like wait, so that no half-written file stays behind.
class Uninterrupted {
 public:
  Uninterrupted() {
    sigset_t interrupts;
    sigemptyset(&interrupts);
    for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) sigaddset(&interrupts, signal);
    sigprocmask(SIG_BLOCK, &interrupts, &before_);
  }
  Uninterrupted(const Uninterrupted&) = delete;
  Uninterrupted& operator=(const Uninterrupted&) = delete;
  ~Uninterrupted() { sigprocmask(SIG_SETMASK, &before_, nullptr); }

 private:
  sigset_t before_{};
};

/// A file under another name, removed unless it takes its own.
class Temporary {
 public:
  explicit Temporary(const fs::path& folder) {
    for (int attempt = 0; attempt < attempts && descriptor_ < 0; ++attempt) {
      path_ = folder / (".coatday-" + std::to_string(getpid()) + "-" + std::to_string(attempt));
      descriptor_ = open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR | S_IRGRP | S_IWGRP | S_IROTH | S_IWOTH);
      if (descriptor_ < 0 && errno != EEXIST) break;
    }
  }
  Temporary(const Temporary&) = delete;
  Temporary& operator=(const Temporary&) = delete;
  ~Temporary() {
    if (descriptor_ >= 0) close(descriptor_);
    if (made_) unlink(path_.c_str());
  }

  [[nodiscard]] bool opened() {
    made_ = descriptor_ >= 0;
    return made_;
  }
  void permissions_of(const fs::path& other) const {
    struct stat state {};
    if (stat(other.c_str(), &state) != 0) return;
    [[maybe_unused]] const int changed = fchmod(descriptor_, state.st_mode & 07777);  // a courtesy: the usual ones do
  }
  [[nodiscard]] bool fill(const std::string& content) {
    std::size_t at = 0;
    while (at < content.size()) {
      const ssize_t written = write(descriptor_, content.data() + at, content.size() - at);
      if (written < 0 && errno == EINTR) continue;
      if (written < 0) return false;
      at += static_cast<std::size_t>(written);
    }
    if (fsync(descriptor_) != 0) return false;
    const int closed = close(descriptor_);
    descriptor_ = -1;
    return closed == 0;
  }
  [[nodiscard]] bool take_name(const fs::path& name) {
    if (std::rename(path_.c_str(), name.c_str()) != 0) return false;
    made_ = false;
    return true;
  }

 private:
  static constexpr int attempts = 100;
  fs::path path_;
  int descriptor_ = -1;
  bool made_ = false;
};

/// So that the new name outlives a power cut too; where a file system cannot, it is left to it.
void settle(const fs::path& folder) {
  const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  fsync(descriptor);
  close(descriptor);
}

}  // namespace

std::optional<std::string> refusal(const std::string& path, std::string_view mark, bool force) {
  std::error_code error;
  if (fs::is_symlink(path, error) && !fs::exists(path, error)) return failure(path, "it is a link to a file that is not there");
  const fs::path file = resolved(path);
  const fs::file_status status = fs::status(file, error);
  if (status.type() == fs::file_type::directory || path.ends_with('/')) return failure(path, "a folder; name a file in it");
  if (status.type() == fs::file_type::not_found) {
    const fs::path folder = folder_of(file);
    if (fs::is_directory(folder, error)) return std::nullopt;
    return failure(path, fs::exists(folder, error) ? in_quotes(folder) + " is no folder" : "there is no folder " + in_quotes(folder));
  }
  if (status.type() == fs::file_type::none) return failure(path, error.message());
  if (status.type() != fs::file_type::regular) return failure(path, "it is no ordinary file");
  if (access(file.c_str(), W_OK) != 0) return failure(path, "the file is there and write-protected");
  if (force) return std::nullopt;
  const auto head = head_of(file);
  if (!head) return failure(path, "the file is there and cannot be read to see whether coatday made it (--force overwrites it)");
  if (head->empty() || head->find(mark) != std::string::npos) return std::nullopt;
  return failure(path, "the file is there and coatday did not make it (--force overwrites it)");
}

Written write_file(const OutputFile& file) {
  if (auto reason = refusal(file.path, file.mark, file.force)) return tl::make_unexpected(*std::move(reason));
  const fs::path target = resolved(file.path);
  const fs::path folder = folder_of(target);
  const auto failed = [&file](int error) { return tl::make_unexpected(failure(file.path, system_text(error))); };
  const Uninterrupted uninterrupted;
  Temporary temporary(folder);
  if (!temporary.opened()) return failed(errno);
  temporary.permissions_of(target);
  if (!temporary.fill(file.content) || !temporary.take_name(target)) return failed(errno);
  settle(folder);
  return {};
}

std::optional<Outcome> refused_output(const Arguments& arguments, std::string_view mark) {
  if (arguments.output.empty()) return std::nullopt;
  const auto reason = refusal(arguments.output, mark, arguments.force);
  return reason ? std::optional(mistaken(*reason)) : std::nullopt;
}

Outcome to_file(const Arguments& arguments, Outcome outcome, std::string_view mark, const std::string& announcement) {
  outcome.file = OutputFile{arguments.output, std::move(outcome.out), std::string(mark), arguments.force};
  outcome.out = report::harmless_text(arguments.output) + ": " + announcement + "\n";
  return outcome;
}

Outcome written(Outcome outcome) {
  if (!outcome.file) return outcome;
  if (const auto file = write_file(*outcome.file); !file) return mistaken(report::harmless_text(file.error()));
  return outcome;
}

}  // namespace coatday::cli
