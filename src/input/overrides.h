#pragma once
// Keys that are set beside the files, "air.night=13 C". They change the values as read, so that every reader treats them like those of a file.

#include <deque>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "input/fields.h"
#include "input/mistakes.h"
#include "input/value.h"

namespace coatday::input {

/// The name that mistakes in these texts have in place of a file's; the line is the number of the text, from 1.
inline constexpr const char* set_name = "--set";

class Overrides {
 public:
  /// Texts PATH=VALUE. A path names keys with dots between them, and the items of a list by number, from 1, or by their own name; one number
  /// more than there are appends. A value is written as in a file. "orders.2." before a path leads to the second of several orders, in the
  /// turn of their files. Mistakes that show without the files are added here.
  Overrides(const std::vector<std::string>& texts, Mistakes&);

  [[nodiscard]] const Source& source() const { return source_; }
  /// Adds a mistake for a path that begins with no key of either file, and for a key of an order that does not say which, when several orders
  /// are planned. A key of both files belongs to the order.
  void check_first_keys(const Keys& order, const Keys& shop, std::size_t orders, Mistakes&) const;
  /// The shop file's value with what is set of these keys and not of the others; the value itself where nothing is.
  const Value& on_shop(const Value& file, const Keys& keys, const Keys& others, Mistakes&);
  /// The same of an order; the first has number 1.
  const Value& on_order(const Value& file, const Keys& keys, int number, Mistakes&);

 private:
  struct Segment {
    std::string name;
    std::size_t at = 0;  ///< in its text's own source
  };
  struct Override {
    std::optional<Segment> order;  ///< the number of the order that is meant, as typed
    std::vector<Segment> path;
    Value value;
  };
  /// 0: none is meant, or what is typed is no number.
  [[nodiscard]] static int number_of(const std::optional<Segment>& order);
  void read(std::size_t number, const std::string& text, Mistakes&);
  void check_order(const Override&, const Keys& of_orders, std::size_t orders, Mistakes&) const;
  const Value& on(const Value& file, const std::function<bool(const Override&)>& is_of, Mistakes&);
  void put(const Override&, Value& root, Mistakes&) const;

  Source source_;               ///< the texts, one a line
  std::deque<Source> sources_;  ///< each text in its line, with blanks for all but the value
  std::vector<Override> set_;
  std::deque<Value> changed_;  ///< files with changes
};

}  // namespace coatday::input
