#pragma once
// A paper as data: what it says, and in which order. It knows no markup and no columns: render_text and render_html lay it out.

#include <functional>
#include <initializer_list>
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
};

/// A text of one or more spans. Any string is one.
class Phrase {
 public:
  Phrase() = default;
  Phrase(std::string text, Mark mark = Mark::plain) : Phrase(Span{std::move(text), mark}) {}  // NOLINT: a string is a phrase
  Phrase(const char* text, Mark mark = Mark::plain) : Phrase(std::string(text), mark) {}      // NOLINT
  Phrase(Span span) {                                                                         // NOLINT
    if (!span.text.empty()) spans_.push_back(std::move(span));
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

struct Paragraph {
  Phrase text;
};

/// Labels, each with what it says.
struct Facts {
  struct Fact {
    Phrase label;  ///< empty: goes on with the fact above
    Phrase value;
    Phrase more = {};  ///< less important; a terminal shows it after a comma
  };
  std::vector<Fact> facts;
  bool headline = false;  ///< the answers that a page shows large
};

struct List {
  enum class Kind { points, cautions, boxes };
  Kind kind = Kind::points;
  std::vector<Phrase> items;
};

struct Column {
  Phrase title = {};
  Align align = Align::left;
  bool narrow = false;  ///< as narrow as its title in two lines; where a terminal has no room for all of these, a second table follows
};

struct Table {
  struct Row {
    std::vector<Phrase> cells;         ///< as many as there are columns, or none
    std::vector<Phrase> details = {};  ///< stand below the cells
    std::string key = {};              ///< gives the row a box to tick on the page
  };
  struct Group {
    Phrase title;
    std::vector<Row> rows;
  };
  std::string kind;     ///< the page's style for it
  std::string caption;  ///< of the page alone: a terminal shows the section's title
  std::vector<Column> columns;
  std::vector<Group> groups = {};
  std::size_t most_lines = 0;  ///< on a terminal; it counts the rows that are left out. 0: all of them
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
  std::string id;
  Phrase title;
  Phrase lead = {};  ///< stands beside the title
  std::vector<Block> blocks = {};
  Media media = Media::both;
  Media title_in = Media::both;  ///< text: a page shows the blocks without the title; page: a terminal does
};

struct Document {
  Phrase title;
  Phrase subtitle = {};
  std::vector<Section> sections = {};
};

}  // namespace coatday::report
