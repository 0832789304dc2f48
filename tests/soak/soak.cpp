#include "tests/soak/soak.h"

#include <fmt/format.h>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <mutex>
#include <thread>

#include "tests/soak/shrink.h"

namespace coatday::soak {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr int shrunk_of_a_kind = 2;
constexpr double longest_shrinking = 45;  // seconds of processor time, of each find
constexpr auto longest_waiting = std::chrono::minutes(4);

class Soak {
 public:
  explicit Soak(const Settings& settings) : settings_(settings), known_(known_finishes(settings.program.schedules)), began_(Clock::now()) {}

  Outcome run() {
    std::vector<std::thread> workers;
    for (unsigned i = 0; i < settings_.workers; ++i) workers.emplace_back([this, i] { work(fmt::format("worker-{}", i)); });
    for (std::thread& worker : workers) worker.join();
    return std::move(outcome_);
  }

 private:
  [[nodiscard]] bool is_over(std::uint64_t number) const {
    if (stopped() != 0) return true;
    if (settings_.minutes <= 0) return number >= settings_.orders;
    return Clock::now() - began_ > std::chrono::duration<double>(settings_.minutes * 60);
  }

  void work(const std::string& name) {
    Bench bench{settings_.program, settings_.folder / name};
    while (true) {
      const std::uint64_t number = next_++;
      if (is_over(number)) break;
      const Case one = make_case(settings_.seed + number, known_);
      count_keys(one, bench.counts);
      for (const Find& find : settings_.relation.empty() ? examine(one, bench) : examine_relation(one, bench, settings_.relation)) {
        take(find, name);
      }
      for (const Find& find : examine_mutants(one, bench, settings_.mutations_each)) take(find, name);
      say_progress();
    }
    const std::lock_guard lock(mutex_);
    outcome_.counts.add(bench.counts);
    fs::remove_all(bench.folder);
    for (const char* end : {".out", ".err"}) fs::remove(bench.folder.string() + end);
  }

  void say_progress() {
    const std::lock_guard lock(mutex_);
    ++done_;
    if (Clock::now() - said_ < std::chrono::minutes(1)) return;
    said_ = Clock::now();
    std::printf("%llu orders so far\n", static_cast<unsigned long long>(done_));
    std::fflush(stdout);
  }

  void take(const Find& find, const std::string& worker) {
    bool first = false;
    {
      const std::lock_guard lock(mutex_);
      Kind& kind = outcome_.kinds[find.complaint.kind];
      first = ++kind.count <= shrunk_of_a_kind;
      kind.seeds.insert(find.at.seed);
    }
    if (first) keep(find, shrunk(find, worker));
  }

  [[nodiscard]] Case shrunk(const Find& find, const std::string& worker) const {
    Bench bench{settings_.program, settings_.folder / (worker + "-shrinks")};
    const auto until = Clock::now() + longest_waiting;
    const auto still = [&](const Case& smaller) {
      if (Clock::now() > until || bench.counts.seconds > longest_shrinking) return false;
      const auto complaint = find.probe(smaller, bench);
      return complaint && complaint->kind == find.complaint.kind;
    };
    Case small = shrink(find.at, still, settings_.most_tries).small;
    fs::remove_all(bench.folder);
    return small;
  }

  void keep(const Find& find, const Case& small) {
    Bench bench{settings_.program, settings_.folder / "again"};
    const std::lock_guard lock(mutex_);
    const Complaint complaint = find.probe(small, bench).value_or(find.complaint);
    const std::string name = fmt::format("{}-{}", find.complaint.kind, find.at.seed);
    write(files_of(small), settings_.folder / "finds" / name);
    std::ofstream(settings_.folder / "finds" / name / "command.txt")
        << complaint.typed << "\n\n"
        << find.complaint.kind << ": " << complaint.what << "\nCase " << find.at.seed << ", shrunk.\n";
    Kind& kind = outcome_.kinds[find.complaint.kind];
    if (kind.folder.empty()) {
      kind.folder = "finds/" + name;
      kind.what = complaint.what;
    }
    std::printf("Find: %s\n", name.c_str());
    std::fflush(stdout);
    fs::remove_all(bench.folder);
  }

  Settings settings_;
  Known known_;
  Clock::time_point began_, said_ = Clock::now();
  std::uint64_t done_ = 0;
  std::atomic<std::uint64_t> next_{0};
  std::mutex mutex_;
  Outcome outcome_;
};

}  // namespace

volatile std::sig_atomic_t& stopped() {
  static volatile std::sig_atomic_t flag = 0;
  return flag;
}

std::uint64_t Outcome::finds() const {
  std::uint64_t all = 0;
  for (const auto& [name, kind] : kinds) all += kind.count;
  return all;
}

Outcome soak(const Settings& settings) {
  fs::remove_all(settings.folder / "finds");
  fs::create_directories(settings.folder);
  return Soak(settings).run();
}

}  // namespace coatday::soak
