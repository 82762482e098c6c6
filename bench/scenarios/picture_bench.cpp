// The whole picture made anew from a log of a million entries in a file: time and memory.
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>

#include "bench/invented_log.hpp"
#include "bench/timing.hpp"
#include "core/api/transfer.hpp"
#include "store/sqlite/sqlite_store.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

std::unique_ptr<SqliteStore> opened(const std::string& path) {
  auto store = SqliteStore::open(path, OpenMode::create);
  if (!store) return nullptr;
  return *std::move(store);
}

int measure(const std::string& path, int entries, bool only_write) {
  auto store = opened(path);
  if (!store) return 1;
  if (only_write) {
    const int herds = (entries + bench::entries_per_herd - 1) / bench::entries_per_herd;
    return bench::LogWriter(*store).write_herds(herds) ? 0 : 1;
  }
  const auto begin = std::chrono::steady_clock::now();
  const auto rebuilt = rebuild_picture(*store, {});
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
  if (!rebuilt) return 1;
  const double rate = static_cast<double>(rebuilt->entries) / took.count();
  std::printf(
      "| picture made anew | %.1f s | once | %lld entries, %lld cows, %.0f entries/s, "
      "at most %.0f MB |\n",
      took.count(), static_cast<long long>(rebuilt->entries), static_cast<long long>(rebuilt->cows),
      rate, bench::peak_memory_mb());
  return 0;
}

}  // namespace

// picture_bench FILE ENTRIES write|rebuild: two processes, so that the memory is that of the
// rebuilding alone.
int main(int count, char** words) {
  if (count != 4) {
    std::fprintf(stderr, "picture_bench FILE ENTRIES write|rebuild\n");
    return 2;
  }
  return measure(words[1], std::atoi(words[2]), std::string(words[3]) == "write");
}
