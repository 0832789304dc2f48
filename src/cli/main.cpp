#include <cstdio>

#include "cli/run.h"

namespace {

bool write(std::FILE* file, const std::string& text) {
  return std::fwrite(text.data(), 1, text.size(), file) == text.size() && std::fflush(file) == 0;
}

}  // namespace

int main(int count, char** words) {
  const auto outcome = coatday::cli::run({words + (count > 0 ? 1 : 0), words + count}, coatday::cli::this_machine());
  const bool written = write(stdout, outcome.out);
  if (!written) std::fputs("coatday: error: the output cannot be written\n", stderr);
  write(stderr, outcome.err);
  return written ? outcome.status : coatday::cli::bad_input;
}
