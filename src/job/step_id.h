#pragma once
// What an event or a task is about. Its text is the id that users type and that histories keep.

#include <optional>
#include <string>
#include <string_view>

namespace coatday::job {

struct StepId {
  /// Faces that are coated together. Of a coat in two passes the hidden side goes first, or else the side that shows.
  enum class Pass {
    only,
    first,   ///< the hidden side, before the other
    second,  ///< the side that shows, after the other
    hidden,  ///< the hidden side, after the other
    show     ///< the side that shows, before the other
  };
  enum class Kind { step, carry_in, turn, turn_back, measure, other_work };

  std::string piece;  ///< empty: the shop's own work, or a can that is carried in
  std::string load;   ///< empty: of no load
  std::string step;   ///< of the schedule; or the other work, or the product in the can
  Pass pass = Pass::only;
  Kind kind = Kind::step;

  bool operator==(const StepId&) const = default;
};

/// piece/load/step[/pass], piece/work, shop/work, cans/product.
[[nodiscard]] std::string to_string(const StepId&);
/// Returns nothing for a text that is no id. A piece cannot be called "shop" or "cans" here.
[[nodiscard]] std::optional<StepId> parse_step_id(std::string_view);

/// "piece/load", the same for all that is done with one load; empty where there is no load.
[[nodiscard]] std::string load_key(const StepId&);

/// Whether an event is the step that was asked for, of a load that holds the items that were asked for.
[[nodiscard]] bool is_about(const StepId& event, std::string_view asked);

/// The id with the first item of its load alone: a step keeps it when its load gains or loses other items.
[[nodiscard]] std::string by_first_item(std::string_view event);

/// The step that scuffs before this coat, because its recoat window was missed.
[[nodiscard]] std::string scuff_before(const std::string& coat);
/// The coat before which this step scuffs; nothing for other steps.
[[nodiscard]] std::optional<std::string> coat_after(const std::string& scuff);

}  // namespace coatday::job
