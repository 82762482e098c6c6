#include "tests/stories/story.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/base/text.hpp"

namespace evenclaw::test {

Story story_from(std::string_view text) {
  Story story;
  std::istringstream lines{std::string(text)};
  std::string raw;
  int number = 0;
  while (std::getline(lines, raw)) {
    ++number;
    const std::string line(trimmed(raw));
    if (line.rfind("## ", 0) == 0) {
      story.sections.push_back({line.substr(3), number, {}});
    } else if (line.rfind("# ", 0) == 0) {
      if (story.title.empty()) story.title = line.substr(2);
    } else if (!line.empty() && !story.sections.empty()) {
      story.sections.back().lines.push_back(line);
    }
  }
  return story;
}

std::vector<NamedStory> stories_in(const std::string& folder) {
  std::vector<NamedStory> stories;
  for (const auto& file : std::filesystem::directory_iterator(folder)) {
    if (file.path().extension() != ".story") continue;
    std::ifstream in(file.path());
    std::ostringstream text;
    text << in.rdbuf();
    stories.push_back({file.path().filename().string(), story_from(text.str())});
  }
  std::sort(stories.begin(), stories.end(),
            [](const NamedStory& a, const NamedStory& b) { return a.file < b.file; });
  return stories;
}

}  // namespace evenclaw::test
