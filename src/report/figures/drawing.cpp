#include "report/figures/drawing.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "report/document/element.h"
#include "report/figures/sizes.h"
#include "report/figures/views.h"
#include "report/sections/faces.h"

namespace coatday::report::page {
namespace {

/// What a face gets; of several loads of one part the one that gets least.
struct Coats {
  int count = 0;
  bool declared = false;  ///< fewer than the schedule has, for a reason
};

std::optional<Coats> coats_of(const job::Plan& plan, std::size_t piece, const std::string& part, const std::string& face) {
  std::optional<Coats> found;
  for (const job::FaceEntry& entry : plan.faces) {
    if (entry.piece != piece || entry.part_id != part || entry.face != face || masked(entry)) continue;
    if (!found || entry.coats < found->count) found = Coats{entry.coats, entry.exception && !entry.exception->reason.empty()};
  }
  return found;
}

std::string coat_text(const std::optional<Coats>& coats) {
  if (!coats) return "not coated";
  if (coats->count > 0) return counted(static_cast<std::size_t>(coats->count), "coat", "coats");
  return coats->declared ? "no coat, as declared" : "BARE";
}

std::string shade(const std::optional<Coats>& coats) {
  constexpr int darkest = 6;
  if (!coats) return "masked";
  if (coats->count > 0) return fmt::format("c{}", std::min(coats->count, darkest));
  return coats->declared ? "declared" : "bare";
}

std::string path_of(const std::vector<Loop>& loops) {
  std::string path;
  for (const Loop& loop : loops) {
    if (loop.radius > 0) {
      const Point& c = loop.corners.front();
      const std::string r = number(loop.radius), d = number(2 * loop.radius);
      path += fmt::format("M{} {}a{} {} 0 1 0 {} 0a{} {} 0 1 0 -{} 0z", number(c.x - loop.radius), number(c.y), r, r, d, r, r, d);
      continue;
    }
    for (std::size_t i = 0; i < loop.corners.size(); ++i) {
      path += fmt::format("{}{} {}", i == 0 ? "M" : "L", number(loop.corners[i].x), number(loop.corners[i].y));
    }
    path += "z";
  }
  return path;
}

// "BARE" where there is room for it, else the figure alone.
void draw_figure(Element svg, const Patch& patch, const std::optional<Coats>& coats) {
  if (!coats || patch.tall < 12 || patch.room < 12) return;
  const bool bare = coats->count == 0 && !coats->declared;
  const std::string text = bare && patch.room >= 40 ? "BARE" : fmt::format("{}", coats->count);
  svg.add("text", {{"class", "on-" + shade(coats)}, {"x", number(patch.middle.x)}, {"y", number(patch.middle.y + 4)}}, text);
}

void draw_view(Element parent, const job::Plan& plan, std::size_t piece, const piece::Part& part, const View& view) {
  Element figure = parent.add("div", {{"class", "view"}});
  std::vector<std::string> faces;
  for (const Patch& patch : view.patches) faces.push_back(patch.face + ": " + coat_text(coats_of(plan, piece, part.id, patch.face)));
  const std::string width = number(std::ceil(view.width)), height = number(std::ceil(view.height));
  Element svg = figure.add("svg", {{"class", "part"},
                                   {"width", width},
                                   {"height", height},
                                   {"viewBox", "0 0 " + width + " " + height},
                                   {"role", "img"},
                                   {"aria-label", part.name + " " + view.title + "; " + listed(faces)}});
  for (const Patch& patch : view.patches) {
    const auto coats = coats_of(plan, piece, part.id, patch.face);
    svg.add("path", {{"class", shade(coats)}, {"fill-rule", "evenodd"}, {"d", path_of(patch.loops)}});
    if (!patch.lines.empty()) svg.add("path", {{"class", "outline"}, {"d", path_of(patch.lines)}});
    draw_figure(svg, patch, coats);
  }
  figure.add("span", {{"class", "from"}}, view.title);
}

// "4 coats on every face", or each face that gets other than the most.
std::string part_coats(const job::Plan& plan, std::size_t piece, const piece::Part& part) {
  std::vector<std::string> words;
  int most = 0;
  std::vector<std::pair<std::string, Coats>> faces;
  for (const piece::PartFace& face : piece::faces_of(part)) {
    const auto coats = coats_of(plan, piece, part.id, face.face.name);
    if (!coats) continue;
    faces.emplace_back(face.face.name, *coats);
    most = std::max(most, coats->count);
  }
  for (const auto& [name, coats] : faces) {
    if (coats.count != most) words.push_back(name + ": " + coat_text(coats));
  }
  const std::string all = counted(static_cast<std::size_t>(most), "film coat", "film coats");
  return words.empty() ? all + " on every face" : all + "; but " + listed(words);
}

bool short_of_coats(const job::Plan& plan, std::size_t piece, const piece::Part& part) {
  return std::any_of(plan.faces.begin(), plan.faces.end(), [&](const job::FaceEntry& face) {
    return face.piece == piece && face.part_id == part.id && face.coats == 0 && !masked(face) &&
           !(face.exception && !face.exception->reason.empty());
  });
}

void draw_part(Element parent, const job::Plan& plan, std::size_t piece, const piece::Part& part, DrawingScale scale, Units units) {
  Element figure = parent.add("figure", {{"class", short_of_coats(plan, piece, part) ? "part left-behind" : "part"}});
  Element views = figure.add("div", {{"class", "views"}});
  for (const View& view : views_of(part.shape, scale)) draw_view(views, plan, piece, part, view);
  Element caption = figure.add("figcaption", {});
  caption.add("b", {}).name(part.name);
  if (part.count > 1) caption.text(fmt::format(" × {}", part.count));
  caption.add("span", {}, size_text(part.shape, units) + ", " + part.species.value_or("steel"));
  caption.add("span", {}, part_coats(plan, piece, part));
}

std::string legend_text(const std::string& kind) {
  if (kind == "masked") return "masked";
  if (kind == "bare") return "BARE";
  if (kind == "declared") return "no coat, as declared";
  return kind.substr(1) + (kind == "c1" ? " film coat" : " film coats");
}

void draw_legend(Element parent, const job::Plan& plan) {
  std::set<std::string> kinds;
  for (const job::FaceEntry& face : plan.faces) {
    const bool declared = face.exception && !face.exception->reason.empty();
    kinds.insert(shade(masked(face) ? std::nullopt : std::optional(Coats{face.coats, declared})));
  }
  Element list = parent.add("ul", {{"class", "legend"}});
  for (const std::string& kind : kinds) {
    Element item = list.add("li", {});
    Element svg = item.add("svg", {{"width", "26"}, {"height", "14"}, {"class", "part"}, {"aria-hidden", "true"}});
    svg.add("path", {{"class", kind}, {"d", "M1 1h24v12h-24z"}});
    item.text(legend_text(kind));
  }
  list.add("li", {}, "edges and ends are folded out, and drawn no thinner than can be seen");
}

void draw_piece(Element parent, const job::Job& job, const job::Plan& plan, std::size_t piece, Units units) {
  constexpr double widest = 280;  // pixels: a phone's width, and two beside each other on paper
  const piece::Piece& drawn = job.order.pieces.at(piece).piece;
  Metres longest{0.1};
  for (const piece::Part& part : drawn.parts) longest = std::max(longest, longest_of(part.shape));
  Element parts = parent.add("div", {{"class", "parts"}});
  for (const piece::Part& part : drawn.parts) draw_part(parts, plan, piece, part, {widest / longest.value()}, units);
}

}  // namespace

Section drawings(const job::Job& job, const job::Plan& plan, const Texts& texts, const ChosenPieces& chosen) {
  Section section{"pieces", "Pieces"};
  section.media = Media::page;
  section.blocks.emplace_back(Figure{"", [&plan](Element parent) { draw_legend(parent, plan); }});
  for (std::size_t piece = 0; piece < job.order.pieces.size(); ++piece) {
    if (!chosen.has(piece)) continue;
    Section one;
    const Units units = texts.units;
    one.blocks.emplace_back(Figure{"", [&job, &plan, piece, units](Element parent) { draw_piece(parent, job, plan, piece, units); }});
    if (job.order.pieces.size() > 1) one.title = typed(job.order.pieces[piece].piece.name);
    one.kind = "piece";
    section.blocks.emplace_back(std::move(one));
  }
  return section;
}

}  // namespace coatday::report::page
