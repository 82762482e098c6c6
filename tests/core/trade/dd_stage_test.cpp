#include "core/trade/dd_stage.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("every stage that can be called has its facts and a source") {
  for (const EnumWord<DdStage>& row : EnumWords<DdStage>::table) {
    CAPTURE(row.word);
    const DdStageFacts* facts = facts_of(row.value);
    CHECK((facts == nullptr) == (row.value == DdStage::not_called));
    if (facts == nullptr) continue;
    CHECK_FALSE(facts->meaning.empty());
    CHECK_FALSE(facts->source.empty());
  }
}

TEST_CASE("M1, M2 and M4.1 are active, M3 heals, M4 is chronic and M0 is none") {
  struct Row {
    DdStage stage;
    DdActivity activity;
  };

  constexpr Row rows[] = {
      {DdStage::m0, DdActivity::none},        {DdStage::m1, DdActivity::active},
      {DdStage::m2, DdActivity::active},      {DdStage::m3, DdActivity::healing},
      {DdStage::m4, DdActivity::chronic},     {DdStage::m4_1, DdActivity::active},
      {DdStage::raw, DdActivity::active},     {DdStage::scab, DdActivity::healing},
      {DdStage::chronic, DdActivity::chronic}};
  for (const Row& row : rows) {
    CAPTURE(word_of(row.stage));
    CHECK(facts_of(row.stage)->activity == row.activity);
  }
}

TEST_CASE("two centimetres part M1 from M2") {
  CHECK(facts_of(DdStage::m1)->size == "under 2 cm");
  CHECK(facts_of(DdStage::m2)->size == "over 2 cm");
  CHECK(facts_of(DdStage::raw)->size.empty());
}
