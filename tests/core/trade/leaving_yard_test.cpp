#include "core/trade/leaving_yard.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

TEST_CASE("every line of the list for leaving the yard says where it comes from") {
  CHECK(before_leaving_the_yard().size() >= 4);
  for (const YardTask& task : before_leaving_the_yard()) {
    CAPTURE(task.words);
    CHECK_FALSE(task.source.empty());
  }
}

TEST_CASE("the disinfectants come with their strength and the time they need") {
  std::string all;
  for (const YardTask& task : before_leaving_the_yard()) all += std::string(task.words) + '\n';
  for (const char* fact : {"20 s", "2 % peroxygen", "2 % sodium hypochlorite", "iodophor 1:100"}) {
    CHECK(all.find(fact) != std::string::npos);
  }
}
