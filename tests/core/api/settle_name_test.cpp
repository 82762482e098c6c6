#include "core/api/settle_name.hpp"

#include <doctest/doctest.h>

#include <map>

#include "core/api/people.hpp"
#include "core/api/settle.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

/// From a file: 412 and 414 stand between lines that name the caller.
void record_file(Workplace& place) {
  const Visit visit = place.start("2026-10-27");
  {
    Recording typed = place.record(visit);
    for (const char* line : {"caller Anneke", "411 nothing found", "done"}) {
      (void)typed.say(line).value();
    }
  }
  Recording file = place.record(visit);
  (void)file
      .say_all(Lines{"caller Anneka", "412 nothing found", "413 nothing found", "done",
                     "caller Ben", "414 nothing found", "done", "caller Anneke",
                     "415 nothing found", "done"})
      .value();
  (void)file.end_of_input().value();
  (void)end_visit(place.ports(), visit, english()).value();
}

Result<Reply> answered(Workplace& place, const std::string& name, bool sure = false) {
  return settle_questions(place.ports(),
                          {place.herd().herd, "caller", day("2026-10-28"), name, sure});
}

std::map<std::string, std::string> callers(Workplace& place) {
  const auto everybody = place.directory.everybody().value();
  std::map<std::string, std::string> by_cow;
  const auto turns = select_as<TurnRow>(place.store, place.herd().herd).value();
  for (const TurnRow& turn : turns) {
    by_cow[turn.called] = name_of(everybody, turn.caller);
  }
  return by_cow;
}

std::size_t open_points(Workplace& place) {
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  return closing_state(place.store, visit).value().open.size();
}

}  // namespace

TEST_CASE("somebody new who was read as a known caller gets the cows he called, and no others") {
  Workplace place;
  record_file(place);
  REQUIRE(callers(place)["412"] == "Anneke");
  const auto reply = answered(place, "Anneka", true);
  REQUIRE(reply);
  CHECK(lines_of(reply->items) ==
        Lines{"told caller: settled: it was Anneka, who called 412, 413"});
  CHECK(callers(place) == std::map<std::string, std::string>{{"411", "Anneke"},
                                                             {"412", "Anneka"},
                                                             {"413", "Anneka"},
                                                             {"414", "Ben"},
                                                             {"415", "Anneke"}});
  CHECK(open_points(place) == 0);
}

TEST_CASE("the known caller who was meant stays, and it is not asked again") {
  Workplace place;
  record_file(place);
  const auto reply = answered(place, "anneke");
  REQUIRE(reply);
  CHECK(lines_of(reply->items) == Lines{"told caller: settled: it was Anneke, as it was read"});
  CHECK(callers(place)["412"] == "Anneke");
  CHECK(open_points(place) == 0);
}

TEST_CASE("a name nobody has is taken only when it is meant so") {
  Workplace place;
  record_file(place);
  const auto reply = answered(place, "it was the known one");
  REQUIRE_FALSE(reply);
  CHECK(reply.faults().front().slug == "answer-needed");
  CHECK(open_points(place) == 1);
}

TEST_CASE("the question about a name names the known one when it is shown, and never in the log") {
  Workplace place;
  record_file(place);
  const Visit visit = find_visit(place.ports(), place.herd().herd, day("2026-10-27")).value();
  const ClosingState state = closing_state(place.store, visit).value();
  REQUIRE(state.open.size() == 1);
  CHECK(state.open[0].words.find("Anneke") == std::string::npos);
  const auto shown = with_names_shown(state.open, place.directory).value();
  CHECK(shown[0].words == "A name a letter or two off was read as Anneke. Was it Anneke, or who?");
  REQUIRE(answered(place, "Anneka", true));
  (void)place.store.read_everything([&](const Entry& entry) {
    CHECK((!entry.body || entry.body->bytes().find("Annek") == std::string::npos));
    return true;
  });
}

}  // namespace evenclaw::test
