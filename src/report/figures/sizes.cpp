#include "report/figures/sizes.h"

namespace coatday::report::page {
namespace {

std::string by(std::initializer_list<Metres> sizes, Units units) {
  std::string out;
  for (const Metres size : sizes) out += (out.empty() ? "" : " × ") + format_length(size, units);
  return out;
}

std::string words(const piece::Board& b, Units u) { return by({b.length, b.width, b.thickness}, u); }
std::string words(const piece::RoundTop& t, Units u) { return by({t.diameter}, u) + " across, " + by({t.thickness}, u); }
std::string words(const piece::TaperedLeg& l, Units u) { return by({l.length}, u) + ", " + by({l.top}, u) + " to " + by({l.foot}, u); }
std::string words(const piece::TurnedLeg& l, Units u) { return l.profile.empty() ? "" : by({l.profile.back().at}, u) + " long, turned"; }
std::string words(const piece::RoundTube& t, Units u) { return by({t.length}, u) + ", " + by({t.diameter}, u) + " across"; }
std::string words(const piece::RectTube& t, Units u) { return by({t.length, t.width, t.height}, u); }
std::string words(const piece::Case& c, Units u) { return by({c.width, c.height, c.depth}, u); }
std::string words(const piece::Door& d, Units u) { return by({d.width, d.height, d.thickness}, u); }
std::string words(const piece::Bowl& b, Units u) { return by({b.diameter}, u) + " across, " + by({b.height}, u) + " high"; }
std::string words(const piece::Vessel& v, Units u) {
  if (v.profile.empty()) return "";
  return by({piece::widest(v.profile)}, u) + " across, " + by({v.profile.back().at - v.profile.front().at}, u) + " high";
}
std::string words(const piece::FreeArea& f, Units u) { return by({f.length, f.width, f.height}, u); }

}  // namespace

std::string size_text(const piece::Shape& shape, Units units) {
  return std::visit([units](const auto& s) { return words(s, units); }, shape);
}

}  // namespace coatday::report::page
