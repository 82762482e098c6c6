// Entries a store keeps and hands out per second, by how many are acknowledged together.
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "bench/timing.hpp"
#include "core/log/body.hpp"
#include "store/memory/memory_store.hpp"
#include "store/sqlite/sqlite_store.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int repeats = 5;
constexpr std::int64_t entries_a_run = 2'000;
constexpr std::int64_t entries_one_by_one = 200;

const HerdId herd{uuid_derived("bench herd")};
const DeviceId device{uuid_derived("bench device")};

/// A turn as long as most are: two findings, an action, the words as said.
Entry entry_number(std::int64_t number) {
  Envelope envelope;
  envelope.business = {uuid_derived("bench business")};
  envelope.scope = herd.value;
  envelope.id = {uuid_derived("bench entry " + std::to_string(number))};
  envelope.device = device;
  envelope.seq = number;
  envelope.order = number;
  envelope.at = {1'790'000'000'000 + number, 60};
  TurnRecorded body;
  body.visit = {uuid_derived("bench visit " + std::to_string(number / 40))};
  body.cow = {uuid_derived("bench cow " + std::to_string(number % 200))};
  body.words = {"412 lame LH", "LH outside white line abscess heel, bad; block on inside",
                "rest fine"};
  return entry_of(std::move(envelope), body);
}

std::vector<Write> writes_of(std::int64_t first, std::int64_t entries, std::int64_t batch) {
  std::vector<Write> writes;
  for (std::int64_t i = 0; i < entries; ++i) {
    if (i % batch == 0) writes.emplace_back();
    writes.back().entries.push_back(entry_number(first + i));
  }
  return writes;
}

bool all_written(Store& store, const std::vector<Write>& writes) {
  for (const Write& write : writes) {
    if (!store.write(write)) return false;
  }
  return true;
}

void print_rate(std::string what, std::int64_t entries, const std::vector<double>& seconds) {
  bench::Row row =
      bench::rate_of(std::move(what), "entries/s", static_cast<double>(entries), seconds);
  row.note += " of " + std::to_string(entries) + " entries";
  bench::print_row(row);
}

bool measure_writing(Store& store, const std::string& name, std::int64_t batch, std::int64_t from) {
  const std::int64_t entries = batch == 1 ? entries_one_by_one : entries_a_run;
  // Made beforehand, so that only the store is measured.
  std::vector<std::vector<Write>> runs;
  for (int run = 0; run <= repeats; ++run) {
    runs.push_back(writes_of(from + run * entries, entries, batch));
  }
  std::size_t run = 0;
  bool worked = true;
  const auto seconds =
      bench::seconds_of(repeats, [&] { worked = all_written(store, runs[run++]) && worked; });
  print_rate(name + ", acknowledged " + std::to_string(batch) + " at a time", entries, seconds);
  return worked;
}

bool measure_reading(Store& store, const std::string& name) {
  std::int64_t seen = 0;
  bool worked = true;
  const auto seconds = bench::seconds_of(repeats, [&] {
    seen = 0;
    worked =
        store.read_entries({herd.value, {}, {}}, [&](const Entry&) { return ++seen > 0; }).ok();
  });
  print_rate(name + ", read in order and verified", seen, seconds);
  return worked;
}

bool measure_all_writing(Store& store, const std::string& name) {
  std::int64_t from = 1;
  for (const std::int64_t batch : {1, 50, 1000}) {
    if (!measure_writing(store, name, batch, from)) return false;
    from += 1'000'000;
  }
  return true;
}

}  // namespace

// store_bench FOLDER: on the disk that FOLDER lies on.
int main(int count, char** words) {
  if (count != 2) {
    std::fprintf(stderr, "store_bench FOLDER\n");
    return 2;
  }
  const std::string file = (std::filesystem::path(words[1]) / "store_bench.records").string();
  std::filesystem::remove(file);
  auto opened = SqliteStore::open(file, OpenMode::create);
  if (!opened) {
    std::fprintf(stderr, "%s\n", opened.faults().front().message.c_str());
    return 1;
  }
  // Memory hands out what it holds as it is, so reading is measured where it costs something.
  const bool on_disk = measure_all_writing(**opened, "file") && measure_reading(**opened, "file");
  *opened = nullptr;
  std::filesystem::remove(file);
  MemoryStore memory;
  return on_disk && measure_all_writing(memory, "memory") ? 0 : 1;
}
