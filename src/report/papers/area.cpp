#include "report/papers/area.h"

#include <map>

#include "report/sections/faces.h"

namespace coatday::report {
namespace {

std::string remark_on(const job::FaceEntry& face) {
  const std::string grain = face.end_grain ? "end grain" : "";
  if (!face.exception) return grain;
  return grain + (grain.empty() ? "" : "; ") + face.exception->reason;
}

void add_part(std::vector<Table::Row>& rows, const std::vector<job::FaceEntry>& entries, const PartFaces& part, const Texts& texts) {
  SquareMetres sum;
  for (const std::size_t i : part.faces) {
    const job::FaceEntry& face = entries[i];
    sum += face.area;
    rows.push_back({{i == part.faces.front() ? face.part : "", face.face, texts.area(face.area),
                     face.opposite ? entries[*face.opposite].face : "-", face.material, Phrase(remark_on(face), Mark::faint)}});
  }
  if (part.faces.size() > 1) rows.push_back({{{}, {"together", Mark::strong}, {texts.area(sum), Mark::strong}, {}, {}, {}}});
}

Table faces_of(const std::vector<job::FaceEntry>& entries, std::size_t piece, const Texts& texts) {
  Table table{"area", "The area of each face", {{"part"}, {"face"}, {"area", Align::right}, {"across"}, {"material"}, {}}, {{}}};
  for (const PartFaces& part : parts_of(entries)) {
    if (part.first->piece == piece) add_part(table.groups.front().rows, entries, part, texts);
  }
  return table;
}

std::string all_areas(const std::vector<job::FaceEntry>& entries, const Texts& texts) {
  std::map<std::string, SquareMetres> by_material;
  for (const job::FaceEntry& entry : entries) by_material[entry.material] += entry.area;
  std::vector<std::string> sums;
  for (const auto& [material, sum] : by_material) sums.push_back(texts.area(sum) + " of " + material);
  return listed(sums);
}

}  // namespace

Document area(const std::vector<job::FaceEntry>& entries, const std::vector<std::string>& pieces, const Texts& texts) {
  Document document;
  for (std::size_t i = 0; i < pieces.size(); ++i)
    document.sections.push_back({"piece-" + std::to_string(i + 1), typed(pieces[i]), {}, {faces_of(entries, i, texts)}});
  if (entries.empty()) return document;
  const Phrase sums =
      Phrase("To be coated: ", Mark::strong) + all_areas(entries, texts) + ". Masked areas are left out; all items of a part are counted.";
  document.sections.push_back({"sums", {}, {}, {Paragraph{sums}}});
  return document;
}

}  // namespace coatday::report
