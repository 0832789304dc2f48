#include "planner/result/hand_over.h"

#include <algorithm>
#include <map>

#include <fmt/core.h>

#include "job/stages.h"

namespace coatday::planner {

namespace {

using finish::Stage;

/// The latest instant at which every coat of a piece that has a stage has reached it. A coat under another need not have the stage; the last
/// coat on each face must.
class StageDate {
 public:
  StageDate(const job::Plan& plan, std::size_t piece, Stage stage, finish::Estimate side) : plan_(plan), stage_(stage), side_(side) {
    for (const job::Event& event : plan.events) {
      if (event.piece != piece) continue;
      if (!event.product.empty()) coat(event);
      if (event.kind == job::EventKind::bake) bake(event);
    }
  }

  [[nodiscard]] std::optional<Instant> date() const {
    if (behind_ != nullptr) return std::nullopt;
    std::optional<Instant> latest = covered_;
    for (const auto& [face, last] : last_) {
      const std::optional<Instant> reached = reached_at(last);
      if (!reached) return std::nullopt;
      latest = latest ? std::max(*latest, *reached) : *reached;
    }
    return latest;
  }

  /// The first product that never gets there on some face, or null.
  [[nodiscard]] const finish::Product* missing() const {
    if (behind_ != nullptr) return behind_;
    for (const auto& [face, last] : last_) {
      if (!reached_at(last)) return &plan_.products.at(last.coat->product);
    }
    return nullptr;
  }

 private:
  struct Last {
    const job::Event* coat = nullptr;
    std::optional<Instant> baked;
  };

  [[nodiscard]] const job::StageInstants& of(const job::Event& event) const {
    if (side_ == finish::Estimate::expected) return event.stages.expected;
    return side_ == finish::Estimate::slow ? event.stages.slow : event.stages.fast;
  }

  void coat(const job::Event& event) {
    const auto& own = of(event)[stage_];
    if (own) covered_ = covered_ ? std::max(*covered_, *own) : *own;
    const finish::Product& product = plan_.products.at(event.product);
    if (!own && job::has_stage(product, stage_)) behind_ = &product;
    for (const std::size_t face : event.faces) last_[face] = {&event, std::nullopt};
  }

  void bake(const job::Event& event) {
    for (const std::size_t face : event.faces) {
      const auto last = last_.find(face);
      if (last != last_.end()) last->second.baked = event.end;
    }
  }

  [[nodiscard]] std::optional<Instant> reached_at(const Last& last) const {
    const finish::Product& product = plan_.products.at(last.coat->product);
    if (product.mechanism == finish::Mechanism::heat_cured && finish::clock_of(stage_) == finish::Clock::cure) return last.baked;
    const job::StageInstants& stages = of(*last.coat);
    // A finish without a print-free time of its own may be packed when it may be handled.
    if (stage_ == Stage::pack && !job::has_stage(product, Stage::pack)) return stages[job::handled(product)];
    if (stage_ == Stage::handle) return stages[job::handled(product)];
    return stages[stage_];
  }

  const job::Plan& plan_;
  Stage stage_;
  finish::Estimate side_;
  std::map<std::size_t, Last> last_;
  std::optional<Instant> covered_;
  const finish::Product* behind_ = nullptr;  // it has the stage, and does not reach it while the air is known
};

void say_missing(job::Plan& plan, const job::OrderPiece& piece, Stage stage, const finish::Product& product) {
  const bool baked = product.mechanism == finish::Mechanism::heat_cured;
  const bool recorded = product.reference().hours[stage].has_value();
  std::string message;
  if (baked) {
    message = fmt::format("{} never reaches {}: {} cures only by heat, and the schedule has no bake after it", piece.piece.name,
                          finish::word(stage), product.name);
  } else if (recorded) {
    message = fmt::format("{} does not reach {} within the time that the plan looks ahead: {} is too cold or too damp to cure",
                          piece.piece.name, finish::word(stage), product.name);
  } else {
    message = fmt::format("nobody says when {} is reached: the record of {} has no such time", finish::word(stage), product.name);
  }
  const std::string code = stage == Stage::light_use ? "no-light-use" : "no-full-cure";
  plan.findings.push_back({code, job::Severity::warning, message, piece.piece.name, piece.piece.where});
}

}  // namespace

job::PieceResult hand_over(job::Plan& plan, const job::Job& job, std::size_t p, Instant expected, Delivered safe) {
  const job::OrderPiece& piece = job.order.pieces[p];
  job::PieceResult result;
  result.id = piece.piece.id;
  result.name = piece.piece.name;
  result.order = piece.order;
  result.due = piece.promised;
  const auto dates = [&](finish::Estimate side, std::optional<Instant> delivered) {
    job::HandOver out;
    out.handle = StageDate(plan, p, Stage::handle, side).date();
    out.wrap = StageDate(plan, p, Stage::pack, side).date();
    out.deliver = delivered;
    out.careful_use = StageDate(plan, p, Stage::light_use, side).date();
    out.full_use = StageDate(plan, p, Stage::full_cure, side).date();
    return out;
  };
  result.ready.expected = dates(finish::Estimate::expected, expected);
  result.ready.slow = dates(finish::Estimate::slow, safe.from);
  result.ready.fast = dates(finish::Estimate::fast, std::nullopt);
  if (result.due) result.slack = Hours(*result.due - safe.until);
  for (const Stage stage : {Stage::light_use, Stage::full_cure}) {
    if (const finish::Product* product = StageDate(plan, p, stage, finish::Estimate::expected).missing())
      say_missing(plan, piece, stage, *product);
  }
  return result;
}

}  // namespace coatday::planner
