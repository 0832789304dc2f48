#include "report/document/lines.h"

#include <algorithm>
#include <numeric>

#include "report/document/unicode.h"

namespace coatday::report {
namespace {

constexpr char32_t no_break_space = 0xA0;

std::string_view escape_sequence(Mark mark) {
  switch (mark) {
    case Mark::plain:
      return "\x1b[0m";
    case Mark::strong:
      return "\x1b[0;1m";
    case Mark::faint:
      return "\x1b[0;2m";
    case Mark::good:
      return "\x1b[0;32m";
    case Mark::bad:
      return "\x1b[0;1;31m";
    case Mark::caution:
      return "\x1b[0;33m";
  }
  return "";
}

}  // namespace

Text::Text(std::string_view text, Mark mark) {
  glyphs_.reserve(text.size());
  while (!text.empty()) {
    const char32_t code = harmless(take_code_point(text));
    glyphs_.push_back({code, static_cast<std::uint8_t>(columns_of(code)), mark});
  }
}

Text& Text::operator+=(const Text& other) {
  glyphs_.insert(glyphs_.end(), other.glyphs_.begin(), other.glyphs_.end());
  return *this;
}

int Text::width() const {
  return std::accumulate(glyphs_.begin(), glyphs_.end(), 0, [](int sum, const Glyph& g) { return sum + g.columns; });
}

std::vector<Text> Text::words() const {
  std::vector<Text> words(1);
  for (const Glyph& glyph : glyphs_) {
    if (glyph.code != ' ') {
      words.back().glyphs_.push_back(glyph);
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

std::vector<Text> Text::cut(int width) const {
  std::vector<Text> pieces(1);
  int used = 0;
  for (const Glyph& glyph : glyphs_) {
    if (used + glyph.columns > width && used > 0) {
      pieces.emplace_back();
      used = 0;
    }
    pieces.back().glyphs_.push_back(glyph);
    used += glyph.columns;
  }
  return pieces;
}

Lines wrap(const Text& text, int width) {
  Lines lines(1);
  for (const Text& word : text.words()) {
    for (const Text& piece : word.cut(width)) {
      if (lines.back().empty()) {  // not its width: a word may be a combining mark alone
        lines.back() = piece;
      } else if (lines.back().width() + 1 + piece.width() <= width) {
        lines.back() += " " + piece;
      } else {
        lines.push_back(piece);
      }
    }
  }
  return lines;
}

int longest_word(const Text& text) {
  int longest = 0;
  for (const Text& word : text.words()) longest = std::max(longest, word.width());
  return longest;
}

Lines hang(const Text& head, const Text& body, const TextStyle& style) {
  Lines lines = wrap(body, std::max(1, style.columns - head.width()));
  for (std::size_t i = 0; i < lines.size(); ++i) lines[i] = (i == 0 ? head : spaces(head.width())) + lines[i];
  return lines;
}

Lines labelled(std::string_view label, int label_width, const Text& body, const TextStyle& style) {
  return hang("  " + padded(Text(label, Mark::faint), label_width), body, style);
}

Text padded(const Text& text, int width, Align align) {
  const Text fill = spaces(width - text.width());
  return align == Align::left ? text + fill : fill + text;
}

Text spaces(int count) { return {std::string(static_cast<std::size_t>(std::max(0, count)), ' ')}; }

void append(Lines& lines, const Lines& more) { lines.insert(lines.end(), more.begin(), more.end()); }

std::string render(const Lines& lines, bool colour) {
  std::string out;
  for (const Text& line : lines) {
    auto end = line.glyphs_.end();
    while (end != line.glyphs_.begin() && std::prev(end)->code == ' ') --end;
    Mark mark = Mark::plain;
    for (auto glyph = line.glyphs_.begin(); glyph != end; ++glyph) {
      if (colour && glyph->mark != mark) out += escape_sequence(glyph->mark);
      mark = glyph->mark;
      append_utf8(out, glyph->code == no_break_space ? U' ' : glyph->code);
    }
    if (colour && mark != Mark::plain) out += escape_sequence(Mark::plain);
    out += '\n';
  }
  return out;
}

std::string harmless_text(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const char32_t code = take_code_point(text);
    append_utf8(out, code == '\n' ? code : harmless(code));
  }
  return out;
}

}  // namespace coatday::report
