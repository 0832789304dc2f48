#include "report/sections/faces.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "report/document/render_text.h"
#include "report/papers/report.h"
#include "report/sections/both_faces.h"
#include "report/sections/cautions.h"
#include "report/sections/ledger.h"
#include "report/sections/ledger_blocks.h"
#include "report/words.h"
#include "tests/report/sample_plan.h"

namespace coatday::report {
namespace {

std::string words(const std::vector<std::size_t>& faces) { return face_text(sample::table(), faces); }

// Faces 0 to 5 are the top's: face, underside, front edge, back edge, left end, right end; 6 and 7 the legs'.
TEST(FaceWords, AllOfAPart) { EXPECT_EQ(words({0, 1, 2, 3, 4, 5}), "top all round"); }
TEST(FaceWords, AllButOne) { EXPECT_EQ(words({0, 2, 3, 4, 5}), "top face and edges"); }
TEST(FaceWords, OneEdgeKeepsItsName) { EXPECT_EQ(words({1, 3}), "top underside and back edge"); }
TEST(FaceWords, EdgesAndEnds) { EXPECT_EQ(words({2, 3, 4, 5}), "top edges and ends"); }
TEST(FaceWords, FaceNamedAllRoundIsNotTheWholePart) {
  EXPECT_EQ(words({6}), "leg x4 all round");
  EXPECT_EQ(words({6, 7}), "leg x4 all round and top end");
}
TEST(FaceWords, SeveralParts) { EXPECT_EQ(words({1, 6}), "top underside; leg x4 all round"); }
TEST(FaceWords, SameFacesOfSeveralParts) {
  job::Plan plan = sample::table();
  plan.faces[7].part = plan.faces[6].part = "shelf";
  plan.faces[6].face = "face";
  plan.faces[7].face = "underside";
  EXPECT_EQ(face_text(plan, {0, 6}), "top and shelf face");
}
TEST(FaceWords, PieceIsNamedWhereThereAreSeveral) {
  job::Plan plan = sample::table();
  plan.pieces.push_back({"stool", "stool", "", {}, {}, {}});
  EXPECT_EQ(face_text(plan, {1}), "library table / top underside");
}

TEST(BothFaces, Equal) {
  const FaceVerdict verdict = both_faces(sample::table());
  EXPECT_TRUE(verdict.equal);
  EXPECT_EQ(verdict.text, "both sides alike on both wooden parts, except for 1 exception with its reason below");
}
TEST(BothFaces, OneLeftBehind) {
  const FaceVerdict verdict = both_faces(sample::with_hole());
  EXPECT_FALSE(verdict.equal);
  EXPECT_EQ(verdict.text, "NOT ALIKE: film coats of top (face 2, underside 1)");
}
TEST(BothFaces, ProductsAreNotInterchangeable) {
  job::Plan plan = sample::table();
  for (job::Event& event : plan.events) {
    if (event.id == "table/top/clear-2/first") event.product = "other";
  }
  EXPECT_FALSE(both_faces(plan).equal);
}

TEST(Ledger, AMaskedFaceIsNotLeftBehind) {
  job::Plan plan = sample::with_hole();
  const auto holes = [&plan] {
    std::size_t count = 0;
    for (const LedgerBlock& block : ledger_blocks(plan)) {
      for (const LedgerRow& row : block.rows)
        count += static_cast<std::size_t>(std::count(row.coats.begin(), row.coats.end(), std::nullopt)) * (row.exception == nullptr);
    }
    return count;
  };
  const std::size_t before = holes();
  EXPECT_GT(before, 0U);
  plan.faces[1].area = SquareMetres(0);  // the underside that misses a coat
  EXPECT_LT(holes(), before);
}

std::string text_of(const std::optional<Section>& section) { return render(section_lines(section.value(), {}), false); }

TEST(Ledger, RowsWithTheSameDaysAreOne) {
  const auto blocks = ledger_blocks(sample::table());
  ASSERT_EQ(blocks.size(), 1U);
  ASSERT_EQ(blocks[0].columns.size(), 3U);  // stain, clear 1, clear 2
  ASSERT_EQ(blocks[0].rows.size(), 3U);
  EXPECT_EQ(blocks[0].rows[0].faces, "all round");
  EXPECT_EQ(blocks[0].rows[1].faces, "all round");  // the legs
  EXPECT_EQ(blocks[0].rows[2].faces, "top end");
  EXPECT_NE(blocks[0].rows[2].exception, nullptr);
}

TEST(Ledger, HoleIsSeen) {
  const auto blocks = ledger_blocks(sample::with_hole());
  ASSERT_EQ(blocks.size(), 1U);
  const LedgerRow& underside = blocks[0].rows[1];
  EXPECT_EQ(underside.faces, "underside");
  EXPECT_TRUE(underside.coats[1].has_value());
  EXPECT_FALSE(underside.coats[2].has_value());
  const std::string text = plan_text(sample::with_hole(), "x", {});
  EXPECT_NE(text.find("this face is left behind"), std::string::npos);
  EXPECT_EQ(plan_text(sample::table(), "x", {}).find("this face is left behind"), std::string::npos);
}

TEST(Ledger, ColourLeftOutIsNoHole) {
  const auto blocks = ledger_blocks(sample::table());
  EXPECT_FALSE(blocks[0].columns[0].film);
  EXPECT_FALSE(blocks[0].rows[1].coats[0].has_value());
  EXPECT_NE(plan_text(sample::table(), "x", {}).find("no colour here; it adds no film"), std::string::npos);
}

TEST(Ledger, ManyCoatsAreSplitOverBlocksOfLines) {
  job::Plan plan = sample::table();
  for (int i = 3; i < 16; ++i) {
    job::Event event = plan.events[8];
    event.id = event.step = "clear-" + std::to_string(i);
    event.name = "clear coat " + std::to_string(i);
    event.faces = {0, 1, 2, 3, 4, 5};
    plan.events.push_back(event);
  }
  const std::string text = text_of(ledger(plan, {Units::metric, plan.shop.zone}));
  EXPECT_NE(text.find("and then"), std::string::npos);
  EXPECT_NE(text.find("15"), std::string::npos);
}

TEST(Ledger, MonthIsSaidWhenItChanges) {
  job::Plan plan = sample::table();
  plan.events[8].start += date::days(20);
  EXPECT_NE(text_of(ledger(plan, {Units::metric, plan.shop.zone})).find("4 Feb"), std::string::npos);
}

TEST(Slack, InWords) {
  EXPECT_EQ(slack_text(Hours(0)), "just in time");
  EXPECT_EQ(slack_text(Hours(-6)), unbroken("6 h late"));
  EXPECT_EQ(slack_text(Hours(-30)), unbroken("1 day 6 h late"));
  EXPECT_EQ(slack_text(Hours(3)), unbroken("3 h to spare"));
  EXPECT_EQ(slack_text(Hours(24)), unbroken("a day to spare"));
  EXPECT_EQ(slack_text(Hours(71)), unbroken("2 days to spare"));
}

TEST(Caution, ShortAsFarAsItsFirstStop) {
  job::Plan plan;
  plan.cautions = {{"dust", "Sanding dust: extraction and a mask."}, {"dry", "Keep dry."}};
  EXPECT_EQ(short_caution(plan, "dust"), "Sanding dust");
  EXPECT_EQ(short_caution(plan, "dry"), "Keep dry");
}

}  // namespace
}  // namespace coatday::report
