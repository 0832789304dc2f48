#include "tests/cli/typed.h"

#include <filesystem>
#include <utility>

#include "input/open.h"
#include "tests/support/source_dir.h"

namespace coatday::cli {

Environment typed(Files files) {
  Environment environment;
  environment.read = [files = std::move(files)](const std::filesystem::path& path) -> input::FileText {
    const auto file = files.find(path.filename().string());
    if (file != files.end()) return file->second;
    const std::filesystem::path climate = std::filesystem::path(source_dir()) / "samples/climate" / path.filename();
    return input::read_from_disk()(std::filesystem::is_regular_file(climate) ? climate : path);
  };
  environment.schedules = source_dir() + "/schedules";
  environment.now = Instant(std::chrono::seconds(1'800'000'000));
  return environment;
}

}  // namespace coatday::cli
