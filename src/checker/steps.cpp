// Every step once on every face it is for, in the schedule's order; every item in the ledger.

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

enum class Duty { must, may, not_for_face, excepted };

/// What each step of a face's schedule is to that face.
std::vector<Duty> duties(const PlanFacts& facts, const FaceFacts& face) {
  std::vector<Duty> result;
  int films = 0;
  const bool masked = face.face.coated <= SquareMetres(0);
  for (const finish::Step& step : face.schedule->steps) {
    const finish::Product* product = step.product ? facts.job.catalogue.product(*step.product) : nullptr;
    const auto& exception = face.face.exception;
    Duty duty = Duty::must;
    if (step.faces == finish::StepFaces::show && !face.face.face.show) {
      duty = Duty::not_for_face;
    } else if (product == nullptr) {
      const bool left_out = masked || (exception && films >= exception->coats);
      duty = left_out ? Duty::may : Duty::must;
    } else if (masked) {
      duty = Duty::not_for_face;
    } else if (exception && (exception->coats == 0 || (product->film && films >= exception->coats))) {
      duty = Duty::excepted;
    }
    if (duty == Duty::must && product != nullptr && product->film) ++films;
    result.push_back(duty);
  }
  return result;
}

class StepJudge {
 public:
  StepJudge(const PlanFacts& facts, Breaches& out) : facts_(facts), out_(out) {}

  void face(std::size_t f) {
    const FaceFacts& face = facts_.faces[f];
    const std::vector<Duty> duty = duties(facts_, face);
    for (std::size_t s = 0; s < duty.size(); ++s) step(f, face.schedule->steps[s], duty[s]);
    order(f);
    load_of(f);
    for (const std::size_t i : face.events) known(f, i);
  }

 private:
  /// One breach for all faces of a load: they share their steps.
  void report(const std::string& code, const std::string& key, std::string message) {
    if (reported_.insert(code + " " + key).second) out_.push_back({code, std::move(message)});
  }

  void step(std::size_t f, const finish::Step& step, Duty duty) {
    const auto& events = facts_.faces[f].events;
    const auto count = std::count_if(events.begin(), events.end(), [&](std::size_t i) { return facts_.event(i).step == step.id; });
    const std::string where = facts_.face_name(f);
    const std::string key = facts_.plan.faces[f].part_id + step.id;
    if (count == 0 && duty == Duty::must) report("step-missing", key, fmt::format("{} never gets {}", where, step.name));
    if (count > 1) report("step-twice", key, fmt::format("{} gets {} {} times", where, step.name, count));
    if (count == 0) return;
    if (duty == Duty::excepted) report("exception-ignored", key, fmt::format("{} is excepted, yet gets {}", where, step.name));
    if (duty == Duty::not_for_face) report("step-not-for-face", key, fmt::format("{} is not for {}", step.name, where));
  }

  void order(std::size_t f) {
    const FaceFacts& face = facts_.faces[f];
    const finish::Step* before = nullptr;
    std::size_t before_event = 0;
    for (const std::size_t i : face.events) {
      const finish::Step* step = facts_.events[i].step;
      if (step == nullptr) continue;
      if (before != nullptr && step < before) {
        report("step-out-of-order", facts_.event(i).id, fmt::format("{} follows {}", facts_.name(i), facts_.name(before_event)));
      }
      before = step;
      before_event = i;
    }
  }

  void load_of(std::size_t f) {
    const auto& events = facts_.faces[f].events;
    for (const std::size_t i : events) {
      if (facts_.events[i].load == facts_.events[events.front()].load) continue;
      report("load-mixed", facts_.event(i).id, fmt::format("{} moves with two loads: {}", facts_.face_name(f), facts_.name(i)));
    }
  }

  void known(std::size_t f, std::size_t i) {
    const job::Event& event = facts_.event(i);
    const finish::Step* step = facts_.events[i].step;
    if (step == nullptr) return remedy(f, i);
    const auto& steps = facts_.faces[f].schedule->steps;
    const bool own = step >= steps.data() && step < steps.data() + steps.size();
    if (!own) report("load-mixed", event.id, fmt::format("{} is not in the schedule of {}", facts_.name(i), facts_.face_name(f)));
    if (job::word(event.kind) != finish::word(step->kind) || event.product != step->product.value_or("")) {
      report("step-differs", event.id, fmt::format("{} is not what the schedule says of {}", facts_.name(i), step->name));
    }
  }

  /// A scuff that the schedule does not have: only where a coat of it follows.
  void remedy(std::size_t f, std::size_t i) {
    const job::Event& event = facts_.event(i);
    const auto& steps = facts_.faces[f].schedule->steps;
    const std::optional<std::string> coat = job::coat_after(event.step);
    const bool known = std::any_of(steps.begin(), steps.end(), [&](const finish::Step& s) { return coat == s.id && s.product; });
    if (event.kind == job::EventKind::scuff && known && !facts_.coat(i)) return;
    report("step-unknown", event.id, fmt::format("{} is no step of the schedule of {}", facts_.name(i), facts_.face_name(f)));
  }

  const PlanFacts& facts_;
  Breaches& out_;
  std::set<std::string> reported_;
};

void cover(const PlanFacts& facts, std::size_t piece, const piece::Part& part, Breaches& out) {
  for (const piece::PartFace& face : piece::faces_of(part)) {
    const double all = face.coated.value() * part.count;
    double sum = 0;
    for (std::size_t f = 0; f < facts.faces.size(); ++f) {
      const job::FaceEntry& entry = facts.plan.faces[f];
      if (entry.piece == piece && facts.faces[f].part == &part && entry.face == face.face.name) sum += entry.area.value();
    }
    constexpr double alike = 1e-3;
    if (std::abs(sum - all) <= alike * all) continue;
    out.push_back({sum < all ? "items-uncovered" : "items-doubled",
                   fmt::format("{} / {}: the ledger has {:.4f} m², the parts {:.4f} m²", part.name, face.face.name, sum, all)});
  }
}

}  // namespace

void check_steps(const PlanFacts& facts, Breaches& out) {
  StepJudge judge(facts, out);
  for (std::size_t f = 0; f < facts.faces.size(); ++f) judge.face(f);
}

void check_coverage(const PlanFacts& facts, Breaches& out) {
  for (std::size_t p = 0; p < facts.job.order.pieces.size(); ++p) {
    for (const piece::Part& part : facts.job.order.pieces[p].piece.parts) cover(facts, p, part, out);
  }
}

}  // namespace coatday::checker
