#include "core/api/answered_by_news.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

/// "Her wrap on that foot was not mentioned", as it was shown and not answered.
WarningShown not_mentioned(Foot foot, Claw claw) {
  WarningShown shown;
  shown.warning.rule = "still-on-not-mentioned";
  shown.warning.foot = foot;
  shown.warning.claw = claw;
  return shown;
}

NewsSaid news_of(News news, FootSet feet = {}) {
  NewsSaid said;
  said.number = "412";
  said.news = news;
  said.feet = feet;
  return said;
}

}  // namespace

TEST_CASE("a wrap told off later answers what was asked of the wrap, and not of the block") {
  std::vector<WarningShown> warnings = {not_mentioned(Foot::lh, Claw::none),
                                        not_mentioned(Foot::rh, Claw::inside)};
  CHECK(answer_warnings(warnings, news_of(News::wrap_off), " 412 wrap off "));
  CHECK(warnings[0].decision == "412 wrap off");
  CHECK(warnings[1].decision.empty());
}

TEST_CASE("news that names a foot answers for that foot") {
  std::vector<WarningShown> warnings = {not_mentioned(Foot::lh, Claw::none),
                                        not_mentioned(Foot::rh, Claw::none)};
  CHECK(answer_warnings(warnings, news_of(News::wrap_off, FootSet{Foot::rh}), "412 RH wrap off"));
  CHECK(warnings[0].decision.empty());
  CHECK_FALSE(warnings[1].decision.empty());
}

TEST_CASE("what was answered stays as it was answered, and other news answers nothing") {
  std::vector<WarningShown> warnings = {not_mentioned(Foot::lh, Claw::none)};
  CHECK_FALSE(answer_warnings(warnings, news_of(News::still_lame), "412 still lame"));
  warnings[0].decision = "go ahead";
  CHECK_FALSE(answer_warnings(warnings, news_of(News::wrap_off), "412 wrap off"));
  CHECK(warnings[0].decision == "go ahead");
}
