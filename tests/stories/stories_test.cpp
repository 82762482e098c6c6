// Every story comes out as it is told.
#include <doctest/doctest.h>

#include <string>

#include "tests/stories/player.hpp"
#include "tests/stories/story.hpp"

using namespace evenclaw::test;

namespace {

std::string line_by_line(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += "\n    " + line;
  return all.empty() ? "\n    (nothing)" : all;
}

}  // namespace

TEST_CASE("there are stories to be told") {
  CHECK(stories_in("tests/stories").size() >= 15);
}

TEST_CASE("every story comes out as it is told") {
  for (const NamedStory& named : stories_in("tests/stories")) {
    CAPTURE(named.file);
    CHECK_FALSE(named.story.title.empty());
    CHECK_FALSE(named.story.sections.empty());
    StoryPlayer player;
    for (const StoryFault& fault : player.play(named.story)) {
      FAIL_CHECK(named.file << ":" << fault.line << " " << fault.section
                            << "\n  told:" << line_by_line(fault.expected)
                            << "\n  found:" << line_by_line(fault.found));
    }
  }
}
