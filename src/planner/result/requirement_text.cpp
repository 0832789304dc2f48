#include "planner/result/requirement_text.h"

#include <algorithm>

#include <fmt/core.h>

#include "finish/application_limits.h"
#include "planner/model/earliest_times.h"

namespace coatday::planner {

namespace {

/// Nobody reads more, and they are the first of the reasoning.
constexpr std::size_t most_sentences = 5, most_blockers = 3;

class RequirementWriter {
 public:
  RequirementWriter(const job::Job& job, const Loads& loads, const TaskGraph& graph, const Model& model, Clocks& clocks, const Grid& grid,
                    const std::vector<solver::Tag>& tags)
      : job_(job), loads_(loads), graph_(graph), model_(model), clocks_(clocks), grid_(grid), earliest_(model, tags) {}

  std::string sentence(solver::Tag tag) {
    const Requirement& requirement = model_.requirements[static_cast<std::size_t>(tag)];
    switch (requirement.kind) {
      case Requirement::Kind::after:
        return after(graph_.after[requirement.index]) + at_the_earliest(earliest_.after(tag));
      case Requirement::Kind::before:
        return before(graph_.before[requirement.index], earliest_.before(tag));
      case Requirement::Kind::calendar:
        return calendar(requirement.index);
      case Requirement::Kind::people:
        return job_.shop.people == 1 ? "one person works in the shop" : fmt::format("{} people work in the shop", job_.shop.people);
      case Requirement::Kind::spray_gun:
        return "one coat is sprayed at a time";
      case Requirement::Kind::place:
        return fmt::format("there are {} places '{}'", job_.shop.places[requirement.index].count, job_.shop.places[requirement.index].name);
      case Requirement::Kind::dust:
        return "dusty work keeps off wet film, and dust has to settle first";
      case Requirement::Kind::vapour:
        return fmt::format("hot work keeps off solvent vapour, with {} between them", format_span(job_.shop.hot_work_clear));
      case Requirement::Kind::airflow:
        return fmt::format("the exhaust carries {} against solvent vapour",
                           format_exhaust(*job_.shop.ventilation.airflow, job_.shop.units));
      case Requirement::Kind::set_aside:
        return fmt::format("there is room for {} parts to stand aside until dry to pack", job_.shop.set_aside.value_or(0));
      case Requirement::Kind::promised:
        break;
    }
    return fmt::format("{} is promised", piece(requirement.index).name);
  }

  [[nodiscard]] std::string in_short(const std::vector<solver::Tag>& tags) const {
    for (const solver::Tag tag : tags) {
      if (tag < 0 || model_.requirements[static_cast<std::size_t>(tag)].kind != Requirement::Kind::before) continue;
      const std::size_t late = graph_.before[model_.requirements[static_cast<std::size_t>(tag)].index].task;
      const auto closes = earliest_.before(tag), start = earliest_.start(late);
      if (!closes || !start || *start <= *closes) continue;
      return fmt::format("{} can begin {} at the earliest, and has to begin by {}", name(late), when(*start), when(*closes));
    }
    return "";
  }

  std::string found_no_place(std::size_t task) const { return name(task) + " found no place in the plan"; }

 private:
  [[nodiscard]] const piece::Piece& piece(std::size_t p) const { return job_.order.pieces[p].piece; }

  std::string name(std::size_t t) const {
    const Task& task = graph_.tasks[t];
    if (!task.load) return several_ && task.piece ? fmt::format("{} ({})", task.name, piece(*task.piece).name) : task.name;
    return fmt::format("{} ({}{})", task.name, loads_.loads[*task.load].load_name, side(task));
  }

  /// The face that goes first where it is one, of which the other side is the rest.
  std::string side(const Task& task) const {
    using Pass = job::StepId::Pass;
    const Pass pass = task.step_id.pass;
    if (pass == Pass::only) return "";
    if (pass == Pass::second || pass == Pass::show) return ", other faces";
    const auto face = [this](std::size_t f) { return loads_.faces[f].face; };
    const bool one = std::all_of(task.faces.begin(), task.faces.end(), [&](std::size_t f) { return face(f) == face(task.faces.front()); });
    return one ? ", " + face(task.faces.front()) : ", first side";
  }

  std::string after(const After& after) const {
    if (after.reason.empty()) return fmt::format("{} comes after {}", name(after.task), name(after.other));
    if (std::holds_alternative<StageOf>(after.wait)) {
      return fmt::format("{} waits until {} is {}", name(after.task), name(after.other), after.reason);
    }
    return fmt::format("{}: {}", name(after.task), after.reason);
  }

  /// What has to follow in time: until when, by the clock, when what is before it is done as early as can be.
  std::string before(const Before& before, std::optional<solver::Time> closes) const {
    const std::string until = closes ? " by " + when(*closes) : " in time";
    std::string words = fmt::format("{} has to follow{}: {}", name(before.task), until, before.reason);
    if (closes) words += fmt::format(", and {} is over no earlier than {}", name(before.other), when(*earliest_.end(before.other)));
    if (before.remedy) words += fmt::format("; or after a scuff of {}", format_span(Hours(graph_.tasks[*before.remedy].hands_on)));
    return words + (closes ? "; a later start fails too" : "");
  }

  std::string when(solver::Time t) const { return day_and_time(job_.shop.zone.to_local(grid_.instant(t))); }

  std::string at_the_earliest(std::optional<solver::Time> t) const { return t ? fmt::format("; {} at the earliest", when(*t)) : ""; }

  /// What keeps it waiting once nothing before it does.
  std::string opens(std::size_t t) {
    const auto release = earliest_.release(t), start = earliest_.start(t);
    if (!start || (release && *start <= *release)) return "";
    const solver::Time from = release.value_or(model_.problem.origin);
    const Task& task = graph_.tasks[t];
    const Instant wanted = grid_.instant(from);
    const auto takes = std::chrono::ceil<Minutes>(Hours(task.hands_on + task.set_up + task.clean_up));
    const auto open = shop::working_time(job_.shop, wanted, grid_.instant(*start));
    const bool fits =
        std::any_of(open.begin(), open.end(), [takes](const shop::WorkingTime& shift) { return shift.end - shift.begin >= takes; });
    std::string why = open.empty() ? "the shop is closed until then"
                      : fits       ? "no hours until then suit it"
                                   : "too little is left of the hours until then";
    if (fits && task.product != nullptr) {
      if (const auto air = finish::limit_exceeded(*task.product, clocks_.conditions(task), wanted, wanted + takes, job_.shop.units))
        why = *air;
    }
    return fmt::format("{} may begin at {}, but not before {}: {}", name(t), when(from), when(*start), why);
  }

  /// Hours alone, or hours and air: what refuses the coat, where nothing else does.
  std::string calendar(std::size_t t) {
    const Task& task = graph_.tasks[t];
    const solver::Activity& activity = model_.problem.activities[t];
    const std::string time = format_span(Hours(task.hands_on + task.set_up + task.clean_up));
    if (task.done) return fmt::format("{} is recorded as done", name(t));
    if (task.fixed_start) return fmt::format("{} is fixed at {}", name(t), day_and_time(job_.shop.zone.to_local(*task.fixed_start)));
    if (task.milestone) return "delivery needs working hours";
    if (activity.starts.empty() && window(task).empty()) return refusal(t, time);
    if (const std::string words = opens(t); !words.empty()) return words;
    return fmt::format("{} needs {} within working hours{}{}", name(t), time, window(task),
                       task.product == nullptr ? "" : " and in air that suits " + task.product->name);
  }

  std::string window(const Task& task) const {
    std::string words;
    if (task.not_before && *task.not_before > grid_.instant(0)) words += " from " + day_and_time(job_.shop.zone.to_local(*task.not_before));
    if (task.not_after) words += " until " + day_and_time(job_.shop.zone.to_local(*task.not_after));
    return words;
  }

  std::string refusal(std::size_t t, const std::string& time) {
    const Task& task = graph_.tasks[t];
    const auto steps = Grid::steps(Hours(task.hands_on + task.set_up + task.clean_up));
    // The end of the first day that is long enough, when whatever was cold in the morning has had its time to warm.
    std::optional<Instant> start;
    for (const shop::WorkingTime& shift : shop::working_time(job_.shop, grid_.instant(0), grid_.instant(model_.problem.horizon))) {
      const Instant last = grid_.instant(grid_.down(shift.end)) - steps * job::time_step;
      const bool fits = last >= shift.begin && shift.end <= clocks_.air().end();
      if (start && day_of(job_.shop.zone.to_local(*start)) != day_of(job_.shop.zone.to_local(last))) break;
      if (fits) start = last;
    }
    if (start && task.product != nullptr) {
      const auto reason =
          finish::limit_exceeded(*task.product, clocks_.conditions(task), *start, *start + steps * job::time_step, job_.shop.units);
      if (reason) {
        return fmt::format("{}: the air never suits {} in working hours; on {} {}", name(t), task.product->name,
                           day_and_time(job_.shop.zone.to_local(*start)), *reason);
      }
    }
    return fmt::format("{} needs {} in one go{}, and no shift is so long", name(t), time,
                       task.set_up + task.clean_up > Minutes(0) ? ", set-up and clean-up in it" : "");
  }

  const job::Job& job_;
  const Loads& loads_;
  const TaskGraph& graph_;
  const Model& model_;
  Clocks& clocks_;
  const Grid& grid_;
  bool several_ = job_.order.pieces.size() > 1;
  EarliestTimes earliest_;
};

}  // namespace

std::vector<std::string> blocker_text(int activity, const std::vector<solver::Tag>& blockers, const job::Job& job, const Loads& loads,
                                      const TaskGraph& graph, const Model& model, Clocks& clocks, const Grid& grid) {
  RequirementWriter writer(job, loads, graph, model, clocks, grid, {});
  std::vector<std::string> sentences;
  const auto stuck = static_cast<std::size_t>(activity);
  if (activity >= 0 && stuck < graph.tasks.size()) sentences.push_back(writer.found_no_place(stuck));
  for (const solver::Tag tag : blockers) {
    if (tag >= 0 && sentences.size() < most_blockers) sentences.push_back(writer.sentence(tag));
  }
  return sentences;
}

std::string requirement_in_short(const std::vector<solver::Tag>& tags, const job::Job& job, const Loads& loads, const TaskGraph& graph,
                                 const Model& model, Clocks& clocks, const Grid& grid) {
  return RequirementWriter(job, loads, graph, model, clocks, grid, tags).in_short(tags);
}

std::vector<std::string> requirement_text(const std::vector<solver::Tag>& tags, const job::Job& job, const Loads& loads,
                                          const TaskGraph& graph, const Model& model, Clocks& clocks, const Grid& grid) {
  RequirementWriter writer(job, loads, graph, model, clocks, grid, tags);
  std::vector<std::string> sentences;
  for (const solver::Tag tag : tags) {
    if (tag < 0) continue;
    if (sentences.size() == most_sentences) {
      sentences.back() += " (others have a part in it)";
      break;
    }
    std::string sentence = writer.sentence(tag);
    if (std::find(sentences.begin(), sentences.end(), sentence) == sentences.end()) sentences.push_back(std::move(sentence));
  }
  return sentences;
}

}  // namespace coatday::planner
