#pragma once
// All products, schedules and rules that an order may name.

#include <map>
#include <string>
#include <vector>

#include "finish/schedule.h"

namespace coatday::finish {

enum class Verdict { allowed, longer_wait, barrier, never };
[[nodiscard]] std::string_view word(Verdict);  ///< "allowed", "longer wait", "barrier", "never"
template <>
std::span<const std::string_view> words<Verdict>();

/// What a family may go over. "any" matches every family.
struct OverRule {
  std::string upper;
  std::string under;
  Verdict verdict = Verdict::allowed;
  Hours wait{0};                      ///< longer_wait: of the lower coat's drying clock, from application
  std::vector<std::string> barriers;  ///< barrier: families that may stand between
  std::string source;
  Location where;
};

struct Catalogue {
  std::map<std::string, Product> products;
  std::map<std::string, Schedule> schedules;
  std::vector<OverRule> over;

  [[nodiscard]] const Product* product(const std::string& id) const;
  [[nodiscard]] const Schedule* schedule(const std::string& id) const;
  /// The most specific rule (both named, then upper named, then under named, then any/any; the later one of equals), or null: nobody has said.
  [[nodiscard]] const OverRule* over_rule(const std::string& upper, const std::string& under) const;
  /// The same for two products, whose rules may name a family or the product itself. A rule for any finish says nothing of a finish over itself.
  [[nodiscard]] const OverRule* over_rule(const Product& upper, const Product& under) const;
};

}  // namespace coatday::finish
