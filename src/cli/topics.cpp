#include "cli/topics.h"

#include <algorithm>

namespace coatday::cli {
namespace {

constexpr std::size_t entry_indent = 2;

/// The text without spaces at both ends.
std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

void add(std::string& text, std::string_view more) {
  if (!text.empty() && !more.empty()) text += ' ';
  text += more;
}

/// Adds a line to the block that it belongs to. `open` says whether the last block may go on.
void add_line(std::vector<Entry>& blocks, std::string_view line, bool open) {
  const std::size_t indent = std::min(line.find_first_not_of(' '), line.size());
  const std::string_view words = trimmed(line);
  if (indent == entry_indent) {
    const std::size_t label_end = words.find("  ");
    const std::string_view text = label_end == std::string_view::npos ? std::string_view() : trimmed(words.substr(label_end));
    blocks.push_back({std::string(words.substr(0, label_end)), std::string(text)});
    return;
  }
  if (!open || (indent == 0 && !blocks.back().label.empty())) blocks.emplace_back();
  add(blocks.back().text, words);
}

}  // namespace

std::string_view title(const Topic& topic) { return topic.text.substr(0, topic.text.find('\n')); }

std::vector<Entry> blocks(const Topic& topic) {
  std::vector<Entry> all;
  std::string_view rest = topic.text.substr(title(topic).size());
  bool open = false;
  while (!rest.empty()) {
    rest.remove_prefix(1);  // the end of the line before
    const std::string_view line = rest.substr(0, rest.find('\n'));
    rest.remove_prefix(line.size());
    const bool blank = trimmed(line).empty();
    if (!blank) add_line(all, line, open);
    open = !blank;
  }
  return all;
}

}  // namespace coatday::cli
