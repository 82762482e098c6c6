// What a person waits for beside a crush when the file holds the history of hundreds of herds.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "bench/invented_log.hpp"
#include "bench/timing.hpp"
#include "core/api/due.hpp"
#include "core/api/recording.hpp"
#include "core/api/show.hpp"
#include "core/api/transfer.hpp"
#include "core/api/visits.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/core/api/workplace.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int turns_recorded = 21;
constexpr int cows_shown = 21;
/// The day after the last visit of the invented log.
constexpr Day today{18'000 + bench::visits_per_herd * bench::days_between_visits};

HerdId herd_number(int number) {
  return {uuid_derived("bench herd " + std::to_string(number))};
}

std::unique_ptr<SqliteStore> opened_history(const std::string& path, OpenMode mode) {
  auto store = SqliteStore::open(path, mode);
  if (!store) return nullptr;
  return *std::move(store);
}

std::string hex_of(HerdId herd) {
  std::string hex = "x'";
  for (const char c : to_text(herd)) {
    if (c != '-') hex += c;
  }
  return hex + "'";
}

/// "a, b, c" of a table, with `instead` where the scope or the herd stands.
std::string columns_with(Connection& file, const std::string& table, const std::string& instead) {
  auto columns = file.prepared("SELECT name FROM pragma_table_info(?)");
  columns->text(table);
  std::string all;
  while (columns->step()) {
    const std::string name(columns->text_at(0));
    if (!all.empty()) all += ", ";
    all += name == "scope" || name == "herd" ? instead : "\"" + name + "\"";
  }
  return all;
}

/// The records of the first herd once more under the id of another. Their digests are of the first,
/// so they fill the file as others' records do and are read by nobody.
void copy_herd(Connection& file, HerdId to) {
  const std::string from = hex_of(herd_number(0));
  for (const char* table : {"entry", "entry_subject"}) {
    file.run("INSERT INTO " + std::string(table) + " SELECT " +
             columns_with(file, table, hex_of(to)) + " FROM " + table + " WHERE scope = " + from +
             " AND kind <> 'herd_registered'");
  }
  for (const TableShape& shape : all_tables()) {
    const std::string table = "\"" + std::string(shape.name) + "\"";
    file.run("INSERT INTO " + table + " SELECT " +
             columns_with(file, std::string(shape.name), "'" + to_text(to) + "'") + " FROM " +
             table + " WHERE herd = '" + to_text(herd_number(0)) + "'");
  }
}

/// One herd is written and pictured as always; of the others the name is, and the rest copied.
bool make_history(const std::string& path, int herds) {
  {
    auto store = opened_history(path, OpenMode::create);
    if (!store || !bench::LogWriter(*store).write_herds(1)) return false;
    if (!rebuild_picture(*store, {})) return false;
    if (!bench::LogWriter(*store).write_names(1, herds)) return false;
  }
  return caught([&] {
           Connection file(path, Access::write);
           file.run("PRAGMA synchronous = OFF; PRAGMA cache_size = -400000");
           for (int herd = 1; herd < herds; ++herd) {
             Transaction transaction(file);
             copy_herd(file, herd_number(herd));
             transaction.commit();
           }
         })
      .ok();
}

double ms_of(const std::function<bool()>& act) {
  const auto begin = std::chrono::steady_clock::now();
  const bool worked = act();
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
  if (!worked) {
    std::fprintf(stderr, "big_history_bench: an act failed\n");
    std::exit(1);
  }
  return took.count();
}

void print_one(const char* what, double ms, const std::string& note) {
  std::printf("| %s | %.1f ms | once | %s |\n", what, ms, note.c_str());
}

class History {
 public:
  explicit History(std::string path) : path_(std::move(path)) { clock_.set(today); }

  void measure() {
    std::size_t tasks = 0;
    const double first = ms_of([&] {
      if (!open()) return false;
      const auto due = list_due(*store_, herd_number(0), today);
      tasks = due ? due->tasks.size() : 0;
      return due.ok();
    });
    size_ = std::to_string(bench::entries_per_herd * herds()) + " entries, " +
            std::to_string(herds()) + " herds, " +
            std::to_string(std::filesystem::file_size(path_) / 1'000'000) + " MB";
    print_one("opened, and the due list of a herd", first,
              std::to_string(tasks) + " tasks; " + size_);
    measure_cows();
    measure_turns();
    std::printf("| most memory until here | %.0f MB | once | %s |\n", bench::peak_memory_mb(),
                size_.c_str());
    const double all = ms_of([&] {
      const auto due = list_due(*store_, std::nullopt, today);
      tasks = due ? due->tasks.size() : 0;
      return due.ok();
    });
    print_one("the due list of all herds", all, std::to_string(tasks) + " tasks; " + size_);
    std::printf("| most memory in the end | %.0f MB | once | %s |\n", bench::peak_memory_mb(),
                size_.c_str());
  }

 private:
  bool open() {
    store_ = opened_history(path_, OpenMode::existing);
    if (!store_) return false;
    directory_ = std::make_unique<SqliteDirectory>(*store_);
    return ready_business(ports(), "bench").ok();
  }

  [[nodiscard]] Ports ports() { return {*store_, *directory_, clock_, ids_}; }

  int herds() {
    if (herds_ == 0) herds_ = static_cast<int>(all_herds(*store_).value().size());
    return herds_;
  }

  void measure_cows() {
    int cow = 0;
    const auto times = bench::times_of(cows_shown, [&] {
      ms_of([&] {
        return show_cow(*store_, herd_number(0), std::to_string(1 + cow++ * 7), today).ok();
      });
    });
    bench::print_row(bench::row_in_ms("one cow's feet through time", times, size_));
  }

  void measure_turns() {
    VisitWanted wanted;
    wanted.herd = herd_number(0);
    wanted.day = today;
    wanted.today = today;
    wanted.todays_feet = four_feet;
    const auto visit = start_visit(ports(), wanted);
    if (!visit) return;
    auto recording = Recording::open(ports(), *visit, english());
    if (!recording) return;
    int cow = 0;
    const auto times = bench::times_of(turns_recorded, [&] {
      ms_of([&] {
        const std::vector<std::string> lines = {
            std::to_string(1 + cow++ * 11) + " lame LH",
            "LH outside white line abscess heel, bad; block on inside; see again 28d", "rest fine",
            "done"};
        return recording->say_all(lines).ok();
      });
    });
    bench::print_row(bench::row_in_ms("one more turn recorded and pictured", times, size_));
  }

  std::string path_;
  std::unique_ptr<SqliteStore> store_;
  std::unique_ptr<SqliteDirectory> directory_;
  test::SteppingClock clock_;
  test::SeededIds ids_{4711};
  std::string size_;
  int herds_ = 0;
};

}  // namespace

// big_history_bench FILE ENTRIES make, then big_history_bench FILE ENTRIES measure: two processes,
// so that the memory is that of the work alone.
int main(int count, char** words) {
  if (count != 4) {
    std::fprintf(stderr, "big_history_bench FILE ENTRIES make|measure\n");
    return 2;
  }
  if (std::string(words[3]) == "make") {
    const int herds = (std::atoi(words[2]) + bench::entries_per_herd - 1) / bench::entries_per_herd;
    return make_history(words[1], herds) ? 0 : 1;
  }
  History(words[1]).measure();
  return 0;
}
