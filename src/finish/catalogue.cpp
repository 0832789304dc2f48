#include "finish/catalogue.h"

namespace coatday::finish {
namespace {

template <class Value>
const Value* find(const std::map<std::string, Value>& table, const std::string& id) {
  const auto found = table.find(id);
  return found == table.end() ? nullptr : &found->second;
}

bool matches(const std::string& pattern, const std::string& family) { return pattern == "any" || pattern == family; }

bool matches(const std::string& pattern, const Product& product) { return matches(pattern, product.family) || pattern == product.id; }

int specificity(const OverRule& rule) { return (rule.upper != "any" ? 2 : 0) + (rule.under != "any" ? 1 : 0); }

/// `Name` is a family's name, or a product.
template <class Name>
const OverRule* most_specific(const std::vector<OverRule>& rules, const Name& upper, const Name& under) {
  const OverRule* best = nullptr;
  for (const OverRule& rule : rules) {
    if (!matches(rule.upper, upper) || !matches(rule.under, under)) continue;
    if (best == nullptr || specificity(rule) >= specificity(*best)) best = &rule;
  }
  return best;
}

}  // namespace

const Product* Catalogue::product(const std::string& id) const { return find(products, id); }

const Schedule* Catalogue::schedule(const std::string& id) const { return find(schedules, id); }

const OverRule* Catalogue::over_rule(const std::string& upper, const std::string& under) const { return most_specific(over, upper, under); }

const OverRule* Catalogue::over_rule(const Product& upper, const Product& under) const {
  const OverRule* rule = most_specific(over, upper, under);
  const bool for_any = rule != nullptr && (rule->upper == "any" || rule->under == "any");
  return for_any && upper.id == under.id ? nullptr : rule;
}

}  // namespace coatday::finish
