#include <doctest/doctest.h>

#include <set>
#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

template <class E>
void check_all_said(TermKind kind, std::initializer_list<E> except) {
  for (const auto& row : EnumWords<E>::table) {
    bool is_exempt = false;
    for (const E value : except) is_exempt = is_exempt || value == row.value;
    if (is_exempt) continue;
    CAPTURE(row.word);
    CHECK_FALSE(english().say(kind, row.value).empty());
  }
}

}  // namespace

TEST_CASE("no words have two meanings") {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < english().phrases().size(); ++i) {
    CAPTURE(english().folded(i));
    CHECK(seen.insert(english().folded(i)).second);
  }
}

TEST_CASE("everything that can be recorded can be said") {
  check_all_said<Foot>(TermKind::foot, {});
  check_all_said<Claw>(TermKind::claw, {Claw::none, Claw::not_called});
  check_all_said<Lesion>(TermKind::lesion, {Lesion::unclear, Lesion::other});
  check_all_said<Place>(TermKind::place, {Place::not_called, Place::white_line_heel,
                                          Place::white_line_side, Place::white_line_toe});
  check_all_said<Degree>(TermKind::degree, {Degree::not_called});
  check_all_said<DdStage>(TermKind::stage, {DdStage::not_called});
  check_all_said<MeasureKind>(TermKind::measure, {});
  check_all_said<Weekday>(TermKind::weekday, {});
  check_all_said<Reason>(TermKind::reason, {Reason::not_called, Reason::lame, Reason::other});
  check_all_said<TurnEnd>(TermKind::turn_end, {TurnEnd::done});
  check_all_said<Trimmed>(TermKind::trimmed, {Trimmed::not_called});
}

TEST_CASE("every lesion is understood by its code") {
  for (const LesionFacts& facts : all_lesions()) {
    if (facts.code_known == CodeKnown::none) continue;
    const Turn turn = saying::turn_of({"412 LH " + std::string(word_of(facts.lesion))});
    REQUIRE(turn.feet.size() == 1);
    REQUIRE(turn.feet.front().findings.size() == 1);
    CHECK(turn.feet.front().findings.front().lesion == facts.lesion);
  }
}

TEST_CASE("spoken names of lesions are understood") {
  struct Row {
    const char* said;
    Lesion lesion;
  };

  constexpr Row rows[] = {{"digi", Lesion::dd},
                          {"foul", Lesion::ip},
                          {"growth", Lesion::ih},
                          {"slurry heel", Lesion::hhe},
                          {"bruise", Lesion::sh},
                          {"bulb ulcer", Lesion::bu},
                          {"white line", Lesion::wl},
                          {"white line fissure", Lesion::wlf},
                          {"double sole", Lesion::ds},
                          {"heel horn erosion", Lesion::hhe},
                          {"thin sole", Lesion::ts},
                          {"toe ulcer", Lesion::tu},
                          {"sole ulcer", Lesion::su},
                          {"ulcer", Lesion::u},
                          {"corn", Lesion::ih},
                          {"sand crack", Lesion::hfv},
                          {"wall crack", Lesion::hfv},
                          {"horizontal crack", Lesion::hfh},
                          {"axial crack", Lesion::hfa},
                          {"corkscrew", Lesion::cc},
                          {"scissor claw", Lesion::sc},
                          {"long toe", Lesion::overgrown},
                          {"overgrown", Lesion::overgrown},
                          {"stone in it", Lesion::foreign_body},
                          {"swollen", Lesion::sw},
                          {"toe necrosis", Lesion::tn},
                          {"diffuse bruise", Lesion::shd},
                          {"over-trimmed", Lesion::blood_drawn},
                          {"dew claw", Lesion::dewclaw},
                          {"uneven claws", Lesion::ac},
                          {"pus in the white line", Lesion::wla}};
  for (const Row& row : rows) {
    const Turn turn = saying::turn_of({"412", std::string("RH ") + row.said});
    REQUIRE(turn.feet.front().findings.size() == 1);
    CHECK(turn.feet.front().findings.front().lesion == row.lesion);
  }
}

TEST_CASE("however it is said that she has no number, the rest describes her") {
  for (const char* said : {"no number", "no tag", "no ear tag", "no nr", "tag lost", "unknown cow",
                           "don't know her"}) {
    CAPTURE(said);
    const Turn turn = saying::turn_of({std::string(said) + ", black, one horn"});
    CHECK(turn.cow.known == CowKnown::unnumbered);
    CHECK(turn.cow.looks == "black, one horn");
  }
}

TEST_CASE("ok is fine, and sold or dead is gone") {
  CHECK(saying::turn_of({"404 all ok"}).rest_fine);
  CHECK(saying::turn_of({"404 ok"}).rest_fine);
  CHECK(saying::turn_of({"404", "LH ok"}).feet.front().state == FootState::nothing_found);
  for (const char* said : {"150 sold", "150 died", "150 dead", "150 culled"}) {
    CAPTURE(said);
    const Result<Line> line = read_line(said, saying::in_crush(false), english());
    REQUIRE(line.ok());
    const auto* news = std::get_if<NewsSaid>(&line->clauses.front());
    REQUIRE(news != nullptr);
    CHECK(news->news == News::gone);
  }
}

TEST_CASE("what could mean more than one thing is asked about") {
  struct Row {
    const char* said;
    const char* asked;
  };

  constexpr Row rows[] = {
      {"LH rot", "which is it: foul, toe necrosis, or heel horn erosion?"},
      {"LH abscess", "where is it: white line abscess, or other \"...\" in words?"},
      {"RH dish wall", "which is it: modelled, or concave wall?"},
      {"LH white line heel, pus", "where is it: white line abscess, or other \"...\" in words?"}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    const Faults faults = saying::faults_of(row.said);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy == row.asked);
  }
  CHECK(saying::faults_of("LH foot rot").empty());
}

TEST_CASE("laminitis is no lesion here: the word is kept as a note") {
  CHECK(saying::printed({"412 LH laminitis"}) == "412 // LH note: laminitis");
  CHECK(saying::printed({"412 laminitis"}) == "412 note: laminitis");
}

TEST_CASE("near is left and off is right") {
  struct Row {
    const char* said;
    Foot foot;
  };

  constexpr Row rows[] = {{"near fore", Foot::lf}, {"near hind", Foot::lh},
                          {"near back", Foot::lh}, {"off fore", Foot::rf},
                          {"off hind", Foot::rh},  {"off front", Foot::rf}};
  for (const Row& row : rows) {
    CAPTURE(row.said);
    const Turn turn = saying::turn_of({"412", std::string(row.said) + " DD; wrap on, off Thu"});
    REQUIRE(turn.feet.size() == 1);
    CHECK(turn.feet.front().foot == row.foot);
    CHECK(turn.feet.front().actions.front().when.weekday == Weekday::thursday);
  }
}

TEST_CASE("DD in an ulcer is said with it and kept with it") {
  CHECK(saying::printed({"412 LH outside sole ulcer with DD in it, bad"}) ==
        "412 // LH outside sole ulcer, bad, DD in it");
  CHECK(
      saying::printed({"412 LH outside white line abscess heel, bad; DD in it; block on inside"}) ==
      "412 // LH outside white line abscess heel, bad, DD in it; block on inside");
  CHECK(saying::printed({"412 LH growth, digi in it"}) == "412 // LH growth, DD in it");
  CHECK_FALSE(saying::faults_of("LH DD, DD in it").empty());
  CHECK_FALSE(saying::faults_of("LH block on inside; DD in it").empty());
}

TEST_CASE("a cow is brought for long toes and told by a corkscrew without quotes") {
  const Turn brought = saying::turn_of({"31 came for long toes; all four trimmed; nothing found"});
  CHECK(brought.reason_words == "long toes");
  CHECK(brought.feet.size() == 4);
  CHECK(saying::printed({"no number, corkscrew; LH DD raw"}) ==
        "no number, corkscrew // LH DD raw");
  CHECK_FALSE(saying::faults_of("412 came for sole ulcer").empty());
}
