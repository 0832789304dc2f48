#include "tests/soak/program.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <iterator>
#include <stdexcept>

namespace coatday::soak {
namespace {

namespace fs = std::filesystem;

std::string text_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// In the child, where only calls that are safe after fork may stand.
[[noreturn]] void become(const char* folder, const char* out, const char* err, char* const* words, char* const* variables) {
  const rlimit time{static_cast<rlim_t>(hang_seconds), static_cast<rlim_t>(hang_seconds) + 2};
  setrlimit(RLIMIT_CPU, &time);
  const rlimit core{0, 0};
  setrlimit(RLIMIT_CORE, &core);
  alarm(240);  // what waits for ever uses no processor time
  const int in = open("/dev/null", O_RDONLY);
  const int to = open(out, O_WRONLY | O_CREAT | O_TRUNC, 0644), complaints = open(err, O_WRONLY | O_CREAT | O_TRUNC, 0644);
  dup2(in, 0);
  dup2(to, 1);
  dup2(complaints, 2);
  if (chdir(folder) == 0) execve(words[0], words, variables);
  _exit(127);
}

std::vector<char*> pointers(std::vector<std::string>& words) {
  std::vector<char*> all;
  for (std::string& word : words) all.push_back(word.data());
  all.push_back(nullptr);
  return all;
}

}  // namespace

Run Program::run(const fs::path& folder, const std::vector<std::string>& arguments) const {
  std::vector<std::string> words{file.string()},
      variables{"COATDAY_SCHEDULES=" + schedules.string(), "SOURCE_DATE_EPOCH=1798790400", "LANG=C.UTF-8", "PATH=/usr/bin:/bin"};
  words.insert(words.end(), arguments.begin(), arguments.end());
  const std::string where = folder.string(), out = where + ".out", err = where + ".err";
  const std::vector<char*> argv = pointers(words), envp = pointers(variables);
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("no process can be started");
  if (child == 0) become(where.c_str(), out.c_str(), err.c_str(), argv.data(), envp.data());
  int state = 0;
  rusage used{};
  wait4(child, &state, 0, &used);
  Run run{arguments};
  run.status = WIFEXITED(state) ? WEXITSTATUS(state) : -1;
  run.signal = WIFSIGNALED(state) ? WTERMSIG(state) : 0;
  const auto seconds = [](const timeval& t) { return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6; };
  run.seconds = seconds(used.ru_utime) + seconds(used.ru_stime);
  run.megabytes = static_cast<double>(used.ru_maxrss) / 1024;
  run.out = text_of(out);
  run.err = text_of(err);
  return run;
}

std::string typed(const std::vector<std::string>& arguments) {
  std::string all = "coatday";
  for (const std::string& one : arguments) all += one.find_first_of(" '*;") == std::string::npos ? " " + one : " \"" + one + "\"";
  return all;
}

}  // namespace coatday::soak
