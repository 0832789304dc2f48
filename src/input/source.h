#pragma once
// The text of one file, with its lines: from a byte's place to the line and column that a person sees.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/location.h"

namespace coatday::input {

inline constexpr std::size_t largest_file = std::size_t{1024} * 1024;  ///< bytes

struct TextMistake {
  std::size_t at = 0;
  std::string message;
};

class Source {
 public:
  /// `name` as the user gave it. A byte order mark is taken off.
  Source(std::string name, std::string text);

  [[nodiscard]] const std::string& name() const { return name_; }
  [[nodiscard]] std::string_view text() const { return text_; }
  /// Of a byte; one past the end belongs to the last line.
  [[nodiscard]] Location location(std::size_t at) const;
  /// The line's text, from 1, without its end; empty where there is none.
  [[nodiscard]] std::string_view line(int number) const;

 private:
  // What stands before a block of bytes. With it a place is found at once, in a very long line, too.
  struct Before {
    std::size_t lines = 0;       // ended
    std::size_t line_start = 0;  // of the line that the block begins in
    std::size_t characters = 0;
  };
  [[nodiscard]] std::size_t characters_before(std::size_t at) const;

  std::string name_;
  std::string text_;
  std::vector<Before> blocks_;
};

/// The first thing that makes bytes no text: too many of them, not UTF-8, a control character.
[[nodiscard]] std::optional<TextMistake> find_mistake(std::string_view text);

[[nodiscard]] std::size_t count_characters(std::string_view text);

/// Bytes of the UTF-8 character at the start of the text: 0 when it is none. Overlong forms and surrogates are none.
[[nodiscard]] std::size_t character_size(std::string_view text);

}  // namespace coatday::input
