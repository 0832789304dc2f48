
#include <algorithm>
#include <filesystem>

#include "cli/commands.h"
#include "cli/help.h"
#include "cli/options.h"
#include "cli/planned.h"
#include "report/document/render_text.h"
#include "report/files/air_fit_table.h"
#include "report/files/air_table.h"
#include "report/papers/air.h"
#include "report/papers/air_fit.h"

namespace coatday::cli {
namespace {

const About about{
    "Shows what the shop's air will be, day by day: temperatures while it is open and while it is closed, humidity, "
    "dew point, what condenses, and what these rest on; and for each finish the half hours of each day in which it "
    "may go on.",
    {"SHOP.yaml [ORDER.yaml...] [options]"},
    {"shop.yaml --finish water-clear --from \"2027-01-11 08:00\""}};

constexpr const char* from_help =
    "the first day, as in \"2027-01-11\u00a008:00\", in the shop's time zone (default: the order's start, else today)";
constexpr const char* set_help = "a key of the shop file and its value as written there, as in \"air.night=13\u00a0C\"; may be repeated";

bool lies_in(const std::string& file, const std::filesystem::path& directory) {
  return std::filesystem::path(file).lexically_normal().parent_path() == directory.lexically_normal();
}

/// With the parts that take it in the orders.
job::Use use_of(const std::string& finish, const job::Job& job) {
  for (const job::Use& use : job::in_use(job))
    if (use.product == finish) return use;
  return {finish, {}, {}};
}

/// As named; else of the orders; else on the shelf and of the shop's own.
tl::expected<std::vector<job::Use>, Outcome> finishes_of(const Arguments& arguments, const World& world, const job::Job& shop,
                                                         const job::Job& job) {
  std::vector<job::Use> named;
  for (const std::string& id : arguments.finishes) {
    named.push_back(use_of(id, job));
    if (job.catalogue.product(id) != nullptr) continue;
    Words known;
    for (const auto& [name, product] : job.catalogue.products) known.push_back(name);
    return tl::make_unexpected(mistaken("--finish '" + id + "': no finish has that name" + suggestion(id, known)));
  }
  if (!named.empty()) return named;
  if (!arguments.orders.empty()) return job::in_use(job);
  std::vector<job::Use> all = job::in_use(shop);
  for (const auto& [id, product] : shop.catalogue.products) {
    const bool own = !lies_in(product.where.file, *world.schedules);
    const bool known = std::any_of(all.begin(), all.end(), [&, id = id](const job::Use& use) { return use.product == id; });
    if (own && !known) all.push_back({id, {}, {}});
  }
  return all;
}

/// What the readings say of the room. Without a value that they determine the status is that of no plan.
Outcome fit_log(const Arguments& arguments, const World& world, const job::Job& shop) {
  const auto log = load_log(arguments, shop, world);
  if (!log) return log.error();
  const climate::RoomFit fit = climate::fit_room(*log, *shop.room, shop.shop.zone);
  const int status = fit.time_constant || fit.moisture_gain ? done : no_plan;
  if (arguments.format == Format::json) return {status, report::fit_json(shop, *log, fit, version()), ""};
  if (arguments.format == Format::csv) return {status, report::fit_csv(shop, fit), ""};
  const report::TextStyle shown = text_style(arguments, world, shop.shop.units);
  return {status, report::render_text(report::air_fit(shop, *log, fit, shown.units), shown), ""};
}

Outcome run(const Arguments& arguments, const World& world) {
  auto shop = load_shop(arguments, world);
  if (!shop) return shop.error();
  if (arguments.units) shop->shop.units = *arguments.units;
  if (!arguments.fit.empty() && !(arguments.finishes.empty() && arguments.orders.empty()))
    return mistaken("--fit looks at the shop alone; leave out orders and --finish");
  if (!arguments.fit.empty()) return fit_log(arguments, world, *shop);
  job::Job job = *shop;
  if (!arguments.orders.empty()) {
    Arguments alone = arguments;
    alone.set.clear();
    auto loaded = load(alone, world);
    if (!loaded) return loaded.error();
    job = *std::move(loaded);
  }
  const auto finishes = finishes_of(arguments, world, *shop, job);
  if (!finishes) return finishes.error();
  const Instant from = plan_from(arguments, job, world.now);
  const job::AirForecast all = job::forecast(*shop, job.catalogue, *finishes, from, arguments.days);
  if (arguments.format == Format::json) return {done, report::air_json(*shop, all, version()), ""};
  if (arguments.format == Format::csv) return {done, report::air_csv(*shop, all), ""};
  const report::TextStyle shown = text_style(arguments, world, shop->shop.units);
  return {done, report::render_text(report::air(*shop, job.catalogue, all, shown.units), shown), ""};
}

}  // namespace

Command air_command() {
  return {
      "air",
      {shop_and_orders(), fit(), finish(), told(from(), from_help), days(), told(set(), set_help), format_or_table(), units(), colour()},
      about,
      run};
}

}  // namespace coatday::cli
