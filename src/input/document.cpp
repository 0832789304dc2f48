#include "input/document.h"

#include <fmt/core.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <exception>
#include <sstream>
#include <string>
#include <unordered_map>
#include <utility>

namespace coatday::input {
namespace {

// Ends the reading of a file.
struct Stop : std::exception {
  Stop(std::size_t place, std::string words) : at(place), message(std::move(words)) {}
  std::size_t at;
  std::string message;
};

constexpr const char* no_anchors = "anchors (&) are not used in these files; put a text that starts with '&' in quotes";
constexpr const char* no_aliases = "aliases (*) are not used in these files; put a text that starts with '*' in quotes";
constexpr const char* no_tags = "tags (!) are not used in these files; put a text that starts with '!' in quotes";

std::size_t place(const YAML::Mark& mark) { return mark.pos < 0 ? 0 : static_cast<std::size_t>(mark.pos); }

// yaml-cpp's own node tree is not used: it would hide doubled keys, and walking it is what costs.
class Builder final : public YAML::EventHandler {
 public:
  Builder(const Source& source, Mistakes& mistakes) : source_(source), mistakes_(mistakes) {}

  [[nodiscard]] Value take() { return std::move(root_); }
  [[nodiscard]] std::size_t last() const { return last_; }

  void OnDocumentStart(const YAML::Mark& mark) override {
    if (started_) throw Stop(place(mark), "text after the end of the document; check the indentation, or a line '---' or '...' above");
    started_ = true;
  }
  void OnDocumentEnd() override {}

  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
    check(mark, "?", anchor);
    put_nothing();
  }
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override { throw Stop(place(mark), no_aliases); }
  void OnAnchor(const YAML::Mark& mark, const std::string&) override { throw Stop(place(mark), no_anchors); }

  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor, const std::string& text) override {
    check(mark, tag, anchor);
    check_text(mark, tag, text);
    Value value = start(mark, Value::Kind::text);
    value.text = text;
    put(std::move(value));
  }

  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor, YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Value::Kind::list);
  }
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor, YAML::EmitterStyle::value) override {
    open(mark, tag, anchor, Value::Kind::map);
  }
  void OnMapEnd() override { close(); }

 private:
  struct Frame {
    Value value;
    bool has_key = false;  // the last entry waits for its value
    std::unordered_map<std::string, std::size_t> keys;
  };

  Value start(const YAML::Mark& mark, Value::Kind kind) {
    last_ = place(mark);
    Value value;
    value.source = &source_;
    value.at = last_;
    value.kind = kind;
    return value;
  }

  [[nodiscard]] std::string_view text_at(const YAML::Mark& mark) const {
    return source_.text().substr(std::min(place(mark), source_.text().size()));
  }

  void mistake(std::size_t at, std::string message) { mistakes_.add(source_.location(at), std::move(message)); }

  void check(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor) {
    if (anchor != 0) throw Stop(place(mark), no_anchors);
    const bool marked = text_at(mark).starts_with('!');
    if (marked || (!tag.empty() && tag != "?" && tag != "!")) {
      throw Stop(place(mark), no_tags);
    }
  }

  void check_text(const YAML::Mark& mark, const std::string& tag, const std::string& text) {
    const bool plain = tag != "!";
    if (plain && !text_at(mark).starts_with(text)) {
      mistake(place(mark), "this text runs on to the next line; put it on one line, or in quotes");
    }
    if (!plain && find_mistake(text)) mistake(place(mark), "a control character stands in these quotes");
  }

  void open(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor, Value::Kind kind) {
    check(mark, tag, anchor);
    if (frames_.size() == deepest) throw Stop(place(mark), fmt::format("more than {} lists and maps within each other", deepest));
    frames_.push_back({start(mark, kind), false, {}});
  }

  void close() {
    Value value = std::move(frames_.back().value);
    frames_.pop_back();
    put(std::move(value));
  }

  void put(Value value) {
    if (frames_.empty()) {
      root_ = std::move(value);
      return;
    }
    Frame& top = frames_.back();
    if (top.value.kind == Value::Kind::list) {
      top.value.items.push_back(std::move(value));
    } else if (top.has_key) {
      top.value.entries.back().value = std::move(value);
      top.has_key = false;
    } else {
      put_key(top, std::move(value));
    }
  }

  void put_key(Frame& map, Value key) {
    if (key.kind != Value::Kind::text) mistake(key.at, "a key must be text");
    const auto [earlier, is_new] = map.keys.emplace(key.text, key.at);
    if (!is_new) {
      mistake(key.at,
              fmt::format("key {} is given twice; the first is in line {}", in_quotes(key.text), source_.location(earlier->second).line));
    }
    map.value.entries.push_back({std::move(key.text), key.at, {}});
    map.has_key = true;
  }

  // yaml-cpp places an empty value at the token after it.
  void put_nothing() {
    if (frames_.empty()) return;
    Frame& top = frames_.back();
    if (top.value.kind == Value::Kind::list) {
      mistake(top.value.at, "an item of this list is empty");
    } else if (!top.has_key) {
      throw Stop(top.value.at, "a key is empty");
    } else {
      const Entry& entry = top.value.entries.back();
      const bool in_braces = source_.text().substr(top.value.at).starts_with('{');
      const std::string_view remedy =
          in_braces ? "give one, or put the text that holds this comma in quotes" : "give one, or leave the key out";
      mistake(entry.at, fmt::format("key {} has no value; {}", in_quotes(entry.key), remedy));
      top.value.entries.pop_back();
      top.has_key = false;
    }
  }

  const Source& source_;
  Mistakes& mistakes_;
  std::vector<Frame> frames_;
  Value root_;
  bool started_ = false;
  std::size_t last_ = 0;
};

// Where the quote opens that is found open at the end of the file: the first that begins a value after what was read.
std::size_t open_quote(std::string_view text, std::size_t from) {
  for (std::size_t at = text.find_first_of("'\"", from); at != std::string_view::npos; at = text.find_first_of("'\"", at + 1)) {
    if (at == 0 || std::string_view(" \t\n[{,").find(text[at - 1]) != std::string_view::npos) return at;
  }
  return text.size();
}

bool indented_by_tab(const Source& source, std::size_t at) {
  const std::string_view line = source.line(source.location(at).line);
  return line.substr(0, line.find_first_not_of(" \t")).find('\t') != std::string_view::npos;
}

Stop explain(const Source& source, const YAML::ParserException& error, std::size_t last) {
  namespace words = YAML::ErrorMsg;
  const std::size_t at = place(error.mark);
  if (error.msg == words::DOC_IN_SCALAR || error.msg == words::EOF_IN_SCALAR) {
    return {open_quote(source.text(), last), "the quote that opens here is not closed"};
  }
  if (error.msg == words::TAB_IN_INDENTATION || indented_by_tab(source, at)) return {at, "a tab indents this line; use spaces"};
  if (error.msg == words::BAD_FILE) return {at, fmt::format("more than {} lists and maps within each other", deepest)};
  if (error.msg == words::UNKNOWN_ANCHOR) return {at, no_aliases};
  if (error.msg == words::UNKNOWN_TOKEN) return {at, "a text cannot start with this character; put it in quotes"};
  if (error.msg == words::MAP_VALUE)
    return {at, "a colon is not expected here; put a text that holds ': ' in quotes, or check the indentation"};
  return {at, fmt::format("this is not valid YAML ({})", error.msg)};
}

void run(const Source& source, Builder& builder) {
  std::istringstream stream(std::string(source.text()) + "\n...\n");  // the end mark shows up open quotes and dropped tails
  YAML::Parser parser(stream);
  try {
    while (parser.HandleNextDocument(builder)) {
    }
  } catch (const YAML::ParserException& error) {
    throw explain(source, error, builder.last());
  }
}

}  // namespace

std::optional<Value> read_document(const Source& source, Mistakes& mistakes) {
  const std::size_t before = mistakes.count();
  if (auto mistake = find_mistake(source.text())) {
    mistakes.add(source.location(mistake->at), std::move(mistake->message));
    return std::nullopt;
  }
  Builder builder(source, mistakes);
  try {
    run(source, builder);
  } catch (const Stop& stop) {
    mistakes.add(source.location(stop.at), stop.message);
  }
  if (mistakes.count() > before) return std::nullopt;
  Value root = builder.take();
  if (root.source == nullptr) {
    mistakes.add(source.location(0), "this file is empty");
    return std::nullopt;
  }
  return root;
}

}  // namespace coatday::input
