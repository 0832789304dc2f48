#include "input/read_file.h"

#include <fcntl.h>
#include <fmt/core.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <system_error>

#include "input/diagnostic.h"

namespace coatday::input {
namespace {

constexpr std::size_t mebibyte = std::size_t{1024} * 1024;
constexpr std::size_t most = 32 * mebibyte;  // a year of a reading each minute; plans of large orders are smaller

struct Descriptor {
  explicit Descriptor(int opened) : number(opened) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number >= 0) close(number);
  }
  int number;
};

std::string kind_of(mode_t mode) {
  if (S_ISDIR(mode)) return "it is a folder";
  if (S_ISFIFO(mode)) return "it is a pipe, not a file";
  if (S_ISSOCK(mode)) return "it is a socket, not a file";
  return "it is a device, not a file";
}

tl::unexpected<std::string> failed(int error) {
  return tl::make_unexpected(error == ENOENT ? "there is no such file" : std::generic_category().message(error));
}

tl::unexpected<std::string> too_large() { return tl::make_unexpected(fmt::format("it is larger than {} MiB", most / mebibyte)); }

FileText read_all(int file, std::size_t expected) {
  constexpr std::size_t chunk = std::size_t{64} * 1024;
  std::string text;
  text.reserve(expected + chunk);
  while (true) {
    const std::size_t before = text.size();
    if (before > most) return too_large();
    text.resize(before + chunk);
    const ssize_t count = read(file, text.data() + before, chunk);
    text.resize(before + static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return failed(errno);
    if (count == 0) return text;
  }
}

FileText read_ordinary(const std::filesystem::path& path) {
  struct stat state {};
  if (stat(path.c_str(), &state) != 0) return failed(errno);
  if (!S_ISREG(state.st_mode)) return tl::make_unexpected(kind_of(state.st_mode));
  const Descriptor file(open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));  // whatever has taken its place by now does not block
  if (file.number < 0 || fstat(file.number, &state) != 0) return failed(errno);
  if (!S_ISREG(state.st_mode)) return tl::make_unexpected(kind_of(state.st_mode));
  const auto size = static_cast<std::size_t>(std::max<off_t>(state.st_size, 0));
  return size > most ? too_large() : read_all(file.number, size);
}

}  // namespace

ReadFile read_from_disk() { return read_ordinary; }

std::string cannot_read(const std::filesystem::path& path, const std::string& why) {
  return fmt::format("cannot read the file {}{}{}", in_quotes(path.string()), why.empty() ? "" : ": ", why);
}

}  // namespace coatday::input
