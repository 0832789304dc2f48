#pragma once
// Text for a terminal as a value: what is in it can only show signs, and its width is known. Escape sequences appear in render() alone.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/text.h"
#include "report/document/mark.h"

namespace coatday::report {

/// How a report looks.
struct TextStyle {
  Units units = Units::metric;
  bool colour = false;
  int columns = 80;
};

/// One line or paragraph. Made from any text: control characters, line breaks and what is no UTF-8 are replaced.
class Text {
 public:
  Text() = default;
  Text(std::string_view, Mark = Mark::plain);                      // NOLINT: a text is a text
  Text(const std::string& text) : Text(std::string_view(text)) {}  // NOLINT
  Text(const char* text) : Text(std::string_view(text)) {}         // NOLINT

  Text& operator+=(const Text&);
  friend Text operator+(Text a, const Text& b) { return a += b; }

  [[nodiscard]] bool empty() const { return glyphs_.empty(); }
  [[nodiscard]] int width() const;  ///< columns of the terminal

 private:
  struct Glyph {
    char32_t code;
    std::uint8_t columns;
    Mark mark;
  };
  std::vector<Glyph> glyphs_;

  friend std::vector<Text> wrap(const Text&, int);
  friend int longest_word(const Text&);
  friend std::string render(const std::vector<Text>&, bool);
  [[nodiscard]] std::vector<Text> words() const;
  [[nodiscard]] std::vector<Text> cut(int width) const;
};

using Lines = std::vector<Text>;

/// Broken at spaces into lines no wider than this; a longer word is cut. At least one line.
[[nodiscard]] Lines wrap(const Text&, int width);
[[nodiscard]] int longest_word(const Text&);
/// Wrapped in the page: the first line after `head`, the others as far from the left.
[[nodiscard]] Lines hang(const Text& head, const Text& body, const TextStyle&);
/// One of several facts below each other: the label, faint, in a column of this width, then the body.
[[nodiscard]] Lines labelled(std::string_view label, int label_width, const Text& body, const TextStyle&);
/// Filled up with spaces to this width.
[[nodiscard]] Text padded(const Text&, int width, Align = Align::left);
[[nodiscard]] Text spaces(int);
void append(Lines&, const Lines&);

/// The whole report, each line ended. Trailing spaces are left out.
[[nodiscard]] std::string render(const Lines&, bool colour);
/// Any text with its line breaks, but harmless to a terminal.
[[nodiscard]] std::string harmless_text(std::string_view);

}  // namespace coatday::report
