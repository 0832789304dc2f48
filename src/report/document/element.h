#pragma once
// The page as a tree. What goes into an element is text, the value of an attribute or another element: markup cannot get in, since the
// tree is escaped where it is written, by the library that holds it. Names are literals.

#include <initializer_list>
#include <memory>
#include <pugixml.hpp>
#include <string>
#include <string_view>

namespace coatday::report::page {

/// The name of an element or an attribute: a literal, never a text that somebody typed.
class Name {
 public:
  template <std::size_t n>
  consteval Name(const char (&literal)[n]) : text_(literal) {}  // NOLINT: a name is a literal
  [[nodiscard]] const char* text() const { return text_; }

 private:
  const char* text_;
};

struct Attribute {
  Name name;
  std::string value;
};

/// A place in the tree; copies are the same place.
class Element {
 public:
  explicit Element(pugi::xml_node node) : node_(node) {}

  Element add(Name, std::initializer_list<Attribute> = {});
  /// The same with a text in it.
  Element add(Name, std::initializer_list<Attribute>, std::string_view text);
  /// Any text: control characters and what is no UTF-8 are replaced.
  Element text(std::string_view);
  Element set(Name, std::string_view value);  ///< in place of an earlier value

  /// A name that somebody gave, kept apart from the direction of what stands around it.
  Element name(std::string_view);

 private:
  pugi::xml_node node_;
};

/// Some of the page, as a tree of its own.
class Fragment {
 public:
  Fragment();
  [[nodiscard]] Element root();
  /// As HTML: every element that is not void has its end tag.
  [[nodiscard]] std::string html();

 private:
  std::unique_ptr<pugi::xml_document> document_;
};

/// A number for an attribute: at most two decimals, no exponent, no locale.
[[nodiscard]] std::string number(double);
[[nodiscard]] std::string percent(double);

}  // namespace coatday::report::page
