// Files that must load, and what is in them then.
#include <fmt/core.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "input/wood.h"
#include "tests/input/folder.h"
#include "tests/support/source_dir.h"

namespace coatday::input {
namespace {

using namespace std::chrono_literals;

ReadFile from_project() {
  return [](const std::filesystem::path& path) { return on_disk(std::filesystem::path(source_dir()) / path); };
}

Opening every_key() { return open_orders({"samples/every-key/order.yaml"}, "tests/input/common/schedules", from_project()); }

job::Job job_of(Folder folder) {
  Opening opened = open_orders({"order.yaml"}, "schedules", from(std::move(folder)));
  EXPECT_EQ(printed(opened), "");
  return opened ? std::move(opened->job) : job::Job{};
}

std::string local(const job::Job& job, std::optional<Instant> instant) { return instant ? iso8601(*instant, job.shop.zone) : "none"; }

TEST(EveryKey, Shop) {
  const Opening opened = every_key();
  ASSERT_EQ(printed(opened), "");
  const shop::Shop& shop = opened->job.shop;
  EXPECT_EQ(shop.name, "Mill Lane");
  EXPECT_EQ(shop.zone.name(), "America/Chicago");
  EXPECT_EQ(shop.units, Units::us);
  EXPECT_EQ(shop.currency, "USD");
  EXPECT_EQ(shop.people, 2);
  EXPECT_EQ(shop.week.size(), 11U);
  EXPECT_EQ(shop.closed.size(), 9U);
  EXPECT_EQ(shop.methods, (std::vector<std::string>{"brush", "pad", "wipe", "roller", "hvlp-spray"}));
  ASSERT_EQ(shop.places.size(), 3U);
  EXPECT_EQ(shop.places[1].kind, shop::PlaceKind::hooks);
  EXPECT_EQ(shop.places[1].count, 8);
  ASSERT_EQ(shop.work.size(), 3U);
  EXPECT_EQ(shop.work[0].id, "mill-oak-for-shelves");
  EXPECT_EQ(shop.work[0].dust, shop::Dust::heavy);
  EXPECT_EQ(local(opened->job, shop.work[0].start), "2027-01-13T08:00:00-06:00");
  EXPECT_TRUE(shop.work[1].hot);
  EXPECT_EQ(local(opened->job, shop.work[1].not_before), "2027-01-14T00:00:00-06:00");
  EXPECT_EQ(local(opened->job, shop.work[1].not_after), "2027-01-17T00:00:00-06:00");  // that day is in it
  EXPECT_TRUE(shop.work[2].may_pause);
  ASSERT_EQ(shop.stock.size(), 1U);
  EXPECT_NEAR(shop.stock[0].volume.value(), 0.473176473, 1e-9);
  ASSERT_TRUE(shop.ventilation.airflow);
  EXPECT_NEAR(shop.ventilation.airflow->value(), 849.505, 0.001);  // 500 cfm
  EXPECT_EQ(shop.ventilation.limit, 0.25);
}

TEST(EveryKey, Air) {
  const Opening opened = every_key();
  ASSERT_TRUE(opened);
  EXPECT_FALSE(opened->job.shop.air_description.empty());
  const Instant noon = opened->job.shop.zone.to_instant(LocalTime(LocalDay(date::year(2027) / 1 / 20)) + 11h);
  const auto air = opened->job.air(noon, noon + 24h);
  EXPECT_GT(air->at(noon).temperature.value(), (68.0 - 32) / 1.8);  // on its way to the 70 °F of the dates' own rule
}

TEST(Outdoors, AFileFromFarAwayIsTold) {
  std::string year = "# utc_offset_h 1\nmonth,day,hour,t_C,rh_pct\n";
  for (int month = 1; month <= 12; ++month)
    for (int day = 1; day <= 31; ++day)
      for (int hour = 1; hour <= 24; ++hour)
        if ((date::year(2027) / month / day).ok()) year += fmt::format("{},{},{},10,50\n", month, day, hour);
  std::string shop = slurp(tests_dir() + "common/shop.yaml").value();
  shop.resize(shop.find("air:"));
  shop += "air: {outdoors: far.csv, time constant: 30 h}\n";
  const job::Job job = job_of({{"shop.yaml", shop}, {"far.csv", year}});
  ASSERT_EQ(job.air_notes.size(), 1U);
  EXPECT_EQ(job.air_notes[0].message.substr(0, 52), "its clock is 7 h ahead of that of the shop's time zo");
  const job::Job near = job_of({{"shop.yaml", shop}, {"far.csv", "# utc_offset_h -5" + year.substr(year.find('\n'))}});
  EXPECT_TRUE(near.air_notes.empty());
}

TEST(EveryKey, Order) {
  const Opening opened = every_key();
  ASSERT_TRUE(opened);
  const job::Order& order = opened->job.order;
  EXPECT_EQ(order.name, "every key");
  EXPECT_EQ(order.file, "samples/every-key/order.yaml");
  EXPECT_EQ(local(opened->job, order.start), "2027-01-11T08:00:00-06:00");
  ASSERT_EQ(order.pieces.size(), 1U);
  const job::OrderPiece& shelf = order.pieces[0];
  EXPECT_EQ(shelf.piece.id, "low-shelf");
  EXPECT_EQ(local(opened->job, shelf.promised), "2027-02-10T12:00:00-06:00");
  EXPECT_EQ(local(opened->job, shelf.start), "2027-01-11T08:00:00-06:00");
  EXPECT_EQ(shelf.importance, 2);
  ASSERT_EQ(shelf.piece.parts.size(), 10U);
  ASSERT_EQ(shelf.work.size(), 4U);
  EXPECT_EQ(shelf.work[0].parts, std::vector<std::string>{"box"});
  EXPECT_EQ(shelf.work[0].work.rest, Hours(24));
  EXPECT_EQ(shelf.work[1].work.dust, shop::Dust::heavy);
  EXPECT_EQ(shelf.work[2].when, job::OrderWork::When::after_finishing);
  EXPECT_EQ(shelf.work[2].stage, finish::Stage::handle);
  EXPECT_EQ(shelf.work[2].work.people, 2);
  EXPECT_TRUE(shelf.work[3].delivery);
  EXPECT_EQ(shelf.work[3].stage, finish::Stage::pack);
}

TEST(Species, HyphensSpacesAndCapitalsAreAlike) {
  for (const char* typed : {"red-oak", "red oak", "Red_Oak", " RED OAK "}) EXPECT_EQ(parse_species(typed), "oak-red-commercial") << typed;
  EXPECT_NE(parse_species("red oack").error().find("did you mean 'red-oak'"), std::string::npos) << parse_species("red oack").error();
}

TEST(EveryKey, CustomersRoom) {
  const Opening opened = every_key();
  ASSERT_TRUE(opened);
  const job::OrderPiece& shelf = opened->job.order.pieces[0];
  EXPECT_EQ(shelf.moisture_band, MoistureContent(0.02));
  const auto in = [&](int month) { return opened->job.shop.zone.to_instant(LocalTime(LocalDay(date::year(2028) / month / 20))); };
  const auto room = shelf.room(in(1), in(12));
  EXPECT_NEAR(room->at(in(1)).humidity.value(), 0.35, 1e-12);
  EXPECT_NEAR(room->at(in(4)).humidity.value(), 0.35, 1e-12);
  EXPECT_NEAR(room->at(in(5)).humidity.value(), 0.5, 1e-12);
  EXPECT_NEAR(room->at(in(11)).temperature.value(), 20, 1e-9);
  EXPECT_EQ(room->describe(Units::us), "75 °F, 50 % RH in May to October; 68 °F, 35 % RH in November to April");
}

TEST(EveryKey, Parts) {
  const Opening opened = every_key();
  ASSERT_TRUE(opened);
  const auto& parts = opened->job.order.pieces[0].piece.parts;
  EXPECT_EQ(parts[0].species, "walnut-black");
  EXPECT_EQ(parts[0].schedule, "our-two-coats");
  EXPECT_EQ(parts[0].count, 2);
  EXPECT_NEAR(std::get<piece::Board>(parts[0].shape).width.value(), 0.28575, 1e-9);
  ASSERT_EQ(parts[0].masks.size(), 2U);
  EXPECT_NEAR(parts[0].masks[1].area.value(), 4 * 0.00064516, 1e-9);  // 1/2 in x 8 in
  ASSERT_EQ(parts[0].exceptions.size(), 1U);
  EXPECT_EQ(parts[0].exceptions[0].coats, 1);
  EXPECT_EQ(parts[0].where.line, 34);
  const piece::Solid& solid = parts[0].solid;
  ASSERT_EQ(solid.readings.size(), 2U);
  EXPECT_NEAR(solid.readings[1].moisture.value(), 0.076, 1e-12);
  EXPECT_EQ(local(opened->job, solid.readings[0].at), "2027-01-08T16:00:00-06:00");
  EXPECT_EQ(solid.readings[0].place, "left end");
  EXPECT_EQ(solid.cut, wood::RingAngle(35));
  EXPECT_EQ(parts[1].solid.cut, wood::flat_cut);  // the order's
  EXPECT_NEAR(solid.cup_limit->value(), 0.0254 / 8, 1e-12);
  ASSERT_EQ(solid.fixings.size(), 4U);
  EXPECT_EQ(solid.fixings[1].kind, piece::FixingKind::slot);
  EXPECT_NEAR(solid.fixings[1].measures.opening.value(), 0.0127, 1e-12);
  EXPECT_NEAR(solid.fixings[3].measures.opening.value(), 0.0254 / 4, 1e-12);  // twice a button's play
  EXPECT_EQ(parts[2].support, piece::Support::hooks);
  EXPECT_EQ(std::get<piece::TurnedLeg>(parts[3].shape).profile.size(), 3U);
  EXPECT_FALSE(parts[4].wood());
  EXPECT_TRUE(std::get<piece::RoundTube>(parts[4].shape).closed_ends);
  EXPECT_EQ(parts[4].schedule, "metal-enamel");
  const auto& carved = std::get<piece::FreeArea>(parts[9].shape);
  ASSERT_EQ(carved.faces.size(), 3U);
  EXPECT_FALSE(carved.faces[1].show);
  EXPECT_TRUE(carved.faces[2].end_grain);
}

TEST(EveryKey, Finish) {
  const Opening opened = every_key();
  ASSERT_TRUE(opened);
  const finish::Product& p = opened->job.catalogue.products.at("our-clear");
  EXPECT_EQ(p.family, "water-clear");
  ASSERT_EQ(p.rows.size(), 2U);
  EXPECT_EQ(p.reference().hours[finish::Stage::light_use], Hours(72));
  EXPECT_NEAR(p.reference().air.temperature.value(), 21.111, 1e-3);
  EXPECT_EQ(p.sources.at("times.recoat"), "the label of the can in the shop, 2026");
  EXPECT_EQ(p.sources.at("limits.blush refused"), "common practice, no source");
  ASSERT_TRUE(p.drying_law && p.cure_law);
  EXPECT_NEAR(p.drying_law->wet_bulb_share, 0.4, 1e-12);
  EXPECT_EQ(p.cure_law->activation, KilojoulesPerMole(55));
  EXPECT_NEAR(p.limits.dew_point_margin.value(), 5 / 1.8, 1e-9);
  EXPECT_EQ(p.cans.size(), 2U);
  EXPECT_EQ(p.work_rates.size(), 2U);
  EXPECT_EQ(p.two_part->base_parts, 4);
  const finish::Schedule& schedule = opened->job.catalogue.schedules.at("our-two-coats");
  ASSERT_EQ(schedule.steps.size(), 5U);
  EXPECT_EQ(schedule.steps[1].id, "clear-1");
  EXPECT_EQ(schedule.steps[2].after_stage, finish::Stage::sand);
  EXPECT_EQ(schedule.steps[3].within, Hours(72));
  EXPECT_EQ(schedule.steps[4].faces, finish::StepFaces::show);
  EXPECT_EQ(opened->job.catalogue.over.size(), 3U);
}

TEST(Defaults, AreThoseOfTheExamples) {
  const job::Job job = job_of({});
  EXPECT_EQ(job.shop.units, Units::metric);
  EXPECT_EQ(job.shop.people, 1);
  EXPECT_EQ(job.shop.light_dust_settles, Hours(0.5));
  EXPECT_EQ(job.shop.heavy_dust_settles, Hours(12));
  EXPECT_EQ(job.shop.both_faces_within, Hours(24));
  EXPECT_FALSE(job.shop.turning);
  EXPECT_EQ(job.shop.handling, 1min);
  EXPECT_EQ(job.shop.gap, Metres(0.025));
  EXPECT_EQ(job.shop.sharing_gap, Hours(0.5));
  ASSERT_EQ(job.order.pieces.size(), 1U);
  const piece::Part& part = job.order.pieces[0].piece.parts.at(0);
  EXPECT_EQ(part.count, 1);
  EXPECT_EQ(part.support, piece::Support::points);
  EXPECT_FALSE(part.turning_people);
  EXPECT_FALSE(job.order.start);
  EXPECT_FALSE(job.order.pieces[0].promised);
}

std::string order_with(const std::string& keys) {
  return "order: o\nshop: shop.yaml\nschedule: two-coats\nspecies: hard-maple\n" + keys +
         "pieces:\n  - piece: shelf\n    parts:\n      - {part: shelf, shape: board, length: 80 cm, width: 25 cm, thickness: 2 cm}\n";
}

TEST(Promise, ByDateIsTheEndOfThatDaysWork) {
  const auto promised = [](const std::string& date) {
    const job::Job job = job_of({{"order.yaml", order_with("promised: " + date + "\n")}});
    return local(job, job.order.pieces.at(0).promised);
  };
  EXPECT_EQ(promised("2027-02-12"), "2027-02-12T17:00:00-06:00");  // a Friday
  EXPECT_EQ(promised("2027-02-14"), "2027-02-12T17:00:00-06:00");  // a Sunday: nobody works
  EXPECT_EQ(promised("2027-02-14 10:00"), "2027-02-14T10:00:00-06:00");
  EXPECT_EQ(promised("2027-03-14"), "2027-03-12T17:00:00-06:00");  // summer time begins that day
}

TEST(Promise, SkipsClosedDays) {
  const std::string shop =
      slurp(tests_dir() + "common/shop.yaml").value() + "closed: [2027-02-10 to 2027-02-12, 2027-02-09, 2027-02-09 to 2027-02-11]\n";
  const job::Job job = job_of({{"order.yaml", order_with("promised: 2027-02-12\n")}, {"shop.yaml", shop}});
  EXPECT_EQ(local(job, job.order.pieces.at(0).promised), "2027-02-08T17:00:00-06:00");
  EXPECT_EQ(job.shop.closed.size(), 4U);
}

TEST(GoodFiles, MayHaveByteOrderMarkWindowsLineEndsAndComments) {
  std::string order = "# a comment\n" + order_with("# another\n") + "# the last";
  std::string windows = "\xEF\xBB\xBF";
  for (const char c : order) windows += c == '\n' ? "\r\n" : std::string(1, c);
  EXPECT_EQ(job_of({{"order.yaml", windows}}).order.pieces.size(), 1U);
}

TEST(GoodFiles, AliasesOfSpeciesAreFound) {
  const job::Job job = job_of({{"order.yaml", order_with("")}});
  EXPECT_EQ(job.order.pieces.at(0).piece.parts.at(0).species, "maple-sugar");
}

TEST(GoodFiles, NearestMaterialCounts) {
  std::string order = order_with("");
  order += "      - {part: rod, shape: round tube, length: 40 cm, diameter: 2 cm, material: steel, schedule: metal-enamel}\n";
  const job::Job job = job_of({{"order.yaml", order}});
  EXPECT_TRUE(job.order.pieces.at(0).piece.parts.at(0).wood());
  EXPECT_FALSE(job.order.pieces.at(0).piece.parts.at(1).wood());
}

TEST(GoodFiles, IdsAreUnique) {
  std::string order = order_with("");
  order +=
      "      - {part: Shelf, shape: board, length: 8 cm, width: 25 cm, thickness: 2 cm}\n"
      "      - {part: ножка, shape: board, length: 8 cm, width: 25 cm, thickness: 2 cm}\n"
      "      - {part: полка, shape: board, length: 8 cm, width: 25 cm, thickness: 2 cm}\n";
  const job::Job job = job_of({{"order.yaml", order}});
  std::vector<std::string> ids;
  for (const piece::Part& part : job.order.pieces.at(0).piece.parts) ids.push_back(part.id);
  EXPECT_EQ(ids, (std::vector<std::string>{"shelf", "shelf-2", "part", "part-2"}));
}

TEST(GoodFiles, TimetableAlone) {
  std::string shop = slurp(tests_dir() + "common/shop.yaml").value();
  shop = shop.substr(0, shop.find("air:")) +
         "air:\n  timetable:\n    - {days: mon-fri, heated: 07:00-18:00 at 20 °C, otherwise: 14 °C, humidity: 40 %}\n"
         "    - {days: sat-sun, otherwise: 12 °C, humidity: 45 %}\n";
  const job::Job job = job_of({{"shop.yaml", shop}});
  const Instant monday = job.shop.zone.to_instant(LocalTime(LocalDay(date::year(2027) / 1 / 11)) + 8h);
  const auto air = job.air(monday, monday + 24h);
  EXPECT_NEAR(air->at(monday).temperature.value(), 20, 1e-9);
  EXPECT_NEAR(air->at(monday - 48h).temperature.value(), 12, 1e-9);
}

TEST(GoodFiles, OwnFinishesNamedTwiceAreReadOnce) {
  const std::string shop = slurp(tests_dir() + "common/shop.yaml").value() + "own finishes: [own.yaml]\n";
  const std::string own = "over:\n  - {upper: shellac, under: any, verdict: allowed}\n";
  const job::Job job = job_of({{"order.yaml", order_with("own finishes: [./own.yaml]\n")}, {"shop.yaml", shop}, {"own.yaml", own}});
  EXPECT_EQ(job.catalogue.over.size(), 2U);
}

Opening sample(const std::filesystem::path& dir) {
  const std::filesystem::path project = source_dir();
  return open_orders({dir / "order.yaml"}, project / "schedules", read_from_disk());
}

TEST(Samples, LoadWithTheShippedFinishes) {
  const std::filesystem::path samples = source_dir() + "/samples";
  int orders = 0;
  for (const auto& entry : std::filesystem::directory_iterator(samples)) {
    if (!std::filesystem::exists(entry.path() / "order.yaml") || entry.path().filename() == "top-face-only") continue;
    const Opening opened = sample(entry.path());
    EXPECT_EQ(printed(opened), "");
    EXPECT_TRUE(opened) << entry.path();
    ++orders;
  }
  EXPECT_GT(orders, 0);
}

// Whether a face may be left out is no matter of reading: the planner judges it.
TEST(Samples, AFaceLeftOutWithoutAReasonIsRead) {
  const Opening opened = sample(source_dir() + "/samples/top-face-only");
  ASSERT_TRUE(opened);
  const auto& exceptions = opened->job.order.pieces.at(0).piece.parts.at(0).exceptions;
  ASSERT_FALSE(exceptions.empty());
  EXPECT_TRUE(exceptions.front().reason.empty());
}

TEST(Disk, ReadsFilesAndNoDirectories) {
  const ReadFile read = read_from_disk();
  EXPECT_EQ(read(tests_dir() + "common/order.yaml").value(), slurp(tests_dir() + "common/order.yaml"));
  EXPECT_EQ(read(tests_dir() + "common").error(), "it is a folder");
  EXPECT_EQ(read(tests_dir() + "no such file").error(), "there is no such file");
  EXPECT_EQ(read("/dev/null").error(), "it is a device, not a file");
}

// Whoever opens a pipe that nobody writes into waits for ever.
TEST(Disk, APipeOrASocketIsRefusedAtOnce) {
  const std::string pipe = testing::TempDir() + "coatday_pipe", socket_name = testing::TempDir() + "coatday_socket";
  std::filesystem::remove(pipe);
  std::filesystem::remove(socket_name);
  ASSERT_EQ(mkfifo(pipe.c_str(), S_IRUSR | S_IWUSR), 0);
  ASSERT_EQ(mknod(socket_name.c_str(), S_IFSOCK | S_IRUSR, 0), 0);
  EXPECT_EQ(read_from_disk()(pipe).error(), "it is a pipe, not a file");
  EXPECT_EQ(read_from_disk()(socket_name).error(), "it is a socket, not a file");
  std::filesystem::remove(pipe);
  std::filesystem::remove(socket_name);
}

TEST(Disk, AFileThatIsTooLargeIsNotRead) {
  const std::string name = testing::TempDir() + "coatday_large";
  std::ofstream(name) << "x";
  std::filesystem::resize_file(name, std::uintmax_t{33} * 1024 * 1024);
  EXPECT_EQ(read_from_disk()(name).error(), "it is larger than 32 MiB");
  std::filesystem::remove(name);
}

TEST(Files, AShopOfMoreThanOneMebibyteIsNoneAndNothingOfItIsShown) {
  const Opening opened = open_orders({"order.yaml"}, "schedules", from({{"shop.yaml", "shop: secret\n" + std::string(1024 * 1024, '\n')}}));
  EXPECT_NE(printed(opened).find("order.yaml:2:7: error: the file 'shop.yaml' is larger than 1 MiB; no shop file is\n"), std::string::npos)
      << printed(opened);
  EXPECT_EQ(printed(opened).find("secret"), std::string::npos);
}

TEST(Disk, FilesAreNamedAsTheUserGaveThem) {
  const Opening opened =
      open_orders({"a/order.yaml"}, "schedules", from({{"a/order.yaml", "order: o\nshop: ../b/shop.yaml\npieces: []\n"}}));
  EXPECT_NE(printed(opened).find("cannot read the file 'b/shop.yaml'"), std::string::npos) << printed(opened);
}

}  // namespace
}  // namespace coatday::input
