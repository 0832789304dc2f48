#include "input/order.h"

#include <fmt/core.h>

#include <set>

#include "input/amounts.h"
#include "input/choices.h"
#include "input/customer_room.h"
#include "input/names.h"
#include "input/part.h"
#include "input/wood.h"
#include "input/work.h"

namespace coatday::input {
namespace {

using job::OrderPiece;
using job::OrderWork;

const Keys piece_keys{"piece",   "promised", "importance", "food contact", "schedule", "species", "material",
                      "support", "kept at",  "parts",      "work",         "moisture", "cut",     "cup limit"};
const Keys work_keys{"name", "when", "takes",     "rest",       "parts",     "stage", "people",
                     "hot",  "dust", "may pause", "not before", "not after", "start"};

// A promise by date is kept until that day's work ends.
auto promise_in(const shop::Shop& shop) {
  return [&shop](std::string_view typed) {
    return parse_moment(typed).map(
        [&shop](const Moment& m) { return m.whole_day ? end_of_work(shop, day_of(m.time)) : shop.zone.to_instant(m.time); });
  };
}

struct Reader {
  const Surroundings& around;
  const shop::Shop& shop;  // a bare one where there is none
  Mistakes& mistakes;
  std::optional<Instant> start{}, promised{};  // the order's
  double importance = 1;
  job::AirMaker room{};
  MoistureContent moisture_band = job::usual_moisture_band;

  void read_promise(const Fields& fields, std::optional<Instant>& at) const {
    if (around.shop == nullptr || !fields.take("promised", at, promise_in(shop))) return;
    if (start && *at < *start) fields.mistake("promised", "this is promised before the order starts");
  }

  void read_when(const Fields& fields, OrderWork& work) const {
    When when = When::before_finishing;
    if (!fields.must("when", when, parse_when)) return;
    work.delivery = when == When::delivery;
    work.when = when == When::before_finishing ? OrderWork::When::before_finishing : OrderWork::When::after_finishing;
    fields.take("stage", work.stage, parse_stage);
    if (when == When::before_finishing && fields.has("stage")) fields.mistake("stage", "'stage' goes with work after finishing");
  }

  OrderWork read_order_work(const Value& value, const std::map<std::string, std::string>& id_of_part, Ids& ids) const {
    const Fields fields(value, "work", work_keys, mistakes);
    OrderWork work;
    work.work = read_work(fields, shop);
    work.work.id = ids.make(work.work.name, "work");
    read_when(fields, work);
    work.parts = each_text(fields.list("parts"), mistakes, [&](std::string_view typed) -> Parsed<std::string> {
      const auto id = id_of_part.find(std::string(typed));
      if (id == id_of_part.end()) return tl::make_unexpected(unknown("part", typed, keys_of(id_of_part)));
      return id->second;
    });
    return work;
  }

  // Names of the parts, with their ids.
  std::map<std::string, std::string> read_parts(const Fields& fields, const Common& common, piece::Piece& piece) const {
    std::map<std::string, std::string> id_of;
    Ids ids;
    fields.need("parts");
    for (const Value& value : fields.list("parts")) {
      piece::Part part = read_part(value, common, around, mistakes);
      part.id = ids.make(part.name, "part");
      if (!part.name.empty() && !id_of.emplace(part.name, part.id).second)
        mistakes.add(part.where, fmt::format("two parts have the name {}", in_quotes(part.name)));
      piece.parts.push_back(std::move(part));
    }
    if (fields.has_empty_list("parts")) fields.mistake("parts", "a piece needs a part");
    return id_of;
  }

  void read_piece_work(const Fields& fields, const std::map<std::string, std::string>& id_of_part, OrderPiece& piece) const {
    Ids ids;
    bool delivered = false;
    for (const Value& value : fields.list("work")) {
      OrderWork work = read_order_work(value, id_of_part, ids);
      if (delivered) mistakes.add(work.work.where, "no work comes after the delivery");
      delivered = delivered || work.delivery;
      piece.work.push_back(std::move(work));
    }
  }

  OrderPiece read_piece(const Value& value, const Common& outer) const {
    const Fields fields(value, "a piece", piece_keys, mistakes);
    OrderPiece piece;
    piece.piece.where = fields.where();
    piece.promised = promised;
    piece.start = start;
    piece.importance = importance;
    piece.room = room;
    piece.moisture_band = moisture_band;
    fields.must("piece", piece.piece.name, parse_name);
    fields.take("food contact", piece.piece.food_contact, parse_yes_no);
    read_promise(fields, piece.promised);
    fields.take("importance", piece.importance, parse_importance);
    const auto id_of_part = read_parts(fields, over(outer, fields, around, mistakes), piece.piece);
    read_piece_work(fields, id_of_part, piece);
    return piece;
  }

  job::Done read_done(const Value& value) const {
    const Fields fields(value, "an entry of the history", {"event", "start", "end"}, mistakes);
    job::Done done;
    done.where = fields.where("event");
    fields.must("event", done.event, parse_name);
    const bool started = fields.must("start", done.start, instant_in(shop.zone));
    const bool ended = fields.must("end", done.end, instant_in(shop.zone));
    if (started && ended && done.end < done.start) fields.mistake("end", "this ends before it starts");
    return done;
  }
};

void read_pieces(const Fields& fields, const Reader& reader, const Common& common, job::Order& order) {
  std::set<std::string> names;
  Ids ids{"shop", "cans"};  // with these begin the ids of the shop's own work, and of cans that are carried in
  fields.need("pieces");
  for (const Value& value : fields.list("pieces")) {
    OrderPiece piece = reader.read_piece(value, common);
    piece.piece.id = ids.make(piece.piece.name, "piece");
    if (!piece.piece.name.empty() && !names.insert(piece.piece.name).second) {
      reader.mistakes.add(piece.piece.where, fmt::format("two pieces have the name {}", in_quotes(piece.piece.name)));
    }
    order.pieces.push_back(std::move(piece));
  }
  if (fields.has_empty_list("pieces")) fields.mistake("pieces", "an order needs a piece");
}

}  // namespace

const Keys& order_keys() {
  static const Keys keys{"order",        "shop",     "start",   "promised",  "importance",    "schedule",
                         "species",      "material", "support", "kept at",   "pieces",        "history",
                         "own finishes", "moisture", "cut",     "cup limit", "moisture band", "customer room"};
  return keys;
}

job::Order read_order(const Fields& fields, const std::string& file, const Surroundings& around, Mistakes& mistakes) {
  const shop::Shop bare;
  const shop::Shop& shop = around.shop == nullptr ? bare : *around.shop;
  job::Order order;
  order.file = file;
  fields.must("order", order.name, parse_name);
  fields.take("start", order.start, instant_in(shop.zone));
  Reader reader{around, shop, mistakes, order.start};
  reader.read_promise(fields, reader.promised);
  fields.take("importance", reader.importance, parse_importance);
  reader.room = read_customer_room(fields, file, around, mistakes);
  fields.take("moisture band", reader.moisture_band, parse_moisture_band);
  read_pieces(fields, reader, over({}, fields, around, mistakes), order);
  for (const Value& value : fields.list("history")) order.history.push_back(reader.read_done(value));
  return order;
}

}  // namespace coatday::input
