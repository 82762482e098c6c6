#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/output_file.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--out", "FILE", "into a new file instead of the screen"}};
constexpr Example examples[] = {
    {"evenclaw log --out all.jsonl", "every entry, one JSON line each (docs/format/log.md)"},
    {"evenclaw log | grep '\"kind\":\"turn\"' | wc -l", "for other programs"}};

Outcome into_file(Store& store, const std::string& path) {
  std::string content;
  auto given = give_out(store, [&](std::string_view line) -> Outcome {
    content.append(line);
    content.push_back('\n');
    return Done{};
  });
  if (!given) return given.faults();
  return write_new_file(path, content);
}

Outcome onto_screen(Store& store) {
  return give_out(store, [](std::string_view line) -> Outcome {
    std::cout << line << '\n';
    if (!std::cout) return Fault{"disk-failed", "the output cannot be written any more"};
    return Done{};
  });
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  const std::string path = invocation.value("--out");
  auto given =
      path.empty() ? onto_screen((*records)->store()) : into_file((*records)->store(), path);
  return given ? Exit::fine : tell_faults(given.faults(), invocation);
}

}  // namespace

extern const Command log_command = {
    "log", "give out every entry, one line each", {}, options, examples, run};

}  // namespace evenclaw::cli
