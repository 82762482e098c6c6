// A list of another program taken over into a file, beside bare SQLite that inserts the same cells.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

#include "bench/timing.hpp"
#include "core/api/herd_import.hpp"
#include "core/exchange/csv.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/core/api/workplace.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int events_a_cow = 8;
constexpr Day holds_from{20'700};

/// Four lactations of each cow: calvings and dryings off, an event a line.
std::string list_of_events(int rows) {
  std::string list = "cow;event;date;lactation\n";
  for (int row = 0; row < rows; ++row) {
    const int cow = row / events_a_cow;
    const int nth = row % events_a_cow;
    const bool is_calving = nth % 2 == 0;
    const Day day = holds_from + (-2'000 + cow % 300 + nth / 2 * 380 + (is_calving ? 0 : 300));
    list += std::to_string(1 + cow) + (is_calving ? ";calved;" : ";dried off;") + to_text(day) +
            ';' + (is_calving ? std::to_string(1 + nth / 2) : std::string()) + '\n';
  }
  return list;
}

/// One line for each cow with her numbers, breed, birth and last calving.
std::string list_of_cows(int rows) {
  std::string list = "number;ear tag;breed;born;calved;lactation\n";
  for (int row = 0; row < rows; ++row) {
    const std::string digits = std::to_string(1'000'000'000 + row);
    list += std::to_string(1 + row) + ";DE 03" + digits.substr(1) + ";Jersey;" +
            to_text(holds_from + (-2'000 - row % 900)) + ';' +
            to_text(holds_from + (-10 - row % 300)) + ';' + std::to_string(1 + row % 4) + '\n';
  }
  return list;
}

double seconds_of_one(const char* what, const std::string& file,
                      const std::function<bool()>& work) {
  std::filesystem::remove(file);
  const auto begin = std::chrono::steady_clock::now();
  const bool worked = work();
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
  if (!worked) {
    std::fprintf(stderr, "import_bench: %s failed\n", what);
    std::exit(1);
  }
  return took.count();
}

void insert_all(Connection& connection, const CsvTable& table) {
  connection.run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
  connection.run("CREATE TABLE list (a TEXT, b TEXT, c TEXT, d TEXT, e TEXT, f TEXT)");
  Transaction transaction(connection);
  auto insert = connection.prepared("INSERT INTO list VALUES (?, ?, ?, ?, ?, ?)");
  for (const CsvRow& row : table.rows) {
    for (std::size_t at = 0; at < 6; ++at) {
      insert->text(at < row.cells.size() ? row.cells[at] : std::string_view());
    }
    (void)insert->step();
    insert->reset();
  }
  transaction.commit();
}

double bare_inserts(const std::string& file, const std::string& list) {
  return seconds_of_one("inserting", file, [&] {
    const CsvTable table = csv_table(list);
    return caught([&] {
             Connection connection(file, Access::create);
             insert_all(connection, table);
           })
        .ok();
  });
}

bool measure(const std::string& file, const char* what, const std::string& list, int rows) {
  const double bare = bare_inserts(file, list);
  std::filesystem::remove(file);
  auto store = SqliteStore::open(file, OpenMode::create);
  if (!store) return false;
  SqliteDirectory directory(**store);
  test::SteppingClock clock;
  clock.set(holds_from);
  test::SeededIds ids(4711);
  const Ports ports{**store, directory, clock, ids};
  if (!ready_business(ports, "bench")) return false;
  const auto herd = register_herd(ports, "Bench Farm");
  if (!herd) return false;
  ImportWish wish;
  wish.from = holds_from;
  for (const char* time : {"first", "again"}) {
    const auto begin = std::chrono::steady_clock::now();
    const auto taken = import_herd(ports, herd->herd, list, wish);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
    if (!taken || !taken->left_out.empty()) {
      const bool is_read = taken.ok();
      std::fprintf(stderr, "import_bench: %s\n",
                   is_read ? taken->left_out.front().message.c_str()
                           : taken.faults().front().message.c_str());
      return false;
    }
    std::printf("| %s, %s | %.2f s | once | %d lines, %d cows; bare inserts %.2f s, %.1f times |\n",
                what, time, took.count(), rows, taken->entered + taken->unchanged, bare,
                took.count() / bare);
  }
  *store = nullptr;
  return true;
}

}  // namespace

// import_bench FOLDER ROWS: on the disk that FOLDER lies on.
int main(int count, char** words) {
  if (count != 3) {
    std::fprintf(stderr, "import_bench FOLDER ROWS\n");
    return 2;
  }
  const std::string file = (std::filesystem::path(words[1]) / "import_bench.records").string();
  const int rows = std::atoi(words[2]);
  const bool worked = measure(file, "list of events", list_of_events(rows), rows) &&
                      measure(file, "list of cows", list_of_cows(rows), rows);
  std::filesystem::remove(file);
  std::printf("| most memory | %.0f MB | once | |\n", bench::peak_memory_mb());
  return worked ? 0 : 1;
}
