#include "core/api/recording/last_line.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("never mind drops what was refused; who was let out before it can still be put right") {
  LastLine before;
  before.refused = "413 nothnig found";
  before.told_of = {"306"};
  before.let_out = true;
  LastLine now;
  now.keep_but_refused(before);
  CHECK(now.refused.empty());
  CHECK(now.told_of == before.told_of);
  CHECK(now.let_out);
}

TEST_CASE("behind a blank line a number mends the count or the cow, but no news any more") {
  LastLine before;
  before.refused = "LH nothnig found";
  before.lacks_foot = "wrap on";
  before.told_of = {"306"};
  before.counted = true;
  LastLine now;
  now.keep_called(before);
  CHECK(now.counted);
  CHECK_FALSE(now.let_out);
  CHECK(now.told_of.empty());
  CHECK(now.refused.empty());
  CHECK(now.lacks_foot.empty());
}

TEST_CASE("behind a blank line it is still known of which correction it was asked whose it is") {
  LastLine before;
  before.let_out = true;
  before.whose = "no, right hind";
  LastLine now;
  now.keep_called(before);
  CHECK(now.let_out);
  CHECK(now.whose == before.whose);
}

TEST_CASE("a line remembers nothing of the one before unless it says so") {
  const ThisLine line;
  CHECK_FALSE(line.calls_her_anew);
  CHECK_FALSE(line.has_words_kept);
  CHECK(line.unnamed.empty());
  CHECK(line.learned.empty());
}
