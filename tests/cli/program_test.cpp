// The program as a process: streams and exit status.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <fstream>
#include <string>

#include "tests/report/golden.h"

namespace {

int status_of(const std::string& command) {
  const int raw = std::system(command.c_str());
  return WIFEXITED(raw) ? WEXITSTATUS(raw) : -1;
}

const std::string program = COATDAY_PROGRAM;

TEST(Program, ExitStatusAndStreams) {
  const std::string out = testing::TempDir() + "coatday_out.txt";
  const std::string err = testing::TempDir() + "coatday_err.txt";
  EXPECT_EQ(status_of("'" + program + "' --version >'" + out + "' 2>'" + err + "'"), 0);
  EXPECT_TRUE(coatday::golden::read(out).starts_with("coatday "));
  EXPECT_EQ(coatday::golden::read(err), "");
  EXPECT_EQ(status_of("'" + program + "' plna >'" + out + "' 2>'" + err + "'"), 2);
  EXPECT_EQ(coatday::golden::read(out), "");
  EXPECT_TRUE(coatday::golden::read(err).starts_with("coatday: error: "));
}

TEST(Program, FullDiskIsSaid) {
  const std::string err = testing::TempDir() + "coatday_full.txt";
  EXPECT_EQ(status_of("'" + program + "' --help >/dev/full 2>'" + err + "'"), 2);
  EXPECT_NE(coatday::golden::read(err).find("cannot be written"), std::string::npos);
}

/// What a shell command prints.
std::string printed(const std::string& command) {
  const std::string out = testing::TempDir() + "coatday_printed.txt";
  EXPECT_EQ(status_of("{ " + command + " ; } >'" + out + "' 2>&1"), 0) << command;
  return coatday::golden::read(out);
}

bool has(const char* tool) { return status_of(std::string("command -v ") + tool + " >/dev/null 2>&1") == 0; }

TEST(Program, ManualPageIsFormattedWithoutAWarning) {
  if (!has("groff")) GTEST_SKIP() << "groff is not installed";
  EXPECT_EQ(printed("'" + program + "' help --man | groff -man -Tutf8 -ww 2>&1 >/dev/null"), "");
}

/// What bash offers for the last word.
std::string completed(const std::string& words, int last) {
  const std::string script = "source <('" + program + "' help --completion bash); COMP_WORDS=(" + words +
                             "); COMP_CWORD=" + std::to_string(last) + "; _coatday; echo \"${COMPREPLY[@]}\"";
  const std::string file = testing::TempDir() + "coatday_completed.sh";
  std::ofstream(file) << script;
  return printed("bash '" + file + "'");
}

TEST(Program, BashCompletes) {
  if (!has("bash")) GTEST_SKIP() << "bash is not installed";
  EXPECT_EQ(completed("coatday wh", 1), "why what-if\n");
  EXPECT_EQ(completed("coatday plan order.yaml --fo", 3), "--format\n");
  EXPECT_EQ(completed("coatday calendar order.yaml --format ''", 4), "ics csv\n");
  EXPECT_EQ(completed("coatday plan --units m", 3), "metric\n");
  EXPECT_EQ(completed("coatday help d", 2), "dates drying\n");
  EXPECT_EQ(completed("coatday help --completion ''", 3), "bash\n");
  EXPECT_EQ(completed("coatday plan or", 2), "\n") << "file names are bash's own";
  EXPECT_EQ(completed("coatday --v", 1), "--version\n");
}

}  // namespace
