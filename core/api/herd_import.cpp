#include "core/api/herd_import.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "core/api/importing/import_memory.hpp"
#include "core/api/importing/taking_over.hpp"
#include "core/api/journal.hpp"
#include "core/base/digest.hpp"
#include "core/exchange/ade_herd.hpp"
#include "core/exchange/decoded_text.hpp"

namespace evenclaw {

namespace {

/// What was read of a file, whatever its form.
struct FileRead {
  HerdImported imported;  // its form and columns
  std::vector<HerdRecord> records;
  Faults left_out;
};

std::string separator_told(char separator) {
  return separator == '\t' ? std::string("tab") : std::string(1, separator);
}

bool says_words(const ImportWish& wish) {
  return wish.findings.icar || !wish.findings.words.empty();
}

Fault no_lesions() {
  return {.slug = "usage",
          .message = "nothing in the file is read as a lesion, so its words need no meaning",
          .remedy = "Say which column holds lesions: --columns \"lesion=HEAD, day=HEAD\""};
}

Result<FileRead> read_table(const DecodedText& text, const ImportWish& wish,
                            const ImportMemory& memory) {
  const CsvTable table = csv_table(text.text);
  auto herd =
      herd_table(table, {wish.columns, memory.columns, wish.dates ? wish.dates : memory.dates,
                         wish.from, with_words_said(memory.findings, wish.findings)});
  if (!herd) return herd.faults();
  if (herd->lesions.empty() && says_words(wish)) return no_lesions();
  FileRead read;
  read.imported.form = "table";
  read.imported.separator = separator_told(table.separator);
  read.imported.columns = std::move(herd->columns);
  read.imported.days = std::move(herd->day_styles);
  read.imported.lines = herd->lines;
  read.imported.lesions = std::move(herd->lesions);
  read.imported.passed_over = herd->passed_over;
  read.records = std::move(herd->records);
  read.left_out = std::move(herd->row_faults);
  return read;
}

Result<FileRead> read_ade(const DecodedText& text, const ImportWish& wish) {
  if (says_words(wish)) return no_lesions();
  auto herd = ade_herd(text.text, wish.from);
  if (!herd) return herd.faults();
  FileRead read;
  read.imported.form = "ICAR ADE";
  read.imported.columns = std::move(herd->types);
  read.imported.lines = herd->objects;
  read.records = std::move(herd->records);
  read.left_out = std::move(herd->left_out);
  return read;
}

Result<FileRead> read_file(std::string_view bytes, const ImportWish& wish,
                           const ImportMemory& memory) {
  if (static_cast<std::int64_t>(bytes.size()) > largest_import_bytes) {
    return Fault{.slug = "file-too-large",
                 .message = "the file is over 64 MB, which is no list of a herd",
                 .remedy = "Check that it is the right file; split it if it is."};
  }
  const auto text = decoded_text(bytes);
  if (!text) return text.faults();
  auto read = looks_like_json(text->text) ? read_ade(*text, wish) : read_table(*text, wish, memory);
  if (!read) return read;
  read->imported.encoding = word_of(text->encoding);
  return read;
}

void put_left_out(Faults faults, HerdImported& imported) {
  std::stable_sort(faults.begin(), faults.end(),
                   [](const Fault& a, const Fault& b) { return a.line < b.line; });
  std::set<int> lines;
  for (Fault& fault : faults) {
    lines.insert(fault.line);
    imported.left_out.push_back({fault.line, fault.column, std::move(fault.slug),
                                 std::move(fault.message), std::move(fault.token),
                                 std::move(fault.remedy)});
  }
  imported.left_out_lines = static_cast<std::int32_t>(lines.size());
}

Outcome write_all(const Ports& ports, HerdId herd, const std::vector<CowBodies>& cows,
                  const std::optional<ImportMemory>& memory) {
  auto journal = Journal::open(ports, herd.value);
  if (!journal) return journal.faults();
  Outcome added = memory ? remember(*journal, *memory) : Outcome(Done{});
  for (const CowBodies& cow : cows) {
    for (const CowRegistered& body : cow.registered) {
      if (added) added = journal->add(body, {.id = journal->fresh_id()});
    }
    if (added && cow.life) added = journal->add(*cow.life, {.id = journal->fresh_id()});
    if (added && cow.findings) added = journal->add(*cow.findings, {.id = journal->fresh_id()});
  }
  if (!added) return added;
  const auto kept = journal->write();
  if (!kept) return kept.faults();
  return Done{};
}

void put_counts(const TakingOver::Counts& counts, HerdImported& imported) {
  imported.entered = counts.entered;
  imported.told_more = counts.told_more;
  imported.unchanged = counts.unchanged;
  imported.events = counts.events;
  imported.findings = counts.findings;
  imported.taken_back = counts.taken_back;
}

/// Of faults for which nothing at all was taken over.
Faults refused_whole(Faults faults) {
  for (Fault& fault : faults) {
    if (fault.slug == "list-unreadable") fault.slug = "list-refused";
  }
  return faults;
}

}  // namespace

Result<HerdImported> import_herd(const Ports& ports, HerdId herd, std::string_view bytes,
                                 const ImportWish& wish) {
  const auto memory = import_memory_of(ports.store, herd);
  if (!memory) return memory.faults();
  auto read = read_file(bytes, wish, *memory);
  if (!read) return refused_whole(read.faults());
  auto known = KnownHerd::read(ports.store, herd);
  if (!known) return known.faults();
  TakingOver taking(*std::move(known), {wish.from, day_of(ports.clock.now())}, wish.is_sure);
  taking.take(read->records);
  Faults left_out = taking.left_out();
  left_out.insert(left_out.end(), read->left_out.begin(), read->left_out.end());
  if (wish.all_or_nothing && !left_out.empty()) return refused_whole(std::move(left_out));

  HerdImported imported = std::move(read->imported);
  const ImportMemory now = with_said(*memory, wish.columns, wish.dates, wish.findings);
  const std::vector<CowBodies> bodies = taking.bodies(sha256(bytes), kind_of(now.findings));
  put_counts(taking.counts(), imported);
  put_left_out(std::move(left_out), imported);
  if (wish.only_tries) return imported;
  const bool is_memory_new = now != *memory;
  if (!bodies.empty() || is_memory_new) {
    const Outcome written =
        write_all(ports, herd, bodies, is_memory_new ? std::optional(now) : std::nullopt);
    if (!written) return written.faults();
  }
  imported.written = true;
  return imported;
}

}  // namespace evenclaw
