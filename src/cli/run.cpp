#include "cli/run.h"

#include <exception>
#include <new>

#include "cli/command.h"
#include "cli/output_file.h"
#include "cli/ready.h"
#include "report/document/lines.h"
#include "report/papers/report.h"

namespace coatday::cli {
namespace {

const Output& chosen_output(const Arguments& arguments) {
  const std::vector<Output>& outputs = arguments.command->outputs;
  for (const Output& output : outputs) {
    if (output.format == arguments.format) return output;
  }
  return outputs.front();
}

/// What the command writes of what is ready.
Outcome written_answer(const View& view, const Output& output) {
  const Command& command = *view.arguments.command;
  if (command.only_plans && !view.is_planned()) return {no_plan, "", reasons(view)};
  Outcome outcome = output.write(view);
  if (command.only_plans && outcome.status != done) outcome.err = report::findings_text(view.plan().findings, view.order(), view.style);
  if (view.arguments.output.empty()) return outcome;
  return to_file(view.arguments, std::move(outcome), output.file_mark, command.announcement(view));
}

/// A file that the command reads is not the one that it writes, by whatever name or link.
input::ReadFile reading_all_but(const std::string& output, const input::ReadFile& read) {
  if (output.empty()) return read;
  return [output, read](const std::filesystem::path& path) -> input::FileText {
    std::error_code none;
    if (std::filesystem::equivalent(path, output, none)) return tl::make_unexpected(std::string("-o would write over it"));
    return read(path);
  };
}

Outcome answer_to(const Arguments& arguments, Environment environment) {
  const Command& command = *arguments.command;
  const Output& output = chosen_output(arguments);
  if (const auto wrong = command.misuse == nullptr ? std::nullopt : command.misuse(arguments)) return mistaken(*wrong);
  if (const auto refused = refused_output(arguments, output.file_mark)) return *refused;
  environment.read = reading_all_but(arguments.output, environment.read);
  const auto view = make_ready(arguments, environment);
  return view ? written_answer(*view, output) : view.error();
}

}  // namespace

Outcome run(const std::vector<std::string>& words, const Environment& environment) {
  Outcome outcome;
  try {
    const auto arguments = read_arguments(words);
    outcome = arguments ? answer_to(*arguments, environment) : arguments.error();
  } catch (const std::bad_alloc&) {
    outcome = {no_plan, "", "coatday: error: this needs more memory than there is; plan fewer parts or orders at once, or free some\n"};
  } catch (const std::exception& fault) {
    outcome = {our_fault, "", std::string("coatday: this is a bug in coatday; please report it with the order: ") + fault.what() + "\n"};
  }
  outcome.err = report::harmless_text(outcome.err);  // mistakes repeat what the user typed
  return outcome;
}

}  // namespace coatday::cli
