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
  std::vector<FaultAnswer> damaged;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("file", &LogWritten::file, "where it lies");
    visit("entries", &LogWritten::entries, "how many entries it holds");
    visit("damaged", &LogWritten::damaged, "entries that cannot be read any more");
  }
};

constexpr JsonAnswer answers[] = {{"with --out", JsonForm::document, field_docs<LogWritten>}};

/// All is given out that can be read; whoever builds on it has to know that it is not all.
Exit told_damage(const GivenOut& given, const Invocation& invocation) {
  if (given.damaged.empty()) return Exit::fine;
  Faults faults = given.damaged;
  faults.push_back(
      {.slug = "file-damaged",
       .message = "Not all could be read: " + counted(given.entries, "entry", "entries") +
                  " given out, " + std::to_string(given.damaged.size()) + " not.",
       .remedy = given.damaged.front().remedy});
  if (invocation.json) return tell_faults(faults, invocation);
  for (const Fault& fault : given.damaged) std::cerr << "evenclaw: " << fault.message << '\n';
  return tell_faults({faults.back()}, invocation);
}

Exit into_file(Store& store, const std::string& path, const Invocation& invocation) {
  std::string content;
  auto given = give_out(store, [&](std::string_view line) -> Outcome {
    content.append(line);
    content.push_back('\n');
    return Done{};
  });
  if (!given) return tell_faults(given.faults(), invocation);
  const auto made = write_new_file(path, content);
  if (!made) return tell_faults(made.faults(), invocation);
  LogWritten written{path, given->entries, {}};
  for (const Fault& fault : given->damaged) written.damaged.push_back(as_answer(fault));
  tell_done(invocation, counted(given->entries, "entry", "entries") + " written to " + path,
            written);
  if (invocation.json && !given->damaged.empty()) return Exit::damaged;
  return told_damage(*given, invocation);
}

Exit onto_screen(Store& store, const Invocation& invocation) {
  const auto given = give_out(store, [](std::string_view line) -> Outcome {
    std::cout << line << '\n';
    if (!std::cout) return Fault{"disk-failed", "the output cannot be written any more"};
    return Done{};
  });
  return given ? told_damage(*given, invocation) : tell_faults(given.faults(), invocation);
}

/// A file that is damaged, or whose disk fails, is refused by whatever shows rows; its log is given
/// out as far as it can be read.
Result<std::unique_ptr<Records>> opened(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  const std::string slug = records ? "" : records.faults().front().slug;
  const bool is_hurt = slug == "file-damaged" || slug == "disk-failed";
  return is_hurt ? Records::open(invocation, Opening::salvage) : std::move(records);
}

Exit run(const Invocation& invocation) {
  auto records = opened(invocation);
  if (!records) return tell_faults(records.faults(), invocation);
  const std::string path = invocation.value("--out");
  if (path.empty()) return onto_screen((*records)->store(), invocation);
  return into_file((*records)->store(), path, invocation);
}

}  // namespace

extern const Command log_command = {
    "log", "give out every entry, one line each", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
