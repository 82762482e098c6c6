// A file with one cow in it, recorded by the program itself.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <string_view>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

/// Home Farm, where 412 came lame, was found to have DD and got a wrap.
struct OneCowRecorded {
  Workshop workshop;

  OneCowRecorded() {
    const Ran started = workshop.run({"start", "Home Farm", "--new-herd", "--feet", "all"});
    REQUIRE(started.exit == 0);
    REQUIRE(workshop.run({"record"}, "412 lame LH\nLH DD raw behind; wrap on\ndone\n").exit == 0);
  }
};

}  // namespace evenclaw::test
