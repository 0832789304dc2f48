#include <map>

#include <fmt/core.h>

#include "report/document/table.h"
#include "report/papers/report.h"
#include "report/sections/faces.h"
#include "report/words.h"

namespace coatday::report {
namespace {

TextTable faces_table(const std::vector<job::FaceEntry>& entries, std::size_t piece, const TextStyle& style) {
  TextTable table{{{Text("part", Mark::faint)},
                   {Text("face", Mark::faint)},
                   {Text("area", Mark::faint), Align::right},
                   {Text("across", Mark::faint)},
                   {Text("material", Mark::faint)},
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
      table.rows.push_back({i == part.faces.front() ? Text(face.part) : Text(), face.face, area_text(face.area, style.units),
                            face.opposite ? Text(entries[*face.opposite].face) : Text("-"), face.material, Text(remark, Mark::faint)});
    }
    if (part.faces.size() > 1)
      table.rows.push_back({"", Text("together", Mark::strong), Text(area_text(sum, style.units), Mark::strong), "", "", ""});
  }
  return table;
}

}  // namespace

std::string area_text(const std::vector<job::FaceEntry>& entries, const std::vector<std::string>& pieces, const TextStyle& style) {
  Lines lines;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) lines.emplace_back();
    append(lines, wrap(Text(pieces[i], Mark::strong), style.columns));
    append(lines, layout(faces_table(entries, i, style), 2, style));
  }
  std::map<std::string, SquareMetres> by_material;
  for (const job::FaceEntry& entry : entries) by_material[entry.material] += entry.area;
  std::vector<std::string> sums;
  for (const auto& [material, area] : by_material) sums.push_back(area_text(area, style.units) + " of " + material);
  if (!sums.empty()) {
    lines.emplace_back();
    append(lines,
           hang("", Text("To be coated: ", Mark::strong) + listed(sums) + ". Masked areas are left out; all items of a part are counted.",
                style));
  }
  return render(lines, style.colour);
}

}  // namespace coatday::report
