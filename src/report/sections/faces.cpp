#include "report/sections/faces.h"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>

#include "report/words.h"

namespace coatday::report {
namespace {

using Indices = std::vector<std::size_t>;

bool holds(const Indices& indices, std::size_t i) { return std::find(indices.begin(), indices.end(), i) != indices.end(); }

/// Faces that go by one word when all of them are meant.
struct Family {
  std::string_view word;  ///< at the end of the face's name, or before it
  bool at_end;
  std::string_view all;
};
constexpr std::array<Family, 4> families{
    {{"edge", true, "edges"}, {"end", true, "ends"}, {"inside ", false, "inside"}, {"outside ", false, "outside"}}};

bool belongs(const Family& family, const std::string& face) {
  if (!family.at_end) return face.starts_with(family.word);
  return face == family.word || face.ends_with(" " + std::string(family.word));
}

// The word for this face: its own name, or the family's when two or more of the part are of it and all of those are chosen.
std::string word_for(const std::vector<job::FaceEntry>& entries, const Indices& part, const Indices& chosen, std::size_t face) {
  for (const Family& family : families) {
    if (!belongs(family, entries[face].face)) continue;
    Indices members;
    std::copy_if(part.begin(), part.end(), std::back_inserter(members), [&](std::size_t i) { return belongs(family, entries[i].face); });
    const bool all = std::all_of(members.begin(), members.end(), [&](std::size_t i) { return holds(chosen, i); });
    if (members.size() > 1 && all) return std::string(family.all);
  }
  return entries[face].face;
}

// Ends go with the edges.
std::string all_but(const std::string& face) {
  static const std::map<std::string_view, std::string_view> across{
      {"underside", "face"}, {"face", "underside"}, {"back", "front"}, {"front", "back"}};
  const auto other = across.find(face);
  return other == across.end() ? "all faces except the " + face : std::string(other->second) + " and edges";
}

}  // namespace

std::vector<PartFaces> parts_of(const std::vector<job::FaceEntry>& entries) {
  std::vector<PartFaces> parts;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const job::FaceEntry& entry = entries[i];
    const auto same = [&entry](const PartFaces& p) { return p.first->piece == entry.piece && p.first->part == entry.part; };
    auto part = std::find_if(parts.begin(), parts.end(), same);
    if (part == parts.end()) part = parts.insert(parts.end(), PartFaces{&entry, {}});
    part->faces.push_back(i);
  }
  return parts;
}

std::string face_text(const std::vector<job::FaceEntry>& entries, const Indices& part, const Indices& chosen) {
  Indices missing;
  std::copy_if(part.begin(), part.end(), std::back_inserter(missing), [&](std::size_t i) { return !holds(chosen, i); });
  if (part.size() == 1) return entries[part.front()].face;
  const auto named_all_round = [&entries](std::size_t i) { return entries[i].face == "all round"; };
  const bool ambiguous = std::any_of(part.begin(), part.end(), named_all_round);  // a turned leg's side, beside its ends
  if (missing.empty() && !ambiguous) return "all round";
  if (missing.size() == 1 && part.size() > 3) return all_but(entries[missing.front()].face);
  std::vector<std::string> words;
  for (const std::size_t face : part) {
    if (!holds(chosen, face)) continue;
    const std::string word = word_for(entries, part, chosen, face);
    if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
  }
  return listed(words);
}

std::string part_text(const job::Plan& plan, const job::FaceEntry& entry) {
  return plan.pieces.size() > 1 ? plan.pieces[entry.piece].name + " / " + entry.part : entry.part;
}

std::string face_text(const job::Plan& plan, const Indices& chosen) {
  struct Group {
    std::string faces;
    std::vector<std::string> parts;
    std::size_t piece;  // of the last part: its name is said once
  };
  std::vector<Group> groups;
  for (const PartFaces& part : parts_of(plan.faces)) {
    Indices mine;
    std::copy_if(part.faces.begin(), part.faces.end(), std::back_inserter(mine), [&](std::size_t i) { return holds(chosen, i); });
    if (mine.empty()) continue;
    const std::string faces = face_text(plan.faces, part.faces, mine);
    auto found = std::find_if(groups.begin(), groups.end(), [&faces](const Group& group) { return group.faces == faces; });
    const bool again = found != groups.end() && found->piece == part.first->piece;
    if (found == groups.end()) found = groups.insert(found, {faces, {}, 0});
    found->parts.push_back(again ? part.first->part : part_text(plan, *part.first));
    found->piece = part.first->piece;
  }
  std::string out;
  for (const Group& group : groups) out += (out.empty() ? "" : "; ") + listed(group.parts) + " " + group.faces;
  return out;
}

}  // namespace coatday::report
