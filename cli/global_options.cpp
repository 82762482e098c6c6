#include "cli/global_options.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option table[] = {
    {"--file", "FILE", "the records to use (else EVENCLAW_FILE, else the usual place)"},
    {"--today", "DAY", "take this day for today, as 2026-11-24"},
    {"--json", "", "answer in JSON, as docs/format/answers.md says"}};

}  // namespace

std::span<const Option> global_options() {
  return table;
}

}  // namespace evenclaw::cli
