#include "input/open.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

#include "climate/air.h"
#include "input/air.h"
#include "input/catalogue.h"
#include "input/fields.h"
#include "input/files.h"
#include "input/join_orders.h"
#include "input/order.h"
#include "input/overrides.h"
#include "input/shop_file.h"

namespace coatday::input {
namespace {

namespace fs = std::filesystem;

constexpr std::array shipped{"products.yaml", "schedules.yaml", "over.yaml"};

struct Reading {
  explicit Reading(const ReadFile& read, const std::vector<std::string>& set = {}) : files(read), overrides(set, mistakes) {}
  Files files;
  Mistakes mistakes;
  Overrides overrides;
  shop::Rates rates{};
  climate::LogForm log{};

  std::vector<Diagnostic> all_mistakes() {
    std::vector<Diagnostic> all = mistakes.sorted();
    files.quote_lines(all);
    for (Diagnostic& mistake : all) {
      if (mistake.where.file == set_name) mistake.line = overrides.source().line(mistake.where.line);
    }
    return all;
  }
};

Location file_itself(const fs::path& file) { return {file.string(), 0, 0}; }

struct Named {
  fs::path file;
  Location where;
};

// The finish files that a shop or an order names.
void own_finishes(const Fields* fields, const fs::path& file, std::vector<Named>& own, Mistakes& mistakes) {
  if (fields == nullptr) return;
  for (const Value& item : fields->list("own finishes")) {
    if (item.kind == Value::Kind::text) own.push_back({beside(file, item.text), item.where()});
    if (item.kind != Value::Kind::text) mistakes.add(item.where(), "expected the name of a file");
  }
}

// A file that is named twice counts at its last place.
finish::Catalogue read_all_finishes(const fs::path& schedules, const std::vector<Named>& own, Reading& reading) {
  std::vector<const Value*> files;
  const auto add = [&](const fs::path& path, const Location& where) {
    const Value* value = reading.files.values_of({"finish file", finish_keys()}, path, where, reading.mistakes);
    std::erase(files, value);
    if (value != nullptr) files.push_back(value);
  };
  for (const char* name : shipped) add(schedules / name, file_itself(schedules / name));
  for (const Named& named : own) add(named.file, named.where);
  return read_catalogue(files, reading.mistakes);
}

// Whether an order stands where a shop file belongs, or the other way round: it has keys that only the other kind has, and none that only
// its own has. One mistake says so, in place of one for each key.
bool is_other(const Value& file, const Keys& own, const Keys& other) {
  if (file.kind != Value::Kind::map) return false;
  const auto has_only = [&file](const Keys& these, const Keys& those) {
    return std::any_of(file.entries.begin(), file.entries.end(), [&](const Entry& entry) {
      return std::find(these.begin(), these.end(), entry.key) != these.end() &&
             std::find(those.begin(), those.end(), entry.key) == those.end();
    });
  };
  return has_only(other, own) && !has_only(own, other);
}

struct ShopFile {
  fs::path file;
  std::optional<Fields> fields;  // nothing after a mistake
};

// The shop's file with its keys. A key that orders also have is set in the orders, not here.
ShopFile read_shop_file(const fs::path& file, const Location& named, const Keys& of_orders, Reading& reading) {
  FileKind kind{"shop file", shop_keys()};
  kind.keys.insert(kind.keys.end(), order_keys().begin(), order_keys().end());  // an order is told so below
  const Value* value = reading.files.values_of(kind, file, named, reading.mistakes);
  if (value == nullptr) return {file, {}};
  if (is_other(*value, shop_keys(), order_keys())) {
    reading.mistakes.add(value->where(), "this is an order; expected the shop file that it names");
    return {file, {}};
  }
  return {file, Fields(reading.overrides.on_shop(*value, shop_keys(), of_orders, reading.mistakes), "a shop file", shop_keys(),
                       reading.mistakes)};
}

ShopFile shop_of(const Fields& order, const fs::path& order_file, Reading& reading) {
  const Value* name = order.need("shop");
  const std::string* text = order.text("shop");
  if (name == nullptr || text == nullptr) return {};
  return read_shop_file(beside(order_file, *text), name->where(), order_keys(), reading);
}

// Any hour of any year is enough to describe the air.
std::string describe(const job::AirMaker& air, Units units) {
  constexpr Instant noon = std::chrono::sys_days(std::chrono::January / 1 / 2027) + std::chrono::hours(12);
  return air(noon, noon + std::chrono::hours(1))->describe(units);
}

void ventilate(finish::Catalogue& catalogue, const shop::Ventilation& room) {
  for (auto& [id, product] : catalogue.products)
    product.rate_factors = finish::rate_factors(product.mechanism, room.closed, room.air_movement);
}

struct OrderFile {
  fs::path file;
  Fields fields;
};

std::vector<OrderFile> read_order_files(const std::vector<fs::path>& files, Reading& reading) {
  std::vector<OrderFile> orders;
  int number = 0;
  for (const fs::path& file : files) {
    ++number;
    const Value* value = reading.files.values(file, file_itself(file), reading.mistakes);
    if (value == nullptr) continue;
    if (is_other(*value, order_keys(), shop_keys())) {
      reading.mistakes.add(value->where(), "this is a shop file; expected an order, which names it");
      continue;
    }
    const Value& changed = reading.overrides.on_order(*value, order_keys(), number, reading.mistakes);
    orders.push_back({file, Fields(changed, "an order file", order_keys(), reading.mistakes)});
  }
  return orders;
}

// Whether the order names this shop file, or there is no file to compare with. `instead` begins the message when it names another.
bool names_shop(const OrderFile& order, const fs::path& shop_file, std::string_view instead, Mistakes& mistakes) {
  const Value* name = order.fields.need("shop");
  const std::string* text = order.fields.text("shop");
  if (name == nullptr || text == nullptr || shop_file.empty()) return shop_file.empty();
  if (fs::absolute(beside(order.file, *text)).lexically_normal() == fs::absolute(shop_file).lexically_normal()) return true;
  mistakes.add(name->where(), fmt::format("{} {}", instead, in_quotes(shop_file.string())));
  return false;
}

// Reads each order against the shop. An order that names another shop is not read any further.
job::Order read_orders(const std::vector<OrderFile>& opened, const fs::path& shop_file, const Surroundings& around, Mistakes& mistakes) {
  std::vector<job::Order> orders;
  std::set<std::string> names;
  for (const OrderFile& one : opened) {
    const bool first = &one == &opened.front();
    if (!first && !names_shop(one, shop_file, "orders that are planned together name the same shop file; the first one names", mistakes))
      continue;
    orders.push_back(read_order(one.fields, one.file.string(), around, mistakes));
    const std::string& name = orders.back().name;
    if (!name.empty() && !names.insert(name).second) {
      one.fields.mistake("order", fmt::format("two of the orders have the name {}", in_quotes(name)));
    }
  }
  return orders.empty() ? job::Order() : join_orders(std::move(orders));
}

void read_job(const ShopFile& shop, const std::vector<OrderFile>& orders, const fs::path& schedules, Reading& reading, job::Job& job) {
  Mistakes& mistakes = reading.mistakes;
  std::vector<Named> own;
  if (shop.fields) own_finishes(&*shop.fields, shop.file, own, mistakes);
  for (const OrderFile& order : orders) own_finishes(&order.fields, order.file, own, mistakes);
  job.catalogue = read_all_finishes(schedules, own, reading);
  const std::size_t before = mistakes.count();
  if (shop.fields) {
    job.shop = read_shop(*shop.fields, job.catalogue, mistakes);
    reading.rates = read_rates(*shop.fields, job.shop.currency);
    ventilate(job.catalogue, job.shop.ventilation);
    ShopAir air = read_air(*shop.fields, shop.file, job.shop.zone, reading.files, mistakes);
    job.air = std::move(air.maker);
    job.air_in = std::move(air.in);
    job.air_notes = std::move(air.notes);
    reading.log = std::move(air.log);
    job.shop.heating = air.heating;
    job.room = std::make_shared<const climate::KnownRoom>(std::move(air.room));
  }
  const bool has_shop = shop.fields && mistakes.count() == before;
  job.order = read_orders(orders, shop.file, {job.catalogue, has_shop ? &job.shop : nullptr, &reading.files}, mistakes);
}

// All that was read, where there is no mistake.
Opening finished(job::Job job, Reading& reading) {
  std::vector<Diagnostic> mistakes = reading.all_mistakes();
  if (!mistakes.empty()) return tl::make_unexpected(std::move(mistakes));
  if (job.air) job.shop.air_description = describe(job.air, job.shop.units);
  return Opened{std::move(job), reading.rates, std::move(reading.log)};
}

}  // namespace

Opening open_orders(const std::vector<fs::path>& files, const fs::path& schedules, const ReadFile& read,
                    const std::vector<std::string>& set, const fs::path& shop, const Judge& judge) {
  Reading reading(read, set);
  reading.overrides.check_first_keys(order_keys(), shop_keys(), files.size(), reading.mistakes);
  job::Job job;
  const std::vector<OrderFile> orders = read_order_files(files, reading);
  if (!orders.empty() && !shop.empty())
    names_shop(orders.front(), shop, "the order names another shop file than the one that is asked for,", reading.mistakes);
  if (!orders.empty()) read_job(shop_of(orders.front().fields, orders.front().file, reading), orders, schedules, reading, job);
  if (judge && reading.mistakes.count() == 0) {
    for (const job::Finding& finding : judge(job)) reading.mistakes.add(finding.where, finding.message);
  }
  return finished(std::move(job), reading);
}

Opening open_shop(const fs::path& file, const fs::path& schedules, const ReadFile& read, const std::vector<std::string>& set) {
  Reading reading(read, set);
  reading.overrides.check_first_keys({}, shop_keys(), 1, reading.mistakes);
  job::Job job;
  read_job(read_shop_file(file, file_itself(file), {}, reading), {}, schedules, reading, job);
  return finished(std::move(job), reading);
}

Opening open_catalogue(const std::vector<fs::path>& own, const fs::path& schedules, const ReadFile& read) {
  Reading reading(read);
  std::vector<Named> named;
  for (const fs::path& file : own) named.push_back({file, file_itself(file)});
  job::Job job;
  job.catalogue = read_all_finishes(schedules, named, reading);
  return finished(std::move(job), reading);
}

tl::expected<climate::Log, std::vector<Diagnostic>> open_log(const fs::path& file, const climate::LogForm& form, const Zone& zone,
                                                             const ReadFile& read) {
  Reading reading(read);
  if (const Source* csv = reading.files.text(file, file_itself(file), reading.mistakes)) {
    auto log = climate::read_log(csv->text(), file.filename().string(), form, zone);
    if (!log) log = climate::read_log(csv->text(), file.filename().string(), {}, zone);
    if (log) return *std::move(log);
    Files::wrong_table(*csv, log.error(), reading.mistakes);
  }
  return tl::make_unexpected(reading.all_mistakes());
}

}  // namespace coatday::input
