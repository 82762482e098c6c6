#include "core/trade/lame_score.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("from two above the best score of its scale on a cow is called lame") {
  const struct {
    int up_to;
    int score;
    bool is_best;
    bool is_lame;
  } rows[] = {{3, 0, true, false}, {3, 1, false, false}, {3, 2, false, true}, {3, 3, false, true},
              {5, 1, true, false}, {5, 2, false, false}, {5, 3, false, true}, {5, 5, false, true}};

  for (const auto& row : rows) {
    CAPTURE(row.up_to);
    CAPTURE(row.score);
    const MobilitySaid said{scale_up_to(row.up_to), row.score};
    CHECK(is_best_score(said) == row.is_best);
    CHECK(is_lame_score(said) == row.is_lame);
    CHECK(is_best_score(best_score_beside(said)));
  }
  CHECK_FALSE(is_lame_score({}));
  CHECK_FALSE(is_best_score({}));
  CHECK_FALSE(best_score_beside({}).said());
}
