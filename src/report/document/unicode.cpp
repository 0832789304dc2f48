#include "report/document/unicode.h"

#include <algorithm>
#include <array>
#include <span>

namespace coatday::report {
namespace {

struct Range {
  char32_t first, last;
};

constexpr char32_t replacement = 0xFFFD;

constexpr std::array<Range, 9> unsafe{{{0x00, 0x1F},
                                       {0x7F, 0x9F},
                                       {0x061C, 0x061C},
                                       {0x200E, 0x200F},
                                       {0x2028, 0x202E},
                                       {0x2060, 0x206F},
                                       {0xFEFF, 0xFEFF},
                                       {0xFFF9, 0xFFFB},
                                       {0xE0000, 0xE007F}}};

constexpr std::array<Range, 35> no_width{
    {{0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x05BF, 0x05BF}, {0x05C1, 0x05C2},   {0x05C4, 0x05C5},   {0x05C7, 0x05C7},
     {0x0610, 0x061A}, {0x064B, 0x065F}, {0x0670, 0x0670}, {0x06D6, 0x06DC}, {0x06DF, 0x06E4},   {0x06E7, 0x06E8},   {0x06EA, 0x06ED},
     {0x0900, 0x0902}, {0x093C, 0x093C}, {0x0941, 0x0948}, {0x094D, 0x094D}, {0x0981, 0x0981},   {0x09BC, 0x09BC},   {0x09CD, 0x09CD},
     {0x0E31, 0x0E31}, {0x0E34, 0x0E3A}, {0x0E47, 0x0E4E}, {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF},   {0x200B, 0x200D},   {0x20D0, 0x20FF},
     {0x302A, 0x302D}, {0x3099, 0x309A}, {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}, {0x1D165, 0x1D169}, {0x1E000, 0x1E02A}, {0xE0100, 0xE01EF}}};

constexpr std::array<Range, 16> wide{{{0x1100, 0x115F},
                                      {0x231A, 0x231B},
                                      {0x2329, 0x232A},
                                      {0x23E9, 0x23EC},
                                      {0x2E80, 0x303E},
                                      {0x3041, 0xA4CF},
                                      {0xA960, 0xA97F},
                                      {0xAC00, 0xD7A3},
                                      {0xF900, 0xFAFF},
                                      {0xFE10, 0xFE19},
                                      {0xFE30, 0xFE6F},
                                      {0xFF00, 0xFF60},
                                      {0xFFE0, 0xFFE6},
                                      {0x1F300, 0x1F64F},
                                      {0x1F680, 0x1FAFF},
                                      {0x20000, 0x3FFFD}}};

bool within(std::span<const Range> ranges, char32_t c) {
  return std::any_of(ranges.begin(), ranges.end(), [c](const Range& r) { return r.first <= c && c <= r.last; });
}

struct Lead {
  std::size_t followers;
  char32_t bits;
  char32_t least;  // smaller ones are written too long
};

Lead lead_of(unsigned char byte) {
  if (byte < 0x80) return {0, byte, 0};
  if (byte >= 0xC2 && byte < 0xE0) return {1, static_cast<char32_t>(byte & 0x1F), 0x80};
  if (byte >= 0xE0 && byte < 0xF0) return {2, static_cast<char32_t>(byte & 0x0F), 0x800};
  if (byte >= 0xF0 && byte < 0xF5) return {3, static_cast<char32_t>(byte & 0x07), 0x10000};
  return {0, replacement, 0};
}

}  // namespace

char32_t take_code_point(std::string_view& rest) {
  const Lead lead = lead_of(static_cast<unsigned char>(rest.front()));
  char32_t code = lead.bits;
  for (std::size_t i = 1; i <= lead.followers; ++i) {
    const unsigned char byte = i < rest.size() ? static_cast<unsigned char>(rest[i]) : 0;
    if ((byte & 0xC0) != 0x80) {
      rest.remove_prefix(1);
      return replacement;
    }
    code = (code << 6) | (byte & 0x3F);
  }
  const bool valid = code >= lead.least && code <= 0x10FFFF && !(code >= 0xD800 && code <= 0xDFFF);
  rest.remove_prefix(valid ? lead.followers + 1 : 1);
  return valid ? code : replacement;
}

void append_utf8(std::string& out, char32_t code) {
  const auto byte = [&out](char32_t bits) { out += static_cast<char>(static_cast<unsigned char>(bits)); };
  if (code < 0x80) return byte(code);
  if (code < 0x800) {
    byte(0xC0 | (code >> 6));
  } else if (code < 0x10000) {
    byte(0xE0 | (code >> 12));
    byte(0x80 | ((code >> 6) & 0x3F));
  } else {
    byte(0xF0 | (code >> 18));
    byte(0x80 | ((code >> 12) & 0x3F));
    byte(0x80 | ((code >> 6) & 0x3F));
  }
  byte(0x80 | (code & 0x3F));
}

char32_t harmless(char32_t code) {
  if (code == '\n' || code == '\r' || code == '\t') return ' ';
  return within(unsafe, code) ? replacement : code;
}

int columns_of(char32_t code) {
  if (code < 0x300) return 1;
  if (within(no_width, code)) return 0;
  return within(wide, code) ? 2 : 1;
}

}  // namespace coatday::report
