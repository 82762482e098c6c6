#include "core/trade/follow_up_looks.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// "horn-look farmer LH 5-8-12": rule, owner, foot and days from the visit of every look that was
/// not called.
Names looks_on(std::string_view text) {
  const ToldDay day = told_day(text);
  const Turn turn = settled(day.draft.turn, four_feet);
  Names looks;
  for (const TaskMade& task : tasks_made(turn, day.past.known, day.today, entry(77))) {
    const bool was_called = task.rule == "see-again" || task.rule == "vet" ||
                            task.rule == "watch-her-walk" || task.rule == "wrap-off" ||
                            task.rule == "block-check" || task.rule == "block-off";
    if (was_called) continue;
    looks.push_back(task.rule + ' ' + std::string(word_of(task.owner)) + ' ' +
                    (task.foot ? std::string(word_of(*task.foot)) : std::string("her")) + ' ' +
                    std::to_string(task.earliest - day.today) + '-' +
                    std::to_string(task.due - day.today) + '-' +
                    std::to_string(task.overdue - day.today));
  }
  return looks;
}

const Names horn_looks = {"horn-first-look farmer LH 5-8-12", "horn-look trimmer LH 25-28-32"};
const Names dd_look = {"dd-look farmer LH 7-10-15"};
const Names foul_look = {"foul-look farmer LH 2-3-6"};
const Names walk = {"lame-walk farmer her 7-14-22"};
const Names block_look = {"block-first-look farmer LH 5-8-12"};
const Names nothing;

struct Told {
  const char* said;
  const Names& looks;
};

void check_all(std::initializer_list<Told> table) {
  for (const Told& row : table) {
    CAPTURE(row.said);
    CHECK(looks_on(row.said) == row.looks);
  }
}

}  // namespace

TEST_CASE("deep or opened horn without a block is looked at after 5-11 and 25-31 days") {
  check_all({
      {"412\nLH outside SU", horn_looks},
      {"412\nLH outside WLA heel, bad; opened", horn_looks},
      {"412\nLH outside toe necrosis", horn_looks},
      {"412\nLH outside white line; opened", horn_looks},
      {"412\nLH outside double sole; opened", horn_looks},
      {"412\nLH outside blood drawn", horn_looks},
      {"412\nLH outside SU slight; opened", horn_looks},
      {"412\nLH outside SU slight, DD in it", horn_looks},
      {"412\nLH growth, DD in it", horn_looks},
      {"412\nLH outside SU slight", nothing},
      {"412\nLH outside WLF side", nothing},
      {"412\nLH outside SH bad", nothing},
      {"412\nLH opened", nothing},
  });
}

TEST_CASE("what the caller planned for the foot or for her stands, and nothing is added") {
  check_all({
      {"412\nLH outside SU; see again 14d", nothing},
      {"412\nLH outside SU\nwhole cow see again 14d", nothing},
      {"412\nLH outside SU; vet", nothing},
      {"412\nLH outside SU\nRH vet", horn_looks},
      {"412\nLH DD raw behind; spray; see again 14d", nothing},
      {"412\nLH foul; vet", nothing},
  });
}

TEST_CASE("a block is looked at by the farmer after 5-11 days, and its check is the later look") {
  check_all({
      {"412\nLH outside SU; block on inside", block_look},
      {"412\nLH outside SU; block on inside; see again 28d", block_look},
      {"412\nLH outside SU; block on inside, off 7d", nothing},
      {"412\nLH outside SU; block on inside, off 9d", block_look},
      {"412\nLH outside SU; block on inside\n---\n412\nLH outside SU; block still on", nothing},
      {"412\nLH outside SU; block on inside\n---\n412\nLH outside SU; block taken off", horn_looks},
  });
}

TEST_CASE("a block on a claw that hurts is rung about the same day, on the good claw it is not") {
  const Names on_pain = {"block-first-look farmer LH 5-8-12", "block-on-pain farmer LH 0-0-1"};
  check_all({
      {"412\nLH outside SU; block on outside", on_pain},
      {"412\nLH outside SU; inside WLA; block on inside", on_pain},
      {"412\nLH outside SU; block on outside\nno, inside", block_look},
      {"412\nLH outside bruise slight; block on outside", block_look},
  });
}

TEST_CASE("a sore of digital dermatitis is looked at when treated or called raw, no other is") {
  check_all({
      {"412\nLH DD raw behind; spray", dd_look},
      {"412\nLH DD M2 behind; wrap on", dd_look},
      {"412\nLH DD M1 behind; paste", dd_look},
      {"412\nLH DD M4.1 behind; gel", dd_look},
      {"412\nLH DD behind; powder", dd_look},
      {"412\nLH DD M2 behind; spray; wrap on", dd_look},
      {"412\nLH DD raw behind", dd_look},
      {"412\nLH DD M2 behind", dd_look},
      {"412\nLH DD behind", nothing},
      {"412\nLH DD chronic behind; spray", nothing},
      {"412\nLH DD M3 behind; spray", nothing},
      {"412\nLH DD scab behind", nothing},
      {"412\nLH DD behind\nRH spray", nothing},
  });
}

TEST_CASE(
    "foul is looked at by the farmer within days, also when the vet's plan says the medicine") {
  check_all({
      {"412\nLH foul", foul_look},
      {"412 lame LH\nLH foul; by the vet's plan", foul_look},
  });
}

TEST_CASE("of a lame cow for whom nothing else asks the walk is watched, never in the first week") {
  check_all({
      {"412 lame LH\nLH outside SH bad\nrest fine", walk},
      {"412 lame LH\nrest fine", walk},
      {"412; mobility 2 of 3\nLH outside SH", walk},
      {"412; mobility 3 of 5\nLH outside SH", walk},
      {"412 lame LH\nLH ID; wrap on", walk},
      {"412; mobility 1 of 3\nLH outside SH", nothing},
      {"412; mobility 2 of 5\nLH outside SH", nothing},
      {"412 lame LH\nLH outside SH; see again 5d", nothing},
      {"412 lame LH\nLH outside SH; watch her walk in 14d", nothing},
      {"412 lame LH\nLH outside SH\nwalks sound", nothing},
      {"412 lame LH\nLH outside SH\nunfinished, ran out of time", nothing},
      {"412 lame LH\nLH outside SU", horn_looks},
      {"412 lame LH\nLH DD raw behind; spray", dd_look},
  });
}

TEST_CASE("told to be still lame and found with nothing, her walk is watched") {
  const Day today = first_of_november;
  NewsSaid news;
  news.news = News::still_lame;
  const Past before;
  Past told = before;
  for (const TaskMade& made : effect_of(news, before.known, today, entry(5)).makes) {
    TaskRow row;
    row.task = made.task;
    row.made_on = row.earliest = row.due = today;
    row.kind = made.kind;
    row.owner = made.owner;
    row.rule = made.rule;
    told.known.rows.tasks.push_back(row);
  }
  REQUIRE(told.known.rows.tasks.size() == 1);
  const auto looks = [&](const Turn& turn) {
    return looks_asked_for(turn, told.known.rows, {}, today).size();
  };
  CHECK(looks(cow({fine(Foot::lh), fine(Foot::rh)})) == 1);
  CHECK(looks(cow({})) == 0);  // the look that was asked for then stays
  Turn sound = cow({fine(Foot::lh)});
  sound.walks_sound = true;
  CHECK(looks(sound) == 0);
  told.known.rows.tasks.front().rule = "see-again";
  CHECK(looks(cow({fine(Foot::lh)})) == 0);
}

TEST_CASE("pain relief asked for asks for it, and nobody for her walk less") {
  const Names both = {"pain-relief vet her 0-0-1", "lame-walk farmer her 7-14-22"};
  const Names asked = {"pain-relief vet her 0-0-1"};
  check_all({
      {"412\nLH outside SH bad; pain relief asked for", asked},
      {"412 lame LH\nLH outside SH bad; pain relief asked for", both},
      {"412\nLH outside SH bad; pain relief asked for; pain relief given", nothing},
  });
}

TEST_CASE("lame is who came lame or is scored so, each score on its own scale") {
  Turn turn = cow({});
  CHECK_FALSE(is_lame(turn));
  CHECK(is_lame(lame(turn, {Foot::lh})));
  for (int score = 0; score <= 3; ++score) {
    turn.mobility = {MobilityScale::zero_to_three, score};
    CHECK(is_lame(turn) == (score >= 2));
  }
  for (int score = 1; score <= 5; ++score) {
    turn.mobility = {MobilityScale::one_to_five, score};
    CHECK(is_lame(turn) == (score >= 3));
  }
}
