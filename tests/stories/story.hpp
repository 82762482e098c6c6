// A story read from its file: title, and sections of lines.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace evenclaw::test {

struct StorySection {
  std::string name;  // "said", "due 2026-11-03"
  int line = 0;      // of its heading
  std::vector<std::string> lines;
};

struct Story {
  std::string title;
  std::vector<StorySection> sections;
};

/// Blank lines are left out, and so are lines that begin with "# " inside a section.
Story story_from(std::string_view text);

/// Every story of a folder by file name, sorted.
struct NamedStory {
  std::string file;
  Story story;
};

std::vector<NamedStory> stories_in(const std::string& folder);

}  // namespace evenclaw::test
