#include <map>

#include <fmt/core.h>

#include "report/document/table.h"
#include "report/papers/report.h"
#include "report/sections/faces.h"
#include "report/words.h"

namespace coatday::report {
namespace {

Table faces_table(const std::vector<job::FaceEntry>& entries, std::size_t piece, const Look& look) {
  Table table{{{Text("part", Ink::faint)},
               {Text("face", Ink::faint)},
               {Text("area", Ink::faint), Align::right},
               {Text("across", Ink::faint)},
               {Text("material", Ink::faint)},
               {}},
              {}};
  for (const PartFaces& part : parts_of(entries)) {
    if (part.first->piece != piece) continue;
    SquareMetres sum;
    for (const std::size_t i : part.faces) {
      const job::FaceEntry& face = entries[i];
      sum += face.area;
      std::string remark = face.end_grain ? "end grain" : "";
      if (face.exception) remark += (remark.empty() ? "" : "; ") + face.exception->reason;
      table.rows.push_back({i == part.faces.front() ? Text(face.part) : Text(), face.face, area_words(face.area, look.units),
                            face.opposite ? Text(entries[*face.opposite].face) : Text("-"), face.material, Text(remark, Ink::faint)});
    }
    if (part.faces.size() > 1)
      table.rows.push_back({"", Text("together", Ink::strong), Text(area_words(sum, look.units), Ink::strong), "", "", ""});
  }
  return table;
}

}  // namespace

std::string area_text(const std::vector<job::FaceEntry>& entries, const std::vector<std::string>& pieces, const Look& look) {
  Lines lines;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) lines.emplace_back();
    append(lines, wrap(Text(pieces[i], Ink::strong), look.columns));
    append(lines, layout(faces_table(entries, i, look), 2, look));
  }
  std::map<std::string, SquareMetres> by_material;
  for (const job::FaceEntry& entry : entries) by_material[entry.material] += entry.area;
  std::vector<std::string> sums;
  for (const auto& [material, area] : by_material) sums.push_back(area_words(area, look.units) + " of " + material);
  if (!sums.empty()) {
    lines.emplace_back();
    append(lines,
           hang("", Text("To be coated: ", Ink::strong) + listed(sums) + ". Masked areas are left out; all items of a part are counted.",
                look));
  }
  return render(lines, look.colour);
}

}  // namespace coatday::report
