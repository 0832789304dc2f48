#include "cli/planned.h"

#include <fmt/core.h>

#include <algorithm>

#include "input/earlier.h"
#include "job/air_cache.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

Outcome told(const std::vector<input::Diagnostic>& mistakes) {
  Outcome outcome{bad_input, "", ""};
  for (const input::Diagnostic& mistake : mistakes) {
    outcome.err += input::to_text(mistake);
    if (!outcome.err.ends_with('\n')) outcome.err += '\n';
  }
  return outcome;
}

constexpr double patience = 0.5;  // seconds before people want to see something move

std::string progress_line(const job::Progress& progress, const Zone& zone) {
  const auto at = [&zone](const std::optional<Instant>& t) { return t ? day_and_time(zone.to_local(*t)) : std::string("not known"); };
  return fmt::format("best so far ready {}; none before {} ({:.0f} s, Ctrl-C to stop)", at(progress.ready), at(progress.bound),
                     progress.seconds);
}

Outcome no_schedules() { return mistaken("the directory of finishing schedules is not found; set COATDAY_SCHEDULES to it"); }

tl::expected<input::Loaded, Outcome> load_all(const Arguments& arguments, const World& world) {
  if (!world.schedules) return tl::make_unexpected(no_schedules());
  const std::vector<std::filesystem::path> orders(arguments.orders.begin(), arguments.orders.end());
  input::Loaded loaded = input::load_orders(orders, *world.schedules, world.read, arguments.set, arguments.shop);
  if (!loaded.job) return tl::make_unexpected(told(loaded.mistakes));
  return loaded;
}

job::Request request_of(const Arguments& arguments, const World& world, const job::Job& job) {
  job::Request request{plan_from(arguments, job, world.now)};
  request.seconds = arguments.effort;
  if (request.seconds <= 0) return request;
  if (world.interruptible) request.stop = world.interruptible();
  if (world.say) {
    request.progress = [&world, zone = job.shop.zone](const job::Progress& progress) {
      if (progress.seconds >= patience) world.say(progress_line(progress, zone));
    };
  }
  return request;
}

}  // namespace

tl::expected<job::Job, Outcome> load(const Arguments& arguments, const World& world) {
  return load_all(arguments, world).map([](input::Loaded&& loaded) { return std::move(*loaded.job); });
}

tl::expected<shop::Rates, Outcome> load_rates(const Arguments& arguments, const World& world) {
  return load_all(arguments, world).map([](const input::Loaded& loaded) { return loaded.rates; });
}

tl::expected<job::Job, Outcome> load_shop(const Arguments& arguments, const World& world) {
  if (!world.schedules) return tl::make_unexpected(no_schedules());
  input::Loaded loaded = input::load_shop(arguments.shop, *world.schedules, world.read, arguments.set);
  if (!loaded.job) return tl::make_unexpected(told(loaded.mistakes));
  return std::move(*loaded.job);
}

tl::expected<climate::Log, Outcome> load_log(const Arguments& arguments, const job::Job& shop, const World& world) {
  if (!world.schedules) return tl::make_unexpected(no_schedules());
  const input::Loaded told_of = input::load_shop(arguments.shop, *world.schedules, world.read, arguments.set);
  input::LoadedLog loaded = input::load_log(arguments.fit, told_of.log, shop.shop.zone, world.read);
  if (!loaded.mistakes.empty()) return tl::make_unexpected(told(loaded.mistakes));
  return std::move(loaded.log);
}

tl::expected<finish::Catalogue, Outcome> load_finishes(const Arguments& arguments, const World& world) {
  if (!world.schedules) return tl::make_unexpected(no_schedules());
  const std::vector<std::filesystem::path> own(arguments.own.begin(), arguments.own.end());
  input::LoadedCatalogue loaded = input::load_catalogue(*world.schedules, own, world.read);
  if (!loaded.mistakes.empty()) return tl::make_unexpected(told(loaded.mistakes));
  return std::move(loaded.catalogue);
}

Outcome printed(const Arguments& arguments, const World& world,
                const std::function<std::string(const job::Plan&, const job::Job&, const report::Look&)>& text) {
  const auto made = planned(arguments, world, job::AdviceDepth::when_late);
  if (!made) return made.error();
  const job::Plan& plan = made->plan();
  const std::string& order = made->job.order.name;
  const report::Look shown = look(arguments, world, plan.shop.units);
  const int status = status_of(plan, false);
  if (plan.status != job::Status::feasible) return {status, "", report::plan_text(plan, order, shown)};
  return {status, text(plan, made->job, shown), status == done ? "" : report::findings_text(plan.findings, order, shown)};
}

tl::expected<Planned, Outcome> planned(const Arguments& arguments, const World& world, job::AdviceDepth depth) {
  auto job = load(arguments, world);
  if (!job) return tl::make_unexpected(job.error());
  if (arguments.units) job->shop.units = *arguments.units;
  job->air = job::cached_air(std::move(job->air));
  job::Request request = request_of(arguments, world, *job);
  request.advice = depth;
  if (!arguments.keep.empty()) {
    auto earlier = input::read_earlier_plan(arguments.keep, world.read);
    if (!earlier) return tl::make_unexpected(told({earlier.error()}));
    request.earlier_starts = *std::move(earlier);
  }
  auto finished = world.finish_plan(*job, request);
  if (request.progress) world.say("");
  if (!finished) return tl::make_unexpected(refused_by_checker(finished.error().breaches));
  return Planned{std::move(*job), *std::move(finished)};
}

Instant plan_from(const Arguments& arguments, const job::Job& job, Instant now) {
  if (arguments.from) return std::max(job.shop.zone.to_instant(*arguments.from), job.order.start.value_or(Instant::min()));
  if (job.order.start) return *job.order.start;
  return std::chrono::ceil<std::chrono::duration<std::int64_t, std::ratio<300>>>(now);
}

report::Look look(const Arguments& arguments, const World& world, Units shop_units) {
  const bool automatic = world.terminal && !world.no_color;
  const bool colour = arguments.colour == Colour::always || (arguments.colour == Colour::automatic && automatic);
  return {arguments.units.value_or(shop_units), colour, 80};
}

int status_of(const std::vector<job::Finding>& findings, bool strict) {
  const job::Severity worst = strict ? job::Severity::warning : job::Severity::error;
  const bool bad = std::any_of(findings.begin(), findings.end(), [worst](const job::Finding& f) { return f.severity >= worst; });
  return bad ? no_plan : done;
}

int status_of(const job::Plan& plan, bool strict) {
  return plan.status == job::Status::feasible ? status_of(plan.findings, strict) : no_plan;
}

Outcome refused_by_checker(const std::vector<checker::Breach>& breaches) { return {our_fault, "", report::breaches_text(breaches, {})}; }

}  // namespace coatday::cli
