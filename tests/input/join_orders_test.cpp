// Several orders read as one.
#include <gtest/gtest.h>

#include "input/earlier_plan.h"
#include "tests/input/folder.h"

namespace coatday::input {
namespace {

std::string order(const std::string& name, const std::string& piece, const std::string& keys = "", const std::string& piece_keys = "") {
  return "order: " + name + "\nshop: shop.yaml\nschedule: two-coats\nspecies: hard-maple\n" + keys + "pieces:\n  - piece: " + piece + "\n" +
         piece_keys + "    parts:\n      - {part: shelf, shape: board, length: 80 cm, width: 25 cm, thickness: 2 cm}\n";
}

job::Job joined(const std::string& a, const std::string& b) {
  Opening opened = open_orders({"a.yaml", "b.yaml"}, "schedules", from({{"a.yaml", a}, {"b.yaml", b}}));
  EXPECT_EQ(printed(opened), "");
  return opened ? std::move(opened->job) : job::Job{};
}

std::string local(const job::Job& job, std::optional<Instant> instant) { return instant ? iso8601(*instant, job.shop.zone) : "none"; }

TEST(JoinOrders, EachKeepsItsNameStartPromiseAndImportance) {
  const job::Job job = joined(order("Birch Lane", "desk", "start: 2027-03-01 08:00\npromised: 2027-03-12\nimportance: 2\n"),
                              order("Mill Road", "stool", "start: 2027-02-22 08:00\n", "    promised: 2027-03-05\n    importance: 0.5\n"));
  EXPECT_EQ(job.order.name, "Birch Lane and Mill Road");
  EXPECT_EQ(local(job, job.order.start), "2027-02-22T08:00:00-06:00") << "the first of them";
  ASSERT_EQ(job.order.pieces.size(), 2U);
  const job::OrderPiece& desk = job.order.pieces[0];
  const job::OrderPiece& stool = job.order.pieces[1];
  EXPECT_EQ(desk.order, "Birch Lane");
  EXPECT_EQ(desk.piece.name, "Birch Lane / desk");
  EXPECT_EQ(desk.piece.id, "desk") << "as in a plan of its order alone";
  EXPECT_EQ(local(job, desk.start), "2027-03-01T08:00:00-06:00");
  EXPECT_EQ(local(job, desk.promised), "2027-03-12T17:00:00-06:00");
  EXPECT_EQ(desk.importance, 2);
  EXPECT_EQ(stool.order, "Mill Road");
  EXPECT_EQ(local(job, stool.start), "2027-02-22T08:00:00-06:00");
  EXPECT_EQ(local(job, stool.promised), "2027-03-05T17:00:00-06:00");
  EXPECT_EQ(stool.importance, 0.5);
}

TEST(JoinOrders, NoStartOfOneIsNoStartOfAll) {
  const job::Job job = joined(order("Birch Lane", "desk", "start: 2027-03-01 08:00\n"), order("Mill Road", "stool"));
  EXPECT_FALSE(job.order.start);
  EXPECT_TRUE(job.order.pieces[0].start);
  EXPECT_FALSE(job.order.pieces[1].start);
}

TEST(JoinOrders, IdsThatClashGetTheirOrdersNameInTheHistoryToo) {
  const std::string history =
      "history: [{event: shelf/shelf/clear-1, start: 2027-03-01 08:00, end: 2027-03-01 09:00},"
      " {event: birch-lane-shelf/shelf/clear-2, start: 2027-03-02 08:00, end: 2027-03-02 09:00},"
      " {event: shop/mill, start: 2027-03-02 08:00, end: 2027-03-02 09:00}]\n";
  const job::Job job = joined(order("Birch Lane", "shelf", history), order("Полка", "shelf"));
  ASSERT_EQ(job.order.pieces.size(), 2U);
  EXPECT_EQ(job.order.pieces[0].piece.id, "birch-lane-shelf");
  EXPECT_EQ(job.order.pieces[1].piece.id, "order-shelf");
  ASSERT_EQ(job.order.history.size(), 3U);
  EXPECT_EQ(job.order.history[0].event, "birch-lane-shelf/shelf/clear-1");
  EXPECT_EQ(job.order.history[1].event, "birch-lane-shelf/shelf/clear-2") << "as a plan of both prints it";
  EXPECT_EQ(job.order.history[2].event, "shop/mill");
  EXPECT_EQ(job.order.history[0].where.file, "a.yaml");
}

TEST(JoinOrders, AnIdMadeFromTheOrdersNameIsNobodyElses) {
  const std::string two = order("Birch Lane", "shelf") +
                          "  - piece: birch lane shelf\n    parts:\n      - {part: shelf, shape: board, length: 80 cm, width: 25 cm, "
                          "thickness: 2 cm}\n";
  const job::Job job = joined(two, order("Mill Road", "shelf"));
  ASSERT_EQ(job.order.pieces.size(), 3U);
  EXPECT_EQ(job.order.pieces[0].piece.id, "birch-lane-shelf-2");
  EXPECT_EQ(job.order.pieces[1].piece.id, "birch-lane-shelf");
  EXPECT_EQ(job.order.pieces[2].piece.id, "mill-road-shelf");
}

TEST(JoinOrders, TheSameShopBySeveralPaths) {
  const std::string b = "order: b\nshop: ../shop.yaml\n" + order("x", "stool").substr(std::string("order: x\nshop: shop.yaml\n").size());
  const Opening opened = open_orders({"a.yaml", "later/b.yaml"}, "schedules", from({{"a.yaml", order("a", "desk")}, {"later/b.yaml", b}}));
  EXPECT_EQ(printed(opened), "");
}

TEST(EarlierPlan, IdsAndStarts) {
  const auto starts = read_earlier_plan(
      "old.json", from({{"old.json", R"({"schema": "coatday-plan/1", "events": [{"id": "a/b", "start": "2027-01-11T08:00:00-06:00"}]})"}}));
  ASSERT_TRUE(starts.has_value());
  ASSERT_EQ(starts->size(), 1U);
  EXPECT_EQ(starts->at("a/b"), Zone::find("America/Chicago")->to_instant(parse_local_time("2027-01-11 08:00").value()));
}

}  // namespace
}  // namespace coatday::input
