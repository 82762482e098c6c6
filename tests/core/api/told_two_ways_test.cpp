#include "core/api/told_two_ways.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/base/id.hpp"

namespace evenclaw {

namespace {

const CowId cow{uuid_derived("412")};
const DeviceId tablet{uuid_derived("tablet")};
const DeviceId other{uuid_derived("other tablet")};

struct Said {
  FootSet feet;
  bool is_off;
  DeviceId device;
  bool is_news = false;
  bool is_since = false;
};

std::vector<ToldTwoWays> asked(const std::vector<Said>& in_order) {
  std::vector<FateTold> told;
  for (const Said& said : in_order) {
    told.push_back({cow, Fixture::wrap, said.feet, said.is_off, said.is_news, said.is_since,
                    said.device, static_cast<std::int64_t>(told.size())});
  }
  return told_two_ways(told);
}

struct Walk {
  bool is_sound;
  DeviceId device;
  bool is_news = false;
  bool is_since = false;
};

bool is_walk_asked(const std::vector<Walk>& in_order) {
  std::vector<WalkTold> told;
  for (const Walk& walk : in_order) {
    told.push_back({cow, walk.is_sound, walk.is_news, walk.is_since, walk.device,
                    static_cast<std::int64_t>(told.size())});
  }
  return !walk_told_two_ways(told).empty();
}

}  // namespace

TEST_CASE("lame still for the one and walking sound for the other is asked about") {
  CHECK(is_walk_asked({{false, tablet, true}, {true, tablet}}));
  CHECK(is_walk_asked({{false, tablet, true}, {true, other, true}}));
  CHECK_FALSE(is_walk_asked({{true, tablet}, {false, tablet, true}}));
  CHECK_FALSE(is_walk_asked({{false, tablet, true}, {true, tablet}, {true, other, true, true}}));
  CHECK_FALSE(is_walk_asked({{true, tablet}, {true, other}}));
  CHECK_FALSE(is_walk_asked({}));
}

TEST_CASE("a wrap that is off for the one and still on for the other is asked about") {
  const FootSet lh{Foot::lh};
  const FootSet rh{Foot::rh};

  const struct {
    const char* why;
    std::vector<Said> said;
    bool is_asked;
  } rows[] = {
      {"two tablets, off first", {{lh, true, tablet}, {lh, false, other}}, true},
      {"two tablets, on first", {{lh, false, tablet}, {lh, true, other}}, true},
      {"news without its foot", {{lh, true, tablet}, {{}, false, other, true}}, true},
      {"two feet", {{lh, true, tablet}, {rh, false, other}}, false},
      {"found on, then taken off", {{lh, false, tablet}, {lh, true, tablet}}, false},
      {"told off, then found on", {{{}, true, tablet, true}, {lh, false, tablet}}, true},
      {"both say off", {{lh, true, tablet}, {lh, true, other}}, false},
      {"told once more on that tablet",
       {{{}, true, tablet, true}, {lh, false, tablet}, {lh, true, tablet, true}},
       false},
      {"told after the visit",
       {{lh, true, tablet}, {lh, false, other}, {lh, false, other, true, true}},
       false},
  };

  for (const auto& row : rows) {
    CAPTURE(row.why);
    CHECK(asked(row.said).size() == (row.is_asked ? 1 : 0));
  }
}

TEST_CASE("the feet asked about are those of which both were said, as far as one was named") {
  const std::vector<ToldTwoWays> some =
      asked({{hind_feet, true, tablet}, {{Foot::lh}, false, other}});
  REQUIRE(some.size() == 1);
  CHECK(some.front() == ToldTwoWays{cow, Fixture::wrap, {Foot::lh}});
  CHECK(asked({{{}, true, tablet, true}, {{}, false, other, true}}).front().feet.empty());
}

}  // namespace evenclaw
