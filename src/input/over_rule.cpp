#include "input/over_rule.h"

#include "input/amounts.h"
#include "input/choices.h"
#include "input/fields.h"

namespace coatday::input {
namespace {

using finish::OverRule;
using finish::Verdict;

// A product of a family may be named by itself.
void check_family(const std::string& family, const Location& where, const std::set<std::string>& families, Mistakes& mistakes) {
  if (!family.empty() && !families.contains(family)) mistakes.add(where, unknown("family", family, {families.begin(), families.end()}));
}

void check_verdict(const Fields& fields, const OverRule& rule) {
  const bool waits = rule.verdict == Verdict::longer_wait;
  const bool separates = rule.verdict == Verdict::barrier;
  if (waits && !fields.has("wait")) fields.mistake("verdict", "a longer wait needs 'wait'");
  if (!waits && fields.has("wait")) fields.mistake("wait", "'wait' goes with the verdict 'longer wait'");
  if (separates && !fields.has("barriers")) fields.mistake("verdict", "a barrier needs 'barriers': the families that may stand between");
  if (separates && fields.has_empty_list("barriers")) fields.mistake("barriers", "no barrier is given");
  if (!separates && fields.has("barriers")) fields.mistake("barriers", "'barriers' goes with the verdict 'barrier'");
}

}  // namespace

OverRule read_over_rule(const FinishItem& item, const std::set<std::string>& families, Mistakes& mistakes) {
  Notes notes{*item.sources, {}, {}, {}};
  const Fields fields(*item.value, "a rule", {"upper", "under", "verdict", "wait", "barriers", "source"}, mistakes, notes, "");
  OverRule rule;
  rule.where = fields.where();
  fields.must("upper", rule.upper, parse_name);
  fields.must("under", rule.under, parse_name);
  check_family(rule.upper, fields.where("upper"), families, mistakes);
  check_family(rule.under, fields.where("under"), families, mistakes);
  const bool has_verdict = fields.must("verdict", rule.verdict, parse_verdict);
  fields.take("wait", rule.wait, parse_some_time);
  const auto barriers = fields.list("barriers");
  rule.barriers = each_text(barriers, mistakes, parse_name);
  for (const Value& barrier : barriers) {
    if (barrier.kind == Value::Kind::text) check_family(barrier.text, barrier.where(), families, mistakes);
  }
  if (has_verdict) check_verdict(fields, rule);
  if (fields.take("source", rule.source, parse_note)) {
    rule.source = item.source_text(rule.source);
  } else if (!notes.sources.empty()) {
    rule.source = notes.sources.begin()->second;
  }
  return rule;
}

}  // namespace coatday::input
