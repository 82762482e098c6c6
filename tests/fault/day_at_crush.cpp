#include "tests/fault/day_at_crush.hpp"

#include <sqlite3.h>

#include <cstdlib>
#include <memory>
#include <utility>

#include "core/api/redaction.hpp"
#include "store/sqlite/bring_in.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/fault/called_cows.hpp"

namespace evenclaw::test {

namespace {

/// So many pages instead of a thousand: what happens seldom happens often in a short day.
constexpr int brought_in_often = 24;
constexpr const char* no_syncs = "PRAGMA synchronous = OFF";

void run_on(sqlite3* connection, const char* sql) {
  sqlite3_exec(connection, sql, nullptr, nullptr, nullptr);
}

template <class T>
Outcome without_value(const Result<T>& result) {
  if (!result) return result.faults();
  return Done{};
}

Result<Herd> home_farm(const Ports& ports) {
  auto known = find_herd(ports.store, "Home Farm");
  if (known || known.faults().front().slug != "herd-not-found") return known;
  return register_herd(ports, "Home Farm");
}

Result<Visit> todays_visit(const Ports& ports) {
  auto herd = home_farm(ports);
  if (!herd) return herd.faults();
  VisitWanted wanted;
  wanted.herd = herd->herd;
  wanted.day = day("2026-10-27");
  wanted.today = wanted.day;
  wanted.todays_feet = four_feet;
  wanted.caller = "Anna";
  return start_visit(ports, wanted);
}

}  // namespace

DayAtCrush::DayAtCrush(std::string file, std::uint64_t seed, Durability durability)
    : file_(std::move(file)), seed_(seed), durability_(durability), ids_(seed) {
  clock_.set(day("2026-10-27"));
}

template <class Work>
Outcome DayAtCrush::with_records(Work&& work) {
  auto file = SqliteStore::open(file_, OpenMode::create);
  if (!file) return file.faults();
  if (WatchedDisk* disk = WatchedDisk::now()) {
    bring_in_from(disk->newest_connection(), brought_in_often);
    if (durability_ == Durability::given_away) run_on(disk->newest_connection(), no_syncs);
  }
  AcknowledgingStore store(**file, acknowledged_);
  SqliteDirectory directory(**file);
  const Ports ports{store, directory, clock_, ids_};
  const auto business = ready_business(ports, "tablet");
  if (!business) return business.faults();
  auto visit = todays_visit(ports);
  if (!visit) return visit.faults();
  return work(ports, *visit);
}

void DayAtCrush::hear(const Reply& reply) {
  for (const ReplyItem& item : reply.items) {
    const bool is_there = item.kind == ReplyKind::saved || item.kind == ReplyKind::there_already;
    if (is_there && item.entry) saved_[std::atoi(item.cow.c_str())] = *item.entry;
  }
}

Outcome DayAtCrush::record_cow(Recording& recording, int cow, bool typed) {
  const auto lines = called_of_cow(seed_, cow);
  if (!typed) {
    const auto reply = recording.say_all(lines);
    if (reply) hear(*reply);
    return without_value(reply);
  }
  for (const std::string& line : lines) {
    const auto reply = recording.say(line);
    if (!reply) return reply.faults();
    hear(*reply);
  }
  return Done{};
}

Outcome DayAtCrush::record_until(int cow, bool typed) {
  return with_records([&](const Ports& ports, const Visit& visit) -> Outcome {
    auto recording = Recording::open(ports, visit, english());
    if (!recording) return recording.faults();
    hear(recording->opening());
    for (int now = first_; now <= cow; ++now) {
      if (saved_.count(now) > 0) continue;
      const auto recorded = record_cow(*recording, now, typed);
      if (!recorded) return recorded.faults();
    }
    const auto over = recording->end_of_input();
    if (over) hear(*over);
    return without_value(over);
  });
}

Outcome DayAtCrush::redact(int cow) {
  return with_records([&](const Ports& ports, const Visit&) {
    return without_value(redact_entry(ports, saved_.at(cow), "asked for by the farmer", true));
  });
}

Outcome DayAtCrush::end_visit() {
  return with_records([&](const Ports& ports, const Visit& visit) {
    return without_value(evenclaw::end_visit(ports, visit, english()));
  });
}

}  // namespace evenclaw::test
