// Random shops and orders, planned in every way, and their files mutated. tests/soak.sh builds and runs it.

#include <CLI/CLI.hpp>
#include <csignal>
#include <cstdio>
#include <thread>

#include "tests/soak/soak.h"
#include "tests/support/source_dir.h"

int main(int argc, char** argv) {
  using namespace coatday::soak;
  Settings settings;
  const std::filesystem::path source = coatday::source_dir();
  std::string program = "build/coatday", folder = "build/soak";
  std::optional<std::uint64_t> one_case;
  std::optional<std::uint64_t> mutations;
  settings.workers = std::max(1U, std::thread::hardware_concurrency());
  CLI::App app{"Plans random orders and mutated files, and reports what must not happen.", "tests/soak.sh"};
  app.add_option("MINUTES", settings.minutes, "how long");
  app.add_option("SEED", settings.seed, "of the first case; the next has the next (default 1)");
  app.add_option("--orders", settings.orders, "so many orders instead");
  app.add_option("--mutations", mutations, "with so many mutations in all (default 10 an order)");
  app.add_option("--case", one_case, "this one alone, its files left in build/soak/case");
  app.add_option("--program", program, "another program, such as build/sanitizers/coatday");
  app.add_option("--folder", folder, "where finds are written (default build/soak)");
  std::set<std::string> names;
  for (const Relation& relation : relations()) names.insert(relation.name);
  app.add_option("--relation", settings.relation, "ask this alone of each order")->check(CLI::IsMember(names));
  app.add_option("--workers", settings.workers, "so many at once (default: the processors)");
  CLI11_PARSE(app, argc, argv);
  settings.program = {std::filesystem::absolute(program), source / "schedules"};
  settings.folder = std::filesystem::absolute(folder);
  const Known known = known_finishes(settings.program.schedules);
  if (one_case) {
    settings.seed = *one_case;
    settings.minutes = 0;
    settings.orders = settings.workers = 1;
    write(files_of(make_case(*one_case, known)), settings.folder / "case");
  }
  if (settings.minutes <= 0 && settings.orders == 0) settings.minutes = 1;
  if (settings.orders > 0) settings.minutes = 0;
  if (mutations && settings.orders > 0) settings.mutations_each = static_cast<int>(*mutations / settings.orders);
  if (!std::filesystem::exists(settings.program.file)) {
    std::fprintf(stderr, "There is no program %s.\n", settings.program.file.c_str());
    return 2;
  }
  std::signal(SIGINT, [](int) { stopped() = 1; });
  std::signal(SIGTERM, [](int) { stopped() = 1; });
  const Outcome outcome = soak(settings);
  std::fputs(report(outcome, settings, known, source / "samples" / "every-key").c_str(), stdout);
  return outcome.finds() == 0 ? 0 : 1;
}
