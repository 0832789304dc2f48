#include "report/papers/schedules.h"

#include <fmt/core.h>

#include "report/document/table.h"
#include "report/words.h"

namespace coatday::report {
namespace {

std::string suits(const finish::Schedule& schedule) { return schedule.suits == finish::Suits::wood ? "wood" : "metal"; }

std::string with_what(const finish::Step& step, const finish::Catalogue& catalogue, Units units) {
  std::string words;
  if (step.product) {
    const finish::Product* product = catalogue.product(*step.product);
    words = product == nullptr ? *step.product : product->name;
  }
  const auto add = [&words](const std::string& fact) { words += (words.empty() ? "" : ", ") + fact; };
  if (step.method) add(std::string(finish::word(*step.method)));
  if (step.wet_film) add(format_film(*step.wet_film, units) + " wet");
  if (step.dry_film) add(format_film(*step.dry_film, units) + " dry");
  if (step.grit) add(fmt::format("grit {}", *step.grit));
  if (step.faces == finish::StepFaces::show) add("show faces only");
  if (step.takes) add(format_span(*step.takes));
  if (step.wait) add("at least " + format_span(*step.wait) + " after the step before");
  if (step.after_stage) add("once " + stage_text(*step.after_stage));
  if (step.within) add("within " + format_span(*step.within));
  return words;
}

}  // namespace

std::string schedules_text(const finish::Catalogue& catalogue, const TextStyle& style) {
  TextTable table;
  for (const char* title : {"schedule", "name", "for", "use"}) table.columns.push_back({Text(title, Mark::faint)});
  for (const auto& [id, schedule] : catalogue.schedules) table.rows.push_back({id, schedule.name, suits(schedule), schedule.use});
  return render(layout(table, 0, style), style.colour);
}

std::string schedule_text(const finish::Schedule& schedule, const finish::Catalogue& catalogue, const TextStyle& style) {
  Lines lines = wrap(Text(schedule.name, Mark::strong) + " (" + schedule.id + "), for " + suits(schedule), style.columns);
  if (!schedule.use.empty()) append(lines, hang("  ", schedule.use, style));
  TextTable table{{{Text("step", Mark::faint)}, {Text("kind", Mark::faint)}, {Text("with", Mark::faint)}, {Text("note", Mark::faint)}}, {}};
  for (const finish::Step& step : schedule.steps) {
    table.rows.push_back({step.name, finish::word(step.kind), with_what(step, catalogue, style.units), step.note});
  }
  append(lines, layout(table, 2, style));
  if (!schedule.source.empty()) append(lines, hang("  source  ", schedule.source, style));
  return render(lines, style.colour);
}

}  // namespace coatday::report
