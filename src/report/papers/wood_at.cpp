#include "report/papers/wood_at.h"

#include <fmt/core.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "report/sections/wood_board.h"

namespace coatday::report {
namespace {

using Json = nlohmann::ordered_json;

std::string words_of(const climate::Air& air, Units units) {
  return unbroken(format_temperature(air.temperature, units) + ", " + format_humidity(air.humidity));
}

std::string cut_text(wood::RingAngle cut) {
  if (cut == wood::flat_cut) return "flat cut";
  if (cut == wood::quarter_cut) return "quarter cut";
  return fmt::format("rings at {:g}° to the face", cut.value());
}

struct Movement {
  double coefficient;
  MoistureContent from, to;
  tl::expected<Metres, std::string> change;
};

Movement movement_of(const MovedBoard& board, const climate::Air& air) {
  const double coefficient = wood::coefficient_across(*board.species, board.cut);
  const MoistureContent from = wood::equilibrium_moisture(board.from), to = wood::equilibrium_moisture(air);
  return {coefficient, from, to, wood::movement(board.width, coefficient, from, to)};
}

Json air_json(const climate::Air& air) {
  return {{"temperature_c", air.temperature.value()},
          {"relative_humidity", air.humidity.value()},
          {"emc_percent", 100 * wood::equilibrium_moisture(air).value()}};
}

Section board_section(const MovedBoard& board, const climate::Air& air, Units units) {
  const Movement moved = movement_of(board, air);
  const Metres change = moved.change.value();
  const auto length = [units](Metres l) { return unbroken(format_length(l, units)); };
  const std::string title =
      fmt::format("{}, {}, {} wide at {}", board.species->name, cut_text(board.cut), length(board.width), words_of(board.from, units));
  const std::string movement = fmt::format("{} by {} to {}, from {} to {} of moisture, all the way through",
                                           change < Metres(0) ? "shrinks" : "grows", length(Metres(std::abs(change.value()))),
                                           length(board.width + change), moisture_text(moved.from), moisture_text(moved.to));
  return {"board", title, {}, {Paragraph{movement}, Paragraph{fmt::format("coefficient {:.5f} for each 1 %", moved.coefficient)}}};
}

}  // namespace

std::optional<std::string> no_wood_at(const climate::Air& air, const std::optional<MovedBoard>& board, Units units) {
  for (const climate::Air& each : {air, board ? board->from : air}) {
    if (wood::in_moisture_table(each)) continue;
    return fmt::format("no moisture content at {}: the table of equilibria was compared from {} up and from 5 % to 95 % RH",
                       words_of(each, units), format_temperature(Celsius(-1.1), units));
  }
  if (!board) return std::nullopt;
  const Movement moved = movement_of(*board, air);
  if (moved.change) return std::nullopt;
  return fmt::format("no movement from {} to {}: {}", moisture_text(moved.from), moisture_text(moved.to), moved.change.error());
}

Document wood_at(const climate::Air& air, const std::optional<MovedBoard>& board, Units units) {
  const MoistureContent to = wood::equilibrium_moisture(air);
  Document document{"wood at " + words_of(air, units) + " settles at " + moisture_text(to) + " of moisture"};
  document.sections.push_back({"air", {}, {}, {Paragraph{"a piece of it within about 1 % either way (common practice, no source)"}}});
  if (board) document.sections.push_back(board_section(*board, air, units));
  return document;
}

std::string wood_at_json(const climate::Air& air, const std::optional<MovedBoard>& board) {
  Json out{{"schema", "coatday-wood-at/1"}, {"air", air_json(air)}, {"emc_percent", 100 * wood::equilibrium_moisture(air).value()}};
  if (board) {
    const Movement moved = movement_of(*board, air);
    out["species"] = board->species->id;
    out["ring_angle_degrees"] = board->cut.value();
    out["from_air"] = air_json(board->from);
    out["from_emc_percent"] = 100 * moved.from.value();
    out["to_emc_percent"] = 100 * moved.to.value();
    out["coefficient_per_percent"] = moved.coefficient;
    out["from_width_mm"] = 1000 * board->width.value();
    out["width_mm"] = 1000 * (board->width + *moved.change).value();
    out["movement_mm"] = 1000 * moved.change->value();
  }
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace coatday::report
