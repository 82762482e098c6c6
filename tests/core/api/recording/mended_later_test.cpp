// The lines of docs/format/call-line.md that mend a cow who was let out earlier.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/trade/call_line/saying.hpp"
#include "tests/core/trade/call_line/worked_lines.hpp"

using namespace evenclaw;

namespace {

const ReplyItem* first_of(const Reply& reply, ReplyKind kind) {
  for (const ReplyItem& item : reply.items) {
    if (item.kind == kind) return &item;
  }
  return nullptr;
}

std::string on_record(Store& store, EntryId turn) {
  std::string words;
  REQUIRE(store
              .read_entries({},
                            [&](const Entry& entry) {
                              const auto body = body_as<TurnRecorded>(entry);
                              if (entry.envelope.id != turn || !body) return true;
                              words = saying::joined(print_turn(body->turn, english()));
                              return false;
                            })
              .ok());
  return words;
}

std::string comes_of(const saying::WorkedLine& row) {
  test::Workplace place;
  Recording recording = place.record(place.start("2026-10-27", {}));
  for (const std::string& line : row.before) (void)recording.say(line).value();
  (void)recording.say("done").value();
  const Reply reply = recording.say(row.line).value();
  if (const ReplyItem* refused = first_of(reply, ReplyKind::refused)) {
    return "refused: " + refused->words;
  }
  CHECK(recording.in_crush().empty());
  const ReplyItem* saved = first_of(reply, ReplyKind::saved);
  REQUIRE(saved != nullptr);
  const ReplyItem* told = first_of(reply, ReplyKind::told);
  REQUIRE(told != nullptr);
  CHECK(told->words.rfind("now reads: ", 0) == 0);
  return on_record(place.store, saved->entry.value());
}

}  // namespace

TEST_CASE("the lines of the page that mend an earlier turn leave on record what it says") {
  const std::vector<saying::WorkedLine> rows = saying::rows_under("on record");
  CHECK(rows.size() == 12);
  for (const saying::WorkedLine& row : rows) {
    INFO("line ", row.number, ": ", row.line);
    CHECK(comes_of(row) == row.outcome);
  }
}

TEST_CASE("the tasks of a turn mended later keep their ids, and those of what is gone go") {
  test::Workplace place;
  Recording recording = place.record(place.start("2026-10-27", hind_feet));
  for (const char* line : {"412 LH outside SU; block on inside", "RH DD raw; wrap on, off Fri",
                           "413 nothing found", "done"}) {
    (void)recording.say(line).value();
  }
  const auto tasks = [&] {
    return select_as<TaskRow>(place.store, place.herd().herd, {}, {"task"}).value();
  };
  const auto ids = [&] {
    std::set<TaskId> all;
    for (const TaskRow& task : tasks()) all.insert(task.task);
    return all;
  };
  const std::set<TaskId> before = ids();
  REQUIRE(before.size() == 5);
  (void)recording.say("412 no, chronic").value();
  const std::set<TaskId> without_sore = ids();
  CHECK(without_sore.size() == 4);
  CHECK(std::includes(before.begin(), before.end(), without_sore.begin(), without_sore.end()));
  (void)recording.say("412 no, no block").value();
  std::multiset<std::string> rules;
  for (const TaskRow& task : tasks()) rules.insert(task.rule);
  CHECK(rules == std::multiset<std::string>{"horn-first-look", "horn-look", "wrap-off"});
  const std::set<TaskId> with_looks = ids();
  (void)recording.say("412 LH no, plain").value();
  CHECK(ids() == with_looks);
}

TEST_CASE("a cow in the crush stays there with her half-entered turn when another is mended") {
  test::Workplace place;
  Recording recording = place.record(place.start("2026-10-27", hind_feet));
  for (const char* line : {"412 LH DD raw", "done", "413 RH growth"}) {
    (void)recording.say(line).value();
  }
  const Reply mended = recording.say("412 no, chronic").value();
  CHECK(mended.in_crush == "413");
  const Reply hers = recording.say("no, left hind").value();
  CHECK(first_of(hers, ReplyKind::refused) == nullptr);
  const Reply out = recording.say("done").value();
  CHECK(on_record(place.store, first_of(out, ReplyKind::saved)->entry.value()) ==
        "413 // LH growth");
}

TEST_CASE("who called her stays who judged her when another one mends what was written") {
  test::Workplace place;
  Recording recording = place.record(place.start("2026-10-27", hind_feet));
  for (const char* line :
       {"caller Anna", "412 LH DD raw", "done", "caller Ben", "writer Joss", "412 no, chronic"}) {
    (void)recording.say(line).value();
  }
  const auto turns = select_as<TurnRow>(place.store, place.herd().herd).value();
  REQUIRE(turns.size() == 1);
  const auto everybody = place.directory.everybody().value();
  CHECK(shown_name(everybody, turns.front().caller) == "Anna");
  CHECK(shown_name(everybody, turns.front().writer) == "Joss");
}
