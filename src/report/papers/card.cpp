#include "report/papers/card.h"

#include <fmt/core.h>

#include <algorithm>

#include "report/sections/care.h"
#include "report/sections/faces.h"
#include "report/sections/ledger_blocks.h"
#include "report/words.h"
#include "wood/movement.h"

namespace coatday::report {
namespace {

// A home's air through the year: 30 to 50 % is what the US EPA calls ideal ("A Brief Guide to Mold, Moisture, and Your Home", from memory),
// at 21 °C, common practice.
constexpr climate::Air dry_home{Celsius(21), RelativeHumidity(0.30)}, damp_home{Celsius(21), RelativeHumidity(0.50)};

/// The first whole day after it.
std::string day_after(Instant t, const Zone& zone) {
  const LocalTime local = zone.to_local(t);
  const LocalDay day = day_of(local) == local ? day_of(local) : day_of(local) + date::days(1);
  return unbroken(long_date(day));
}

/// "oil stain, wiped; dewaxed shellac; 3 coats of water-based clear"
std::string coats_text(const job::Plan& plan, const LedgerBlock& block) {
  std::vector<std::pair<std::string, int>> runs;
  for (const LedgerColumn& column : block.columns) {
    if (runs.empty() || runs.back().first != column.product) runs.emplace_back(column.product, 0);
    ++runs.back().second;
  }
  std::string out;
  for (const auto& [product, coats] : runs)
    out += (out.empty() ? "" : "; ") + (coats > 1 ? fmt::format("{} coats of ", coats) : "") + product_name(plan, product);
  return out;
}

/// "black walnut" for the handbook's "Walnut, black".
std::string material_text(const job::FaceEntry& face) {
  const wood::Species* species = face.wood ? wood::find_species(face.material) : nullptr;
  if (species == nullptr) return face.material;
  std::string name(species->name);
  if (name.front() >= 'A' && name.front() <= 'Z') name.front() = static_cast<char>(name.front() - 'A' + 'a');
  const std::size_t comma = name.find(", ");
  return comma == std::string::npos ? name : name.substr(comma + 2) + " " + name.substr(0, comma);
}

/// Points, and cautions where they begin with "! ".
void add_points(Section& section, const std::vector<std::string>& items) {
  for (const std::string& item : items) {
    const bool caution = item.starts_with("! ");
    const List::Kind kind = caution ? List::Kind::cautions : List::Kind::points;
    const auto* last = section.blocks.empty() ? nullptr : std::get_if<List>(&section.blocks.back());
    if (last == nullptr || last->kind != kind) section.blocks.push_back(List{kind, {}});
    std::get<List>(section.blocks.back()).items.emplace_back(caution ? item.substr(2) : item);
  }
}

Section points(const char* id, const char* title, const std::vector<std::string>& items) {
  Section section{id, title};
  add_points(section, items);
  return section;
}

std::vector<LedgerBlock> blocks_of(const job::Plan& plan, std::size_t piece) {
  std::vector<LedgerBlock> blocks;
  for (const LedgerBlock& block : ledger_blocks(plan)) {
    LedgerBlock mine{block.columns, {}};
    for (const LedgerRow& row : block.rows) {
      if (row.part->piece == piece) mine.rows.push_back(row);
    }
    if (!mine.rows.empty() && !mine.columns.empty()) blocks.push_back(std::move(mine));
  }
  return blocks;
}

Section finished_with(const job::Plan& plan, const std::vector<LedgerBlock>& blocks) {
  std::vector<std::string> items;
  const auto add_new = [](std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  for (const LedgerBlock& block : blocks) {
    std::vector<std::string> parts, materials;
    for (const LedgerRow& row : block.rows) {
      add_new(parts, row.part->part);
      add_new(materials, material_text(*row.part));
    }
    items.push_back(listed(parts) + " (" + listed(materials) + "): " + coats_text(plan, block));
    for (const LedgerRow& row : block.rows) {
      if (row.exception != nullptr) items.push_back(row.part->part + ", " + row.faces + ": " + row.exception->reason);
    }
  }
  return points("finish", "What it is finished with", items);
}

Section when(const job::HandOver& ready, const Zone& zone) {
  const auto from = [&zone](const std::optional<Instant>& t) { return t ? day_after(*t, zone) : "ask us"; };
  return {"when",
          "From when you may use it",
          {},
          {Facts{{{from(ready.wrap), "carry it, wrapped if need be, and stand it in its place"},
                  {from(ready.careful_use), "careful use: light, dry, cool things, lifted and not pushed"},
                  {from(ready.full_use), "all that it was made for, with a mat under what is hot or wet"}}}}};
}

Section not_yet(const std::optional<Instant>& hard, const Zone& zone) {
  const std::string until = hard ? "Before " + day_after(*hard, zone) : "Until we let you know";
  Section section{"hardens", "Until it is hard", {}, {Paragraph{until + " it still hardens, though it feels dry. Till that day please:"}}};
  add_points(section, {"nothing hot and nothing wet on it, not even on a mat", "no cloth, rubber feet, plastic or tape lying on it",
                       "no cleaning but with a soft, dry cloth",
                       "do not leave it wrapped up or covered; let air come to it, with drawers and doors open"});
  return section;
}

Section care(const job::Plan& plan, const std::vector<LedgerBlock>& blocks) {
  std::vector<std::string> items;
  for (const LedgerBlock& block : blocks) {
    const auto top = plan.products.find(block.columns.back().product);
    if (top == plan.products.end()) continue;
    for (const std::string& words : care_text(top->second)) {
      if (std::find(items.begin(), items.end(), words) == items.end()) items.push_back(words);
    }
  }
  return points("care", "How to look after it", items);
}

std::optional<Metres> across(const piece::Part& part) {
  if (!part.wood()) return std::nullopt;
  if (const auto* board = std::get_if<piece::Board>(&part.shape)) return board->width;
  if (const auto* top = std::get_if<piece::RoundTop>(&part.shape)) return top->diameter;
  return std::nullopt;
}

std::optional<Metres> movement_of(const piece::Part& part) {
  const wood::Species* species = wood::find_species(*part.species);
  if (species == nullptr) return std::nullopt;
  const auto moved = wood::movement(*across(part), wood::coefficient_across(*species, wood::flat_cut), wood::equilibrium_moisture(dry_home),
                                    wood::equilibrium_moisture(damp_home));
  return moved ? std::optional(*moved) : std::nullopt;
}

std::optional<Section> movement(const piece::Piece& piece, const Texts& texts) {
  if (std::none_of(piece.parts.begin(), piece.parts.end(), [](const piece::Part& part) { return part.wood(); })) return std::nullopt;
  const piece::Part* widest = nullptr;
  for (const piece::Part& part : piece.parts) {
    if (across(part) && (widest == nullptr || *across(part) > *across(*widest))) widest = &part;
  }
  std::vector<std::string> items{
      "It takes up water from damp air and gives it back to dry air, under any finish; the finish only slows it."};
  if (const auto movement = widest == nullptr ? std::nullopt : movement_of(*widest)) {
    items.push_back(fmt::format("The {} grows wider when the air is damp and narrower when a heated room is dry, by up to about {}.",
                                widest->name, texts.length(*movement)));
  }
  items.emplace_back("Keep it from stoves, radiators and the sun; leave screws and fittings that let it move as they are.");
  return points("movement", "Wood moves", items);
}

Section food(const job::Plan& plan, const piece::Piece& piece, const std::vector<LedgerBlock>& blocks) {
  const bool fit = piece.food_contact && std::all_of(blocks.begin(), blocks.end(), [&plan](const LedgerBlock& block) {
                     const auto top = plan.products.find(block.columns.back().product);
                     return top != plan.products.end() && top->second.food_contact_when_cured;
                   });
  return points("food", "Food and children",
                {fit ? "It is meant to touch food, once it is fully hard and washed; what may do so is decided by the law and by the label "
                       "of the finish, not by this card."
                     : "It is not made for food to lie on it. What may touch food is decided by the law and by the label of the finish.",
                 "Whether it is fit for a cot, a toy, or what a child puts into its mouth is decided by the law and by the label, too. Ask "
                 "us before you use it so."});
}

/// What the words above rest on.
Section for_the_maker(const job::Plan& plan, const Texts& texts) {
  std::vector<std::string> items{
      "Dates are safe to promise, in whole days; the piece is expected to be ready sooner (coatday plan). They hold while the piece stands "
      "in air "
      "like the shop's."};
  for (const auto& [id, product] : plan.products) {
    const auto source = product.sources.find("times.full cure");
    if (source != product.sources.end()) items.push_back("full use of " + product.name + ": " + source->second);
  }
  items.emplace_back(
      "What not to do and how to look after it: common practice, no source. The label of the finish overrules it; keep the labels.");
  items.push_back("Movement: the widest board, flat-sawn, between 30 % and 50 % RH at " + format_temperature(Celsius(21), texts.units) +
                  " (the range that the US EPA calls ideal indoors, from memory); coefficients of the Wood Handbook, table 13-5. "
                  "Quarter-sawn moves less, a damper house more.");
  items.emplace_back(
      "Finishes are named by their class. Food, children and what must be declared are for the law and the labels; this card "
      "is no certificate.");
  Section section = points("maker", "For you, to be cut off", items);
  section.cut_off = true;
  return section;
}

void add_piece(std::vector<Section>& sections, const job::Plan& plan, const piece::Piece& piece, std::size_t index, const Texts& texts) {
  const job::PieceResult& result = plan.pieces.at(index);
  const std::vector<LedgerBlock> blocks = blocks_of(plan, index);
  sections.push_back({"piece-" + std::to_string(index + 1), typed(result.name)});
  sections.push_back(finished_with(plan, blocks));
  sections.push_back(when(result.ready.slow, texts.zone));
  sections.push_back(not_yet(result.ready.slow.full_use, texts.zone));
  sections.push_back(care(plan, blocks));
  if (auto section = movement(piece, texts)) sections.push_back(*std::move(section));
  sections.push_back(food(plan, piece, blocks));
}

}  // namespace

Document card(const job::Plan& plan, const job::Job& job, const Texts& texts) {
  Document document;
  for (std::size_t piece = 0; piece < plan.pieces.size(); ++piece)
    add_piece(document.sections, plan, job.order.pieces.at(piece).piece, piece, texts);
  document.sections.push_back(for_the_maker(plan, texts));
  return document;
}

}  // namespace coatday::report
