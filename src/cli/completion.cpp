#include "cli/completion.h"

#include <fmt/core.h>

#include "cli/commands.h"

namespace coatday::cli {
namespace {

constexpr std::string_view script = R"(# Completion of coatday for bash, printed by: coatday help --completion bash
_coatday() {{
  local word=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD-1]}} options='' values='' others='' known
  case ${{COMP_WORDS[1]}} in
{commands}  esac
  if [ "$COMP_CWORD" -eq 1 ]; then known='{names} --help --version'
  elif [ -n "$values" ]; then known=$values
  elif [ "${{word:0:1}}" = - ]; then known=$options
  else known=$others; fi
  COMPREPLY=($(compgen -W "$known" -- "$word"))
}}
complete -o default -F _coatday coatday
)";

std::string joined(const Args& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : " ") + word;
  return all;
}

/// One command's options, and the words where it takes one of several.
std::string of_command(const Command& command) {
  Args options;
  std::string values, others;
  for (const Option& option : command.options) {
    const bool dashed = option.name.starts_with('-');
    if (dashed) options.push_back(option.name);
    if (dashed && !option.choices.empty()) values += fmt::format("        {}) values='{}' ;;\n", option.name, joined(option.choices));
    if (!dashed) others = joined(option.choices);
  }
  options.emplace_back("--help");
  std::string text = fmt::format("    {})\n      options='{}' others='{}'\n", command.name, joined(options), others);
  if (!values.empty()) text += "      case $before in\n" + values + "      esac\n";
  return text + "      ;;\n";
}

}  // namespace

std::string bash_completion() {
  Args names;
  std::string all;
  for (const Command& command : commands()) {
    names.emplace_back(command.name);
    all += of_command(command);
  }
  return fmt::format(script, fmt::arg("commands", all), fmt::arg("names", joined(names)));
}

}  // namespace coatday::cli
