#include "report/files/json_wood.h"

#include <cmath>

#include "report/files/json_parts.h"

namespace coatday::report {
namespace {

Json millimetres(Metres length) { return std::isnan(length.value()) ? Json() : Json(1000 * length.value()); }
Json percent(MoistureContent m) { return 100 * m.value(); }
Json percent(const std::optional<MoistureContent>& m) { return m ? percent(*m) : Json(); }

Json ready_json(const job::WoodReady& ready, const Zone& zone) {
  return {{"moisture_percent", percent(ready.now)},
          {"measured", ready.measured},
          {"shop_emc_percent", percent(ready.shop)},
          {"room_driest_month_percent", percent(ready.room_driest)},
          {"room_dampest_month_percent", percent(ready.room_dampest)},
          {"band_percent", percent(ready.band)},
          {"ready", ready.ready},
          {"ready_expected", instant_json(ready.ready_at.expected, zone)},
          {"ready_earliest", instant_json(ready.ready_at.fast, zone)},
          {"ready_safe", instant_json(ready.ready_at.slow, zone)},
          {"suits_room", ready.suits_room()}};
}

Json cup_json(const job::Cupping& cup, const std::vector<job::WoodMark>& marks, const Zone& zone) {
  Json over_time = Json::array();
  for (std::size_t m = 0; m < std::min(marks.size(), cup.at_marks.size()); ++m)
    over_time.push_back({{"when", marks[m].name}, {"cup_mm", millimetres(cup.at_marks[m])}});
  return {{"way", cup.way},
          {"highest_mm", millimetres(cup.highest.cup)},
          {"highest_at", instant_json(cup.highest.at, zone)},
          {"highest_spread_mm", {millimetres(cup.least), millimetres(cup.most)}},
          {"settled_mm", millimetres(cup.settled.cup)},
          {"settled_spread_mm", {millimetres(cup.settled_least), millimetres(cup.settled_most)}},
          {"over_time", over_time}};
}

Json fixing_json(const job::FixingCheck& check) {
  const piece::Fixing& fixing = *check.fixing;
  Json out{{"name", text_or_null(fixing.name)},
           {"kind", piece::word(fixing.kind)},
           {"distance_mm", millimetres(fixing.measures.from_fixed_point)},
           {"room_to_each_side_mm", millimetres((fixing.measures.opening - fixing.measures.shank) / 2)}};
  if (!check.play) {
    out["verdict"] = "none";
    out["reason"] = check.play.error();
    return out;
  }
  out["needed_to_each_side_mm"] = millimetres(check.play->needed());
  out["short_by_mm"] = millimetres(check.play->short_by());
  out["opening_needed_mm"] = millimetres(check.opening_needed);
  out["at_least"] = check.at_least;
  out["verdict"] = !check.play->passes() ? "short" : check.at_least ? "none" : "passes";
  return out;
}

Json board_json(const job::WoodBoard& board, const std::vector<job::WoodMark>& marks, const Zone& zone) {
  Json one_face = Json::array();
  for (const job::OneFaceLimit& limit : board.one_face) one_face.push_back({{"step", limit.step}, {"longest_h", limit.longest.count()}});
  Json cups = Json::array(), seasons = Json::array(), fixings = Json::array();
  for (const job::Cupping& cup : board.cups) cups.push_back(cup_json(cup, marks, zone));
  for (const job::SeasonWidth& season : board.seasons) {
    seasons.push_back({{"season", season.name},
                       {"emc_percent", percent(season.equilibrium)},
                       {"change_mm", season.change ? millimetres(*season.change) : Json()},
                       {"reason", season.change ? Json() : Json(season.change.error())}});
  }
  for (const job::FixingCheck& check : board.fixings) fixings.push_back(fixing_json(check));
  return {{"thickness_mm", millimetres(board.thickness)},
          {"width_mm", millimetres(board.width)},
          {"coefficient_per_percent", board.coefficient},
          {"cut_stated", board.cut_said},
          {"cup_limit_mm", board.cup_limit ? millimetres(*board.cup_limit) : Json()},
          {"one_face_coated", one_face},
          {"cups", cups},
          {"cups_note", text_or_null(board.no_cup)},
          {"held_bow_mm", millimetres(board.held.bow)},
          {"held_pull_n_per_m", board.held.at_each_edge.value()},
          {"fixed_at_percent", percent(board.when_fixed)},
          {"seasons", seasons},
          {"beyond_coefficient_range", board.beyond_range},
          {"at_edges_inwards_mm", board.at_edges ? millimetres(board.at_edges->inwards) : Json()},
          {"at_edges_outwards_mm", board.at_edges ? millimetres(board.at_edges->outwards) : Json()},
          {"customary_room_mm", millimetres(wood::customary_room)},
          {"fixings", fixings}};
}

}  // namespace

std::string wood_json(const job::Job& job, const job::Plan& plan, const job::WoodFindings& wood, std::string_view version) {
  const Zone& zone = plan.shop.zone;
  Json out{{"schema", "coatday-wood/2"},
           {"program", {{"name", "coatday"}, {"version", version}}},
           {"order", job.order.name},
           {"from", iso8601(plan.from, zone)},
           {"room", text_or_null(wood.room)},
           {"moves_in", iso8601(wood.moves_in, zone)},
           {"until", iso8601(wood.until, zone)},
           {"films", wood.films},
           {"hours_beyond_table", wood.hours_beyond_table}};
  Json& parts = out["parts"] = Json::array();
  for (const job::WoodPart& part : wood.parts) {
    Json row{{"piece", job.order.pieces[part.piece].piece.id},
             {"part", job.order.pieces[part.piece].piece.parts[part.part].id},
             {"name", part.name}};
    if (!part.skipped.empty()) row["left_out"] = part.skipped;
    if (part.skipped.empty()) row["ready"] = ready_json(part.ready, zone);
    if (part.board) row["board"] = board_json(*part.board, wood.marks, zone);
    parts.push_back(std::move(row));
  }
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace coatday::report
