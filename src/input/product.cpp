#include "input/product.h"

#include <algorithm>

#include <fmt/core.h>

#include "input/amounts.h"
#include "input/choices.h"
#include "input/product_values.h"
#include "input/solvent.h"

namespace coatday::input {
namespace {

using finish::Clock;
using finish::Product;
using finish::Stage;

Keys stage_keys() {
  const auto words = finish::words<Stage>();
  return {words.begin(), words.end()};
}

void read_stages(const Fields& fields, finish::StageHours& hours) {
  const Keys keys = stage_keys();
  for (std::size_t i = 0; i < keys.size(); ++i) fields.take(keys[i], hours.values[i], parse_some_time);
}

// A law of another mechanism does not hold for this one.
void read_mechanism(const Fields& fields, ProductDraft& draft) {
  const finish::Mechanism before = draft.product.mechanism;
  if (!fields.take("mechanism", draft.product.mechanism, parse_mechanism) || draft.product.mechanism == before) return;
  draft.product.drying_law.reset();
  draft.product.cure_law.reset();
  draft.drying_law_given = draft.cure_law_given = false;
}

// A label with its own times drops the further rows of the product that it is like: those describe another finish.
void read_times(const Fields& fields, ProductDraft& draft, Mistakes& mistakes) {
  Product& p = draft.product;
  if (p.rows.empty()) p.rows.emplace_back();
  if (fields.has("times") || fields.has("reference air") || fields.has("times at")) p.rows.resize(1);
  fields.take("reference air", p.rows.front().air, parse_air);
  if (fields.has("coverage") || fields.has("times")) p.film_of_times.reset();  // of the product that this one is like
  fields.take("times for wet film", p.film_of_times, parse_film);
  if (const auto times = fields.map("times", "the times", stage_keys())) read_stages(*times, p.rows.front().hours);
  Keys keys = stage_keys();
  keys.emplace_back("air");
  for (const Value& item : fields.list("times at")) {
    const Fields row(item, "a row of 'times at'", keys, mistakes, draft.notes, fmt::format("times at.{}", p.rows.size()));
    p.rows.emplace_back();
    row.must("air", p.rows.back().air, parse_air);
    read_stages(row, p.rows.back().hours);
  }
}

bool read_law(const Fields& laws, std::string_view key, Clock clock, Product& p) {
  const auto fields = laws.map(key, fmt::format("the {} law", key), {"activation", "wet bulb share", "no credit below"});
  if (!fields) return false;
  std::optional<finish::Law> law = p.law(clock);
  if (!law) {
    laws.mistake(key, fmt::format("{} has no {} clock in shop air, so that it has no law", word(p.mechanism), key));
    return false;
  }
  law->source = "the product's own record";
  fields->take("no credit below", law->no_credit_below, parse_air_temperature);
  const bool has_activation = fields->take("activation", law->activation, parse_activation);
  const bool has_share = fields->take("wet bulb share", law->wet_bulb_share, parse_share);
  if (has_activation || has_share) law->least = law->most = 0;  // the class's, not the record's
  const bool wrong_activation = has_activation && law->kind != finish::Law::Kind::arrhenius;
  const bool wrong_share = has_share && law->kind != finish::Law::Kind::vapour_deficit;
  if (wrong_activation || wrong_share) {
    const std::string_view wrong = wrong_activation ? "activation" : "wet bulb share";
    fields->mistake(wrong, fmt::format("the law is '{}', which has no '{}'", word(law->kind), wrong));
  }
  (clock == Clock::drying ? p.drying_law : p.cure_law) = law;
  return true;
}

void read_laws(const Fields& fields, ProductDraft& draft) {
  const auto laws = fields.map("laws", "the laws", {"drying", "cure"});
  if (!laws) return;
  if (read_law(*laws, "drying", Clock::drying, draft.product)) draft.drying_law_given = true;
  if (read_law(*laws, "cure", Clock::cure, draft.product)) draft.cure_law_given = true;
}

void read_limits(const Fields& fields, Product& p) {
  const auto given = fields.map("limits", "the limits", key_list(finish::limit_keys()));
  if (given) read_values(*given, finish::limit_keys(), p);
}

void read_coverage(const Fields& fields, Product& p) {
  const auto given = fields.map("coverage", "the coverage", key_list(finish::coverage_keys()));
  if (!given) return;
  const auto taken = read_values(*given, finish::coverage_keys(), p);
  const auto has = [&taken](std::string_view key) { return std::ranges::find(taken, key) != taken.end(); };
  // The rate of the product that this one is like does not hold beside a film of its own.
  if (has("volume solids") && has("dry film") && !has("spreading rate")) p.stated_spreading_rate.reset();
}

void read_two_part(const Fields& fields, Product& p) {
  const auto given = fields.map("two part", "a two-part product", {"base", "hardener", "induction"});
  if (!given) return;
  if (!p.two_part) p.two_part.emplace();
  given->must("base", p.two_part->base_parts, parse_parts);
  given->must("hardener", p.two_part->hardener_parts, parse_parts);
  given->take("induction", p.two_part->induction, parse_duration);
}

// Lists are replaced as a whole.
void read_lists(const Fields& fields, ProductDraft& draft, Mistakes& mistakes) {
  Product& p = draft.product;
  if (fields.has("hazards")) p.hazards = each_text(fields.list("hazards"), mistakes, parse_hazard);
  if (fields.has("cans")) p.cans.clear();
  for (const Value& item : fields.list("cans")) {
    const Fields can(item, "a can", {"size", "price"}, mistakes, draft.notes, fmt::format("cans.{}", p.cans.size()));
    p.cans.emplace_back();
    can.must("size", p.cans.back().size, parse_volume);
    can.take("price", p.cans.back().price, parse_price);
  }
  const auto words = finish::words<finish::Method>();
  const auto rates = fields.map("work rates", "the work rates", {words.begin(), words.end()});
  if (rates) p.work_rates.clear();
  for (std::size_t i = 0; rates && i < words.size(); ++i) {
    SquareMetresPerHour rate;
    if (rates->take(words[i], rate, parse_work_rate)) p.work_rates[static_cast<finish::Method>(i)] = rate;
  }
}

}  // namespace

void add_layer(ProductDraft& draft, const std::string& id, const Value& value, const std::map<std::string, std::string>& known_sources,
               Mistakes& mistakes) {
  draft.notes.known = known_sources;
  draft.notes.latest.clear();
  if (value.kind != Value::Kind::map) draft.is_whole = false;
  const Fields fields(value, fmt::format("the product '{}'", id), key_list(finish::product_keys()), mistakes, draft.notes, "");
  draft.product.id = id;
  draft.product.where = fields.where();
  if (draft.product.family.empty()) draft.product.family = id;
  read_values(fields, finish::product_keys(), draft.product);
  read_mechanism(fields, draft);
  read_times(fields, draft, mistakes);
  read_laws(fields, draft);
  read_limits(fields, draft.product);
  read_coverage(fields, draft.product);
  read_two_part(fields, draft.product);
  read_solvent(fields, draft.product);
  read_lists(fields, draft, mistakes);
}

}  // namespace coatday::input
