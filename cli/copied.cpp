#include "cli/copied.hpp"

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "store/sqlite/check_file.hpp"

namespace evenclaw::cli {

namespace {

Fault copied_with_damage(const std::string& copy, const Faults& damaged) {
  const auto places = static_cast<std::int64_t>(damaged.size());
  return {.slug = "file-damaged",
          .message = "the copy " + copy + " was made, but it is damaged at " +
                     counted(places, "place", "places") +
                     ", as is what it was made from: " + damaged.front().message,
          .token = copy,
          .remedy =
              "Keep both, and look for an older backup. All that is damaged is told by: "
              "evenclaw check --file " +
              copy};
}

}  // namespace

Exit tell_copied(const Invocation& invocation, const std::string& copy, const std::string& done) {
  const auto report = check_file(copy);
  if (!report) return tell_faults(report.faults(), invocation);
  if (!report->damaged.empty()) {
    return tell_faults({copied_with_damage(copy, report->damaged)}, invocation);
  }
  tell_done(invocation, done, FileAnswer{copy});
  return Exit::fine;
}

}  // namespace evenclaw::cli
