#include "planner/tasks/validate.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/core.h>

#include "job/stages.h"
#include "planner/tasks/coats.h"
#include "planner/tasks/effort.h"
#include "planner/tasks/tasks.h"
#include "planner/tasks/vapour.h"

namespace coatday::planner {

namespace {

class Validation {
 public:
  explicit Validation(const job::Job& job) : job_(job), loads_(make_loads(job, Batching::whole_part)) {}

  std::vector<job::Finding> run() {
    for (const Load& load : loads_.loads) {
      both_faces(load);
      one_over_another(load);
      steps(load);
    }
    fitting();
    exhaust();
    food();
    for (const job::AirNote& note : job_.air_notes) say("air-file", job::Severity::note, note.message, note.file, {});
    return std::move(findings_);
  }

 private:
  void say(std::string code, job::Severity severity, std::string message, std::string subject, const Location& where) {
    const job::Finding finding{std::move(code), severity, std::move(message), std::move(subject), where};
    if (said_.insert({finding.code, finding.subject, finding.message}).second) findings_.push_back(finding);
  }

  const piece::Part& part_of(const Load& load) const { return job_.order.pieces[load.piece].piece.parts[load.parts.front().part]; }
  std::string name_of(const Load& load) const { return job_.order.pieces[load.piece].piece.name + " / " + part_of(load).name; }

  /// Film coats of each product on a face, in order of the schedule.
  std::vector<const finish::Product*> film_on(const Load& load, std::size_t face) const {
    std::vector<const finish::Product*> film;
    for (const CoatOnFace& coat : coats_on(*load.schedule, job_.catalogue, loads_.faces[face], loads_.shapes[face])) {
      if (coat.product->film) film.push_back(coat.product);
    }
    return film;
  }

  /// A wooden part gets the same film on opposite faces. Source: FPL Technical Note D-12 (rev. 1952): coatings of nearly equal moisture
  /// resistance on all surfaces.
  void both_faces(const Load& load) {
    const piece::Part& part = part_of(load);
    for (const std::size_t a : load.faces) {
      const job::FaceEntry& face = loads_.faces[a];
      if (face.exception && face.exception->reason.empty()) no_reason(load, part, face);
      if (!face.wood) continue;
      if (face.opposite && *face.opposite > a) pair(load, part, a, *face.opposite);
      if (!face.opposite && film_on(load, a).empty() && wants_film(load)) bare(load, part, face);
    }
  }

  void no_reason(const Load& load, const piece::Part& part, const job::FaceEntry& face) {
    say("exception-without-reason", job::Severity::error,
        fmt::format("{}: the {} deviates from the schedule and no reason is given; an exception needs one", part.name, face.face),
        name_of(load) + " / " + face.face, face.exception->where);
  }

  void pair(const Load& load, const piece::Part& part, std::size_t a, std::size_t b) {
    const auto one = film_on(load, a), other = film_on(load, b);
    if (one == other) return;
    const std::size_t less = one.size() <= other.size() ? a : b;
    const std::size_t more = less == a ? b : a;
    const job::FaceEntry& behind = loads_.faces[less];
    const auto& exception = behind.exception ? behind.exception : loads_.faces[more].exception;
    const std::string counts =
        fmt::format("{}: the {} gets {} of film, the {} across from it {}", part.name, behind.face,
                    coats(std::min(one.size(), other.size())), loads_.faces[more].face, coats(std::max(one.size(), other.size())));
    const std::string subject = name_of(load) + " / " + behind.face;
    if (exception && !exception->reason.empty()) {
      say("uneven-faces", job::Severity::warning, fmt::format("{}; declared: {}. It may cup", counts, exception->reason), subject,
          exception->where);
    } else {
      say("both-faces", job::Severity::error,
          counts +
              ". A wooden part gets the same film on both faces, or it takes up water on one side and cups; declare an exception with a "
              "reason if you mean it",
          subject, exception ? exception->where : part.where);
    }
  }

  void bare(const Load& load, const piece::Part& part, const job::FaceEntry& face) {
    const std::string subject = name_of(load) + " / " + face.face;
    if (face.exception && !face.exception->reason.empty()) {
      say("bare-face", job::Severity::warning,
          fmt::format("{}: the {} stays bare; declared: {}", part.name, face.face, face.exception->reason), subject, face.exception->where);
    } else if (face.area <= SquareMetres(0)) {
      say("masked-face", job::Severity::note, fmt::format("{}: the {} is masked all over and stays bare", part.name, face.face), subject,
          part.where);
    } else {
      say("both-faces", job::Severity::error, fmt::format("{}: the {} gets no film", part.name, face.face), subject, part.where);
    }
  }

  bool wants_film(const Load& load) const {
    return std::any_of(load.faces.begin(), load.faces.end(), [&](std::size_t f) { return !film_on(load, f).empty(); });
  }

  static std::string coats(std::size_t n) { return n == 0 ? "no coat" : n == 1 ? "1 coat" : fmt::format("{} coats", n); }

  void one_over_another(const Load& load) {
    const std::string& schedule = load.schedule->name;
    for (const std::size_t f : load.faces) {
      const auto coats = coats_on(*load.schedule, job_.catalogue, loads_.faces[f], loads_.shapes[f]);
      for (std::size_t i = 1; i < coats.size(); ++i) over(*coats[i].product, *coats[i - 1].product, *coats[i].step, schedule);
    }
  }

  void over(const finish::Product& upper, const finish::Product& under, const finish::Step& step, const std::string& schedule) {
    const finish::OverRule* rule = job_.catalogue.over_rule(upper, under);
    const std::string pair = fmt::format("{} over {}", upper.name, under.name);
    if (rule == nullptr && upper.family == under.family) return;
    if (rule == nullptr) {
      say("untried-pair", job::Severity::warning, fmt::format("{}: nobody has said whether it holds; make a test board first", pair),
          schedule, step.where);
      return;
    }
    if (rule->verdict == finish::Verdict::never) {
      say("never-over", job::Severity::error, fmt::format("{}: never ({})", pair, rule->source), schedule, step.where);
    } else if (rule->verdict == finish::Verdict::barrier) {
      std::string between;
      for (const std::string& barrier : rule->barriers) between += (between.empty() ? "" : " or ") + barrier;
      say("needs-barrier", job::Severity::error, fmt::format("{}: needs {} between them ({})", pair, between, rule->source), schedule,
          step.where);
    }
  }

  void steps(const Load& load) {
    for (const finish::Step& step : load.schedule->steps) {
      const std::string subject = load.schedule->name + " / " + step.name;
      if (!step.product) continue;
      const finish::Product* product = job_.catalogue.product(*step.product);
      if (product == nullptr) continue;
      if (const auto reason = finish::film_refused(step, *product, job_.shop.units)) {
        say("film-thickness", job::Severity::error, *reason, subject, step.where);
      }
      const auto method = method_of(step, *product, job_.shop);
      if (!method) {
        std::string takes;
        for (const auto& [m, rate] : product->work_rates) takes += (takes.empty() ? "" : ", ") + std::string(finish::word(m));
        say("no-method", job::Severity::error,
            fmt::format("{} can be put on by {}, and the shop has none of these", product->name, takes.empty() ? "no method" : takes),
            subject, step.where);
      } else if (std::find(job_.shop.methods.begin(), job_.shop.methods.end(), finish::word(*method)) == job_.shop.methods.end()) {
        say("no-method", job::Severity::error, fmt::format("{} wants {}, which the shop does not have", step.name, finish::word(*method)),
            subject, step.where);
      } else if (product->work_rates.count(*method) == 0) {
        say("no-method", job::Severity::error,
            fmt::format("{} is not put on by {}: its record has no work rate for that", product->name, finish::word(*method)), subject,
            step.where);
      }
    }
  }

  /// Everything must fit somewhere, a coat of one item into the longest shift too.
  void fitting() {
    const Loads split = make_loads(job_, Batching::fit);
    for (const Load& load : split.loads) {
      if (!load.choices.empty()) continue;
      const piece::Part& part = part_of(load);
      say("no-place", job::Severity::error, fmt::format("{}: no drying place takes it on {}", part.name, piece::word(part.support)),
          name_of(load), part.where);
    }
  }

  /// An item is put on in one go, to keep a wet edge; what its vapour asks beyond that is a pause after it, and a long one would only hide a
  /// burst in a mean. Steps that are recorded as done on a piece are past that.
  void exhaust() {
    if (!job_.shop.ventilation.airflow) return;
    const Loads single = make_loads(job_, Batching::one_item);
    std::set<std::pair<std::size_t, std::string>> reported;  // of a part: its first product that is too much
    for (const Task& task : make_tasks(job_, single, {}).tasks) {
      if (!task.vapour || task.vapour->pauses <= longest_pause || recorded(task)) continue;
      if (reported.insert({*task.load, task.product->id}).second) too_much_vapour(single.loads[*task.load], task);
    }
  }

  bool recorded(const Task& task) const {
    return std::any_of(job_.order.history.begin(), job_.order.history.end(), [&](const job::Done& done) {
      const std::optional<job::StepId> id = job::parse_step_id(done.event);
      return id && id->piece == task.step_id.piece && id->step == task.step_id.step;
    });
  }

  void too_much_vapour(const Load& load, const Task& task) {
    const shop::Shop& shop = job_.shop;
    const Hours by_hand = Hours(task.hands_on - task.vapour->pauses) - task.stand.value_or(Hours(0));
    say("too-much-vapour", job::Severity::error,
        fmt::format(
            "{} on one {} gives off {} of solvent in {}: that takes {} of fresh air to stay under {:.0f} % of the lower explosive limit, "
            "and the exhaust carries {}; more exhaust, less of it at a time, or a finish with less solvent",
            task.name, part_of(load).name, format_volume(task.vapour->solvent, shop.units), format_span(by_hand),
            format_airflow(airflow_within(*task.vapour, by_hand), shop.units), 100 * shop.ventilation.limit,
            format_exhaust(*shop.ventilation.airflow, shop.units)),
        name_of(load), part_of(load).where);
  }

  void food() {
    for (const job::OrderPiece& piece : job_.order.pieces) {
      if (!piece.piece.food_contact) continue;
      for (const piece::Part& part : piece.piece.parts) {
        const finish::Schedule* schedule = job_.catalogue.schedule(part.schedule);
        for (const finish::Step& step : schedule->steps) {
          const finish::Product* product = step.product ? job_.catalogue.product(*step.product) : nullptr;
          if (product == nullptr || product->food_contact_when_cured) continue;
          say("food-contact", job::Severity::warning,
              fmt::format("{}: the record of {} does not say that it may touch food when cured; ask its label", piece.piece.name,
                          product->name),
              piece.piece.name + " / " + part.name, step.where);
        }
      }
    }
  }

  const job::Job& job_;
  Loads loads_;
  std::vector<job::Finding> findings_;
  std::set<std::tuple<std::string, std::string, std::string>> said_;
};

}  // namespace

std::vector<job::Finding> validate(const job::Job& job) { return Validation(job).run(); }

std::vector<job::FaceEntry> take_off(const job::Job& job) {
  Loads loads = make_loads(job, Batching::whole_part);
  for (const Load& load : loads.loads) {
    for (const std::size_t f : load.faces) {
      loads.faces[f].coats = film_coats(coats_on(*load.schedule, job.catalogue, loads.faces[f], loads.shapes[f]));
    }
  }
  return loads.faces;
}

}  // namespace coatday::planner
