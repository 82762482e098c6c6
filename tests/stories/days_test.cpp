// Whole days as they were typed: the messy ones a hurried assistant leaves behind and the
// example's.
#include <doctest/doctest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/stories/player.hpp"
#include "tests/stories/story.hpp"

using namespace evenclaw::test;

namespace {

constexpr std::string_view from_a_file = "recorded from a file";
constexpr std::string_view power_cut = "# (the power is cut)";

struct TypedDay {
  std::string folder;
  std::vector<std::string> before;  // visits recorded in peace
  std::string day;  // "gate-2026-10-20": .calls are played, .expected is held against
};

const std::vector<TypedDay> typed_days = {
    {"data/messy", {"gate-2026-10-06"}, "gate-2026-10-20"},
    {"data/messy", {"rain-2026-09-24"}, "rain-2026-10-22"},
    {"data/messy", {"trainee-2026-09-25"}, "trainee-2026-10-23"},
    {"data/example", {}, "2026-09-29"},
    {"data/example", {"2026-09-29"}, "2026-10-13"},
    {"data/example", {"2026-09-29", "2026-10-13"}, "2026-10-27"},
};

std::string text_of(const std::string& file) {
  std::ifstream in(file);
  REQUIRE_MESSAGE(in.good(), file);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

/// The lines of a visit behind the line that opens it, for a day's file is named after its day.
std::vector<std::string> visit_lines(const std::string& folder, const std::string& name) {
  constexpr std::size_t length_of_day = 10;
  std::vector<std::string> lines = {"visit " + name.substr(name.size() - length_of_day)};
  std::istringstream text(text_of(folder + "/" + name + ".calls"));
  for (std::string line; std::getline(text, line);) lines.push_back(line);
  return lines;
}

void add_typed(Story& story, const std::vector<std::string>& lines) {
  story.sections.push_back({"said", 0, {}});
  for (const std::string& line : lines) {
    if (line == power_cut) {
      story.sections.push_back({"the battery dies", 0, {}});
      story.sections.push_back({"said", 0, {}});
    } else {
      story.sections.back().lines.push_back(line);
    }
  }
}

Story visits_before(const TypedDay& typed) {
  Story story;
  for (const std::string& name : typed.before) {
    story.sections.push_back({"given", 0, visit_lines(typed.folder, name)});
  }
  return story;
}

std::string listed(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += "\n    " + line;
  return all.empty() ? "\n    (nothing)" : all;
}

Story expected_of(const TypedDay& typed) {
  return story_from(text_of(typed.folder + "/" + typed.day + ".expected"));
}

/// What a file leaves on record: the same as typing, unless it stands apart. Nobody mends a refused
/// line of a file, so a turn may stay unfinished that a person would have completed.
StorySection kept_from_a_file(const Story& expected) {
  StorySection kept{"recorded", 0, {}};
  for (const StorySection& section : expected.sections) {
    if (section.name == "recorded") kept.lines = section.lines;
  }
  for (const StorySection& section : expected.sections) {
    if (section.name == from_a_file) kept.lines = section.lines;
  }
  return kept;
}

void play_and_compare(const Story& story, const std::string& name) {
  StoryPlayer player;
  for (const StoryFault& fault : player.play(story)) {
    FAIL_CHECK(name << ":" << fault.line << " " << fault.section << "\n  expected:"
                    << listed(fault.expected) << "\n  found:" << listed(fault.found));
  }
}

}  // namespace

TEST_CASE("a day typed line by line comes out as a careful colleague would have kept it") {
  for (const TypedDay& typed : typed_days) {
    CAPTURE(typed.day);
    Story story = visits_before(typed);
    add_typed(story, visit_lines(typed.folder, typed.day));
    const Story expected = expected_of(typed);
    CHECK(expected.sections.size() >= 4);
    for (const StorySection& section : expected.sections) {
      if (section.name != from_a_file) story.sections.push_back(section);
    }
    play_and_compare(story, typed.day);
  }
}

TEST_CASE("the same day given as a file is kept as well, and given twice it is kept once") {
  for (const TypedDay& typed : typed_days) {
    CAPTURE(typed.day);
    const StorySection kept = kept_from_a_file(expected_of(typed));
    CHECK(kept.lines.size() >= 8);
    Story story = visits_before(typed);
    story.sections.push_back({"from a file", 0, visit_lines(typed.folder, typed.day)});
    story.sections.push_back(kept);
    story.sections.push_back({"the same file again", 0, {}});
    story.sections.push_back(kept);
    play_and_compare(story, typed.day);
  }
}
