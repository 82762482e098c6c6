#include "cli/arguments.hpp"

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <optional>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/global_options.hpp"
#include "cli/help.hpp"
#include "cli/shipped.hpp"
#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

Fault complaint(std::string message, std::string_view token, std::string remedy) {
  return {"usage", std::move(message), std::string(token), 0, 0, std::move(remedy)};
}

std::string quoted(std::string_view word) {
  return "\"" + std::string(word) + "\"";
}

/// The nearest of the known words, when it is near enough to be what was meant.
class Nearest {
 public:
  explicit Nearest(std::string_view typed) : typed_(fold_case(typed)) {}

  void consider(std::string_view known) {
    const std::size_t distance = edit_distance(typed_, known);
    const bool is_beginning = typed_.size() > 1 && known.substr(0, typed_.size()) == typed_;
    const std::size_t score = is_beginning ? 0 : distance;
    if (score > std::max<std::size_t>(1, known.size() / 3) || score >= best_) return;
    best_ = score;
    word_ = known;
  }

  [[nodiscard]] std::string_view word() const { return word_; }

 private:
  std::string typed_;
  std::size_t best_ = std::string::npos;
  std::string_view word_;
};

std::string see_help(const Command& command) {
  return "See: evenclaw help " + std::string(command.verb);
}

Fault unknown_option(std::string_view typed, const Command& command) {
  Nearest nearest(typed);
  for (const Option& option : command.options) nearest.consider(option.name);
  for (const Option& option : global_options()) nearest.consider(option.name);
  std::string remedy = nearest.word().empty() ? see_help(command)
                                              : "Did you mean " + std::string(nearest.word()) + "?";
  return complaint(std::string(command.verb) + " has no option " + std::string(typed), typed,
                   std::move(remedy));
}

Fault missing_operand(const Command& command, const Operand& operand) {
  return complaint(std::string(command.verb) + " needs " + std::string(operand.name) + ": " +
                       std::string(operand.help),
                   "", "For example: " + std::string(command.examples.front().line));
}

Fault word_too_many(const Command& command, std::string_view word) {
  if (command.operands.empty()) {
    return complaint(std::string(command.verb) + " takes no " + quoted(word), word,
                     see_help(command));
  }
  return complaint(quoted(word) + " is a word too many", word,
                   "What has several words stands in quotes, as \"Home Farm\".");
}

/// A variable of the shell that is not set, most likely: the usual records or the only herd must
/// not stand in for what was meant.
bool names_nothing(const Invocation& given, std::string_view option) {
  return given.has(option) && given.value(option).empty();
}

Fault named_by_nothing(std::string_view option) {
  return complaint(std::string(option) + " is given an empty name", option,
                   "Name it, or leave " + std::string(option) + " out.");
}

const Option* option_of(const Command& command, std::string_view name) {
  const auto named = [&](const Option& option) { return option.name == name; };
  const auto own = std::find_if(command.options.begin(), command.options.end(), named);
  if (own != command.options.end()) return &*own;
  const auto global = global_options();
  const auto shared = std::find_if(global.begin(), global.end(), named);
  return shared == global.end() ? nullptr : &*shared;
}

bool is_option(std::string_view word) {
  return word.size() > 1 && word.front() == '-';
}

bool asks_for_help(std::string_view word) {
  return word == "--help" || word == "-h";
}

/// The verb is the first word that is neither an option of every command nor its value.
std::optional<std::size_t> place_of_verb(std::span<const std::string> words) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (!is_option(words[i])) return i;
    const auto global = global_options();
    const bool takes_next = std::any_of(global.begin(), global.end(), [&](const Option& option) {
      return option.name == words[i] && !option.value.empty();
    });
    if (takes_next) ++i;
  }
  return std::nullopt;
}

/// Reads the words behind and before the verb.
class Reading {
 public:
  Reading(std::span<const std::string> words, const Command& command, std::size_t verb)
      : words_(words), command_(command), verb_(verb) {}

  Faults read() {
    for (at_ = 0; at_ < words_.size(); ++at_) {
      if (at_ == verb_) continue;
      if (!only_operands_ && words_[at_] == "--") {
        only_operands_ = true;
      } else if (!only_operands_ && is_option(words_[at_])) {
        take_option(words_[at_]);
      } else {
        given.operands.push_back(words_[at_]);
      }
    }
    count_operands();
    return std::move(faults_);
  }

  Invocation given;

 private:
  void take_option(std::string_view word) {
    const std::size_t equals = word.find('=');
    const std::string_view name = word.substr(0, equals);
    const Option* option = option_of(command_, name);
    if (option == nullptr) {
      faults_.push_back(unknown_option(name, command_));
      return;
    }
    if (given.has(name)) {
      faults_.push_back(complaint(std::string(name) + " is given twice", name, "Say it once."));
    }
    std::string& value = given.options[std::string(name)];
    if (equals != std::string_view::npos && option->value.empty()) {
      faults_.push_back(complaint(std::string(name) + " takes no value", word, "Leave it out."));
    } else if (equals != std::string_view::npos) {
      value = word.substr(equals + 1);
    } else if (!option->value.empty()) {
      value = next_word(*option);
    }
  }

  std::string next_word(const Option& option) {
    const bool is_there = at_ + 1 < words_.size() && at_ + 1 != verb_ &&
                          option_of(command_, words_[at_ + 1]) == nullptr &&
                          !asks_for_help(words_[at_ + 1]);
    if (is_there) return words_[++at_];
    faults_.push_back(complaint(std::string(option.name) + " needs " + std::string(option.value),
                                option.name, std::string(option.help)));
    return {};
  }

  void count_operands() {
    const auto& wanted = command_.operands;
    for (std::size_t i = given.operands.size(); i < wanted.size(); ++i) {
      if (wanted[i].required) faults_.push_back(missing_operand(command_, wanted[i]));
    }
    const bool takes_all = !wanted.empty() && wanted.back().many;
    if (given.operands.size() > wanted.size() && !takes_all) {
      faults_.push_back(word_too_many(command_, given.operands[wanted.size()]));
    }
  }

  std::span<const std::string> words_;
  const Command& command_;
  std::size_t verb_;
  std::size_t at_ = 0;
  bool only_operands_ = false;
  Faults faults_;
};

std::string environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

void settle_file(Invocation& invocation) {
  if (invocation.file.empty()) invocation.file = environment("EVENCLAW_FILE");
  invocation.file_named = !invocation.file.empty();
  if (!invocation.file_named) invocation.file = usual_file();
}

bool asks(std::span<const std::string> words, std::string_view option) {
  const auto end = std::find(words.begin(), words.end(), "--");
  return std::find(words.begin(), end, option) != end;
}

/// What is answered without a command: help and the version.
std::optional<std::string> answered_at_once(std::span<const std::string> words) {
  if (words.empty()) return help_of_all();
  if (words.front() == "--version") return "evenclaw " + std::string(version) + "\n";
  const auto end = std::find(words.begin(), words.end(), "--");
  if (std::none_of(words.begin(), end, asks_for_help)) return std::nullopt;
  const auto verb = place_of_verb(words);
  const Command* command = verb ? find_command(words[*verb]) : nullptr;
  return command == nullptr ? help_of_all() : help_of(*command);
}

}  // namespace

Fault no_such_command(std::string_view typed) {
  Nearest nearest(typed);
  for (const Command* command : all_commands()) nearest.consider(command->verb);
  std::string remedy = nearest.word().empty()
                           ? "The commands are listed by: evenclaw help"
                           : "Did you mean: evenclaw " + std::string(nearest.word());
  return complaint("there is no command " + quoted(typed), typed, std::move(remedy));
}

std::string usual_file() {
  const std::string data = environment("XDG_DATA_HOME");
  // The rule for these folders: what is not given from the root on does not count.
  if (!data.empty() && data.front() == '/') return data + "/evenclaw/evenclaw.db";
  const std::string home = environment("HOME");
  return home.empty() ? home : home + "/.local/share/evenclaw/evenclaw.db";
}

Result<Parsed> parse(std::span<const std::string> words) {
  const auto verb = place_of_verb(words);
  if (!verb) return complaint("there is no command", "", "See: evenclaw help");
  const Command* command = find_command(words[*verb]);
  if (command == nullptr) return no_such_command(words[*verb]);
  Reading reading(words, *command, *verb);
  Faults faults = reading.read();
  for (const std::string_view named : {"--file", "--herd"}) {
    if (names_nothing(reading.given, named)) faults.push_back(named_by_nothing(named));
  }
  if (!faults.empty()) return faults;
  Invocation& given = reading.given;
  given.file = given.value("--file");
  if (given.has("--today")) given.today = given.value("--today");
  given.json = given.has("--json");
  return Parsed{command, std::move(given)};
}

std::variant<Parsed, Exit> parse_arguments(int argc, char** argv) {
  const std::vector<std::string> words(argv + std::min(argc, 1), argv + argc);
  if (const auto text = answered_at_once(words)) {
    std::cout << *text;
    return Exit::fine;
  }
  auto parsed = parse(words);
  if (!parsed) {
    Invocation told;
    told.json = asks(words, "--json");
    return tell_faults(parsed.faults(), told);
  }
  settle_file(parsed->invocation);
  if (parsed->invocation.file.empty() && parsed->command != &help_command) {
    return tell_faults({complaint("it is not known where the records lie: HOME is not set", "",
                                  "Name the file: --file FILE")},
                       parsed->invocation);
  }
  return *std::move(parsed);
}

}  // namespace evenclaw::cli
