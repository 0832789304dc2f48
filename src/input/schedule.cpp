#include "input/schedule.h"

#include <fmt/core.h>

#include "finish/film.h"
#include "input/amounts.h"
#include "input/choices.h"
#include "input/fields.h"
#include "input/names.h"
#include "job/step_id.h"

namespace coatday::input {
namespace {

using finish::Product;
using finish::Step;
using finish::StepKind;
using Products = std::map<std::string, Product>;

const Keys step_keys{"step", "kind",  "product", "method", "thinner", "faces", "grit", "rate",     "takes",
                     "wait", "after", "within",  "dusty",  "hot",     "bake",  "note", "wet film", "dry film"};

bool is_coat(StepKind kind) { return kind >= StepKind::fill && kind <= StepKind::paint; }

void read_bake(const Fields& fields, Step& step, Mistakes& mistakes) {
  for (const Value& item : fields.list("bake")) {
    const Fields stage(item, "a stage of the bake", {"temperature", "for"}, mistakes);
    finish::BakeStage bake;
    stage.must("temperature", bake.temperature, parse_temperature);
    stage.must("for", bake.duration, parse_some_time);
    step.bake.push_back(bake);
  }
}

void read_times(const Fields& fields, Step& step) {
  fields.take("rate", step.work_rate, parse_work_rate);
  fields.take("takes", step.takes, parse_some_time);
  fields.take("wait", step.wait, parse_duration);
  fields.take("after", step.after_stage, parse_stage);
  fields.take("within", step.within, parse_some_time);
}

void check_film(const Fields& fields, const Step& step, const Product& product) {
  if (step.wet_film && step.dry_film) {
    fields.mistake("dry film", "'wet film' and 'dry film' are both given; one of them is enough");
  } else if (!product.stated_spreading_rate && !(product.volume_solids && product.dry_film)) {
    return;  // the product has a mistake already
  } else if (const auto reason = film_refused(step, product)) {
    fields.mistake(step.wet_film ? "wet film" : "dry film", *reason);
  }
}

void check_coat(const Fields& fields, const Step& step, const Products& products) {
  const auto known = products.find(step.product.value_or(""));
  if (known == products.end()) {
    fields.mistake("product", unknown("product", *step.product, keys_of(products)));
    return;
  }
  const Product& product = known->second;
  if (step.method && !product.work_rates.contains(*step.method)) {
    fields.mistake("method", fmt::format("'{}' cannot be put on by {}: it has no such work rate", product.id, word(*step.method)));
  }
  check_film(fields, step, product);
  if (step.faces == finish::StepFaces::show && product.film) {
    fields.mistake("faces", fmt::format("'{}' adds to the film, so that no face may be left out", product.id));
  }
}

void check_dry(const Fields& fields, const Step& step) {
  for (const char* key : {"method", "thinner", "wet film", "dry film"}) {
    if (fields.has(key)) fields.mistake(key, fmt::format("'{}' is for a step with a product", key));
  }
  if (step.kind != StepKind::bake && !fields.has("rate") && !fields.has("takes")) {
    fields.mistake("step", "dry work needs 'rate' or 'takes'");
  }
}

void check_step(const Fields& fields, const Step& step, const Products& products) {
  const bool needs_product = is_coat(step.kind);
  const bool may_have_product = needs_product || step.kind == StepKind::other;
  if (needs_product && !fields.has("product")) fields.mistake("kind", fmt::format("a step of kind '{}' needs 'product'", word(step.kind)));
  if (!may_have_product && fields.has("product")) {
    fields.mistake("product", fmt::format("a step of kind '{}' is dry work and has no product", word(step.kind)));
  } else if (step.product) {
    check_coat(fields, step, products);
  }
  if (!needs_product && !step.product) check_dry(fields, step);
  if (fields.has("rate") && fields.has("takes")) fields.mistake("takes", "'rate' and 'takes' are both given; one of them is enough");
  const bool bakes = step.kind == StepKind::bake;
  if (bakes && !fields.has("bake")) fields.mistake("kind", "a bake needs 'bake': its temperatures and times");
  if (!bakes && fields.has("bake")) fields.mistake("bake", "'bake' is for a step of kind 'bake'");
}

// Where the step's own values come from, each source once.
std::string sources_of(const Notes& notes) {
  std::set<std::string> words;
  for (const auto& [path, source] : notes.sources) words.insert(source);
  std::string all;
  for (const std::string& one : words) all += (all.empty() ? "" : "; ") + one;
  return all;
}

Step read_step(const Value& value, const FinishItem& schedule, const Products& products, Mistakes& mistakes) {
  Notes notes{*schedule.sources, {}, {}, {}};
  const Fields fields(value, "a step", step_keys, mistakes, notes, "");
  Step step;
  step.where = fields.where();
  fields.must("step", step.name, parse_name);
  const bool has_kind = fields.must("kind", step.kind, parse_step_kind);
  fields.take("product", step.product, parse_name);
  fields.take("method", step.method, parse_method);
  fields.take("thinner", step.thinner_share, parse_share);
  fields.take("wet film", step.wet_film, parse_film);
  fields.take("dry film", step.dry_film, parse_film);
  fields.take("faces", step.faces, parse_step_faces);
  fields.take("grit", step.grit, parse_positive_count);
  fields.take("dusty", step.dusty, parse_yes_no);
  fields.take("hot", step.hot, parse_yes_no);
  fields.take("note", step.note, parse_note);
  read_times(fields, step);
  read_bake(fields, step, mistakes);
  if (has_kind) check_step(fields, step, products);
  step.source = sources_of(notes);
  return step;
}

}  // namespace

finish::Schedule read_schedule(const FinishItem& item, const Products& products, Mistakes& mistakes) {
  const Fields fields(*item.value, fmt::format("the schedule '{}'", item.id), {"name", "suits", "use", "source", "steps"}, mistakes);
  finish::Schedule schedule;
  schedule.id = item.id;
  schedule.where = fields.where();
  fields.must("name", schedule.name, parse_name);
  fields.must("suits", schedule.suits, parse_suits);
  fields.take("use", schedule.use, parse_note);
  if (fields.take("source", schedule.source, parse_note)) schedule.source = item.source_text(schedule.source);
  fields.need("steps");
  std::set<std::string> names;
  Ids ids({"carry-in", "measure"}, job::scuff_before(""));  // of the planner's own steps
  for (const Value& value : fields.list("steps")) {
    Step step = read_step(value, item, products, mistakes);
    step.id = ids.make(step.name, "step");
    if (!step.name.empty() && !names.insert(step.name).second)
      mistakes.add(step.where, fmt::format("two steps have the name {}", in_quotes(step.name)));
    schedule.steps.push_back(std::move(step));
  }
  if (fields.has_empty_list("steps")) fields.mistake("steps", "a schedule needs a step");
  return schedule;
}

}  // namespace coatday::input
