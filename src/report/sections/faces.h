#pragma once
// Faces in the short form in which people speak of them.

#include <string>
#include <vector>

#include "job/plan.h"

namespace coatday::report {

/// The part that a face entry belongs to, among all entries.
struct PartFaces {
  const job::FaceEntry* first = nullptr;  ///< stands for the part
  std::vector<std::size_t> faces;         ///< indices, in the order of the entries
};
/// All of it gets no finish: a glue face. It is no face that was left behind.
[[nodiscard]] inline bool masked(const job::FaceEntry& face) { return face.area <= SquareMetres(0); }
/// The parts, each load apart, in the order of the entries.
[[nodiscard]] std::vector<PartFaces> parts_of(const std::vector<job::FaceEntry>&);

/// "all round", "edges and left end", "all round but the underside": some faces of one part.
[[nodiscard]] std::string face_text(const std::vector<job::FaceEntry>&, const std::vector<std::size_t>& all_of_part,
                                    const std::vector<std::size_t>& chosen);
/// "top underside and back edge; leg x4 all round". Names the piece where there are several.
[[nodiscard]] std::string face_text(const job::Plan&, const std::vector<std::size_t>& chosen);
/// "top", or "low shelf / top" where there are several pieces.
[[nodiscard]] std::string part_text(const job::Plan&, const job::FaceEntry&);

}  // namespace coatday::report
