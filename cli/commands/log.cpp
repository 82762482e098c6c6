#include "cli/answer.hpp"
#include "cli/columns.hpp"
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

struct LogWritten {
  std::string file;
  std::int64_t entries = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("file", &LogWritten::file, "where it lies");
    visit("entries", &LogWritten::entries, "how many entries it holds");
  }
};

constexpr JsonAnswer answers[] = {{"with --out", JsonForm::document, field_docs<LogWritten>}};

Result<LogWritten> into_file(Store& store, const std::string& path) {
  std::string content;
  LogWritten written{path};
  auto given = give_out(store, [&](std::string_view line) -> Outcome {
    content.append(line);
    content.push_back('\n');
    ++written.entries;
    return Done{};
  });
  if (!given) return given.faults();
  const auto made = write_new_file(path, content);
  if (!made) return made.faults();
  return written;
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
  if (path.empty()) {
    auto given = onto_screen((*records)->store());
    return given ? Exit::fine : tell_faults(given.faults(), invocation);
  }
  auto written = into_file((*records)->store(), path);
  if (!written) return tell_faults(written.faults(), invocation);
  tell_done(invocation, counted(written->entries, "entry", "entries") + " written to " + path,
            *written);
  return Exit::fine;
}

}  // namespace

extern const Command log_command = {
    "log", "give out every entry, one line each", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
