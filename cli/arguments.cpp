#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <iostream>
#include <memory>

#include "cli/help.hpp"

namespace evenclaw::cli {
namespace {

/// What CLI11 writes into while it parses one subcommand.
struct Bound {
  const Command* command;
  CLI::App* app;
  std::vector<std::unique_ptr<std::vector<std::string>>> operands;
  std::map<std::string, std::string, std::less<>> values;
  std::map<std::string, bool, std::less<>> flags;
};

struct Globals {
  std::string file;
  std::string today;
  bool json = false;
};

std::string environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

void add_globals(CLI::App& app, Globals& globals) {
  app.add_option("--file", globals.file, "the records to use (else EVENCLAW_FILE, else the usual)");
  app.add_option("--today", globals.today, "take this day for today, as 2026-11-24");
  app.add_flag("--json", globals.json, "print values as JSON");
}

std::unique_ptr<Bound> bind(CLI::App& top, const Command& command, Globals& globals) {
  auto bound = std::make_unique<Bound>();
  bound->command = &command;
  bound->app = top.add_subcommand(std::string(command.verb), std::string(command.summary));
  bound->app->set_help_flag("--help", "say how it is used");
  for (const Operand& operand : command.operands) {
    auto& into = bound->operands.emplace_back(std::make_unique<std::vector<std::string>>());
    CLI::Option* option =
        bound->app->add_option(std::string(operand.name), *into, std::string(operand.help));
    if (operand.many) {
      option->expected(operand.required ? 1 : 0, -1);
    } else {
      option->expected(1);
    }
    option->required(operand.required);
  }
  for (const Option& option : command.options) {
    const std::string name(option.name);
    if (option.value.empty()) {
      bound->app->add_flag(name, bound->flags[name], std::string(option.help));
    } else {
      bound->app->add_option(name, bound->values[name], std::string(option.help));
    }
  }
  add_globals(*bound->app, globals);
  return bound;
}

Invocation invocation_of(const Bound& bound, const Globals& globals) {
  Invocation invocation;
  for (const auto& operand : bound.operands) {
    invocation.operands.insert(invocation.operands.end(), operand->begin(), operand->end());
  }
  for (const auto& [name, value] : bound.values) {
    if (bound.app->count(name) > 0) invocation.options[name] = value;
  }
  for (const auto& [name, set] : bound.flags) {
    if (set) invocation.options[name] = "";
  }
  invocation.file = globals.file;
  if (invocation.file.empty()) invocation.file = environment("EVENCLAW_FILE");
  invocation.file_named = !invocation.file.empty();
  if (!invocation.file_named) invocation.file = usual_file();
  if (!globals.today.empty()) invocation.today = globals.today;
  invocation.json = globals.json;
  return invocation;
}

Exit complain(const CLI::ParseError& error, const std::string& verb) {
  std::cerr << "evenclaw: " << error.what() << "\n";
  std::cerr << "See: evenclaw help" << (verb.empty() ? "" : " " + verb) << "\n";
  return Exit::usage;
}

/// The verb that was typed, also when the rest could not be understood.
const Command* typed_verb(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    if (const Command* command = find_command(argv[i])) return command;
  }
  return nullptr;
}

}  // namespace

std::string usual_file() {
  std::string data = environment("XDG_DATA_HOME");
  if (data.empty() || data.front() != '/') data = environment("HOME") + "/.local/share";
  return data + "/evenclaw/evenclaw.db";
}

std::variant<Parsed, Exit> parse_arguments(int argc, char** argv) {
  CLI::App app("Evenclaw keeps what a claw trimmer calls out.", "evenclaw");
  app.set_help_flag("--help", "say how it is used");
  Globals globals;
  add_globals(app, globals);
  std::vector<std::unique_ptr<Bound>> all;
  for (const Command* command : all_commands()) all.push_back(bind(app, *command, globals));

  const Command* typed = typed_verb(argc, argv);
  try {
    app.parse(argc, argv);
  } catch (const CLI::CallForHelp&) {
    std::cout << (typed != nullptr ? help_of(*typed) : help_of_all());
    return Exit::fine;
  } catch (const CLI::ParseError& error) {
    return complain(error, typed == nullptr ? std::string() : std::string(typed->verb));
  }
  for (const auto& bound : all) {
    if (bound->app->parsed()) return Parsed{bound->command, invocation_of(*bound, globals)};
  }
  std::cout << help_of_all();
  return argc > 1 ? Exit::usage : Exit::fine;
}

}  // namespace evenclaw::cli
