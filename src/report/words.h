#pragma once
// Small phrases that every report uses. Their spaces do not break over lines.

#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "climate/air.h"
#include "job/plan.h"

namespace coatday::report {

/// The same text with spaces that do not break.
[[nodiscard]] std::string unbroken(const std::string&);
[[nodiscard]] std::string date_text(LocalDay);                              ///< Mon 11 Jan
[[nodiscard]] std::string instant_text(Instant, const Zone&);               ///< Mon 11 Jan 08:00
[[nodiscard]] std::string instant_text(Instant, const Zone&, LocalDay on);  ///< 08:00 on that day, else with its day
[[nodiscard]] LocalDay local_day(Instant, const Zone&);

[[nodiscard]] std::string volume_text(Litres, Units);
[[nodiscard]] std::string area_text(SquareMetres, Units);
/// "96.00 USD"; nothing in a shop without currency.
[[nodiscard]] std::string money_text(std::optional<Money>, const std::string& currency);
/// "a day to spare", "6 h late", "just in time".
[[nodiscard]] std::string slack_text(Hours);
/// The moments of a hand-over with their names, in their order.
inline constexpr std::array<std::pair<const char*, std::optional<Instant> job::HandOver::*>, 5> hand_over_moments{
    {{"handle", &job::HandOver::handle},
     {"wrap", &job::HandOver::wrap},
     {"deliver", &job::HandOver::deliver},
     {"careful use", &job::HandOver::careful_use},
     {"full use", &job::HandOver::full_use}}};
/// How a change is tried from the command line; nothing where no key says it.
[[nodiscard]] std::string set_text(const std::vector<std::string>& set);
/// Said under changes where the program stopped trying.
inline constexpr const char* not_all_tried = "Not every change was tried: that would take too long.";
/// "a", "a and b", "a, b and c".
[[nodiscard]] std::string listed(const std::vector<std::string>&);
[[nodiscard]] std::string counted(std::size_t, const std::string& one, const std::string& many);

/// "19-20 °C, 22-24 % RH" over [from, until); nothing where the series has no row of it.
[[nodiscard]] std::optional<std::string> air_text(const climate::AirSeries&, Instant from, Instant until, Units);

/// "steel at 15-17 °C" while a coat goes on; nothing where it is as warm as the air, within a degree.
[[nodiscard]] std::optional<std::string> surface_text(const job::Plan&, const job::Event& coat, Units);

/// What the room makes of a finish's clocks; nothing where it changes neither.
[[nodiscard]] std::string pace_text(const finish::RateFactors&);
[[nodiscard]] std::string stage_text(finish::Stage);  ///< "dry to recoat"
/// The product's name, or its id when the plan does not hold it.
[[nodiscard]] std::string product_name(const job::Plan&, const std::string& id);
/// Where on a place a load dries, when another dries beside it: "from 0 mm to 1600 mm"; else nothing.
[[nodiscard]] std::string stretch_text(const job::Plan&, const job::PlaceUse&);
[[nodiscard]] const job::Event* find_event(const job::Plan&, const std::string& id);

/// How one reader wants amounts and moments: the units, and the zone of the clock on the wall.
struct Texts {
  Units units = Units::metric;
  Zone zone = {};

  [[nodiscard]] std::string date(Instant t) const { return date_text(local_day(t, zone)); }
  [[nodiscard]] std::string long_day(Instant t) const { return unbroken(long_date(local_day(t, zone))); }
  [[nodiscard]] std::string instant(Instant t) const { return instant_text(t, zone); }
  [[nodiscard]] std::string instant(Instant t, LocalDay on) const { return instant_text(t, zone, on); }
  [[nodiscard]] std::string volume(Litres v) const { return volume_text(v, units); }
  [[nodiscard]] std::string area(SquareMetres a) const { return area_text(a, units); }
  [[nodiscard]] std::string length(Metres l) const { return unbroken(format_length(l, units)); }
};

/// In the zone of the plan's shop.
[[nodiscard]] inline Texts texts_of(const job::Plan& plan, Units units) { return {units, plan.shop.zone}; }

}  // namespace coatday::report
