#pragma once
// A problem with its constraints sorted by activity, and the little arithmetic of starts and ends that everything else needs.

#include <span>

#include "solver/base/problem.h"

namespace coatday::solver {

/// For each of n owners a list, all in one block of memory.
template <typename T>
class Lists {
 public:
  struct Entry {
    int owner;
    T item;
  };
  Lists() = default;
  Lists(int owners, const std::vector<Entry>& entries) : begins_(static_cast<std::size_t>(owners) + 1), items_(entries.size()) {
    for (const Entry& entry : entries) ++begins_[static_cast<std::size_t>(entry.owner) + 1];
    for (std::size_t i = 1; i < begins_.size(); ++i) begins_[i] += begins_[i - 1];
    std::vector<std::size_t> next(begins_.begin(), begins_.end());
    for (const Entry& entry : entries) items_[next[static_cast<std::size_t>(entry.owner)]++] = entry.item;
  }
  [[nodiscard]] std::span<const T> operator[](int owner) const {
    const auto i = static_cast<std::size_t>(owner);
    return {items_.data() + begins_[i], begins_[i + 1] - begins_[i]};
  }

 private:
  std::vector<std::size_t> begins_;
  std::vector<T> items_;
};

/// A maximum lag binds by itself, or its remedy may take its place, or (its remedy takes part anyway) it binds nothing.
enum class Force { hard, soft, none };

struct Carried {  ///< a span, seen from its activity
  int exclusion = 0;
  bool right = false;
  const Span* span = nullptr;
};

using Branch = std::vector<int>;  ///< activities, sorted
[[nodiscard]] bool stands_in(int activity, const Branch&);

struct Network {
  explicit Network(const Problem&);

  const Problem& problem;
  int size;
  Lists<int> min_in, min_out, max_in, max_out;  ///< indices of lags, by `to` and by `from`
  Lists<int> remedied;                          ///< by remedy: the soft maximum lags it is for
  Lists<int> holds;                             ///< by activity: the holds whose interval depends on it
  Lists<int> users, holders;                    ///< by resource: activities and holds that may use it
  Lists<int> families;
  Lists<Carried> carried;
  Lists<Demand> demands;          ///< one a resource, amounts added up
  std::vector<Force> force;       ///< by maximum lag
  std::vector<Branch> branches;   ///< of all alternatives, alternative by alternative
  std::vector<int> first_branch;  ///< by alternative; and one more for the end
  std::vector<int> alternative;   ///< by activity: the alternative that may leave it out, or -1
  std::vector<int> stage;         ///< by activity, see stages.h
  std::vector<int> kind;          ///< by activity: those of one kind run as long, demand and exclude the same, and begin the same holds
  int kinds = 0;
  std::vector<int> order, rank;  ///< all but the optional activities, predecessors first; and their places in it (-1: optional)

  [[nodiscard]] const Activity& activity(int i) const { return problem.activities[static_cast<std::size_t>(i)]; }
  [[nodiscard]] const MinimumLag& min_lag(int i) const { return problem.minimum_lags[static_cast<std::size_t>(i)]; }
  [[nodiscard]] const MaximumLag& max_lag(int i) const { return problem.maximum_lags[static_cast<std::size_t>(i)]; }
  [[nodiscard]] const Hold& hold(int i) const { return problem.holds[static_cast<std::size_t>(i)]; }
  [[nodiscard]] std::span<const Branch> branches_of(int alternative) const;
  /// Whether it takes part in every schedule.
  [[nodiscard]] bool certain(int i) const { return !activity(i).optional && alternative[static_cast<std::size_t>(i)] < 0; }
  /// Whether `other` takes part wherever the activity does.
  [[nodiscard]] bool implies(int i, int other) const;
  /// Whether the lag makes `to` wait for `from`: neither optional, and not against the order (which breaks cycles).
  [[nodiscard]] bool precedence(const MinimumLag&) const;

 private:
  void sort_lags();
  void sort_holds();
  void sort_resources();
  void sort_families();
  void sort_branches();
  void find_order();
  void find_kinds();
};

/// Of a sound schedule, the branch whose activities take part.
[[nodiscard]] int taken_branch(const Alternative&, const Schedule&);

[[nodiscard]] bool may_share(const Activity&);
[[nodiscard]] const Intervals& starts_of(const Activity&, bool shared);
[[nodiscard]] Time end_of(const Activity&, Time start, bool shared);
/// f(t), where a null f is the identity; and the latest t in [low, high] with f(t) <= value, or low - 1.
[[nodiscard]] Time value_of(const Function&, Time t);
[[nodiscard]] Time latest_of(const Function&, Time value, Time low, Time high);

/// The value of the point when its activity starts at `start`, and its inverse, for a run that is shared or not.
[[nodiscard]] Time value_of(const Activity&, Edge, Time start, bool shared);
[[nodiscard]] Time latest_of(const Activity&, Edge, bool shared, Time value, Time low, Time high);

}  // namespace coatday::solver
