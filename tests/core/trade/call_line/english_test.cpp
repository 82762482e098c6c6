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
  check_all_said<Lesion>(TermKind::lesion, {Lesion::other});
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
    if (facts.lesion == Lesion::other) continue;
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

  constexpr Row rows[] = {{"digi", Lesion::dd},        {"foul", Lesion::ip},
                          {"growth", Lesion::ih},      {"slurry heel", Lesion::hhe},
                          {"bruise", Lesion::sh},      {"bulb ulcer", Lesion::bu},
                          {"white line", Lesion::wl},  {"white line fissure", Lesion::wlf},
                          {"double sole", Lesion::ds}, {"heel horn erosion", Lesion::hhe},
                          {"thin sole", Lesion::ts},   {"toe ulcer", Lesion::tu},
                          {"sole ulcer", Lesion::su},  {"ulcer", Lesion::u}};
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
