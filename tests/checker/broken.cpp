#include "tests/checker/broken.h"

#include <algorithm>

namespace coatday::checker::test {

void PrintTo(const Break& b, std::ostream* out) { *out << b.name; }

std::string name_of(const testing::TestParamInfo<Break>& info) {
  std::string name;
  for (const char c : info.param.name)
    if (c != '\'') name += c == ' ' ? '_' : c;
  return name;
}

void scuff_underside(Small& s) {
  const std::size_t underside = s.face("top", "underside");
  job::Event& scuff = s.add_like("table/top/sand", "table/top/clear-2-scuff");
  scuff.kind = job::EventKind::scuff;
  scuff.step = "clear-2-scuff";
  scuff.faces = {underside};
  scuff.start = at(0, 15, 10);
  scuff.end = at(0, 15, 15);
}

job::PlaceUse& place_of(Small& s, std::string_view event) {
  const std::size_t i = s.index(event);
  return *std::find_if(s.plan.places.begin(), s.plan.places.end(), [&](const job::PlaceUse& use) { return use.event == i; });
}

void stand_aside(Small& s, std::string_view event, Instant from) {
  const std::size_t i = s.index(event);
  for (job::PlaceUse& use : s.plan.places) {
    if (use.event != i) continue;
    use.until = from;
    use.then = {from, at(1, 9)};
  }
}

void say_done(Small& s, std::string_view id) {
  s.event(id).done = true;
  s.job.order.history.push_back({std::string(id), s.event(id).start, s.event(id).end, {}});
}

}  // namespace coatday::checker::test
