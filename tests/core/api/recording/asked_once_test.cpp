#include "core/api/recording/asked_once.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("nothing is meant by saying once more what nobody asked about") {
  const AskedOnce asked;
  CHECK_FALSE(asked.is_repeated("benn"));
  CHECK_FALSE(asked.is_repeated(""));
}

TEST_CASE("a person who watches may take time to say it again") {
  AskedOnce asked;
  asked.ask("benn", 3);
  CHECK(asked.is_repeated("benn"));
  CHECK_FALSE(asked.is_repeated("ben"));
}

TEST_CASE("in a file only the next line answers") {
  AskedOnce asked;
  asked.ask("12 heifers, nothing found", 3);
  CHECK(asked.is_repeated_at_once("12 heifers, nothing found", 4));
  CHECK_FALSE(asked.is_repeated_at_once("12 heifers, nothing found", 3));
  CHECK_FALSE(asked.is_repeated_at_once("12 heifers, nothing found", 5));
  CHECK_FALSE(asked.is_repeated_at_once("11 heifers, nothing found", 4));
}

TEST_CASE("only what was asked about last is answered") {
  AskedOnce asked;
  asked.ask("benn", 3);
  asked.ask("anna", 4);
  CHECK_FALSE(asked.is_repeated("benn"));
  CHECK(asked.said() == "anna");
}
