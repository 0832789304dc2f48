#pragma once
// A paper as data: what it says, and in which order. It knows no markup and no columns: render_text and render_html lay it out.

#include <functional>
#include <initializer_list>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "quantity/time.h"
#include "report/document/mark.h"

namespace coatday::report {

namespace page {
class Element;
}

/// Some words that look alike.
struct Span {
  std::string text;
  Mark mark = Mark::plain;
  bool name = false;      ///< somebody typed it: a page keeps its direction apart
  std::string link = {};  ///< the id of what it points to on the page
  std::string id = {};    ///< its own, by which links find it; in a list of boxes its box is kept by it
  std::string full = {};  ///< longer words for a page, which has the room
};

/// A text of one or more spans. Any string is one.
class Phrase {
 public:
  Phrase() = default;
  Phrase(std::string text, Mark mark = Mark::plain) : Phrase(Span{std::move(text), mark}) {}  // NOLINT: a string is a phrase
  Phrase(const char* text, Mark mark = Mark::plain) : Phrase(std::string(text), mark) {}      // NOLINT
  Phrase(Span span) {                                                                         // NOLINT
    if (!span.text.empty() || !span.full.empty()) spans_.push_back(std::move(span));
  }

  Phrase& operator+=(const Phrase& more) {
    spans_.insert(spans_.end(), more.spans_.begin(), more.spans_.end());
    return *this;
  }
  friend Phrase operator+(Phrase a, const Phrase& b) { return a += b; }

  [[nodiscard]] bool empty() const { return spans_.empty(); }
  [[nodiscard]] auto begin() const { return spans_.begin(); }
  [[nodiscard]] auto end() const { return spans_.end(); }

 private:
  std::vector<Span> spans_;
};

/// A name that somebody typed.
[[nodiscard]] inline Phrase typed(std::string text, Mark mark = Mark::plain) { return Span{std::move(text), mark, true}; }

/// Short words for a terminal, longer ones for a page.
[[nodiscard]] inline Phrase on_page(std::string text, std::string full, Mark mark = Mark::plain) {
  return Span{.text = std::move(text), .mark = mark, .full = std::move(full)};
}

struct Paragraph {
  Phrase text;
  Phrase head = {};  ///< a sign or a word, with the blanks that follow it: the text hangs beside it
};

/// Labels, each with what it says.
struct Facts {
  struct Fact {
    Phrase label = {};  ///< empty: goes on with the fact above
    Phrase value = {};  ///< empty: there is room to write it in by hand
    Phrase more = {};   ///< less important; a terminal shows it after a comma
  };
  std::vector<Fact> facts = {};
  bool headline = false;  ///< the answers that a page shows large
};

struct List {
  enum class Kind { points, cautions, boxes };
  Kind kind = Kind::points;
  std::vector<Phrase> items = {};
};

/// A page has its columns beside each other; or it shows a cell with its title below the column before, or above the rows that follow.
enum class OnPage { column, below, above };

struct Column {
  Phrase title = {};
  Align align = Align::left;
  bool narrow = false;  ///< as narrow as its title in two lines; where a terminal has no room for all of these, a second table follows
  OnPage on_page = OnPage::column;
};

struct Table {
  struct Row {
    std::vector<Phrase> cells = {};    ///< as many as there are columns, or none
    std::vector<Phrase> details = {};  ///< stand below the cells
    std::string key = {};              ///< gives the row a box to tick on the page
  };
  struct Group {
    Phrase title = {};
    std::vector<Row> rows = {};
  };
  std::string kind = {};     ///< the page's style for it
  std::string caption = {};  ///< of the page alone: a terminal shows the section's title
  std::vector<Column> columns = {};
  std::vector<Group> groups = {};
  std::string box = {};           ///< the title of the boxes, where rows have some
  std::vector<Phrase> sums = {};  ///< a last row, on a page alone
  std::size_t most_lines = 0;     ///< on a terminal; it counts the rows that are left out. 0: all of them
};

/// The work of a day. A wait is a step without a key; a wait without a length is what goes on after work.
struct Steps {
  struct Step {
    std::string key;
    Instant begin, end;
    Phrase title;
    Phrase subject = {};                ///< of a step: what it works on; of a wait: its reason
    Phrase how = {};                    ///< "brush, 4.5 fl oz, 1 person"
    std::vector<Phrase> details = {};   ///< empty ones are left out
    std::vector<Phrase> cautions = {};  ///< short, each with a link to its full text
    std::vector<Phrase> blanks = {};    ///< what is written in by hand; the step then has a box to tick
    bool coat = false, done = false;
  };
  Zone zone;
  std::vector<Step> steps = {};
};

/// A drawing for a page.
struct Figure {
  std::string id;
  std::function<void(page::Element)> draw;
  Phrase instead = {};  ///< what a terminal says in its place
};

enum class Media { both, text, page };

struct Section;
using Block = std::variant<Paragraph, Facts, List, Table, Steps, Figure, Section>;

/// A part of the paper. Without a title it only gathers its blocks.
struct Section {
  /// A page marks it while it lasts.
  struct Time {
    Instant from, until;
  };
  std::string id = {};
  Phrase title = {};
  Phrase lead = {};  ///< stands beside the title
  std::vector<Block> blocks = {};
  Media media = Media::both;
  Media title_in = Media::both;  ///< text: a page shows the blocks without the title; page: a terminal does
  std::string kind = {};         ///< the page's style for it
  std::optional<Time> lasts = {};
  bool cut_off = false;  ///< there is a line above it to cut along
};

struct Document {
  Phrase title;
  Phrase subtitle = {};
  std::vector<Section> sections = {};
};

/// Those that have something to say.
[[nodiscard]] inline std::vector<Section> present(std::initializer_list<std::optional<Section>> sections) {
  std::vector<Section> found;
  for (const auto& section : sections) {
    if (section) found.push_back(*section);
  }
  return found;
}

}  // namespace coatday::report
