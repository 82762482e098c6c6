#include "core/trade/batch.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("who is apart is counted and not one of those together") {
  Batch batch;
  batch.counted = 12;
  CHECK(batch.together() == 12);
  batch.apart = {"little black one"};
  CHECK(batch.together() == 11);
}

TEST_CASE("a log from elsewhere with more apart than counted leaves nobody, never less") {
  Batch batch;
  batch.counted = 1;
  batch.apart = {"one", "other"};
  CHECK(batch.together() == 0);
}
