#pragma once
// Everything that a plan is made from, as read.

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "climate/shop_air.h"
#include "finish/catalogue.h"
#include "piece/piece.h"
#include "shop/shop.h"

namespace coatday::job {

/// Other work of the order, with its place in the sequence.
struct OrderWork {
  shop::Work work;
  enum class When { before_finishing, after_finishing } when = When::before_finishing;
  std::vector<std::string> parts;             ///< ids of the piece's parts; empty: all
  finish::Stage stage = finish::Stage::pack;  ///< after finishing: what every coat on these parts must have reached
  bool delivery = false;                      ///< the last work; it is over by the promised date
};

/// Makes a room's air for a span of time. Ask for no more than is needed: it may take long to build.
using AirMaker = std::function<std::unique_ptr<climate::AirSource>(Instant from, Instant until)>;

inline constexpr MoistureContent usual_moisture_band{0.02};  ///< either way (common practice, no source)

struct OrderPiece {
  piece::Piece piece;
  std::vector<OrderWork> work;                          ///< those of one side of the finishing follow each other as listed
  std::optional<Instant> promised;                      ///< the piece's own, else the order's
  std::optional<Instant> start;                         ///< nothing of it before: its order's start
  double importance = 1;                                ///< a day late of it counts as so many days
  std::string order;                                    ///< the name of its order where several are planned together; else empty
  std::string other_id;                                 ///< its id in a plan with other orders, or without: with its order's name, or bare
  AirMaker room;                                        ///< the air where it will live; none: nobody has said
  MoistureContent moisture_band = usual_moisture_band;  ///< so near to the shop's equilibrium its wood is before its first coat
};

/// What is already done: the event's id, and when it really was.
struct Done {
  std::string event;
  Instant start;
  Instant end;
  Location where;
};

/// One order, or several that are planned together.
struct Order {
  std::string name;  ///< of several: "kitchen, hall table and chairs"
  std::string file;  ///< the first one's
  std::vector<OrderPiece> pieces;
  std::vector<Done> history;
  std::optional<Instant> start;  ///< nothing before; of several, the first start, and none where one of them may start at once
};

/// The shop's air with another timetable or other equipment in its room.
using RoomAirMaker = std::function<AirMaker(const climate::KnownRoom&)>;

/// What the reader of an air file dropped, put in order or bridged. Every plan reports it once.
struct AirNote {
  std::string file;
  std::string message;
};

struct Job {
  shop::Shop shop;
  finish::Catalogue catalogue;
  Order order;
  AirMaker air;
  std::vector<AirNote> air_notes;
  std::shared_ptr<const climate::KnownRoom> room;  ///< as the shop's file has it; null after a mistake
  RoomAirMaker air_in;                             ///< null where no air comes from a room
};

}  // namespace coatday::job
