// The program as a process: streams and exit status.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
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

}  // namespace
