#include "tests/fault/held_against.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>

#include "core/api/transfer.hpp"
#include "core/log/merge.hpp"
#include "core/log/selection.hpp"
#include "store/sqlite/check_file.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sound_file.hpp"

namespace evenclaw::test {

namespace {

/// What a file holds apart from its rows.
struct Holdings {
  std::vector<Entry> log;
  std::string draft;

  friend bool operator==(const Holdings&, const Holdings&) = default;
};

Holdings after_writes(const Acknowledged& writes, std::size_t count) {
  EntrySet entries;
  Holdings holdings;
  for (std::size_t i = 0; i < count; ++i) {
    for (const Entry& entry : writes[i].entries) entries.add(entry);
    if (writes[i].draft) holdings.draft = *writes[i].draft;
  }
  holdings.log = entries.everything();
  return holdings;
}

std::vector<Entry> log_of(Store& store) {
  EntrySet entries;
  const Outcome read = store.read_everything([&](const Entry& entry) {
    entries.add(entry);
    return true;
  });
  return read ? entries.everything() : std::vector<Entry>();
}

void blame(Verdict& verdict, int Verdict::*of, int count, const std::string& why) {
  if (count == 0) return;
  verdict.*of += count;
  if (verdict.why.empty()) verdict.why = why;
}

int missing_of(const std::vector<Entry>& expected, const std::vector<Entry>& log) {
  std::set<EntryId> there;
  for (const Entry& entry : log) there.insert(entry.envelope.id);
  return static_cast<int>(std::count_if(expected.begin(), expected.end(), [&](const Entry& entry) {
    return there.count(entry.envelope.id) == 0;
  }));
}

int repeated_in(const std::vector<Entry>& log) {
  std::set<EntryId> there;
  for (const Entry& entry : log) there.insert(entry.envelope.id);
  return static_cast<int>(log.size() - there.size());
}

std::vector<std::vector<Cells>> all_rows(Store& store) {
  std::vector<std::vector<Cells>> rows;
  for (const TableShape& shape : all_tables()) {
    auto of_table = store.select({std::string(shape.name), std::nullopt, {}, {}});
    rows.push_back(of_table ? *std::move(of_table) : std::vector<Cells>());
  }
  return rows;
}

bool rows_fit_log(Store& store) {
  const auto stale = store.needs_rebuild();
  if (!stale || *stale) return false;
  const auto before = all_rows(store);
  return store.forget_pictures().ok() && rebuild_picture(store, {}).ok() &&
         all_rows(store) == before;
}

Holdings held_by(Store& store) {
  const auto draft = store.draft();
  return {log_of(store), draft ? *draft : "no draft can be read"};
}

void judge_log(Verdict& verdict, Store& store, const Acknowledged& writes, std::size_t certain) {
  const Holdings there = held_by(store);
  const Holdings expected = after_writes(writes, certain);
  if (there == expected) return;
  if (certain < writes.size() && there == after_writes(writes, certain + 1)) return;
  blame(verdict, &Verdict::lost, missing_of(expected.log, there.log), "an entry is missing");
  blame(verdict, &Verdict::doubled, repeated_in(there.log), "an entry is there twice");
  if (verdict.is_good()) blame(verdict, &Verdict::half, 1, "part of a write is there");
}

}  // namespace

Verdict held_against(const std::string& file, const Acknowledged& writes, std::size_t certain) {
  Verdict verdict;
  auto store = SqliteStore::open(file, OpenMode::create);
  if (!store) {
    const auto entries = static_cast<int>(after_writes(writes, certain).log.size());
    blame(verdict, &Verdict::lost, entries, store.faults().front().message);
    // A file of which nothing was acknowledged yet must open too.
    blame(verdict, &Verdict::half, 1, store.faults().front().message);
    return verdict;
  }
  judge_log(verdict, **store, writes, certain);
  const auto report = check_file(file);
  blame(verdict, &Verdict::half, report.ok() && is_sound(*report) ? 0 : 1, "the check finds flaws");
  blame(verdict, &Verdict::half, rows_fit_log(**store) ? 0 : 1, "rows do not fit the log");
  return verdict;
}

std::optional<std::size_t> writes_held(const std::string& file, const Acknowledged& writes) {
  auto store = SqliteStore::open(file, OpenMode::existing);
  if (!store) return std::nullopt;
  const Holdings there = held_by(**store);
  const bool is_whole = rows_fit_log(**store);
  for (std::size_t count = 0; is_whole && count <= writes.size(); ++count) {
    if (there == after_writes(writes, count)) return count;
  }
  return std::nullopt;
}

void lay_out(const std::string& folder, const std::map<std::string, std::string>& files) {
  for (const auto& there : std::filesystem::directory_iterator(folder)) {
    // Overwritten in its place, a file stays the one it was.
    if (files.count(there.path().string()) == 0) std::filesystem::remove(there.path());
  }
  for (const auto& [name, bytes] : files) {
    std::ofstream(name, std::ios::binary)
        .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  }
}

}  // namespace evenclaw::test
