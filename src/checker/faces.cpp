// Both faces: the same film, product by product, and close in time. And the ledger that shows it.

#include <algorithm>

#include <fmt/core.h>

#include "checker/checks.h"

namespace coatday::checker {

namespace {

std::vector<std::size_t> films(const PlanFacts& facts, std::size_t face) {
  std::vector<std::size_t> result;
  for (const std::size_t i : facts.faces[face].events) {
    if (facts.coat(i) && facts.events[i].product->film) result.push_back(i);
  }
  return result;
}

std::map<std::string, int> count_by_product(const PlanFacts& facts, const std::vector<std::size_t>& events) {
  std::map<std::string, int> counts;
  for (const std::size_t i : events) ++counts[facts.event(i).product];
  return counts;
}

void compare(const PlanFacts& facts, std::size_t a, std::size_t b, Breaches& out) {
  const auto films_a = films(facts, a);
  const auto films_b = films(facts, b);
  if (count_by_product(facts, films_a) != count_by_product(facts, films_b)) {
    out.push_back({"face-left-behind", fmt::format("{} gets {} film coats, {} across the wood gets {}, or other products",
                                                   facts.face_name(a), films_a.size(), facts.face_name(b), films_b.size())});
    return;
  }
  for (std::size_t k = 0; k < films_a.size(); ++k) {
    auto first = films_a[k];
    auto second = films_b[k];
    if (facts.event(first).start > facts.event(second).start) std::swap(first, second);
    const Hours apart = facts.event(second).start - facts.event(first).end;
    if (apart <= facts.job.shop.both_faces_within + rounding || facts.event(second).done || facts.said_missed(first, second)) continue;
    out.push_back({"faces-apart", fmt::format("{} comes {} after {}; the other face follows within {}", facts.name(second),
                                              format_span(apart), facts.name(first), format_span(facts.job.shop.both_faces_within))});
  }
}

bool same(const std::optional<piece::Exception>& a, const std::optional<piece::Exception>& b) {
  return a.has_value() == b.has_value() && (!a || a->coats == b->coats);
}

/// Event::coat counts this product's coats on each face.
void check_coat_numbers(const PlanFacts& facts, std::size_t face, Breaches& out) {
  std::map<std::string, int> so_far;
  for (const std::size_t i : facts.faces[face].events) {
    if (!facts.coat(i)) continue;
    const int number = ++so_far[facts.event(i).product];
    if (facts.event(i).coat == number || facts.event(i).faces.front() != face) continue;
    out.push_back({"coat-number-differs", fmt::format("{} is said to be coat {} of its product on {}; it is coat {}", facts.name(i),
                                                      facts.event(i).coat, facts.face_name(face), number)});
  }
}

}  // namespace

void check_both_faces(const PlanFacts& facts, Breaches& out) {
  for (std::size_t a = 0; a < facts.faces.size(); ++a) {
    const auto b = facts.faces[a].opposite;
    if (!b) continue;
    const FaceFacts& here = facts.faces[a];
    const FaceFacts& across = facts.faces[*b];
    const bool told_from_there = across.opposite == a && *b < a;
    const bool bare = here.face.coated <= SquareMetres(0) || across.face.coated <= SquareMetres(0);
    if (told_from_there || bare || !here.part->wood() || here.face.exception || across.face.exception) continue;
    compare(facts, a, *b, out);
  }
}

void check_ledger(const PlanFacts& facts, Breaches& out) {
  for (std::size_t f = 0; f < facts.faces.size(); ++f) {
    const job::FaceEntry& entry = facts.plan.faces[f];
    const auto count = static_cast<int>(films(facts, f).size());
    const std::string where = facts.face_name(f);
    if (entry.coats != count) {
      out.push_back({"ledger-differs", fmt::format("the ledger says {} film coats on {}, the events say {}", entry.coats, where, count)});
    }
    if (!same(entry.exception, facts.faces[f].face.exception)) {
      out.push_back({"exception-differs", fmt::format("the exception of {} is not the order's", where)});
    }
    if (entry.opposite != facts.faces[f].opposite || entry.wood != facts.faces[f].part->wood()) {
      out.push_back({"ledger-differs", fmt::format("what {} is made of or lies across it is not as its part says", where)});
    }
    check_coat_numbers(facts, f, out);
  }
  for (std::size_t i = 0; i < facts.events.size(); ++i) {
    if (facts.coat(i) && facts.event(i).film != facts.events[i].product->film) {
      out.push_back({"ledger-differs", fmt::format("{}: whether it adds film is not as its product says", facts.name(i))});
    }
  }
}

}  // namespace coatday::checker
