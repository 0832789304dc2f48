#pragma once
// What may stand after a command, each once for all commands that take it.

#include <map>

#include "cli/command.h"

namespace coatday::cli {

// What a command is about.
[[nodiscard]] Option orders();            ///< ORDER.yaml...
[[nodiscard]] Option orders_and_event();  ///< ORDER.yaml... [EVENT]
[[nodiscard]] Option name();              ///< [NAME]

[[nodiscard]] Option shop_and_orders();  ///< SHOP.yaml [ORDER.yaml...]

// Options.
[[nodiscard]] Option format(const std::vector<Output>&);  ///< --format, one of them; the first is the default
[[nodiscard]] Option days();
[[nodiscard]] Option finish();
[[nodiscard]] Option fit();
[[nodiscard]] Option from();
[[nodiscard]] Option at();  ///< an air
[[nodiscard]] Option species();
[[nodiscard]] Option width();
[[nodiscard]] Option cut();               ///< an angle of rings
[[nodiscard]] Option from_air_or_time();  ///< --from, an air or, for an order, a time
[[nodiscard]] Option keep();
[[nodiscard]] Option effort();
[[nodiscard]] Option units();
[[nodiscard]] Option metric_units();  ///< --units, where no shop says which
[[nodiscard]] Option strict();
[[nodiscard]] Option set();
[[nodiscard]] Option output();  ///< -o, a file; with output_file.h
[[nodiscard]] Option force();
[[nodiscard]] Option own();
[[nodiscard]] Option colour();
[[nodiscard]] Option topic();       ///< [TOPIC] of the help
[[nodiscard]] Option man();         ///< --man
[[nodiscard]] Option completion();  ///< --completion, a shell

/// The option with other words in its help.
[[nodiscard]] Option with_help(Option, std::string help);

/// "; did you mean 'x'?", or nothing.
[[nodiscard]] std::string suggestion(const std::string& typed, const Args& known);

template <class T>
Args names_in(const std::map<std::string, T>& map) {
  Args names;
  for (const auto& [name, value] : map) names.push_back(name);
  return names;
}

}  // namespace coatday::cli
