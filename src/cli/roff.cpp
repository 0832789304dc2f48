#include "cli/roff.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace coatday::cli::roff {
namespace {

using namespace std::string_view_literals;

/// Signs beyond ASCII by the names that every formatter knows.
constexpr std::array<std::pair<std::string_view, std::string_view>, 5> signs{
    {{"\u00a0", "\\ "}, {"°", "\\(de"}, {"µ", "\\(mc"}, {"²", "\\(S2"}, {"³", "\\(S3"}}};

bool is_letter(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

/// Whether the hyphen at this place joins two words, as in "half-hour".
bool joins_words(std::string_view text, std::size_t at) {
  return at > 0 && at + 1 < text.size() && is_letter(text[at - 1]) && is_letter(text[at + 1]);
}

std::string escaped(std::string_view text, bool is_prose) {
  std::string out;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::string_view rest = text.substr(at);
    const auto* const sign = std::find_if(signs.begin(), signs.end(), [rest](const auto& one) { return rest.starts_with(one.first); });
    if (sign != signs.end()) {
      out += sign->second;
      at += sign->first.size() - 1;
      continue;
    }
    if (text[at] == '\\') out += "\\e";
    if (text[at] == '-') out += is_prose && joins_words(text, at) ? "-" : "\\-";
    if (text[at] == '\'') out += is_prose ? "'" : "\\(aq";
    if ("\\-'"sv.find(text[at]) == std::string_view::npos) out += text[at];
  }
  return out;
}

}  // namespace

std::string literal(std::string_view text) { return escaped(text, false); }

/// What stands between grave accents is typed, and set in bold in their place.
std::string prose(std::string_view text) {
  std::string out;
  bool typed = false;
  for (std::size_t at = 0; at <= text.size();) {
    const std::string_view part = text.substr(at, text.find('`', at) - at);
    if (!part.empty()) out += typed ? "\\fB" + literal(part) + "\\fR" : escaped(part, true);
    typed = !typed;
    at += part.size() + 1;
  }
  return out.starts_with('.') || out.starts_with('\'') ? "\\&" + out : out;  // else the line would be a command
}

std::string section(std::string_view title) { return fmt::format(".SH {}\n", title); }
std::string subsection(std::string_view title) { return fmt::format(".SS {}\n", prose(title)); }
std::string paragraph(std::string_view text) { return fmt::format(".PP\n{}\n", prose(text)); }
std::string item(std::string_view label, std::string_view text) {
  return fmt::format(".TP\n\\fB{}\\fR\n{}\n", literal(label), prose(text));
}
std::string example(std::string_view line) { return fmt::format(".PP\n.RS 4\n.nf\n\\fB{}\\fR\n.fi\n.RE\n", literal(line)); }

}  // namespace coatday::cli::roff
