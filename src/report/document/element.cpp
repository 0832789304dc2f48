#include "report/document/element.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

#include "report/document/unicode.h"

namespace coatday::report::page {
namespace {

std::string shown(std::string_view text) {
  constexpr char32_t joiner = 0x200D;  // holds an emoji together
  std::string out;
  while (!text.empty()) {
    const char32_t code = take_code_point(text);
    append_utf8(out, code == joiner ? code : harmless(code));
  }
  return out;
}

// The void elements of HTML that the page uses: they have no end tag, all others must have one.
bool is_void(std::string_view name) {
  constexpr std::array<std::string_view, 4> names{"br", "col", "input", "wbr"};
  return std::find(names.begin(), names.end(), name) != names.end();
}

// Inside a drawing an element may end itself.
bool in_drawing(pugi::xml_node node) {
  for (; node; node = node.parent()) {
    if (std::string_view(node.name()) == "svg") return true;
  }
  return false;
}

/// An empty text makes the writer write an end tag.
struct EndTags : pugi::xml_tree_walker {
  bool for_each(pugi::xml_node& node) override {
    const bool childless = node.type() == pugi::node_element && !node.first_child();
    if (childless && !is_void(node.name()) && !in_drawing(node)) node.append_child(pugi::node_pcdata);
    return true;
  }
};

}  // namespace

Element Element::add(Name name, std::initializer_list<Attribute> attributes) {
  Element child(node_.append_child(name.text()));
  for (const Attribute& attribute : attributes) child.set(attribute.name, attribute.value);
  return child;
}

Element Element::add(Name name, std::initializer_list<Attribute> attributes, std::string_view text) {
  return add(name, attributes).text(text);
}

Element Element::text(std::string_view text) {
  node_.append_child(pugi::node_pcdata).set_value(shown(text).c_str());
  return *this;
}

Element Element::set(Name name, std::string_view value) {
  pugi::xml_attribute attribute = node_.attribute(name.text());
  if (!attribute) attribute = node_.append_attribute(name.text());
  attribute.set_value(shown(value).c_str());
  return *this;
}

Element Element::name(std::string_view text) {
  add("bdi", {}, text);
  return *this;
}

Fragment::Fragment() : document_(std::make_unique<pugi::xml_document>()) {}

Element Fragment::root() { return Element(*document_); }

std::string Fragment::html() {
  EndTags walker;
  document_->traverse(walker);
  std::ostringstream out;
  document_->save(out, "", pugi::format_raw | pugi::format_no_declaration, pugi::encoding_utf8);
  return out.str();
}

std::string number(double value) {
  std::string text = fmt::format("{:.2f}", value);
  while (text.ends_with('0')) text.pop_back();
  if (text.ends_with('.')) text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string percent(double share) { return number(share * 100) + "%"; }

}  // namespace coatday::report::page
