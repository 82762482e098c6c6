// The tutorial of docs/user, typed as it stands there, every answer compared.
#include <doctest/doctest.h>

#include <iomanip>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
namespace {

constexpr std::string_view prompt = "$ evenclaw ";
constexpr std::string_view fence = "```";
constexpr std::string_view lines_left_out = "...";
constexpr std::string_view words_left_out = "…";

/// A file, a folder or a file in it: it lies in the user's folder.
bool is_a_path(const std::string& word) {
  return word.find_first_of(" ") == std::string::npos &&
         word.find_first_of("./") != std::string::npos;
}

std::vector<std::string> words_of(std::string_view line, const Workshop& workshop) {
  std::vector<std::string> words;
  std::istringstream rest{std::string(line.substr(prompt.size()))};
  for (std::string word; rest >> std::quoted(word);) {
    words.push_back(is_a_path(word) ? workshop.file(word) : word);
  }
  return words;
}

/// "saved 412 …" holds for any id.
bool holds_for(std::string_view expected, std::string_view said) {
  const std::size_t gap = expected.find(words_left_out);
  if (gap == std::string_view::npos) return expected == said;
  const std::string_view before = expected.substr(0, gap);
  const std::string_view behind = expected.substr(gap + words_left_out.size());
  return said.size() >= before.size() + behind.size() && said.substr(0, gap) == before &&
         said.substr(said.size() - behind.size()) == behind;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// All that was said is on the page, in order; "..." stands for any number of lines.
void check_said(const std::vector<std::string>& page, const std::vector<std::string>& said) {
  std::size_t at = 0;
  bool may_skip = false;
  for (const std::string& expected : page) {
    if (expected == lines_left_out) {
      may_skip = true;
      continue;
    }
    while (may_skip && at < said.size() && !holds_for(expected, said[at])) ++at;
    CAPTURE(expected);
    const std::string found = at < said.size() ? said[at] : "(nothing more was said)";
    CAPTURE(found);
    CHECK(holds_for(expected, found));
    ++at;
    may_skip = false;
  }
  CHECK((may_skip || at == said.size()));
}

/// The page as it is read from top to bottom.
class Tutorial {
 public:
  explicit Tutorial(const std::string& page) : lines_(lines_of(page)) {}

  /// Does what the page says; how many commands that were.
  int work_through(const Workshop& workshop) {
    while (at_ < lines_.size()) {
      const std::string line = lines_[at_++];
      if (line.rfind("<!-- today ", 0) == 0) today_ = line.substr(11, 10);
      if (line.rfind(fence, 0) == 0) do_block(line.substr(fence.size()), workshop);
    }
    return commands_;
  }

 private:
  void do_block(const std::string& info, const Workshop& workshop) {
    std::vector<std::string> block;
    while (at_ < lines_.size() && lines_[at_] != fence) block.push_back(lines_[at_++]);
    ++at_;
    const std::size_t space = info.find(' ');
    const std::string what = space == std::string::npos ? "" : info.substr(space + 1);
    if (info.rfind("console", 0) == 0) return type(block, what == "ends-with-1" ? 1 : 0, workshop);
    std::string text;
    for (const std::string& line : block) text += line + '\n';
    write_bytes(workshop.file(what), text);
  }

  void type(const std::vector<std::string>& block, int exit, const Workshop& workshop) {
    for (std::size_t at = 0; at < block.size();) {
      const std::string& command = block[at++];
      CAPTURE(command);
      std::vector<std::string> words = words_of(command, workshop);
      words.insert(words.end(), {"--today", today_});
      std::vector<std::string> expected;
      while (at < block.size() && block[at].rfind(prompt, 0) != 0) expected.push_back(block[at++]);
      const Ran ran = workshop.run(words);
      CHECK(ran.exit == exit);
      CHECK(ran.err.empty());
      check_said(expected, lines_of(without_folder(ran.out, workshop)));
      ++commands_;
    }
  }

  static std::string without_folder(std::string text, const Workshop& workshop) {
    const std::string folder = workshop.file("");
    for (std::size_t at = text.find(folder); at != std::string::npos; at = text.find(folder)) {
      text.erase(at, folder.size());
    }
    return text;
  }

  std::vector<std::string> lines_;
  std::size_t at_ = 0;
  std::string today_ = "2026-11-24";
  int commands_ = 0;
};

}  // namespace

TEST_CASE("The first hour goes as its page tells it, answer by answer") {
  const Workshop workshop;
  CHECK(Tutorial(bytes_of("docs/user/first-hour.md")).work_through(workshop) >= 12);
}

}  // namespace evenclaw::test
