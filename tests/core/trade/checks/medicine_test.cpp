#include <doctest/doctest.h>

#include "core/base/text.hpp"
#include "core/trade/medicine_use.hpp"
#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

std::vector<Warning> warnings_of(std::string_view text, const MedicineRules& rules) {
  const ToldDay day = told_day(text);
  CowPast past = day.past.known;
  past.medicine = rules;
  const Turn turn = with_medicines(settled(day.draft.turn, four_feet), rules, day.today);
  return check_turn(turn, past, day.today, true, english());
}

Names medicine_warnings(std::string_view text, const MedicineRules& rules = invented_list()) {
  Names names;
  for (const Warning& warning : warnings_of(text, rules)) {
    names.push_back(std::string(word_of(warning.rank)) + ' ' + warning.rule);
  }
  return names;
}

bool is_quiet(std::string_view text, const MedicineRules& rules = invented_list()) {
  return medicine_warnings(text, rules).empty();
}

}  // namespace

TEST_CASE("a labelled product without withdrawal is used in silence") {
  CHECK(is_quiet("412\nLH DD raw behind; spray with plainmix"));
}

TEST_CASE("a labelled product with its withdrawal stated is used in silence") {
  CHECK(is_quiet("412\nLH DD raw behind; spray with slowmix"));
}

TEST_CASE("a name that is not on the list asks for its withdrawal") {
  const auto warnings = warnings_of("412\nLH DD raw behind; spray with greenmix", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].rule == "withdrawal-missing");
  CHECK(warnings[0].words == "Not on the herd's list: greenmix. What withdrawal?");
  CHECK(warnings[0].answers == Names{"no withdrawal", "go ahead"});
}

TEST_CASE("a product whose withdrawal the list does not state is asked about") {
  const auto warnings = warnings_of("412\nLH DD raw behind; spray with oddmix", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].words == "Oddmix: the list does not state its milk withdrawal. What is it?");
}

TEST_CASE("both ends told by mouth, or that there is none, answer it") {
  CHECK(is_quiet("412 withdrawal till Thu\nLH DD raw behind; spray with greenmix"));
  CHECK(is_quiet("412 milk 4d; meat 10d\nLH DD raw behind; spray with greenmix"));
  CHECK(is_quiet("412 no withdrawal\nLH DD raw behind; spray with greenmix"));
  CHECK(is_quiet("412 milk withheld till Thu\nLH DD raw behind; spray with oddmix"));
}

TEST_CASE("where only her milk was told of, her meat is asked about, and the other way round") {
  const auto meat = warnings_of("412 given greenmix; milk 4d", invented_list());
  REQUIRE(meat.size() == 1);
  CHECK(meat[0].words == "Not on the herd's list: greenmix. What meat withdrawal?");
  CHECK(meat[0].answers == Names{"go ahead"});
  const auto milk = warnings_of("412 given greenmix; meat 10d", invented_list());
  REQUIRE(milk.size() == 1);
  CHECK(milk[0].words == "Not on the herd's list: greenmix. What milk withdrawal?");
}

TEST_CASE("the same product on two feet is asked about once, and once at a visit") {
  CHECK(medicine_warnings("412\nboth hinds DD raw behind; spray with greenmix").size() == 1);
  MedicineRules rules = invented_list();
  rules.asked = {"greenmix"};
  CHECK(is_quiet("412\nLH DD raw behind; spray with greenmix", rules));
}

TEST_CASE("a spray without a name is asked about only where the herd keeps a list") {
  CHECK(is_quiet("412\nLH DD raw behind; spray", MedicineRules{}));
  CHECK(medicine_warnings("412\nLH DD raw behind; spray") == Names{"ask withdrawal-missing"});
}

TEST_CASE("a medicine without a name is asked about also without a list") {
  CHECK(medicine_warnings("412 injected by the vet", MedicineRules{}) ==
        Names{"ask withdrawal-missing"});
}

TEST_CASE("a slip in the name is asked about with the right name to say, and nothing else is") {
  const auto warnings = warnings_of("412\nLH DD raw behind; spray with plainmx", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].rule == "medicine-name-near");
  CHECK(warnings[0].answers.front() == "LH no, no spray; spray with plainmix");
}

TEST_CASE("a listed name with the amount behind it is asked about with the name to say") {
  const auto warnings = warnings_of("412 injected by the vet with plainmix 20 ml", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].rule == "medicine-name-near");
  CHECK(warnings[0].answers.front() == "no, no injected; injected with plainmix");
}

TEST_CASE("used off label below the floor is a Stop, told with the floor") {
  const auto warnings = warnings_of("412\nLH DD raw behind; spray with strongmix", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].rank == Rank::stop);
  CHECK(warnings[0].words ==
        "Strongmix off label: milk 2 days, at least 7 days; meat 5 days, at least 28 days");
}

TEST_CASE("however long the name, the warning can be read at a glance") {
  MedicineRules rules;
  rules.list = {listed(std::string(80, 'x'), Labelled::no, "100h", 27)};
  for (const Warning& warning :
       warnings_of("412\nLH DD raw behind; spray with " + std::string(80, 'x'), rules)) {
    CHECK(character_count(warning.words) <= 90);
  }
}

TEST_CASE(
    "an injection called as done by the trimmer is a Stop; by the vet or the farmer it is "
    "none") {
  CHECK(medicine_warnings("412 injected with plainmix") == Names{"stop act-reserved-for-vet"});
  CHECK(is_quiet("412 injected with plainmix by the vet"));
  CHECK(is_quiet("412 injected with plainmix by the farmer as the vet said"));
}

TEST_CASE("anaesthesia and surgery are the vet's alone") {
  CHECK(medicine_warnings("412 anaesthetised by the farmer") == Names{"stop act-reserved-for-vet"});
  CHECK(medicine_warnings("412\nLH outside injury, bad; outside amputated") ==
        Names{"stop act-reserved-for-vet"});
  CHECK(is_quiet("412\nLH outside injury, bad; outside amputated by the vet"));
}

TEST_CASE("what the business says its trimmers may do raises no Stop") {
  MedicineRules rules = invented_list();
  rules.law.trimmer_may = {ReservedAct::injection};
  CHECK(is_quiet("412 injected with plainmix", rules));
  CHECK(medicine_warnings("412 anaesthetised", rules) == Names{"stop act-reserved-for-vet"});
}

TEST_CASE("who gave it is offered as the answer to who gave it") {
  const auto warnings = warnings_of("412 injected with plainmix", invented_list());
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].answers == Names{"injected by the vet", "go ahead"});
}

TEST_CASE("what was told of a paste does not answer for what is injected after it") {
  const std::string paste = "412\nLH DD raw behind; paste with greenmix, no withdrawal\n";
  CHECK(medicine_warnings(paste + "injected with antibio by the vet") ==
        Names{"ask withdrawal-missing"});
  CHECK(is_quiet(paste + "injected with slowmix by the vet"));
  CHECK(is_quiet(paste + "injected with antibio by the vet, no withdrawal"));
}
