#include "input/solvent.h"

#include <fmt/core.h>

#include "finish/solvent.h"
#include "input/amounts.h"
#include "input/product.h"

namespace coatday::input {
namespace {

Parsed<finish::Solvent> parse_solvent(std::string_view typed) {
  const std::string_view id = trim(typed);
  if (const finish::Solvent* row = finish::solvent(id)) return *row;
  std::vector<std::string> known;
  for (const finish::Solvent& row : finish::solvents()) known.push_back(row.id);
  return tl::make_unexpected(unknown("solvent", id, known));
}

// A solvent without a row of the table needs all its values.
void read_own(const Fields& given, std::optional<finish::Solvent>& solvent) {
  const bool values = given.has("vapour") || given.has("lower explosive limit") || given.has("density");
  if (!given.has("like") && !values) return;
  finish::Solvent own{"", "its own solvent", {}, 0, {}, "the product's own record"};
  const bool whole = !given.has("like");
  if (!whole && !given.take("like", own, parse_solvent)) return;
  for (const char* key : {"vapour", "lower explosive limit", "density"}) {
    if (whole) given.need(key);
  }
  given.take("vapour", own.vapour, parse_vapour);
  given.take("lower explosive limit", own.lower_limit, parse_explosive_limit);
  given.take("density", own.density, parse_density);
  if (own.lower_limit > 0 && own.density > GramsPerLitre(0)) solvent = std::move(own);
}

}  // namespace

void read_solvent(const Fields& fields, finish::Product& product) {
  const Value* value = fields.find("solvent");
  if (value == nullptr) return;
  product.solvent.reset();
  product.solvent_content.reset();
  if (value->kind == Value::Kind::text) {
    fields.take("solvent", product.solvent, parse_solvent);
  } else if (const auto given = fields.map("solvent", "a solvent", {"like", "vapour", "lower explosive limit", "density", "content"})) {
    given->take("content", product.solvent_content, parse_voc);
    read_own(*given, product.solvent);
  }
}

}  // namespace coatday::input
