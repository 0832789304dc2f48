// Runs the fuzz target over the files of the corpus, so that every compiler's test run does. Each folder is one input, its files joined as the
// target cuts them; the shipped finishes of the reader's tests are added.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace fs = std::filesystem;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

void append(std::string& input, const fs::path& file, const std::string& name) {
  std::ifstream stream(file, std::ios::binary);
  input += "\n=== " + name + "\n";
  input.append(std::istreambuf_iterator<char>(stream), {});
}

std::string joined(const fs::path& folder, const fs::path& common) {
  std::string input;
  for (const char* name : {"products.yaml", "schedules.yaml", "over.yaml"})
    append(input, common / "schedules" / name, std::string("schedules/") + name);
  for (const char* name : {"order.yaml", "shop.yaml"}) {
    if (!fs::exists(folder / name)) append(input, common / name, name);
  }
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.is_regular_file() && entry.path().filename() != "expected.txt") append(input, entry.path(), entry.path().filename().string());
  }
  return input;
}

}  // namespace

// corpus [--write DIR] COMMON FOLDER...: every folder below the given ones that holds files.
int main(int argc, char** argv) {
  std::vector<std::string> arguments(argv + 1, argv + argc);
  fs::path out;
  if (arguments.size() > 2 && arguments[0] == "--write") {
    out = arguments[1];
    arguments.erase(arguments.begin(), arguments.begin() + 2);
  }
  int count = 0;
  for (std::size_t i = 1; i < arguments.size(); ++i) {
    for (const auto& entry : fs::recursive_directory_iterator(arguments[i])) {
      if (!entry.is_directory()) continue;
      const std::string input = joined(entry.path(), arguments[0]);
      if (out.empty()) LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
      if (!out.empty()) std::ofstream(out / (entry.path().filename().string() + ".txt"), std::ios::binary) << input;
      ++count;
    }
  }
  std::printf("%d inputs\n", count);
  return count > 0 ? 0 : 1;
}
