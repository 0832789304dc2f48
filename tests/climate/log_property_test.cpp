// Whatever is done to the rows of a logger's file, the air stays the same, or within what the readings say.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "climate/logged_air.h"
#include "climate/shop_air.h"

namespace coatday::climate {
namespace {

using namespace date::literals;
using std::chrono::hours;

const Instant start = Instant(date::sys_days(2027_y / 1 / 11));
const std::string header = "time,t_C,rh_pct\n";

struct Sheet {
  std::vector<std::string> rows;
  double coldest = 100, hottest = -100, driest = 100, dampest = 0;
};

std::string row_text(Minutes after, double temperature, double humidity) {
  return iso8601(start + after, Zone()) + "," + std::to_string(temperature) + "," + std::to_string(humidity);
}

/// Readings at uneven steps of up to half an hour, no two humidities alike.
Sheet any_sheet() {
  Sheet sheet;
  Minutes after{0};
  const int count = *rc::gen::inRange(20, 60);
  for (int i = 0; i < count; ++i) {
    const double temperature = *rc::gen::inRange(50, 250) / 10.0;
    const double humidity = *rc::gen::inRange(30, 80) + i / 100.0;
    sheet.rows.push_back(row_text(after, temperature, humidity));
    sheet.coldest = std::min(sheet.coldest, temperature), sheet.hottest = std::max(sheet.hottest, temperature);
    sheet.driest = std::min(sheet.driest, humidity), sheet.dampest = std::max(sheet.dampest, humidity);
    after += Minutes(*rc::gen::inRange(1, 30));
  }
  return sheet;
}

std::string text_of(const std::vector<std::string>& rows) {
  std::string text = header;
  for (const std::string& row : rows) text += row + "\n";
  return text;
}

AirSeries series(const std::vector<std::string>& rows) {
  auto log = read_log(text_of(rows), "log.csv", {}, Zone());
  RC_ASSERT(log.has_value());
  const LoggedAir air(std::make_shared<const Log>(*std::move(log)), std::make_unique<ConstantAir>(Air{Celsius(12), RelativeHumidity(0.6)}));
  return {air, start - hours(6), start + hours(60)};
}

void same(const AirSeries& a, const AirSeries& b) {
  RC_ASSERT(a.rows().size() == b.rows().size());
  for (std::size_t i = 0; i < a.rows().size(); ++i) {
    RC_ASSERT(std::abs(a.rows()[i].air.temperature.value() - b.rows()[i].air.temperature.value()) < 1e-9);
    RC_ASSERT(std::abs(a.rows()[i].air.humidity.value() - b.rows()[i].air.humidity.value()) < 1e-9);
    RC_ASSERT(a.rows()[i].origin == b.rows()[i].origin);
  }
}

std::vector<std::string> shuffled(std::vector<std::string> rows) {
  for (std::size_t i = rows.size(); i > 1; --i) std::swap(rows[i - 1], rows[*rc::gen::inRange<std::size_t>(0, i)]);
  return rows;
}

RC_GTEST_PROP(LogProperty, TheOrderOfRowsDoesNotMatter, ()) {
  const Sheet sheet = any_sheet();
  same(series(sheet.rows), series(shuffled(sheet.rows)));
}

RC_GTEST_PROP(LogProperty, RepeatedRowsDoNotMatter, ()) {
  const Sheet sheet = any_sheet();
  std::vector<std::string> more = sheet.rows;
  for (const std::string& row : sheet.rows)
    if (*rc::gen::arbitrary<bool>()) more.push_back(row);
  same(series(sheet.rows), series(more));
}

RC_GTEST_PROP(LogProperty, WithRowsLostTheAirStaysWithinTheReadingsAndWhatFollows, ()) {
  const Sheet sheet = any_sheet();
  std::vector<std::string> fewer{sheet.rows[0], sheet.rows[1]};
  for (std::size_t i = 2; i < sheet.rows.size(); ++i)
    if (*rc::gen::inRange(0, 3) > 0) fewer.push_back(sheet.rows[i]);
  const AirSeries air = series(fewer);
  for (const AirRow& row : air.rows()) {
    RC_ASSERT(row.air.temperature.value() >= std::min(sheet.coldest, 12.0) - 1e-9);
    RC_ASSERT(row.air.temperature.value() <= std::max(sheet.hottest, 12.0) + 1e-9);
    RC_ASSERT(row.air.humidity > RelativeHumidity(0));
    RC_ASSERT(row.air.humidity <= RelativeHumidity(1));
    if (row.origin != Origin::log) continue;
    RC_ASSERT(100 * row.air.humidity.value() >= sheet.driest - 10);
  }
}

RC_GTEST_PROP(LogProperty, EveryRowThatIsNotUsedIsTold, ()) {
  const Sheet sheet = any_sheet();
  std::vector<std::string> rows = sheet.rows;
  const auto at = *rc::gen::inRange<std::size_t>(1, rows.size());
  rows.insert(rows.begin() + static_cast<std::ptrdiff_t>(at),
              *rc::gen::element<std::string>("low battery", rows[at] + "?", "2027-01-11 08:00,,50"));
  const auto log = read_log(text_of(rows), "log.csv", {}, Zone());
  RC_ASSERT(log.has_value());
  const std::string row = "row " + std::to_string(at + 2) + ":", row_below = "row " + std::to_string(at + 3) + ":";  // either of two alike
  RC_ASSERT(std::any_of(log->notes.begin(), log->notes.end(),
                        [&](const std::string& note) { return note.starts_with(row) || note.starts_with(row_below); }));
}

RC_GTEST_PROP(LogProperty, AnyBytesGiveALogOrAnError, ()) {
  const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  const auto like = *rc::gen::container<std::string>(
      rc::gen::element('1', '2', '0', '7', ',', ';', '\t', '"', '\n', ':', '-', '/', ' ', '.', 't', 'C', '%'));
  for (const auto& text : {bytes, header + bytes, header + like, "time;t_C;rh\n" + like, header + "2027-01-11 08:00," + like}) {
    const auto log = read_log(text, "log.csv", {}, Zone());
    if (log) {
      RC_ASSERT(log->readings.size() >= 2U);
    } else {
      RC_ASSERT(log.error().line >= 1 && log.error().column >= 1 && !log.error().message.empty());
    }
  }
}

/// Bytes of a good file changed here and there.
RC_GTEST_PROP(LogProperty, DamagedFilesGiveALogOrAnError, ()) {
  std::string text = text_of(any_sheet().rows);
  const int damages = *rc::gen::inRange(1, 20);
  for (int i = 0; i < damages; ++i) text[*rc::gen::inRange<std::size_t>(0, text.size())] = *rc::gen::arbitrary<char>();
  const auto log = read_log(text, "log.csv", {}, Zone());
  if (!log) RC_ASSERT(!log.error().message.empty());
}

}  // namespace
}  // namespace coatday::climate
