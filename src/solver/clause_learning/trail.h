#pragma once
// The bounds of all variables, why each moved, and how to undo moves.

#include <cstdint>
#include <span>
#include <vector>

#include "solver/base/problem.h"
#include "solver/clause_learning/literal.h"

namespace coatday::solver::clause_learning {

/// Why a bound moved. Clauses and arcs explain themselves on request; stored literals are their own explanation.
struct Reason {
  enum Kind : std::uint8_t { decision, clause, arc, stored };
  Kind kind = decision;
  std::uint32_t data = 0;
};

struct Entry {
  BoundVar bound_var;
  Time value, before;
  int previous;  ///< the entry before it of the same bound variable, or -1
  int level;
  int moves;  ///< moves of the bound variable at this level before this entry
  Reason reason;
};

/// Makes literals canonical: a bound within a hole of the domain moves to the end of the hole.
class Trail {
 public:
  /// Adds a variable of [low, high], and of `allowed` if given, and returns its number. `allowed` must outlive the trail and contain both
  /// ends.
  Var add(Time low, Time high, const Intervals* allowed = nullptr);

  [[nodiscard]] int variables() const { return static_cast<int>(bounds_.size() / 2); }
  [[nodiscard]] Time bound(BoundVar s) const { return bounds_[at(s)]; }
  [[nodiscard]] Time low(Var x) const { return bounds_[at(2 * x)]; }
  [[nodiscard]] Time high(Var x) const { return -bounds_[at(2 * x + 1)]; }
  [[nodiscard]] bool fixed(Var x) const { return low(x) == high(x); }
  [[nodiscard]] bool holds(Literal l) const { return bounds_[at(l.bound_var)] >= l.value; }
  [[nodiscard]] bool fails(Literal l) const { return bounds_[at(l.bound_var ^ 1)] > -l.value; }

  /// Makes the literal true. False if it fails; conflict() then says why.
  bool set(Literal, Reason);
  bool set(Literal, std::span<const Literal> because);
  /// These true literals exclude each other. Always returns false.
  bool refute(std::span<const Literal>);

  [[nodiscard]] int level() const { return static_cast<int>(marks_.size()); }
  void deepen() { marks_.push_back({static_cast<int>(entries_.size()), stored_.size()}); }
  void back(int level);
  /// At the root: everything that holds there needs no reason from now on.
  void forget();

  [[nodiscard]] int length() const { return static_cast<int>(entries_.size()); }
  [[nodiscard]] const Entry& operator[](int i) const { return entries_[at(i)]; }
  /// Of a literal that holds: the entry that made it true, or -1 if it always was.
  [[nodiscard]] int origin(Literal l) const {
    int i = last_[at(l.bound_var)];
    while (i >= 0 && entries_[at(i)].before >= l.value) i = entries_[at(i)].previous;
    return i;
  }
  /// How often the bound variable has moved at this level.
  [[nodiscard]] int moves(BoundVar s) const {
    const int i = last_[at(s)];
    return i >= 0 && entries_[at(i)].level == level() ? entries_[at(i)].moves + 1 : 0;
  }
  [[nodiscard]] std::span<const Literal> stored(Reason) const;

  struct Conflict {
    bool implied = false;  ///< `reason` implies `literal`, but it fails
    Literal literal;
    Reason reason;
    std::vector<Literal> together;  ///< otherwise: true literals that exclude each other
  };
  [[nodiscard]] const Conflict& conflict() const { return conflict_; }

  /// The same literal with the largest, or the least, value that means the same in this domain.
  [[nodiscard]] Literal tight(Literal) const;
  [[nodiscard]] Literal loose(Literal) const;

 private:
  struct Mark {
    int length;
    std::size_t stored;
  };
  std::vector<Time> bounds_;               ///< by bound variable
  std::vector<int> last_;                  ///< by bound variable: its last entry
  std::vector<const Intervals*> allowed_;  ///< by variable
  std::vector<Entry> entries_;
  std::vector<Mark> marks_;      ///< by level above the root: where it begins
  std::vector<Literal> stored_;  ///< each list after its length
  Conflict conflict_;
};

}  // namespace coatday::solver::clause_learning
