#include "core/log/cow_story.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "core/log/body.hpp"

namespace evenclaw {

namespace {

const HerdId herd{uuid_derived("herd")};
const CowId the_cow{uuid_derived("cow")};
const Day the_day{20'754};

/// Entries of one herd, each a minute behind the one before.
class Log {
 public:
  template <class Body>
  void add(const Body& body, std::string_view device = "tablet") {
    Envelope envelope;
    envelope.scope = herd.value;
    envelope.order = static_cast<std::int64_t>(entries_.size()) + 1;
    envelope.seq = envelope.order;
    envelope.id = EntryId{uuid_derived("entry " + std::to_string(envelope.order))};
    envelope.device = DeviceId{uuid_derived(device)};
    envelope.at = {1'790'000'000'000 + envelope.order * 60'000, 0};
    entries_.push_back(entry_of(std::move(envelope), body));
  }

  [[nodiscard]] CowStory story() const {
    const std::vector<CowId> group = {the_cow};
    return story_of(herd, group, entries_);
  }

 private:
  std::vector<Entry> entries_;
};

VisitId visit_named(std::string_view name) {
  return VisitId{uuid_derived(name)};
}

TurnRecorded turn_at(std::string_view visit) {
  TurnRecorded turn;
  turn.cow = the_cow;
  turn.visit = visit_named(visit);
  turn.turn.cow.number = "412";
  return turn;
}

FootCall left_hind(std::string note) {
  FootCall call;
  call.foot = Foot::lh;
  call.note = std::move(note);
  return call;
}

CowLeft gone(std::string words = "412 gone") {
  return {the_cow, the_day, std::move(words), {}};
}

QuestionSettled taken_back(std::string words) {
  QuestionSettled settled;
  settled.cow = the_cow;
  settled.day = the_day;
  settled.about = std::move(words);
  return settled;
}

}  // namespace

TEST_CASE(
    "a foot that a log from elsewhere names twice in a turn is one, and nothing of it is lost") {
  TurnRecorded turn = turn_at("visit");
  turn.turn.feet = {left_hind("stands on the toe"), left_hind("hot")};
  turn.turn.feet.front().trimmed = Trimmed::yes;
  turn.turn.feet.back().findings.emplace_back().lesion = Lesion::su;
  Log log;
  log.add(turn);
  const CowStory story = log.story();
  REQUIRE(story.turns.size() == 1);
  REQUIRE(story.turns.front().body.turn.feet.size() == 1);
  const FootCall& foot = story.turns.front().body.turn.feet.front();
  CHECK(foot.note == "stands on the toe; hot");
  CHECK(foot.trimmed == Trimmed::yes);
  CHECK(foot.state == FootState::finding);
  CHECK(foot.findings.size() == 1);
}

TEST_CASE("turns stand by the day of their visit, whatever the clock of the device showed") {
  Log log;
  log.add(VisitOpened{visit_named("later"), the_day + 28, 1, four_feet});
  log.add(turn_at("later"));
  log.add(VisitOpened{visit_named("earlier"), the_day, 1, four_feet});
  log.add(turn_at("earlier"));
  const CowStory story = log.story();
  REQUIRE(story.turns.size() == 2);
  CHECK(story.turns.front().body.visit == visit_named("earlier"));
  CHECK(story.turns.front().moment.day == the_day);
}

TEST_CASE("taken back is what was told before, and not what is told again after") {
  Log log;
  log.add(gone());
  log.add(taken_back("412 gone"));
  CHECK(log.story().left.empty());
  log.add(gone());
  CHECK(log.story().left.size() == 1);
}

TEST_CASE("taking back one thing leaves another in other words as it was") {
  Log log;
  log.add(gone("412 gone"));
  log.add(gone("412 sold"));
  log.add(taken_back("412 gone"));
  REQUIRE(log.story().left.size() == 1);
  CHECK(log.story().left.front().body.words == "412 sold");
}

TEST_CASE("on two tablets of one day she who was in the crush is here, unless told gone twice") {
  Log log;
  log.add(VisitOpened{visit_named("visit"), the_day, 1, four_feet});
  log.add(turn_at("visit"));
  log.add(gone(), "phone");
  const CowStory once = log.story();
  CHECK(is_here_after(once, once.turns.front(), once.left.front()));
  log.add(gone("412 dead"), "phone");
  const CowStory twice = log.story();
  CHECK_FALSE(is_here_after(twice, twice.turns.front(), twice.left.back()));
}

TEST_CASE("told gone on the tablet that had her in the crush before she is gone") {
  Log log;
  log.add(VisitOpened{visit_named("visit"), the_day, 1, four_feet});
  log.add(turn_at("visit"));
  log.add(gone());
  const CowStory story = log.story();
  CHECK_FALSE(is_here_after(story, story.turns.front(), story.left.front()));
}

TEST_CASE("what another herd or another cow is told of is none of her story") {
  Log log;
  TurnRecorded other = turn_at("visit");
  other.cow = CowId{uuid_derived("other cow")};
  log.add(other);
  CHECK(log.story().empty());
}

}  // namespace evenclaw
