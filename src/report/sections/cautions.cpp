#include "report/sections/cautions.h"

#include <algorithm>

namespace coatday::report {
namespace {

std::string caution_id(const std::string& key) { return "caution-" + key; }

}  // namespace

std::optional<Section> cautions(const job::Plan& plan) {
  if (plan.cautions.empty()) return std::nullopt;
  List list{List::Kind::cautions};
  for (const auto& [key, text] : plan.cautions) list.items.emplace_back(Span{.text = text, .id = caution_id(key)});
  const char* usual = "The usual ones, at the steps above. The label, the local code and licensed practice count.";
  return Section{"cautions", "Cautions", on_page("", usual), {list}};
}

std::string short_caution(const job::Plan& plan, const std::string& key) {
  const auto found = plan.cautions.find(key);
  if (found == plan.cautions.end()) return key;
  const std::string& text = found->second;
  std::size_t end = text.size();
  for (const char* stop : {". ", ": ", "; "}) end = std::min(end, text.find(stop));
  std::string out = text.substr(0, end);
  if (out.ends_with('.')) out.pop_back();
  return out;
}

Phrase caution_at_step(const job::Plan& plan, const std::string& key) {
  const auto found = plan.cautions.find(key);
  if (found == plan.cautions.end()) return key;
  return Span{.text = short_caution(plan, key), .link = caution_id(key), .full = found->second};
}

}  // namespace coatday::report
