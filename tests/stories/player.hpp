// Plays a story through the use cases, on one tablet or two.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "tests/core/api/workplace.hpp"
#include "tests/stories/story.hpp"

namespace evenclaw::test {

/// Where a story came out otherwise than told.
struct StoryFault {
  int line = 0;
  std::string section;
  std::vector<std::string> expected;
  std::vector<std::string> found;
};

class StoryPlayer {
 public:
  StoryPlayer();
  ~StoryPlayer();

  std::vector<StoryFault> play(const Story& story);

 private:
  struct Tablet;

  void play(const StorySection& section);
  void given(const StorySection& section);
  void products(const StorySection& section);
  void said(const StorySection& section);
  void said_together(const StorySection& section);
  void from_file(const std::vector<std::string>& lines);
  void take_up_again();
  void switch_to(const std::string& name);
  void tablets_meet();
  void expect(const StorySection& section, const std::vector<std::string>& found);
  void visit_line(const std::string& line);
  void end_visit_quietly();
  [[nodiscard]] std::vector<std::string> ended();
  [[nodiscard]] std::vector<std::string> due(const std::string& day_text);
  [[nodiscard]] std::vector<std::string> cow(const std::string& said);
  [[nodiscard]] std::vector<std::string> recorded();
  [[nodiscard]] std::vector<std::string> callers();
  [[nodiscard]] std::vector<std::string> counted();
  [[nodiscard]] std::vector<std::string> milk_and_meat();
  std::vector<std::string> turns();

  Tablet& tablet() { return *tablets_.at(at_); }

  std::map<std::string, std::unique_ptr<Tablet>> tablets_;
  std::string at_ = "A";
  std::vector<std::string> answers_;
  std::vector<std::string> last_file_;
  std::vector<StoryFault> faults_;
};

}  // namespace evenclaw::test
