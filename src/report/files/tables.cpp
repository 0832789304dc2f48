#include "report/files/tables.h"

#include "report/files/calendar_entries.h"
#include "report/files/csv.h"
#include "report/sections/event_facts.h"
#include "report/words.h"

namespace coatday::report {
namespace {

using Fields = std::vector<std::string>;

std::string litres(Litres v) { return csv_number(v.value(), 4); }
std::string money(const std::optional<Money>& m) { return m ? csv_number(m->value(), 2) : ""; }
std::string square_feet(SquareMetres a) {
  constexpr double foot = 0.3048;  // m, by definition
  return csv_number(a.value() / (foot * foot), 3);
}

std::string text_row(const Fields& texts) {
  Fields fields;
  for (const std::string& text : texts) fields.push_back(csv_text(text));
  return csv_row(fields);
}

std::string finish_rows(const job::Plan& plan, const job::Purchase& row, Units units) {
  std::string rows;
  const Fields what{"finish", csv_text(product_name(plan, row.product)), csv_text(row.part)};
  const Fields needed{litres(row.need), litres(row.on_hand), litres(row.left_over)};
  const auto add = [&](const Fields& bought) {
    Fields fields = what;
    const Fields amounts = rows.empty() ? needed : Fields{"", "", ""};
    fields.insert(fields.end(), amounts.begin(), amounts.end());
    fields.insert(fields.end(), bought.begin(), bought.end());
    rows += csv_row(fields);
  };
  for (const job::Bought& can : row.buy) {
    const auto cost = can.price ? std::optional(*can.price * can.count) : std::nullopt;
    add({std::to_string(can.count), csv_text(format_volume(can.size, units)), litres(can.size), money(can.price), money(cost),
         csv_text(plan.shop.currency), ""});
  }
  if (row.buy.empty()) add({"0", "", "", "", "", csv_text(plan.shop.currency), ""});
  return rows;
}

std::string day_of_year(LocalTime local) {
  const year_month_day ymd(day_of(local));
  return csv_number(static_cast<int>(ymd.year()), 0) + (ymd.month() < date::October ? "-0" : "-") +
         std::to_string(static_cast<unsigned>(ymd.month())) + (ymd.day() < date::day(10) ? "-0" : "-") +
         std::to_string(static_cast<unsigned>(ymd.day()));
}

/// Date and clock, as spreadsheets read them.
Fields moment(Instant t, const Zone& zone) {
  const LocalTime local = zone.to_local(t);
  return {day_of_year(local), clock_time(local)};
}
std::string moment_text(const std::optional<Instant>& t, const Zone& zone) {
  if (!t) return "";
  const Fields fields = moment(*t, zone);
  return fields[0] + " " + fields[1];
}

/// What only a step has.
Fields step_fields(const job::Plan& plan, const job::Event& event, Units units) {
  const EventFacts facts = event_facts(plan, event, units);
  return {csv_text(event.name),
          csv_text(facts.subject),
          csv_text(event.product.empty() ? "" : product_name(plan, event.product)),
          event.method ? csv_text(finish::word(*event.method)) : "",
          event.grit ? std::to_string(*event.grit) : "",
          event.volume ? csv_number(event.volume->value() * 1000, 0) : "",
          std::to_string(event.people),
          csv_number(Hours(event.end - event.start).count(), 2),
          moment_text(event.wipe_by, plan.shop.zone),
          moment_text(event.stages.expected[finish::Stage::tack_free], plan.shop.zone),
          csv_text(joined(facts.cautions, "; "))};
}

}  // namespace

std::string area_csv(const std::vector<job::FaceEntry>& entries, const std::vector<std::string>& pieces) {
  std::string text = text_row({"piece", "part", "face", "across", "area_m2", "area_ft2", "material", "end_grain", "exception"});
  for (const job::FaceEntry& face : entries) {
    text +=
        csv_row({csv_text(pieces.at(face.piece)), csv_text(face.part), csv_text(face.face),
                 face.opposite ? csv_text(entries.at(*face.opposite).face) : "", csv_number(face.area.value(), 4), square_feet(face.area),
                 csv_text(face.material), face.end_grain ? "yes" : "no", face.exception ? csv_text(face.exception->reason) : ""});
  }
  return text;
}

std::string buy_csv(const job::Plan& plan, Units units) {
  std::string text = text_row(
      {"kind", "item", "part", "need_l", "on_shelf_l", "left_over_l", "buy", "size", "size_l", "price", "cost", "currency", "source"});
  for (const job::Purchase& row : plan.purchase) text += finish_rows(plan, row, units);
  for (const job::Sundry& item : plan.sundries) {
    text += csv_row({"other", csv_text(item.name), "", "", "", "", std::to_string(item.count), csv_text(item.unit), "", "", "", "",
                     csv_text(item.source)});
  }
  return text;
}

std::string calendar_csv_header() {
  return text_row({"order", "date", "start", "end_date", "end", "what", "of", "finish", "method", "grit", "volume_ml", "people", "hours",
                   "wipe_off_by", "wet_until", "cautions", "place", "id"});
}

std::string calendar_csv(const job::Plan& plan, const std::string& order, Units units) {
  std::string text = calendar_csv_header();
  for (const CalendarEntry& entry : calendar_entries(plan, order, units)) {
    Fields fields{csv_text(entry.order)};
    const auto add = [&fields](const Fields& more) { fields.insert(fields.end(), more.begin(), more.end()); };
    add(moment(entry.start, plan.shop.zone));
    add(moment(entry.end, plan.shop.zone));
    add(entry.event != nullptr ? step_fields(plan, *entry.event, units)
                               : Fields{csv_text(entry.summary), "", "", "", "", "", "", "", "", "", ""});
    add({csv_text(entry.location), csv_text(entry.uid)});
    text += csv_row(fields);
  }
  return text;
}

}  // namespace coatday::report
