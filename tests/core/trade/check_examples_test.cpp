#include <doctest/doctest.h>

#include <algorithm>

#include "core/base/text.hpp"
#include "tests/core/trade/call_line/enciphered.hpp"
#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

bool holds(const std::vector<Warning>& warnings, const Warning& wanted) {
  return std::any_of(warnings.begin(), warnings.end(), [&](const Warning& warning) {
    return warning.rule == wanted.rule && warning.foot == wanted.foot &&
           warning.claw == wanted.claw;
  });
}

Names rules_in(const std::vector<Warning>& warnings) {
  Names rules;
  for (const Warning& warning : warnings) rules.push_back(warning.rule);
  return rules;
}

// Days on which every rule fires in more than one way.
constexpr std::string_view firing_days[] = {
    "412\nLH outside sole ulcer, plain; block on outside",
    "412\nRH inside white line abscess heel, bad; block on inside; see again 28d\nrest fine",
    "412\nLH outside sole ulcer; inside sole ulcer; block on inside",
    "412\nLH block on outside; block on inside",
    "412\nLH outside sole ulcer; block on inside\n---\n412\nLH block on outside; rest fine",
    "412\nLH outside sole ulcer; block on",
    "417\nLH outside claw gone; block on outside",
    "417\nLH inside claw missing; outside claw missing; inside bruise; outside length 78 mm",
    "412\nLH inside sole ulcer; block again",
    "412\nLH block on inside; block on outside\n---\n412\nLH block off",
    "412 lame LH\nLH nothing found",
    "412 lame LH; RH; rest fine",
    "412 lame; nothing found",
    "412 lame LH\nRH DD raw behind",
    "412\nLH DD raw behind; wrap on, off 30d",
    "412\nLH outside bruise; block on inside, off 2d",
    "412\nLH outside bruise; block on inside, off 90d",
    "412\nLH outside sole ulcer\n---\n412\nLH inside sole ulcer",
    "412\nLH sole ulcer outside?; RH DD raw? behind",
    "412\nLH outside sole ulcer\n---\n412\nRH outside sole ulcer; rest fine",
    "412\nLH outside white line lesion heel; block on inside\n---\n412\nLH block off outside",
    "412\nLH outside sole ulcer\n---\n412\nLH block on outside",
    "412\nLH outside sole ulcer\n---\n412\nRH block on inside; rest fine",
    "412\nRH DD raw behind; DD chronic behind",
    "412\nLH outside bruise toe slight; outside bruise toe bad",
    "412\nLH block off inside; block still on\n---\n412\nLH block off inside; block still on",
    "412\nLH wrap came off; wrap still on",
    "412\nLH outside length 78 mm; outside length 75.5 mm",
    "412\nLH sole 6 mm; sole 5 mm",
    "412 walks sound; mobility 2 of 3",
    "412 lame LH; mobility 1 of 5\nLH outside bruise slight",
    "412\nLH DD raw behind; wrap on\n---\n412\nRH wrap off; rest fine",
    "412\nLH DD raw behind; wrap on\n---\n412\nrest fine",
    "412\nboth hinds DD raw behind; wrap on\n---\n412\nLH wrap off; nothing found",
    "412\nLH outside sole ulcer; block on inside\n---\n412\nLH outside sole ulcer",
    "412\nLH block on inside; block on outside\n---\n412\nLH nothing found",
    "412 lame LH\nsore mouth; fever; drooling\nLH nothing found",
    "409\nsore mouth\n412\nLH blisters",
    "412\nLH white line fissure; opened outside; block on outside",
    "412\nRH pus above the coronet; inside swollen",
    "412\nLH outside toe necrosis; bone showing",
    "412\nRH swollen above the outside claw only",
    "412\nLH bleeding does not stop; RH bleeding, does not stop",
    "412 dry off; down in the crush",
    "412\nboth hinds foul",
    "412\nLF swollen above both claws; wrap on",
    "412 lame; mobility 3 of 3; nothing found",
    "412 lame LH; mobility 5 of 5\nLH swollen inside",
    "412 lame LH; mobility 3 of 3\nLH DD raw behind\n---\n412; mobility 3 of 3\nLH DD chronic "
    "behind",
    "412 lame LH; mobility 3 of 3; watch her walk in 5d\nLH DD raw behind",
    "412 lame all four\nrest fine",
    "412\nLH outside length 69.9 mm; RH length 74 mm",
    "412\nLH length 74.9 mm",
    "412\nLH outside sole ulcer; inside sole ulcer; block on",
    "412\nLH outside sole ulcer; inside thin sole",
    "412\nLH outside sole ulcer; block again inside\n---\n412\nLH outside sole ulcer; block again "
    "inside",
    "412\nLH outside WLA\n---\n412\nLH outside WLF\n---\n412\nLH outside WLA bad",
    "412 lame\nLH outside sole ulcer\nRH not lifted",
    "412 lame; nothing found; see again 7d",
    "412 lame LH; nothing found; watch her walk in 7d",
    "412\nRH foul; wrap on; by the vet's plan",
    "412 cull advised\nLH DD raw behind; wrap on",
    "412\nLH outside sole ulcer; block on inside\n---\n412 cull advised\nLH outside sole ulcer; "
    "block still on",
    "412 springing; nothing found",
    "412 heavy in calf; nothing found",
    "409\nLH outside blood drawn; RH outside blood drawn\n412\nLH inside blood drawn",
    "409\nLH outside thin sole\n410\nLH outside thin sole\n412\nLH outside thin sole",
    "412\nLH outside sole ulcer; block again inside",
    "412 lame RH\nRH double sole outside; block on inside",
    "412\nnothing found\n---\n412\nboth hinds DD M3 behind",
    "412\nRH DD raw behind; spray\n---\n412\nRH DD M1 behind"};

// The same of medicines, in a herd that keeps the invented list.
constexpr std::string_view medicine_days[] = {
    "412\nLH DD raw behind; spray with greenmix",
    "412\nLH DD raw behind; spray with oddmix",
    "412\nLH DD raw behind; spray",
    "412 injected with tar by the vet",
    "412\nLH DD raw behind; spray with plainmx",
    "412 given plainmx",
    "412\nLH DD raw behind; spray with strongmix",
    "412 injected with plainmix",
    "412 nerve block",
    "412\nLH outside toe necrosis, bad; outside claw amputated"};

ToldDay with_list(std::string_view text) {
  ToldDay day = told_day(text);
  day.past.known.medicine = invented_list();
  return day;
}

}  // namespace

TEST_CASE("each check fires on its example and is silent on the other") {
  for (const CheckRule& rule : all_checks()) {
    CAPTURE(rule.slug);
    const ToldDay firing = with_list(rule.fires_on);
    CHECK(rules_in(firing.warnings()) == Names{std::string(rule.slug)});
    const ToldDay silent = with_list(rule.silent_on);
    CHECK(rules_in(silent.warnings()) == Names{});
  }
}

TEST_CASE("every answer offered is a call line, and but for go ahead it settles the warning") {
  std::vector<std::string_view> days(std::begin(firing_days), std::end(firing_days));
  days.insert(days.end(), std::begin(medicine_days), std::end(medicine_days));
  for (const std::string_view text : days) {
    CAPTURE(text);
    const bool of_medicine = std::find(std::begin(medicine_days), std::end(medicine_days), text) !=
                             std::end(medicine_days);
    const ToldDay day = of_medicine ? with_list(text) : told_day(text);
    CHECK_FALSE(day.warnings().empty());
    for (const Warning& warning : day.warnings()) {
      CAPTURE(warning.words);
      CHECK(character_count(warning.words) <= 90);
      for (const std::string& answer : warning.answers) {
        CAPTURE(answer);
        ToldDay answered = day;
        call_out(answered.draft, answer, day.today);
        CHECK(holds(answered.warnings(), warning) == (answer == "go ahead"));
      }
    }
  }
}

TEST_CASE("in whatever language a day is called, in that language answers are offered") {
  for (const std::string_view text : firing_days) {
    CAPTURE(text);
    const ToldDay day = told_day(enciphered::said(text), enciphered::language());
    std::vector<Warning> warnings = day.warnings();
    for (Warning& warning : warnings) {
      for (std::string& answer : warning.answers) {
        ToldDay answered = day;
        call_out(answered.draft, answer, day.today, enciphered::language());
        answer = enciphered::in_english(answer);
        CHECK(holds(answered.warnings(), warning) == (answer == "go ahead"));
      }
    }
    const std::vector<Warning> in_english = told_day(text).warnings();
    CHECK(rules_in(warnings) == rules_in(in_english));
    for (std::size_t i = 0; i < std::min(warnings.size(), in_english.size()); ++i) {
      CHECK(warnings[i].answers == in_english[i].answers);
    }
  }
}

TEST_CASE("the answer offered first raises no further warning") {
  for (const std::string_view text : firing_days) {
    CAPTURE(text);
    const ToldDay day = told_day(text);
    for (const Warning& warning : day.warnings()) {
      if (warning.rank == Rank::note) continue;  // a note asks nothing
      const std::string& answer = warning.answers.front();
      CAPTURE(answer);
      ToldDay answered = day;
      call_out(answered.draft, answer, day.today);
      CHECK(answered.warnings().size() <= day.warnings().size());
    }
  }
}
