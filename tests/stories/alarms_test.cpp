// Ordinary work is not warned about, and planted faults are.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "core/trade/check.hpp"
#include "tests/stories/alarms_page.hpp"
#include "tests/stories/ordinary_days.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

// Of design: at most one Ask for ten cows and one Stop for forty that nobody deserved.
constexpr int cows_for_an_ask = 10;
constexpr int cows_for_a_stop = 40;

/// "" waits: no check speaks of this fault yet, or its words are not known yet.
const std::vector<PlantedFault> planted = {
    {"bleeding_that_does_not_stop", Rank::stop, "bleeding-goes-on"},
    {"block_from_before_not_mentioned", Rank::ask, "still-on-not-mentioned"},
    {"block_on_a_claw_that_is_missing", Rank::ask, "claw-that-is-missing"},
    {"block_on_for_eight_weeks", Rank::note, "block-past-four-weeks"},
    {"block_on_the_claw_with_the_ulcer", Rank::stop, "block-on-painful-claw"},
    {"block_over_a_bruise_inside", Rank::ask, "block-over-what-may-hurt"},
    {"block_put_on_without_its_side", Rank::ask, "block-side-not-called"},
    {"blocked_again_for_the_first_time", Rank::note, "blocked-again"},
    {"blocked_again_not_healed_twice", Rank::ask, "blocked-again-twice"},
    {"blood_drawn_on_several_feet_by_one_caller", Rank::ask, "blood-drawn-on-several"},
    {"both_claws_blocked", Rank::stop, "both-claws-blocked"},
    {"both_claws_painful_and_a_block_called", Rank::stop, "block-on-painful-claw"},
    {"both_claws_painful_and_no_block", Rank::ask, "both-claws-painful"},
    {"called_with_a_question_mark", Rank::ask, "called-in-doubt"},
    {"culled_with_a_wrap_on", Rank::ask, "leaving-with-block-or-wrap"},
    {"down_in_the_crush", Rank::stop, "down-in-the-crush"},
    {"foul_without_the_vet", Rank::stop, "foul-without-the-vet"},
    {"foul_wrapped", Rank::ask, "foul-wrapped"},
    {"hardly_walks_and_goes_back_to_the_others", Rank::ask, "worst-walk-nursing"},
    {"inside_for_outside_against_an_open_case", Rank::ask, "side-or-claw-swapped"},
    {"it_stinks_and_has_no_name", Rank::ask, "it-stinks"},
    {"lame_and_nothing_found_there", Rank::ask, "lame-nothing-found"},
    {"lame_and_the_cause_not_found_yet", Rank::ask, "lame-cause-not-found"},
    {"lame_on_two_legs", Rank::stop, "lame-on-two-legs"},
    {"left_for_right_against_an_open_case", Rank::ask, "side-or-claw-swapped"},
    {"long_in_the_crush", Rank::note, "long-in-the-crush"},
    {"name_of_the_spray_a_slip_away", Rank::ask, "medicine-name-near"},
    {"near_calving", Rank::ask, "near-calving"},
    {"nerve_block_and_nobody_said_by_whom", Rank::stop, "act-reserved-for-vet"},
    {"one_hind_lifted_in_a_lame_cow", Rank::ask, "one-hind-lifted"},
    {"painful_block_without_pain_relief", Rank::note, "no-pain-relief-said"},
    {"pus_above_the_coronet", Rank::stop, "pus-above-the-horn"},
    {"raw_again_and_no_look_planned", Rank::note, "raw-again"},
    {"raw_and_chronic_at_one_place", Rank::ask, "called-in-two-ways"},
    {"scab_with_no_treatment_before", Rank::note, "scab-without-treatment"},
    {"sore_mouths_and_fever_in_several", Rank::stop, "notifiable-signs"},
    {"spray_without_a_withdrawal", Rank::ask, "withdrawal-missing"},
    {"swollen_above_the_horn_on_one_side", Rank::stop, "swollen-on-one-side"},
    {"swollen_and_nobody_said_where", Rank::ask, "swelling-side-not-called"},
    {"thin_sole_in_the_toe", Rank::note, "thin-sole"},
    {"thin_soles_on_several", Rank::ask, "thin-soles-on-several"},
    {"third_visit_same_lesion_same_place", Rank::ask, "third-visit-same-lesion"},
    {"toe_length_68", Rank::stop, "toe-far-too-short"},
    {"toe_length_72", Rank::ask, "toe-short"},
    {"toe_necrosis", Rank::stop, "toe-or-bone"},
    {"walk_watched_after_three_days", Rank::note, "walk-watched-early"},
    {"withdrawal_below_what_no_vet_goes", Rank::stop, "withdrawal-below-floor"},
    {"worst_mobility_and_no_cause_found", Rank::stop, "worst-walk-needs-the-vet"},
    {"wrap_from_before_not_mentioned", Rank::ask, "still-on-not-mentioned"},
    {"wrap_off_that_nobody_put_on", Rank::ask, "wrap-or-block-not-known"},
    {"wrap_to_come_off_in_a_month", Rank::ask, "comes-off-on-that-day"},
};

std::string listed(const std::vector<Alarm>& alarms) {
  std::string all;
  for (const Alarm& alarm : alarms) {
    if (alarm.deserved) continue;
    all += "\n    " + alarm.cow + ' ' + std::string(word_of(alarm.rank)) + ' ' + alarm.rule + ": " +
           alarm.words;
  }
  return all;
}

bool speaks(const PlayedFault& played, const PlantedFault& known) {
  return std::any_of(played.alarms.begin(), played.alarms.end(), [&](const Alarm& alarm) {
    return alarm.cow == "412" && alarm.rule == known.rule && alarm.rank >= known.rank;
  });
}

/// Something else may be told of her more quietly than the fault deserves.
bool speaks_as_loudly(const PlayedFault& played, Rank rank) {
  return std::any_of(played.alarms.begin(), played.alarms.end(),
                     [rank](const Alarm& alarm) { return alarm.rank >= rank; });
}

const std::vector<PlayedDay>& days() {
  static const std::vector<PlayedDay> played = ordinary_days();
  return played;
}

}  // namespace

TEST_CASE("every line of an ordinary day is understood") {
  for (const PlayedDay& day : days()) {
    CAPTURE(day.name);
    CHECK(day.cows >= 35);
    for (const std::string& refused : day.refused) FAIL_CHECK(refused);
  }
}

TEST_CASE("an ordinary day draws few words that a careful colleague would not say") {
  int cows = 0;
  int asks = 0;
  int stops = 0;
  for (const PlayedDay& day : days()) {
    INFO(day.name << listed(day.alarms));
    CHECK(beyond(day, Rank::ask) * cows_for_an_ask <= day.cows);
    CHECK(beyond(day, Rank::stop) * cows_for_a_stop <= day.cows);
    cows += day.cows;
    asks += beyond(day, Rank::ask);
    stops += beyond(day, Rank::stop);
  }
  CHECK(cows >= 200);
  CHECK(asks * cows_for_an_ask <= cows);
  CHECK(stops * cows_for_a_stop <= cows);
}

TEST_CASE("one line of what is deserved grants one alarm about that cow, not a louder one") {
  std::vector<Alarm> alarms = {{"412", Rank::ask, "a", "first"},
                               {"412", Rank::ask, "a", "second"},
                               {"413", Rank::stop, "b", "louder"},
                               {"414", Rank::note, "c", "quieter"},
                               {"no number, brown heifer", Rank::ask, "question", "who"}};
  std::vector<Deserved> deserved = {{"412", Rank::ask, "why"},
                                    {"413", Rank::ask, "why"},
                                    {"414", Rank::stop, "why"},
                                    {"no number", Rank::ask, "why"}};
  grant(alarms, deserved);
  const std::vector<bool> expected = {true, false, false, true, true};
  for (std::size_t i = 0; i < alarms.size(); ++i) {
    CAPTURE(alarms[i].words);
    CHECK(alarms[i].deserved == expected[i]);
  }
  CHECK_FALSE(deserved[1].said);
}

TEST_CASE("what is deserved concerns cows of that day") {
  for (const PlayedDay& day : days()) {
    CAPTURE(day.name);
    std::ifstream in("data/ordinary/" + day.name + ".calls", std::ios::binary);
    const std::string calls = "\n" + std::string{std::istreambuf_iterator<char>(in), {}};
    CHECK_FALSE(day.deserved.empty());
    for (const Deserved& line : day.deserved) {
      CAPTURE(line.cow);
      CHECK(calls.find("\n" + line.cow) != std::string::npos);
    }
  }
}

TEST_CASE("every planted fault is spoken up about, or stands as waiting for its check") {
  std::vector<std::string> names;
  names.reserve(planted.size());
  for (const PlantedFault& known : planted) names.emplace_back(known.name);
  CHECK(names == planted_names());
  for (const PlantedFault& known : planted) {
    CAPTURE(known.name);
    const PlayedFault fault = played_fault(std::string(known.name));
    INFO("refused: " << fault.refused.size() << listed(fault.alarms));
    if (fault.needs_words) {
      INFO("all its words are known now: take the line away and name its check");
      CHECK_FALSE(fault.refused.empty());
      CHECK(known.rule.empty());
    } else if (known.rule.empty()) {
      INFO("a check speaks here now: name it");
      CHECK(fault.refused.empty());
      CHECK_FALSE(speaks_as_loudly(fault, known.rank));
    } else {
      CHECK(fault.refused.empty());
      CHECK(speaks(fault, known));
    }
  }
}

TEST_CASE("every check has a planted fault about which it speaks up") {
  for (const CheckRule& rule : all_checks()) {
    CAPTURE(rule.slug);
    CHECK(std::any_of(planted.begin(), planted.end(),
                      [&](const PlantedFault& known) { return known.rule == rule.slug; }));
  }
}

TEST_CASE("the page of alarms is what the days gave") {
  const std::string path = "docs/method/alarms.md";
  const std::string page = alarms_page(days(), planted);
  const char* approve = std::getenv("EVENCLAW_APPROVE");
  if (approve != nullptr && std::string(approve) == "1") {
    std::ofstream(path, std::ios::binary) << page;
  }
  std::ifstream file(path, std::ios::binary);
  INFO("EVENCLAW_APPROVE=1 writes it anew; read the difference");
  CHECK(std::string{std::istreambuf_iterator<char>(file), {}} == page);
}
