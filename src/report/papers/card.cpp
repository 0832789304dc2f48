#include "report/papers/card.h"

#include <fmt/core.h>

#include <algorithm>
#include <set>

#include "report/sections/care.h"
#include "report/sections/faces.h"
#include "report/sections/ledger.h"
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

Lines heading(const char* words) { return {"", Text(words, Mark::strong)}; }
Lines item(const std::string& words, const TextStyle& style) {
  return words.starts_with("! ") ? hang("  ! ", words.substr(2), style) : hang("  - ", words, style);
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

class Card {
 public:
  Card(const job::Plan& plan, const job::Job& job, std::size_t piece, const TextStyle& style)
      : plan_(plan), result_(plan.pieces.at(piece)), piece_(job.order.pieces.at(piece).piece), style_(style) {
    for (const LedgerBlock& block : ledger_blocks(plan)) {
      LedgerBlock mine{block.columns, {}};
      for (const LedgerRow& row : block.rows) {
        if (row.part->piece == piece) mine.rows.push_back(row);
      }
      if (!mine.rows.empty() && !mine.columns.empty()) blocks_.push_back(std::move(mine));
    }
  }

  [[nodiscard]] Lines lines() const {
    Lines all = wrap(Text(result_.name, Mark::strong), style_.columns);
    for (const Lines& section : {finished_with(), when(), not_yet(), care(), wood(), food()}) append(all, section);
    return all;
  }

 private:
  [[nodiscard]] Lines finished_with() const {
    Lines lines = heading("What it is finished with");
    for (const LedgerBlock& block : blocks_) {
      std::vector<std::string> parts, materials;
      for (const LedgerRow& row : block.rows) {
        if (std::find(parts.begin(), parts.end(), row.part->part) == parts.end()) parts.push_back(row.part->part);
        const std::string material = material_text(*row.part);
        if (std::find(materials.begin(), materials.end(), material) == materials.end()) materials.push_back(material);
      }
      append(lines, item(listed(parts) + " (" + listed(materials) + "): " + coats_text(plan_, block), style_));
      for (const LedgerRow& row : block.rows) {
        if (row.exception != nullptr) append(lines, hang("    ", row.part->part + ", " + row.faces + ": " + row.exception->reason, style_));
      }
    }
    return lines;
  }

  [[nodiscard]] Lines when() const {
    Lines lines = heading("From when you may use it");
    const auto add = [&](const std::optional<Instant>& t, const char* words) {
      const std::string day = t ? day_after(*t, plan_.shop.zone) : "ask us";
      append(lines, hang("  " + padded(day, date_width), words, style_));
    };
    add(result_.ready_late.pack, "carry it, wrapped if need be, and stand it in its place");
    add(result_.ready_late.light_use, "careful use: light, dry, cool things, lifted and not pushed");
    add(result_.ready_late.full_cure, "all that it was made for, with a mat under what is hot or wet");
    return lines;
  }

  [[nodiscard]] Lines not_yet() const {
    const auto& hard = result_.ready_late.full_cure;
    Lines lines = heading("Until it is hard");
    const std::string until = hard ? "Before " + day_after(*hard, plan_.shop.zone) : "Until we tell you";
    append(lines, hang("  ", until + " it still hardens, though it feels dry. Till that day please:", style_));
    for (const char* words : {"nothing hot and nothing wet on it, not even on a mat", "no cloth, rubber feet, plastic or tape lying on it",
                              "no cleaning but with a soft, dry cloth",
                              "do not leave it wrapped up or covered; let air come to it, with drawers and doors open"})
      append(lines, item(words, style_));
    return lines;
  }

  [[nodiscard]] Lines care() const {
    Lines lines = heading("How to look after it");
    std::set<std::string> told;
    for (const LedgerBlock& block : blocks_) {
      const auto top = plan_.products.find(block.columns.back().product);
      if (top == plan_.products.end()) continue;
      for (const std::string& words : care_words(top->second)) {
        if (told.insert(words).second) append(lines, item(words, style_));
      }
    }
    return lines;
  }

  [[nodiscard]] Lines wood() const {
    const piece::Part* widest = nullptr;
    for (const piece::Part& part : piece_.parts) {
      if (across(part) && (widest == nullptr || *across(part) > *across(*widest))) widest = &part;
    }
    if (std::none_of(piece_.parts.begin(), piece_.parts.end(), [](const piece::Part& part) { return part.wood(); })) return {};
    Lines lines = heading("Wood moves");
    append(lines,
           item("It takes up water from damp air and gives it back to dry air, under any finish; the finish only slows it.", style_));
    const auto movement = widest == nullptr ? std::nullopt : movement_of(*widest);
    if (movement) {
      append(lines, item(fmt::format("The {} grows wider when the air is damp and narrower when a heated room is dry, by up to about {}.",
                                     widest->name, unbroken(format_length(*movement, style_.units))),
                         style_));
    }
    append(lines, item("Keep it from stoves, radiators and the sun; leave screws and fittings that let it move as they are.", style_));
    return lines;
  }

  [[nodiscard]] Lines food() const {
    Lines lines = heading("Food and children");
    const bool fit = piece_.food_contact && std::all_of(blocks_.begin(), blocks_.end(), [this](const LedgerBlock& block) {
                       const auto top = plan_.products.find(block.columns.back().product);
                       return top != plan_.products.end() && top->second.food_contact_when_cured;
                     });
    append(lines,
           item(fit ? "It is meant to touch food, once it is fully hard and washed; what may do so is decided by the law and by the label "
                      "of the finish, not by this card."
                    : "It is not made for food to lie on it. What may touch food is decided by the law and by the label of the finish.",
                style_));
    append(lines, item("Whether it is fit for a cot, a toy, or what a child puts into its mouth is decided by the law and by the label, "
                       "too. Ask us before you use it so.",
                       style_));
    return lines;
  }

  static std::optional<Metres> across(const piece::Part& part) {
    if (!part.wood()) return std::nullopt;
    if (const auto* board = std::get_if<piece::Board>(&part.shape)) return board->width;
    if (const auto* top = std::get_if<piece::RoundTop>(&part.shape)) return top->diameter;
    return std::nullopt;
  }

  static std::optional<Metres> movement_of(const piece::Part& part) {
    const wood::Species* species = wood::find_species(*part.species);
    if (species == nullptr) return std::nullopt;
    const auto moved = wood::movement(*across(part), wood::coefficient_across(*species, wood::flat_cut),
                                      wood::equilibrium_moisture(dry_home), wood::equilibrium_moisture(damp_home));
    return moved ? std::optional(*moved) : std::nullopt;
  }

  static constexpr int date_width = 18;
  const job::Plan& plan_;
  const job::PieceResult& result_;
  const piece::Piece& piece_;
  const TextStyle& style_;
  std::vector<LedgerBlock> blocks_;
};

/// What the words above rest on.
Lines for_the_maker(const job::Plan& plan, const TextStyle& style) {
  Lines lines{std::string(static_cast<std::size_t>(style.columns), '-'), Text("For you, to be cut off", Mark::strong)};
  append(lines, item("Dates are the first whole days after the late side; it is expected sooner (coatday plan). They hold while the piece "
                     "stands in air like the shop's.",
                     style));
  for (const auto& [id, product] : plan.products) {
    const auto source = product.sources.find("times.full cure");
    if (source != product.sources.end()) append(lines, item("full cure of " + product.name + ": " + source->second, style));
  }
  append(lines,
         item("What not to do and how to look after it: common practice, no source. The label of the finish overrules it; keep the labels.",
              style));
  append(lines,
         item("Movement: the widest board, flat-sawn, between 30 % and 50 % RH at " + format_temperature(Celsius(21), style.units) +
                  " (the range that the US EPA calls ideal "
                  "indoors, from memory); coefficients of the Wood Handbook, table 13-5. Quarter-sawn moves less, a damper house more.",
              style));
  append(lines, item("Finishes are told by their class. Food, children and what must be declared are for the law and the labels; this card "
                     "is no certificate.",
                     style));
  return lines;
}

}  // namespace

std::string card_text(const job::Plan& plan, const job::Job& job, const TextStyle& style) {
  std::string text;
  for (std::size_t piece = 0; piece < plan.pieces.size(); ++piece) text += render(Card(plan, job, piece, style).lines(), false) + "\n";
  return text + render(for_the_maker(plan, style), false);
}

}  // namespace coatday::report
