// Files on a real disk: whole or not at all, and nothing lost that coatday did not make.
#include "cli/output_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <thread>

#include "cli/run.h"
#include "tests/report/golden.h"
#include "tests/support/source_dir.h"

namespace coatday::cli {
namespace {

namespace fs = std::filesystem;

const std::string mark = "PRODID:-//coatday//";
const std::string ours = "BEGIN:VCALENDAR\r\nPRODID:-//coatday//plan//EN\r\nold\r\n";

class OutputFiles : public testing::Test {
 protected:
  void SetUp() override {
    fs::remove_all(folder_);
    fs::create_directories(folder_);
  }
  void TearDown() override { fs::remove_all(folder_); }

  [[nodiscard]] std::string path(const std::string& name) const { return (folder_ / name).string(); }
  [[nodiscard]] std::string put(const std::string& name, const std::string& content) const {
    std::ofstream(path(name), std::ios::binary) << content;
    return path(name);
  }
  [[nodiscard]] std::size_t files() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder_), fs::directory_iterator()));
  }

  fs::path folder_ =
      fs::path(testing::TempDir()) / ("coatday_" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
};

std::string error(const OutputFile& file) {
  const auto written = write_file(file);
  return written ? "" : written.error();
}
bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_F(OutputFiles, ANewFileHoldsEveryByteAndNothingElseIsLeft) {
  const std::string content = ours + std::string("\0\xff", 2) + std::string(3'000'000, 'x');
  EXPECT_EQ(error({path("plan.ics"), content, mark}), "");
  EXPECT_EQ(golden::read(path("plan.ics")), content);
  EXPECT_EQ(files(), 1U);
}

TEST_F(OutputFiles, OneOfOursIsReplacedWithItsPermissions) {
  const std::string file = put("plan.ics", ours);
  ASSERT_EQ(chmod(file.c_str(), 0640), 0);
  EXPECT_EQ(error({file, ours + "new", mark}), "");
  EXPECT_EQ(golden::read(file), ours + "new");
  struct stat state {};
  ASSERT_EQ(stat(file.c_str(), &state), 0);
  EXPECT_EQ(state.st_mode & 0777, 0640U);
  EXPECT_EQ(files(), 1U);
}

TEST_F(OutputFiles, AnEmptyFileHasNothingToLose) { EXPECT_EQ(error({put("plan.ics", ""), ours, mark}), ""); }

TEST_F(OutputFiles, AnotherProgramsFileIsKeptUnlessForced) {
  const std::string theirs = "BEGIN:VCALENDAR\r\nPRODID:-//elsewhere//EN\r\n";
  const std::string file = put("plan.ics", theirs);
  EXPECT_TRUE(says(error({file, ours, mark}), "coatday did not make it (--force overwrites it)"));
  EXPECT_EQ(golden::read(file), theirs);
  EXPECT_EQ(error({file, ours, mark, true}), "");
  EXPECT_EQ(golden::read(file), ours);
}

TEST_F(OutputFiles, AMarkFarInsideIsNone) { EXPECT_NE(error({put("notes.txt", std::string(5000, 'x') + mark), ours, mark}), ""); }

TEST_F(OutputFiles, PlacesWhereNothingCanBeWritten) {
  EXPECT_EQ(error({path("no/plan.ics"), ours, mark}),
            "'" + path("no/plan.ics") + "' cannot be written: there is no folder '" + path("no") + "'");
  EXPECT_TRUE(says(error({folder_.string(), ours, mark, true}), "a folder; name a file in it"));
  EXPECT_TRUE(says(error({path("plan.ics/"), ours, mark}), "a folder; name a file in it"));
  EXPECT_NE(error({put("file", "x") + "/plan.ics", ours, mark}), "");
  EXPECT_TRUE(says(error({"/dev/null", ours, mark, true}), "no ordinary file"));
  EXPECT_NE(error({path(std::string(300, 'x')), ours, mark}), "");
  EXPECT_EQ(files(), 1U);
}

TEST_F(OutputFiles, ALinkStaysALink) {
  const std::string file = put("real.ics", ours);
  fs::create_symlink("real.ics", path("link.ics"));
  EXPECT_EQ(error({path("link.ics"), ours + "new", mark}), "");
  EXPECT_TRUE(fs::is_symlink(path("link.ics")));
  EXPECT_EQ(golden::read(file), ours + "new");
}

// The disk gives out after 64 KB, in a process of its own.
TEST_F(OutputFiles, WhatDoesNotFitLeavesTheOldFileWhole) {
  const std::string file = put("plan.ics", ours);
  const auto too_much = [&file] {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{65536, 65536};
    if (setrlimit(RLIMIT_FSIZE, &limit) != 0) std::exit(2);
    const std::string message = error({file, std::string(1'000'000, 'x'), mark});
    std::exit(says(message, "cannot be written: File too large") ? 0 : 1);
  };
  EXPECT_EXIT(too_much(), testing::ExitedWithCode(0), "");
  EXPECT_EQ(golden::read(file), ours);
  EXPECT_EQ(files(), 1U);
}

// As somebody who may not, whoever runs the test.
TEST_F(OutputFiles, AFolderOrFileThatIsWriteProtected) {
  const std::string file = put("plan.ics", ours);
  ASSERT_EQ(chmod(file.c_str(), 0444), 0);
  ASSERT_EQ(chmod(folder_.c_str(), 0555), 0);
  const auto as_nobody = [&] {
    constexpr uid_t nobody = 65534;
    if (geteuid() == 0 && setuid(nobody) != 0) std::exit(2);
    const bool refused = says(error({path("other.ics"), ours, mark}), "Permission denied");
    std::exit(refused && says(error({file, ours, mark, true}), "write-protected") ? 0 : 1);
  };
  EXPECT_EXIT(as_nobody(), testing::ExitedWithCode(0), "");
  ASSERT_EQ(chmod(folder_.c_str(), 0755), 0);
  EXPECT_EQ(files(), 1U);
}

TEST_F(OutputFiles, WhatTheCommandReadsIsNeverOverwritten) {
  const std::string order = put("order.yaml", "order: x\nshop: shop.yaml\nown finishes: [own.yaml]\npieces: []\n");
  const std::string shop = put("shop.yaml", "shop: x\n"), own = put("own.yaml", "products: {}\n");
  fs::create_symlink("shop.yaml", path("link.html"));
  fs::create_hard_link(own, path("second-name.html"));
  Environment environment = this_machine();
  environment.schedules = source_dir() + "/schedules";
  for (const std::string& output : {path("./order.yaml"), shop, path("link.html"), own, path("second-name.html")}) {
    const Outcome refused = run({"page", order, "--force", "-o", output}, environment);
    EXPECT_EQ(refused.status, bad_input) << output;
    EXPECT_TRUE(says(refused.err, ": -o would write over it")) << output << refused.err;
    EXPECT_FALSE(refused.file) << output;
  }
}

TEST_F(OutputFiles, ALinkToNothingIsRefused) {
  fs::create_symlink("not-there.ics", path("link.ics"));
  EXPECT_EQ(error({path("link.ics"), ours, mark, true}),
            "'" + path("link.ics") + "' cannot be written: it is a link to a file that is not there");
  EXPECT_TRUE(fs::is_symlink(path("link.ics")));
}

// The signal comes in the middle of a long write, and does what it always does as soon as the file has its name.
TEST_F(OutputFiles, NothingStaysBehindWhenItIsInterrupted) {
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
    const auto interrupted = [&] {
      std::signal(signal, SIG_DFL);
      const pid_t here = getpid();
      if (fork() == 0) {
        while (fs::is_empty(folder_)) std::this_thread::yield();
        kill(here, signal);
        std::_Exit(0);
      }
      [[maybe_unused]] const std::string none = error({path("plan.ics"), ours + std::string(50'000'000, 'x'), mark});
      while (true) pause();
    };
    EXPECT_EXIT(interrupted(), testing::KilledBySignal(signal), "");
    EXPECT_EQ(files(), 1U);
    EXPECT_EQ(fs::file_size(path("plan.ics")), ours.size() + 50'000'000);
    fs::remove(path("plan.ics"));
  }
}

TEST_F(OutputFiles, TheTerminalHearsOnlyOfWhatIsThere) {
  Arguments arguments;
  arguments.output = path("plan.ics");
  EXPECT_FALSE(refused_output(arguments, mark));
  const Outcome there = written(to_file(arguments, {no_plan, ours, ""}, mark, "the plan"));
  EXPECT_EQ(there.out, path("plan.ics") + ": the plan\n");
  EXPECT_EQ(there.status, no_plan);
  arguments.output = path("no/\x1b[2J.ics");
  const Outcome failed = written(to_file(arguments, {done, ours, ""}, mark, "the plan"));
  EXPECT_EQ(failed.out, "");
  EXPECT_EQ(failed.status, bad_input);
  EXPECT_FALSE(says(failed.err, "\x1b"));
}

}  // namespace
}  // namespace coatday::cli
