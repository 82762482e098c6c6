// A subcommand as data: what it is called, what it takes, examples, and the function that does it.
// Help, argument parsing, docs/user/commands.md and docs/format/answers.md all come from this one
// description.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/wire/field_docs.hpp"

namespace evenclaw::cli {

/// What a command answers to the shell; docs/user/commands.md lists them.
enum class Exit {
  fine = 0,
  asked = 1,   // something was refused or has to be answered; everything else was recorded
  usage = 2,   // the command's own words are off; nothing was done
  world = 3,   // file, disk or database failed
  damaged = 4  // the records are damaged, or made by a newer version
};

struct Operand {
  std::string_view name;  // "HERD"
  std::string_view help;
  bool required = true;
  bool many = false;  // takes all that follow
};

struct Option {
  std::string_view name;   // "--feet"
  std::string_view value;  // "FEET"; "" for a flag
  std::string_view help;
};

struct Example {
  std::string_view line;  // as typed
  std::string_view says;  // what it does, in a few words
};

/// What was typed after the verb, already matched against the command's description.
struct Invocation {
  std::vector<std::string> operands;
  std::map<std::string, std::string, std::less<>> options;  // flags hold ""
  std::string file;                                         // the records
  bool file_named = false;                                  // with --file or EVENCLAW_FILE
  std::optional<std::string> today;                         // --today, for lists that repeat
  bool json = false;

  [[nodiscard]] bool has(std::string_view option) const { return options.count(option) > 0; }

  [[nodiscard]] std::string value(std::string_view option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::string() : found->second;
  }

  /// The operands from `first` on as one text: a name need not stand in quotes.
  [[nodiscard]] std::string words_from(std::size_t first) const {
    std::string all;
    for (std::size_t i = first; i < operands.size(); ++i)
      all += (i > first ? " " : "") + operands[i];
    return all;
  }
};

/// What --json makes of an answer.
enum class JsonForm {
  document,  // one object
  list,      // one array of objects
  lines      // an object a line, each as soon as it is true
};

struct JsonAnswer {
  std::string_view when;  // "" when the command always answers so
  JsonForm form = JsonForm::document;
  std::vector<FieldDoc> (*members)() = nullptr;
};

struct Command {
  std::string_view verb;
  std::string_view summary;
  std::span<const Operand> operands;
  std::span<const Option> options;
  std::span<const Example> examples;
  Exit (*run)(const Invocation& invocation);
  std::span<const JsonAnswer> answers = {};  // none where what is printed is text or a log
};

/// Every subcommand, in the order in which a day needs them.
std::span<const Command* const> all_commands();
const Command* find_command(std::string_view verb);

}  // namespace evenclaw::cli
