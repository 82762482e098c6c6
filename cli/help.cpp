#include "cli/help.hpp"

#include <algorithm>

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/global_options.hpp"

namespace evenclaw::cli {
namespace {

std::string usage_line(const Command& command) {
  std::string line = "evenclaw " + std::string(command.verb);
  for (const Operand& operand : command.operands) {
    const std::string name = std::string(operand.name) + (operand.many ? " ..." : "");
    line += operand.required ? " " + name : " [" + name + "]";
  }
  return line;
}

std::string option_form(const Option& option) {
  return std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
}

/// "  --feet FEET       today's feet", broken at the width of a terminal.
std::string explained(std::string_view form, std::size_t width, std::string_view help) {
  return wrapped_behind("  " + padded(form, width) + "  ", help) + "\n";
}

struct ExitLine {
  Exit exit;
  std::string_view meaning;
};

constexpr ExitLine exits[] = {
    {Exit::fine, "all was done"},
    {Exit::asked, "something was refused or has to be answered; the rest was done"},
    {Exit::usage, "the command's own words are off; nothing was done"},
    {Exit::world, "file, disk or database failed; what was said to be saved is saved"},
    {Exit::damaged, "the records are damaged or made by a newer version; nothing was changed"}};

std::string_view form_words(JsonForm form) {
  switch (form) {
    case JsonForm::document:
      return "One object";
    case JsonForm::list:
      return "One array of objects";
    case JsonForm::lines:
      return "One object a line, each printed when it is true";
  }
  return "";
}

std::string members_table(const std::vector<FieldDoc>& members) {
  std::string table = "\n| member | holds | may be absent | meaning |\n|---|---|---|---|\n";
  for (const FieldDoc& field : members) {
    table += "| `" + field.path + "` | " + type_told(field) + " | " +
             (field.may_be_absent ? "yes" : "") + " | " + std::string(field.doc) + " |\n";
  }
  return table;
}

}  // namespace

std::string help_of_all() {
  std::string out =
      "Evenclaw keeps what a claw trimmer calls out: every foot, every block and wrap,\n"
      "until it is off.\n\n";
  std::size_t widest = 0;
  for (const Command* command : all_commands()) widest = std::max(widest, command->verb.size());
  for (const Command* command : all_commands()) {
    out += explained(command->verb, widest, command->summary);
  }
  out += "\nevenclaw help VERB shows examples. With every command:\n";
  for (const Option& option : global_options()) {
    out += explained(option_form(option), 12, option.help);
  }
  out += "\nExit codes:\n";
  for (const ExitLine& line : exits) {
    out += explained(std::to_string(static_cast<int>(line.exit)), 1, line.meaning);
  }
  return out;
}

std::string help_of(const Command& command) {
  std::string out = std::string(command.summary) + "\n\n  " + usage_line(command) + "\n\n";
  for (const Operand& operand : command.operands) {
    out += explained(operand.name, 16, operand.help);
  }
  for (const Option& option : command.options) {
    out += explained(option_form(option), 16, option.help);
  }
  out += "\nExamples\n";
  for (const Example& example : command.examples) {
    out += "  " + std::string(example.line) + "\n" + wrapped_behind("      ", example.says) + "\n";
  }
  return out;
}

std::string command_reference() {
  std::string out =
      "# Commands\n\nMade from the program's own table (`evenclaw help`); do not edit.\n\n"
      "With every command:\n\n| option | what it does |\n|---|---|\n";
  for (const Option& option : global_options()) {
    out += "| `" + option_form(option) + "` | " + std::string(option.help) + " |\n";
  }
  out += "\nWhat a command answers to the shell:\n\n| code | meaning |\n|---|---|\n";
  for (const ExitLine& line : exits) {
    out += "| " + std::to_string(static_cast<int>(line.exit)) + " | " + std::string(line.meaning) +
           " |\n";
  }
  for (const Command* command : all_commands()) {
    out += "\n## " + std::string(command->verb) + "\n\n" + std::string(command->summary) + "\n\n`" +
           usage_line(*command) + "`\n\n";
    if (!command->operands.empty() || !command->options.empty()) {
      out += "| word | what it means |\n|---|---|\n";
    }
    for (const Operand& operand : command->operands) {
      out += "| `" + std::string(operand.name) + "` | " + std::string(operand.help) + " |\n";
    }
    for (const Option& option : command->options) {
      out += "| `" + option_form(option) + "` | " + std::string(option.help) + " |\n";
    }
    out += "\n```\n";
    for (const Example& example : command->examples) {
      out += std::string(example.line) + "\n    # " + std::string(example.says) + "\n";
    }
    out += "```\n";
  }
  return out;
}

std::string answer_reference() {
  std::string out =
      "# What commands answer with --json\n\n"
      "Made from the program's own table (`evenclaw help --answers`); do not edit. `[]` marks a\n"
      "list, a dot a member of a member. An empty list is left out, and so is what is not known.\n"
      "The exit codes are those of [the commands](../user/commands.md), with --json and without.\n"
      "\n## When it went wrong\n\nOne object, on one line, on standard output.\n" +
      members_table(field_docs<FaultsAnswer>());
  for (const Command* command : all_commands()) {
    for (const JsonAnswer& answer : command->answers) {
      out += "\n## " + std::string(command->verb);
      if (!answer.when.empty()) out += ", " + std::string(answer.when);
      out +=
          "\n\n" + std::string(form_words(answer.form)) + ".\n" + members_table(answer.members());
    }
  }
  return out;
}

}  // namespace evenclaw::cli
