#include <algorithm>
#include <filesystem>

#include "cli/commands.h"
#include "cli/options.h"
#include "cli/ready.h"
#include "cli/version.h"
#include "cli/view.h"
#include "job/air_forecast.h"
#include "report/document/render_text.h"
#include "report/files/air_fit_table.h"
#include "report/files/air_table.h"
#include "report/papers/air.h"
#include "report/papers/air_fit.h"

namespace coatday::cli {
namespace {

constexpr const char* from_help =
    "the first day, as in \"2027-01-11\u00a008:00\", in the shop's time zone (default: the order's start, else today)";
constexpr const char* set_help = "a key of the shop file and its value as written there, as in \"air.night=13\u00a0C\"; may be repeated";

std::optional<std::string> air_misuse(const Arguments& arguments) {
  if (arguments.fit.empty() || (arguments.finishes.empty() && arguments.orders.empty())) return std::nullopt;
  return "--fit looks at the shop alone; leave out orders and --finish";
}

bool lies_in(const std::string& file, const std::filesystem::path& directory) {
  return std::filesystem::path(file).lexically_normal().parent_path() == directory.lexically_normal();
}

/// With the parts that take it in the orders.
job::Use use_of(const std::string& finish, const job::Job& job) {
  for (const job::Use& use : job::in_use(job))
    if (use.product == finish) return use;
  return {finish, {}, {}};
}

/// Finishes on the shop's shelf and those of the shop's own files.
std::vector<job::Use> finishes_of_shop(const View& view) {
  std::vector<job::Use> all = job::in_use(view.job());
  for (const auto& [id, product] : view.job().catalogue.products) {
    const bool own = !lies_in(product.where.file, view.schedules);
    const bool known = std::any_of(all.begin(), all.end(), [&, id = id](const job::Use& use) { return use.product == id; });
    if (own && !known) all.push_back({id, {}, {}});
  }
  return all;
}

/// Those that are named; else those of the orders; else the shop's.
tl::expected<std::vector<job::Use>, Outcome> finishes_of(const View& view) {
  const finish::Catalogue& catalogue = view.job().catalogue;
  std::vector<job::Use> named;
  for (const std::string& id : view.arguments.finishes) {
    named.push_back(use_of(id, view.job()));
    if (catalogue.product(id) != nullptr) continue;
    return tl::make_unexpected(mistaken("--finish '" + id + "': no finish has that name" + suggestion(id, names_in(catalogue.products))));
  }
  if (!named.empty()) return named;
  return view.arguments.orders.empty() ? finishes_of_shop(view) : job::in_use(view.job());
}

tl::expected<job::AirForecast, Outcome> forecast(const View& view) {
  return finishes_of(view).map([&](const std::vector<job::Use>& finishes) {
    const Instant from = plan_from(view.arguments, view.job(), view.now);
    return job::forecast(view.job(), view.job().catalogue, finishes, from, view.arguments.days);
  });
}

climate::RoomFit room_fit(const View& view) { return climate::fit_room(*view.log, *view.job().room, view.job().shop.zone); }
/// Without a value that the readings determine the status is that of no plan.
int fit_status(const climate::RoomFit& fit) { return fit.time_constant || fit.moisture_gain ? done : no_plan; }

Outcome air_text(const View& view) {
  if (view.log) {
    const climate::RoomFit fit = room_fit(view);
    return {fit_status(fit), report::render_text(report::air_fit(view.job(), *view.log, fit, view.style.units), view.style), ""};
  }
  const auto air = forecast(view);
  return air ? answer(view, report::air(view.job(), view.job().catalogue, *air, view.style.units)) : air.error();
}

Outcome air_json(const View& view) {
  if (view.log) {
    const climate::RoomFit fit = room_fit(view);
    return {fit_status(fit), report::fit_json(view.job(), *view.log, fit, version()), ""};
  }
  const auto air = forecast(view);
  return air ? answer(view, report::air_json(view.job(), *air, version())) : air.error();
}

Outcome air_csv(const View& view) {
  if (view.log) {
    const climate::RoomFit fit = room_fit(view);
    return {fit_status(fit), report::fit_csv(view.job(), fit), ""};
  }
  const auto air = forecast(view);
  return air ? answer(view, report::air_csv(view.job(), *air)) : air.error();
}

}  // namespace

Command air_command() {
  return {
      .name = "air",
      .group = groups::before_planning,
      .needs = Needs::shop,
      .options = {shop_and_orders(), fit(), finish(), with_help(from(), from_help), days(), with_help(set(), set_help), units(), colour()},
      .outputs = {{"text", "for people", air_text}, {"json", "for programs", air_json}, {"csv", "for spreadsheets", air_csv}},
      .about = {.brief = "the shop's air, day by day, and what may go on in it",
                .summary = "Shows what the shop's air will be, day by day: temperatures while it is open and while it is closed, humidity, "
                           "dew point, what condenses, and what these rest on; and for each finish the half hours of each day in which it "
                           "may go on.",
                .usage = {"SHOP.yaml [ORDER.yaml...]"},
                .examples = {"shop.yaml --finish water-clear --from \"2027-01-11 08:00\""},
                .more = "With json and csv, every half hour is written."},
      .misuse = air_misuse,
  };
}

}  // namespace coatday::cli
