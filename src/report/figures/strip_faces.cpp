#include "report/figures/strip_faces.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>

#include "report/words.h"

namespace coatday::report::page {
namespace {

void draw_stretch(const Strip& strip, Element row, const Stretch& s) {
  constexpr int top = Strip::line, full = Strip::bar;
  switch (s.state) {
    case State::work:
      strip.bar_at(row, "work", s.from, s.until, top + 3, full - 6);
      return;
    case State::applied:
      strip.bar_at(row, "on", s.from, s.until, top, full);
      return;
    case State::wet:
      strip.bar_at(row, "wet", s.from, s.until, top, full);
      return;
    case State::drying:
      strip.bar_at(row, "dry", s.from, s.until, top, full);
      return;
    case State::open:
      strip.bar_at(row, "open", s.from, s.until, top + 1, full - 2);
      return;
    case State::closed:
      strip.bar_at(row, "shut", s.from, s.until, top, full);
      return;
    case State::curing:
      strip.bar_at(row, "cure", s.from, s.until, top + 4, full - 8);
  }
}

/// Something happens to it in the week, more than that it cures.
bool happens(const Row& face, const Week& week) {
  return std::any_of(face.stretches.begin(), face.stretches.end(),
                     [&](const Stretch& s) { return s.state != State::curing && week.meets(s.from, s.until); });
}
bool cures(const Row& face, const Week& week) {
  return std::any_of(face.stretches.begin(), face.stretches.end(),
                     [&](const Stretch& s) { return s.state == State::curing && week.meets(s.from, s.until); });
}

void draw_row(Strip& strip, const Row& face) {
  Element row = strip.row(face.part, face.faces, Strip::bar);
  for (const Stretch& s : face.stretches) draw_stretch(strip, row, s);
  for (auto s = face.stretches.begin(); s != face.stretches.end(); ++s) {
    if (s->state != State::applied) continue;
    const auto next = std::find_if(s + 1, face.stretches.end(), [](const Stretch& o) { return o.state == State::applied; });
    strip.word_at(row, s->event->name, s->from, next == face.stretches.end() ? strip.week().until : next->from);
  }
}

void draw_other_work(Strip& strip, const job::Plan& plan) {
  const auto all = other_work(plan);
  std::vector<const job::Event*> here;
  std::copy_if(all.begin(), all.end(), std::back_inserter(here), [&](const job::Event* e) { return strip.week().meets(e->start, e->end); });
  if (here.empty()) return;
  Element row = strip.row("other work", "", Strip::bar);
  for (std::size_t i = 0; i < here.size(); ++i) {
    strip.bar_at(row, "work", here[i]->start, here[i]->end, Strip::line + 3, Strip::bar - 6);
    strip.word_at(row, here[i]->name, here[i]->start, i + 1 < here.size() ? here[i + 1]->start : strip.week().until);
  }
}

struct Mark {
  const char* word;
  Instant at;
  bool promise = false;
};

std::vector<Mark> marks_of(const job::PieceResult& piece) {
  std::vector<Mark> marks;
  if (piece.ready.expected.handle) marks.push_back({"handle", *piece.ready.expected.handle});
  if (piece.ready.expected.wrap) marks.push_back({"wrap", *piece.ready.expected.wrap});
  if (piece.ready.slow.deliver) marks.push_back({"deliver (safe)", *piece.ready.slow.deliver});
  if (piece.due) marks.push_back({"promised", *piece.due, true});
  std::stable_sort(marks.begin(), marks.end(), [](const Mark& a, const Mark& b) { return a.at < b.at; });
  return marks;
}

// A diamond that stands on its moment; a promise is a flag.
void draw_mark(const Strip& strip, Element row, const Mark& mark) {
  const double x = strip.week().share(mark.at);
  Element frame = row.add("svg", {{"x", percent(x)}, {"y", number(Strip::line)}, {"overflow", "visible"}});
  frame.add("path", {{"class", mark.promise ? "flag" : "mark"}, {"d", mark.promise ? "M0 12V0l9 3-9 3" : "M0 1l5 5-5 5-5-5z"}});
}

void draw_hand_over(Strip& strip, const job::PieceResult& piece) {
  const std::vector<Mark> marks = marks_of(piece);
  const auto here = [&](const Mark& m) { return strip.week().meets(m.at, m.at + std::chrono::seconds(1)); };
  const bool whisker = piece.ready.expected.deliver && piece.ready.slow.deliver &&
                       strip.week().meets(*piece.ready.expected.deliver, *piece.ready.slow.deliver);
  if (!whisker && std::none_of(marks.begin(), marks.end(), here)) return;
  Element row = strip.row("hand-over", "", Strip::bar);
  if (whisker) strip.bar_at(row, "late", *piece.ready.expected.deliver, *piece.ready.slow.deliver, Strip::line + 5, 2);
  for (std::size_t i = 0; i < marks.size(); ++i) {
    if (!here(marks[i])) continue;
    draw_mark(strip, row, marks[i]);
    strip.word_at(row, marks[i].word, marks[i].at, i + 1 < marks.size() ? marks[i + 1].at : strip.week().until);
  }
}

// The longest cure of faces at which nothing else happens, in one row.
void draw_cure(Strip& strip, const std::vector<const Row*>& faces, bool others) {
  std::optional<Stretch> last;
  for (const Row* face : faces) {
    for (const Stretch& s : face->stretches) {
      if (s.state == State::curing && (!last || s.until > last->until)) last = s;
    }
  }
  if (last) draw_stretch(strip, strip.row(others ? "all other faces" : "all faces", "", Strip::bar), *last);
}

void draw_piece(Strip& strip, const Chart& chart, std::size_t p) {
  const job::PieceResult& piece = chart.plan.pieces[p];
  std::vector<const Row*> busy, curing;
  for (const Row& row : chart.rows) {
    if (row.piece != p) continue;
    if (happens(row, strip.week())) {
      busy.push_back(&row);
    } else if (cures(row, strip.week())) {
      curing.push_back(&row);
    }
  }
  if (busy.empty() && curing.empty()) return;
  if (chart.plan.pieces.size() > 1)
    strip.heading(piece.order.empty() || piece.order == piece.name ? piece.name : piece.order + " / " + piece.name);
  for (const Row* row : busy) draw_row(strip, *row);
  draw_cure(strip, curing, !busy.empty());
  draw_hand_over(strip, piece);
}

}  // namespace

void draw_faces(Strip& strip, const Chart& chart) {
  draw_other_work(strip, chart.plan);
  for (std::size_t p = 0; p < chart.plan.pieces.size(); ++p) draw_piece(strip, chart, p);
}

}  // namespace coatday::report::page
