#include "report/figures/timeline.h"

#include <algorithm>
#include <map>

#include "report/sections/faces.h"

namespace coatday::report::page {
namespace {

using Events = std::vector<const job::Event*>;

bool at_faces(const job::Event& event) { return !event.faces.empty() && event.kind != job::EventKind::turn; }

std::vector<Events> events_by_face(const job::Plan& plan) {
  std::vector<Events> by_face(plan.faces.size());
  for (const job::Event& event : plan.events) {
    if (!at_faces(event)) continue;
    for (const std::size_t face : event.faces) by_face.at(face).push_back(&event);
  }
  return by_face;
}

// The slow clock of the coats beneath says when the next may go on, the fast one when it no longer may.
Instant opens(const job::Event& coat) {
  const auto& late = coat.stages.slow[finish::Stage::recoat];
  const auto& expected = coat.stages.expected[finish::Stage::recoat];
  return std::max(coat.end, late ? *late : expected.value_or(coat.end));
}
std::optional<Instant> closes(const job::Event& coat) {
  const auto& early = coat.stages.fast[finish::Stage::recoat_close];
  return early ? early : coat.stages.expected[finish::Stage::recoat_close];
}

/// Lays stretches one after the other until something else begins.
class Laying {
 public:
  Laying(std::vector<Stretch>& row, const job::Event& event, Instant end) : row_(row), event_(event), end_(end), at_(event.start) {}

  void until(State state, std::optional<Instant> moment) {
    const Instant stop = moment ? std::min(*moment, end_) : end_;
    if (stop <= at_) return;
    row_.push_back({state, at_, stop, &event_});
    at_ = stop;
  }

 private:
  std::vector<Stretch>& row_;
  const job::Event& event_;
  Instant end_, at_;
};

/// A step at a face, with the last coat by then, which may be the step itself.
struct AtFace {
  const job::Event& event;
  const job::Event* coat;
  const job::Event* next;
  bool coat_follows;
};

void lay(std::vector<Stretch>& row, const AtFace& step, Instant end) {
  Laying laying(row, step.event, step.next ? step.next->start : end);
  const bool is_coat = step.coat == &step.event;
  laying.until(is_coat ? State::applied : State::work, step.event.end);
  if (step.coat == nullptr) return;
  const job::Event& coat = *step.coat;
  if (is_coat) laying.until(State::wet, coat.stages.expected[finish::Stage::tack_free]);
  if (!step.coat_follows) {
    laying.until(State::drying, coat.stages.expected[finish::Stage::recoat]);
    laying.until(State::curing, coat.stages.expected[finish::Stage::full_cure]);
    return;
  }
  laying.until(State::drying, opens(coat));
  laying.until(State::open, is_coat ? closes(coat) : std::nullopt);  // a scuff opens it again
  laying.until(State::closed, std::nullopt);
}

std::vector<Stretch> stretches_of(const Events& events, Instant end) {
  std::vector<Stretch> row;
  const auto coat = [](const job::Event* e) { return job::is_coat(e->kind); };
  const job::Event* last_coat = nullptr;
  for (auto at = events.begin(); at != events.end(); ++at) {
    if (coat(*at)) last_coat = *at;
    const auto next = at + 1;
    lay(row, {**at, last_coat, next == events.end() ? nullptr : *next, std::any_of(next, events.end(), coat)}, end);
  }
  return row;
}

}  // namespace

std::vector<Row> rows_of(const job::Plan& plan) {
  const std::vector<Events> by_face = events_by_face(plan);
  std::vector<Row> rows;
  for (const PartFaces& part : parts_of(plan.faces)) {
    std::vector<std::pair<Events, std::vector<std::size_t>>> groups;
    for (const std::size_t face : part.faces) {
      if (masked(plan.faces[face])) continue;
      const auto same = [&](const auto& group) { return group.first == by_face[face]; };
      auto group = std::find_if(groups.begin(), groups.end(), same);
      if (group == groups.end()) group = groups.insert(groups.end(), {by_face[face], {}});
      group->second.push_back(face);
    }
    for (const auto& [events, faces] : groups) {
      const bool coated = std::any_of(events.begin(), events.end(), [](const job::Event* e) { return job::is_coat(e->kind); });
      const std::string words = face_text(plan.faces, part.faces, faces) + (coated ? "" : ": no coat");
      rows.push_back({part.first->piece, part.first->part, words, stretches_of(events, plan.until)});
    }
  }
  return rows;
}

std::vector<const job::Event*> other_work(const job::Plan& plan) {
  Events found;
  for (const job::Event& event : plan.events) {
    if (!at_faces(event) && event.kind != job::EventKind::turn) found.push_back(&event);
  }
  return found;
}

}  // namespace coatday::report::page
