#include "cli/ready.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

#include "cli/command.h"
#include "input/earlier_plan.h"
#include "job/air_cache.h"
#include "job/id_here.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

using job::AdviceDepth;
using Paths = std::vector<std::filesystem::path>;

tl::unexpected<Outcome> mistakes_in_files(const std::vector<input::Diagnostic>& mistakes) {
  Outcome outcome{bad_input, "", ""};
  for (const input::Diagnostic& mistake : mistakes) {
    outcome.err += input::to_text(mistake);
    if (!outcome.err.ends_with('\n')) outcome.err += '\n';
  }
  return tl::make_unexpected(outcome);
}

tl::unexpected<Outcome> no_schedules() {
  return tl::make_unexpected(mistaken("the directory of finishing schedules is not found; set COATDAY_SCHEDULES to it"));
}

/// Whether the command line names files that the command needs.
bool names_files(const Arguments& arguments) {
  const Needs needs = arguments.command->needs;
  return needs == Needs::catalogue || (needs > Needs::catalogue && !(arguments.shop.empty() && arguments.orders.empty()));
}

/// What is wrong with a history, beside what it says of the time from which one plans.
std::vector<job::Finding> judge_history(const Arguments& arguments, const job::Job& job) {
  std::vector<job::Finding> found = planner::history_mistakes(job);
  if (!arguments.from) return found;
  const Instant from = job.shop.zone.to_instant(*arguments.from);
  for (const job::Done& done : job.order.history) {
    if (done.end <= from) continue;
    found.push_back({"history-mistake", job::Severity::error,
                     fmt::format("'{}' ends at {}, after --from {}; a history holds what is done", done.event,
                                 day_and_time(job.shop.zone.to_local(done.end)), day_and_time(*arguments.from)),
                     done.event, done.where});
  }
  return found;
}

tl::expected<input::Opened, Outcome> open_files(const Arguments& arguments, const Environment& environment) {
  if (!names_files(arguments)) return input::Opened{};
  if (!environment.schedules) return no_schedules();
  const std::filesystem::path& schedules = *environment.schedules;
  const Paths orders(arguments.orders.begin(), arguments.orders.end());
  const Paths own(arguments.own.begin(), arguments.own.end());
  const auto judge = [&arguments](const job::Job& job) { return judge_history(arguments, job); };
  input::Opening opened = arguments.command->needs == Needs::catalogue ? input::open_catalogue(own, schedules, environment.read)
                          : orders.empty() ? input::open_shop(arguments.shop, schedules, environment.read, arguments.set)
                                           : input::open_orders(orders, schedules, environment.read, arguments.set, arguments.shop, judge);
  if (!opened) return mistakes_in_files(opened.error());
  if (arguments.units) opened->job.shop.units = *arguments.units;
  return *std::move(opened);
}

constexpr double patience = 0.5;  // seconds before people want to see something move

std::string progress_line(const job::Progress& progress, const Zone& zone) {
  const auto at = [&zone](const std::optional<Instant>& t) { return t ? day_and_time(zone.to_local(*t)) : std::string("not known"); };
  return fmt::format("best so far ready {}; none before {} ({:.0f} s, Ctrl-C to stop)", at(progress.ready), at(progress.bound),
                     progress.seconds);
}

/// The key that a text sets.
std::string key_of(const std::string& set) { return set.substr(0, set.find('=')); }

/// The files once more with more keys set; a key that is set already is set anew.
std::optional<job::Job> read_with(Arguments arguments, const Environment& environment, const std::vector<std::string>& set) {
  for (const std::string& text : set) {
    std::erase_if(arguments.set, [&text](const std::string& old) { return key_of(old) == key_of(text); });
    arguments.set.push_back(text);
  }
  auto files = open_files(arguments, environment);
  if (!files) return std::nullopt;
  files->job.air = job::cached_air(std::move(files->job.air));
  return std::move(files->job);
}

job::Request request_of(const Arguments& arguments, const Environment& environment, const job::Job& job, AdviceDepth depth) {
  job::Request request{plan_from(arguments, job, environment.now)};
  request.advice = depth;
  request.seconds = arguments.effort;
  request.reread = [arguments, &environment](const std::vector<std::string>& set) { return read_with(arguments, environment, set); };
  if (request.seconds <= 0) return request;
  if (environment.interruptible) request.stop = environment.interruptible();
  if (environment.say) {
    request.progress = [&environment, zone = job.shop.zone](const job::Progress& progress) {
      if (progress.seconds >= patience) environment.say(progress_line(progress, zone));
    };
  }
  return request;
}

tl::expected<planner::FinishedPlan, Outcome> finished_plan(job::Job& job, const Arguments& arguments, const Environment& environment,
                                                           AdviceDepth depth) {
  job.air = job::cached_air(std::move(job.air));
  job::Request request = request_of(arguments, environment, job, depth);
  if (!arguments.keep.empty()) {
    auto earlier = input::read_earlier_plan(arguments.keep, environment.read);
    if (!earlier) return mistakes_in_files({earlier.error()});
    request.earlier_starts.emplace();
    for (const auto& [event, start] : *earlier) request.earlier_starts->emplace(job::id_here(job.order, event), start);
  }
  auto finished = environment.finish_plan(job, request);
  if (request.progress) environment.say("");
  if (!finished) return tl::make_unexpected(Outcome{our_fault, "", report::breaches_text(finished.error().breaches, {})});
  return *std::move(finished);
}

/// A file that is read again comes from memory.
input::ReadFile reading_once(const input::ReadFile& read) {
  const auto texts = std::make_shared<std::map<std::filesystem::path, input::FileText>>();
  return [read, texts](const std::filesystem::path& path) {
    const auto known = texts->find(path);
    return known != texts->end() ? known->second : texts->emplace(path, read(path)).first->second;
  };
}

/// The files and the plan in them.
tl::expected<View, Outcome> planned(const Arguments& arguments, const Environment& environment, AdviceDepth depth) {
  View view{arguments, environment.now, environment.schedules.value_or("")};
  auto files = open_files(arguments, environment);
  if (!files) return tl::make_unexpected(files.error());
  view.files = *std::move(files);
  view.style = text_style(arguments, environment, view.job().shop.units);
  if (arguments.command->needs < Needs::plan || !names_files(arguments)) return view;
  auto finished = finished_plan(view.files.job, arguments, environment, depth);
  if (!finished) return tl::make_unexpected(finished.error());
  view.finished = *std::move(finished);
  return view;
}

tl::expected<View, Outcome> compared(const Arguments& arguments, const Environment& environment) {
  Arguments as_it_is = arguments;
  as_it_is.set.clear();
  auto before = planned(as_it_is, environment, AdviceDepth::none);
  if (!before) return tl::make_unexpected(before.error());
  auto after = planned(arguments, environment, AdviceDepth::when_impossible);
  if (after) after->without_set = std::move(before->finished);
  return after;
}

}  // namespace

tl::expected<View, Outcome> make_ready(const Arguments& arguments, const Environment& given) {
  Environment environment = given;
  environment.read = reading_once(given.read);
  const Command& command = *arguments.command;
  if (command.needs == Needs::two_plans && !arguments.set.empty()) return compared(arguments, environment);
  auto view = planned(arguments, environment, command.advice);
  if (!view || arguments.fit.empty()) return view;
  auto log = input::open_log(arguments.fit, view->files.log, view->job().shop.zone, environment.read);
  if (!log) return mistakes_in_files(log.error());
  view->log = *std::move(log);
  return view;
}

Instant plan_from(const Arguments& arguments, const job::Job& job, Instant now) {
  if (arguments.from) return std::max(job.shop.zone.to_instant(*arguments.from), job.order.start.value_or(Instant::min()));
  using FiveMinutes = std::chrono::duration<std::int64_t, std::ratio<300>>;
  if (!job.order.start) return std::chrono::ceil<FiveMinutes>(now);
  Instant from = *job.order.start;
  for (const job::Done& done : job.order.history) from = std::max(from, done.end);
  return from;
}

report::TextStyle text_style(const Arguments& arguments, const Environment& environment, Units shop_units) {
  const bool automatic = environment.terminal && !environment.no_color;
  const bool colour = arguments.colour == Colour::always || (arguments.colour == Colour::automatic && automatic);
  return {arguments.units.value_or(shop_units), colour, 80};
}

}  // namespace coatday::cli
