#include "store/sqlite/check_file.hpp"

#include <optional>
#include <string_view>
#include <utility>

#include "store/sqlite/connection.hpp"
#include "store/sqlite/entry_table.hpp"
#include "store/sqlite/open_file.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view put_back = "Keep a copy of it, then restore the latest backup.";

void add_for_entry(FileReport& report, const Fault& fault, const Uuid& id) {
  Fault told = fault;
  told.token = to_text(id);
  if (told.remedy.empty()) told.remedy = put_back;
  report.damaged.push_back(std::move(told));
}

// A page that cannot be read ends one part of the check, not the others.
template <class Part>
void carried_on(FileReport& report, Part&& part) {
  try {
    part();
  } catch (SqlFailure& failure) {
    report.damaged.push_back(std::move(failure.fault));
  }
}

void check_pages(Connection& connection, FileReport& report) {
  auto check = connection.prepared("PRAGMA integrity_check(100)");
  while (check->step()) {
    const std::string_view said = check->text_at(0);
    if (said == "ok") continue;
    report.damaged.push_back(fault_of_pages(connection.file(), said));
  }
}

// The columns an entry is found and sorted by, in the order in which they are selected.
constexpr std::string_view found_by =
    "SELECT e.id, e.digest, e.device, e.seq, e.order_, e.kind, e.supersedes, e.at, e.envelope,"
    " e.body FROM entry AS e INDEXED BY entry_in_order WHERE e.scope = ?"
    " ORDER BY e.order_, e.device, e.seq, e.id, e.digest";
constexpr int envelope_column = 8;
constexpr int body_column = 9;

bool columns_agree(const Statement& row, const Entry& entry) {
  const Envelope& envelope = entry.envelope;
  const bool has_supersedes = !row.is_empty(6);
  return row.id_at(0) == envelope.id.value && row.id_at(2) == envelope.device.value &&
         row.integer_at(3) == envelope.seq && row.integer_at(4) == envelope.order &&
         row.text_at(5) == envelope.kind && has_supersedes == envelope.supersedes.has_value() &&
         (!has_supersedes || row.id_at(6) == envelope.supersedes->value) &&
         row.text_at(7) == to_text(envelope.at);
}

bool subjects_agree(Connection& connection, const Entry& entry, const Digest& digest) {
  const Envelope& envelope = entry.envelope;
  for (const Uuid& subject : envelope.subjects) {
    auto find = connection.prepared(
        "SELECT 1 FROM entry_subject WHERE scope = ? AND subject = ? AND kind = ? AND id = ?"
        " AND digest = ?");
    find->id(envelope.scope).id(subject).text(envelope.kind).id(envelope.id.value);
    if (!find->digest(digest).step()) return false;
  }
  return true;
}

std::optional<Entry> checked_entry(Connection& connection, const Uuid& scope, const Statement& row,
                                   FileReport& report) {
  std::optional<std::string_view> body;
  if (!row.is_empty(body_column)) body = row.text_at(body_column);
  const std::string_view envelope = row.text_at(envelope_column);
  const Digest digest = row.digest_at(1);
  if (const auto whole = entry_from_parts(envelope, body); !whole) {
    for (const Fault& fault : whole.faults()) add_for_entry(report, fault, row.id_at(0));
  }
  // An envelope that can be read counts, whatever became of its body: one flaw is told once.
  auto entry = entry_from_parts(envelope, std::nullopt);
  if (!entry) return std::nullopt;
  if (sha256(envelope) != digest) {
    add_for_entry(report, {"entry-digest-wrong", "The envelope does not fit its digest."},
                  row.id_at(0));
  }
  if (entry->envelope.scope != scope || !columns_agree(row, *entry) ||
      !subjects_agree(connection, *entry, digest)) {
    add_for_entry(report, {"row-unreadable", "What the entry is found by does not fit it."},
                  row.id_at(0));
  }
  return *std::move(entry);
}

void check_scope(Connection& connection, const Uuid& scope, FileReport& report) {
  std::vector<Entry> entries;
  std::int64_t subjects = 0;
  bool all_readable = true;
  auto rows = connection.prepared(found_by);
  rows->id(scope);
  while (rows->step()) {
    auto entry = checked_entry(connection, scope, *rows, report);
    if (!entry) {
      all_readable = false;
      continue;
    }
    subjects += static_cast<std::int64_t>(entry->envelope.subjects.size());
    entries.push_back(*std::move(entry));
  }
  report.entries += static_cast<std::int64_t>(entries.size());
  const std::vector<LogFlaw> flaws = flaws_of(entries);
  report.flaws.insert(report.flaws.end(), flaws.begin(), flaws.end());
  if (!all_readable) return;
  auto count = connection.prepared("SELECT count(*) FROM entry_subject WHERE scope = ?");
  if (count->id(scope).step() && count->integer_at(0) > subjects) {
    add_for_entry(report, {"row-unreadable", "Subjects are named that no entry touches."}, scope);
  }
}

FileReport checked(Connection& connection) {
  FileReport report;
  carried_on(report, [&] { check_pages(connection, report); });
  std::vector<Uuid> scopes;
  carried_on(report, [&] { scopes = scopes_of(connection); });
  for (const Uuid& scope : scopes) {
    carried_on(report, [&] { check_scope(connection, scope, report); });
  }
  return report;
}

}  // namespace

Result<FileReport> check_file(const std::string& file) {
  return caught([&] {
    Connection connection = opened_as_it_is(file);
    return checked(connection);
  });
}

}  // namespace evenclaw
