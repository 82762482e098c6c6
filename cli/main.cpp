// evenclaw: one command of the day at a time.
#include <signal.h>

#include <exception>
#include <iostream>
#include <variant>

#include "cli/arguments.hpp"

namespace {

using namespace evenclaw::cli;  // NOLINT(google-build-using-namespace): this file only

/// An answer nobody could read is no answer: a full disk behind "> file" must not look fine.
Exit all_was_said(Exit exit) {
  std::cout.flush();
  if (std::cout) return exit;
  std::cerr << "evenclaw: the answer could not be written to where it was sent\n"
               "  What was to be recorded is recorded; check whether that disk is full.\n";
  return Exit::world;
}

}  // namespace

int main(int argc, char** argv) {
  // A limit on file sizes is answered like a full disk, not by ending on the spot.
  signal(SIGXFSZ, SIG_IGN);
  try {
    auto parsed = parse_arguments(argc, argv);
    if (const Exit* exit = std::get_if<Exit>(&parsed)) {
      return static_cast<int>(all_was_said(*exit));
    }
    const auto& [command, invocation] = std::get<Parsed>(parsed);
    return static_cast<int>(all_was_said(command->run(invocation)));
  } catch (const std::exception& error) {
    // Nothing of ours throws: this is memory running out, or our mistake.
    std::cerr << "evenclaw: stopped by an error of its own: " << error.what()
              << "\n  Everything that was reported as saved is saved.\n";
    return static_cast<int>(Exit::world);
  }
}
