#include "core/log/scoring_rows.hpp"

#include <doctest/doctest.h>

#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

CowScored scored(std::string number, std::optional<std::int32_t> score, bool mends = false) {
  CowScored cow;
  cow.number = std::move(number);
  cow.score = score;
  cow.mends = mends;
  return cow;
}

class ScoredFarm {
 public:
  void say(std::vector<CowScored> cows, std::vector<CountScored> counted = {},
           std::optional<std::int32_t> present = {}) {
    MobilityScoring body;
    body.scoring = scoring();
    body.day = day("2026-11-24");
    body.cows = std::move(cows);
    body.counted = std::move(counted);
    body.present = present;
    farm.write(body);
  }

  [[nodiscard]] VisitId scoring() const {
    return scoring_id(farm.herd(), day("2026-11-24"), MobilityScale::zero_to_three, "");
  }

  [[nodiscard]] Rows rows() const { return farm.rows_of(scoring()); }

  [[nodiscard]] MobilityScoringRow whole() const { return rows().mobility_scorings.at(0); }

  Farm farm;
};

}  // namespace

TEST_CASE("cows by number and counted animals add up, each kept apart") {
  ScoredFarm home;
  home.say({scored("412", 2), scored("413", 3)}, {{40, 0, false}}, 60);
  home.say({scored("414", std::nullopt)}, {{8, 1, false}});
  const MobilityScoringRow whole = home.whole();
  CHECK(whole.scored == 50);
  CHECK(whole.cows == 2);
  CHECK(whole.counted == 48);
  CHECK(whole.not_scored == 1);
  CHECK(whole.present == 60);
  CHECK(whole.at_0 == 40);
  CHECK(whole.at_1 == 8);
  CHECK(whole.at_2 == 1);
  CHECK(whole.at_3 == 1);
  CHECK(home.rows().mobility_scores.size() == 5);
  CHECK(home.rows().visits.empty());
}

TEST_CASE("a cow scored twice in two ways counts at no score until somebody chooses") {
  ScoredFarm home;
  home.say({scored("412", 2)});
  home.say({scored("0412", 3)});
  CHECK(home.whole().in_doubt == 1);
  CHECK(home.whole().scored == 0);
  CHECK(home.rows().mobility_scores.at(0).twice);
  home.say({scored("412", 3, true)});
  CHECK(home.whole().in_doubt == 0);
  CHECK(home.whole().at_3 == 1);
  CHECK(home.rows().mobility_scores.size() == 1);
}

TEST_CASE("the same score said again is one score") {
  ScoredFarm home;
  home.say({scored("412", 2)}, {{40, 0, false}});
  home.say({scored("412", 2)}, {{40, 0, false}});
  CHECK(home.whole().scored == 41);
}

TEST_CASE("what is scrapped is gone, and a count of nobody takes the count back") {
  ScoredFarm home;
  home.say({scored("412", 2)}, {{40, 0, false}});
  CowScored scrapped = scored("412", std::nullopt);
  scrapped.scrapped = true;
  home.say({scrapped}, {{0, 0, true}});
  CHECK(home.whole().scored == 0);
  CHECK(home.rows().mobility_scores.empty());
}

TEST_CASE("a redacted entry tells no score any more") {
  ScoredFarm home;
  home.say({scored("412", 2)});
  home.farm.redact(home.farm.last());
  CHECK(home.rows().mobility_scorings.empty());
}

TEST_CASE("numbers of animals no farm has, from elsewhere, are not counted") {
  ScoredFarm home;
  home.say({}, {{2'000'000'000, 0, false}, {2'000'000'000, 1, false}, {-5, 2, false}});
  CHECK(home.whole().scored == 0);
}

TEST_CASE("a scoring touches its own picture and no cow") {
  ScoredFarm home;
  home.say({scored("412", 2)});
  const Touched touched = touched_by(home.farm.last());
  CHECK(touched.cows.empty());
  CHECK(touched.visits == std::vector<VisitId>{home.scoring()});
}

}  // namespace evenclaw
