#pragma once
// What a maker could change, as changes of the job. Changes of one kind differ in size; the smallest comes first.

#include <functional>

#include "job/plan.h"
#include "job/request.h"

namespace coatday::planner {

/// One change of a job; `text` may look at the plan that it leads to.
struct Change {
  std::function<void(job::Job&, Instant& from)> make;
  std::function<std::string(const job::Plan&)> text;
  std::function<bool(const job::Plan&)> counts{};  ///< whether that plan may speak for the change; null: always
  std::vector<std::string> set{};                  ///< the same as keys of the files; empty: no key says it
  std::string caution{};                           ///< to be said with it
};
[[nodiscard]] Change change(std::function<void(job::Job&, Instant&)> make, std::string text, std::vector<std::string> set = {});

/// "pieces.2", or "orders.1.pieces.2" where several orders are planned: the path of keys to a piece of the job.
[[nodiscard]] std::string path_of_piece(const job::Job&, std::size_t piece);

/// "shelf and door"; of more than three the first two and how many more.
[[nodiscard]] std::string names_of(const std::vector<std::string>&);

/// One kind of change in several sizes, the smallest first.
using ChangeSizes = std::vector<Change>;

/// "2027-03-02 08:00", as files have it.
[[nodiscard]] std::string day_and_hour(Instant, const Zone&);

/// More of what the shop has, one or several.
struct Amount {
  int now = 0;
  std::function<Change(int more)> change;
};
/// 1, 2, 4 more and so on, up to four times what there is.
[[nodiscard]] ChangeSizes doubling(const Amount&);

/// How late the whole order is by the slow clocks. Returns nothing where a piece never gets ready.
[[nodiscard]] std::optional<Hours> lateness(const job::Plan&);

/// A scuff where a recoat window closes and nothing makes a missed one good.
[[nodiscard]] std::vector<ChangeSizes> scuffs(const job::Job&);
/// What lies flat is turned only when it is dry to handle: on points, or hung up. One kind for each support that the shop has places for.
[[nodiscard]] std::vector<ChangeSizes> supports(const job::Job&);
/// More time from the first face to the second.
[[nodiscard]] ChangeSizes second_face_later(const job::Job&);
[[nodiscard]] Amount places(const job::Job&, std::size_t place);
/// Friday's hours on a Saturday or a Sunday that has none.
[[nodiscard]] ChangeSizes another_day(const job::Job&);
/// Work on the days off.
[[nodiscard]] ChangeSizes no_days_off(const job::Job&);
[[nodiscard]] ChangeSizes later_start(const job::Job&, const job::Request&);

}  // namespace coatday::planner
