// What keeps the rest from being judged. One code for all of it: these are slips of whoever wrote the plan, not of the plan.

#include <algorithm>
#include <set>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

class References {
 public:
  References(const job::Plan& plan, const job::Job& job) : plan_(plan), job_(job) {}

  Breaches run() {
    for (const job::FaceEntry& face : plan_.faces) check(face);
    if (!out_.empty()) return std::move(out_);
    for (const job::Event& event : plan_.events) check(event);
    for (const job::PlaceUse& use : plan_.places) {
      if (use.event >= plan_.events.size() || use.until < use.from)
        broken("the place " + use.place + " is held for no event, or backwards");
    }
    return std::move(out_);
  }

 private:
  void broken(std::string message) { out_.push_back({"broken-reference", std::move(message)}); }

  void check(const job::FaceEntry& face) {
    if (face.piece >= job_.order.pieces.size()) return broken("face " + face.id + " is of no piece");
    const std::vector<piece::Part>& parts = job_.order.pieces[face.piece].piece.parts;
    const auto part = std::find_if(parts.begin(), parts.end(), [&](const piece::Part& p) { return p.id == face.part_id; });
    if (part == parts.end()) return broken("face " + face.id + " is of no part of its piece");
    const auto faces = piece::faces_of(*part);
    if (std::none_of(faces.begin(), faces.end(), [&](const piece::PartFace& f) { return f.face.name == face.face; })) {
      return broken(fmt::format("{} has no face '{}'", part->name, face.face));
    }
    if (job_.catalogue.schedule(part->schedule) == nullptr) broken(fmt::format("{} has no known schedule", part->name));
  }

  void check(const job::Event& event) {
    if (!ids_.insert(event.id).second) broken(event.id + " stands twice in the plan");
    if (job::to_string(event.step_id) != event.id) broken(event.id + " is not what its id means");
    if (event.end < event.start) broken(event.id + " ends before it starts");
    if (event.piece && *event.piece >= job_.order.pieces.size()) broken(event.id + " is of no piece");
    for (const std::size_t face : event.faces) {
      if (face >= plan_.faces.size()) return broken(event.id + " has a face that is not in the ledger");
      if (event.piece != plan_.faces[face].piece) broken(event.id + " has a face of another piece");
    }
    if (!event.product.empty() && job_.catalogue.product(event.product) == nullptr) broken(event.id + " takes an unknown product");
    if (!event.product.empty() && (event.faces.empty() || event.step.empty())) broken(event.id + " is a coat on nothing");
    if (!event.step.empty() && event.step_id.load.empty()) broken(event.id + " does not name its load");
  }

  const job::Plan& plan_;
  const job::Job& job_;
  Breaches out_;
  std::set<std::string> ids_;
};

}  // namespace

Breaches broken_references(const job::Plan& plan, const job::Job& job) { return References(plan, job).run(); }

}  // namespace coatday::checker
