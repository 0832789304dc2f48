#include <cstdio>

#include "cli/output_file.h"
#include "cli/run.h"

namespace {

bool write(std::FILE* file, const std::string& text) {
  return std::fwrite(text.data(), 1, text.size(), file) == text.size() && std::fflush(file) == 0;
}

}  // namespace

int main(int count, char** words) {
  using namespace coatday;
  const cli::Outcome outcome = cli::written(cli::run({words + (count > 0 ? 1 : 0), words + count}, cli::this_machine()));
  const bool written = write(stdout, outcome.out);
  if (!written) std::fputs("coatday: error: the output cannot be written\n", stderr);
  write(stderr, outcome.err);
  return written ? outcome.status : cli::bad_input;
}
