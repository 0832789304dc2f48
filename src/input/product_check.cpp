#include "input/product_check.h"

#include <fmt/core.h>

#include <array>

#include "finish/fit.h"
#include "input/product.h"
#include "quantity/text.h"

namespace coatday::input {
namespace {

using finish::Product;
using finish::Stage;

struct Judge {
  const ProductDraft& draft;
  Mistakes& mistakes;

  [[nodiscard]] const Product& product() const { return draft.product; }
  [[nodiscard]] bool given(const std::string& path) const { return draft.notes.places.contains(path); }
  [[nodiscard]] bool is_latest(const std::string& path) const { return draft.notes.latest.contains(path); }
  void mistake(const std::string& path, std::string message) const {
    const auto at = draft.notes.places.find(path);
    mistakes.add(at == draft.notes.places.end() ? product().where : at->second, std::move(message));
  }
};

void check_needed(const Judge& judge) {
  if (!judge.draft.is_whole) return;
  constexpr std::array needed{"name", "base", "role", "mechanism", "times", "coverage", "work rates"};
  for (const char* key : needed) {
    if (judge.given(key)) continue;
    judge.mistakes.add(judge.product().where, fmt::format("the product '{}' needs '{}'", judge.product().id, key));
  }
  const Product& p = judge.product();
  if (judge.given("coverage") && !p.stated_spreading_rate && !(p.volume_solids && p.dry_film)) {
    judge.mistake("coverage", "the coverage needs 'spreading rate', or 'volume solids' and 'dry film'");
  }
  if (judge.given("work rates") && p.work_rates.empty()) judge.mistake("work rates", "the work rates need a method");
}

std::string wrong_order(const finish::StageOrder& order, Hours first, Hours then) {
  if (order.then == Stage::recoat_close) {
    return fmt::format("the recoat window closes before it opens: 'recoat closes' is {}, 'recoat' is {}", format_span(then),
                       format_span(first));
  }
  return fmt::format("'{}' ({}) comes before '{}' ({})", word(order.then), format_span(then), word(order.first), format_span(first));
}

void check_stages(const Judge& judge, std::size_t row) {
  const finish::StageHours& hours = judge.product().rows[row].hours;
  const std::string path = row == 0 ? "times" : fmt::format("times at.{}", row);
  bool any = false;
  for (const auto& stage : hours.values) any = any || stage;
  if (!any && judge.given(path)) judge.mistake(path, "no stage is given");
  for (const finish::StageOrder& order : finish::stage_orders) {
    if (!hours[order.first] || !hours[order.then] || *hours[order.first] <= *hours[order.then]) continue;
    const std::string first = fmt::format("{}.{}", path, word(order.first));
    const std::string then = fmt::format("{}.{}", path, word(order.then));
    judge.mistake(judge.is_latest(first) && !judge.is_latest(then) ? first : then,
                  wrong_order(order, *hours[order.first], *hours[order.then]));
  }
}

void check_limits(const Judge& judge) {
  const finish::Limits& limits = judge.product().limits;
  if (limits.coldest > limits.hottest) judge.mistake("limits.hottest", "'hottest' is colder than 'coldest'");
  if (limits.blush_margin && limits.blush_warning && *limits.blush_warning < *limits.blush_margin) {
    judge.mistake("limits.blush warning", "'blush warning' is less than 'blush refused'");
  }
}

// The rows describe the clock better than its class does; a law in the record is better still.
void fit(Product& p, bool drying_law_given, bool cure_law_given) {
  if (p.rows.size() < 2) return;
  const auto drying = finish::fit_law(p, finish::Clock::drying);
  const auto cure = finish::fit_law(p, finish::Clock::cure);
  finish::PerStage<std::optional<finish::Fit>> fits = finish::fit_stages(p);
  if (drying && !drying_law_given) p.drying_law = drying->law;
  if (cure && !cure_law_given) p.cure_law = cure->law;
  for (std::size_t s = 0; s < finish::stage_count; ++s) {
    const bool given = finish::clock_of(static_cast<Stage>(s)) == finish::Clock::drying ? drying_law_given : cure_law_given;
    p.fits.values[s] = given ? finish::as_recorded(p, static_cast<Stage>(s)) : fits.values[s];
  }
}

}  // namespace

Product complete(ProductDraft draft, Mistakes& mistakes) {
  const std::size_t before = mistakes.count();
  const Judge judge{draft, mistakes};
  check_needed(judge);
  for (std::size_t row = 0; row < draft.product.rows.size(); ++row) check_stages(judge, row);
  check_limits(judge);
  draft.product.sources = std::move(draft.notes.sources);
  if (mistakes.count() == before) fit(draft.product, draft.drying_law_given, draft.cure_law_given);
  return std::move(draft.product);
}

}  // namespace coatday::input
