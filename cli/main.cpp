// evenclaw: one command of the day at a time.
#include <exception>
#include <iostream>
#include <variant>

#include "cli/arguments.hpp"

int main(int argc, char** argv) {
  using namespace evenclaw::cli;  // NOLINT(google-build-using-namespace): this file only
  try {
    auto parsed = parse_arguments(argc, argv);
    if (const Exit* exit = std::get_if<Exit>(&parsed)) return static_cast<int>(*exit);
    const auto& [command, invocation] = std::get<Parsed>(parsed);
    const Exit exit = command->run(invocation);
    std::cout.flush();
    return static_cast<int>(exit);
  } catch (const std::exception& error) {
    // Nothing of ours throws: this is memory running out, or our mistake.
    std::cerr << "evenclaw: stopped by an error of its own: " << error.what()
              << "\n  Everything that was reported as saved is saved.\n";
    return static_cast<int>(Exit::world);
  }
}
