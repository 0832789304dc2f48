#include "report/figures/patterns.h"

#include "report/document/element.h"

namespace coatday::report::page {

namespace {

void draw_patterns(Element body) {
  Element svg = body.add("svg", {{"width", "0"}, {"height", "0"}, {"class", "patterns"}, {"aria-hidden", "true"}});
  Element defs = svg.add("defs", {});
  const auto pattern = [&defs](const char* id, const char* size) {
    return defs.add("pattern", {{"id", id}, {"width", size}, {"height", size}, {"patternUnits", "userSpaceOnUse"}});
  };
  Element wet = pattern("wet", "4");
  wet.add("rect", {{"class", "wet-ground"}, {"width", "4"}, {"height", "4"}});
  wet.add("path", {{"class", "wet-line"}, {"d", "M-1 1l2-2M0 4l4-4M3 5l2-2"}});
  Element shut = pattern("shut", "5");
  shut.add("path", {{"class", "shut-line"}, {"d", "M0 0l5 5M5 0L0 5"}});
  Element off = pattern("off", "7");
  off.add("rect", {{"class", "off-ground"}, {"width", "7"}, {"height", "7"}});
  off.add("path", {{"class", "off-line"}, {"d", "M-1 1l2-2M0 7l7-7M6 8l2-2"}});
  Element bare = pattern("bare", "8");
  bare.add("rect", {{"class", "bare-ground"}, {"width", "8"}, {"height", "8"}});
  bare.add("path", {{"class", "bare-line"}, {"d", "M-2 2l4-4M0 8l8-8M6 10l4-4"}});
  Element declared = pattern("declared", "6");
  declared.add("path", {{"class", "declared-line"}, {"d", "M0 6l6-6"}});
}

}  // namespace

Section patterns() {
  Section section;
  section.media = Media::page;
  section.blocks.emplace_back(Figure{"", draw_patterns});
  return section;
}

}  // namespace coatday::report::page
