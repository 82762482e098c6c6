#include "core/exchange/calendar.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/base/random.hpp"
#include "core/base/text.hpp"
#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

CalendarTask wrap_off_of_412() {
  TaskRow task;
  task.task = TaskId{uuid_derived("a task")};
  task.kind = TaskKind::wrap_off;
  task.foot = Foot::lh;
  task.owner = Owner::farmer;
  task.earliest = day("2026-11-27");
  task.due = day("2026-11-29");
  task.overdue = day("2026-12-02");
  task.words = "wrap off LH, digital dermatitis";
  return {task, "412"};
}

CalendarOf home_farm() {
  return {"Home Farm", 31, {1'795'766'400'000, 60}};
}

/// Lines put together again, as a reader does (RFC 5545, 3.1).
std::vector<std::string> unfolded(std::string text) {
  for (std::size_t at = text.find("\r\n "); at != std::string::npos; at = text.find("\r\n ")) {
    text.erase(at, 3);
  }
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t end = text.find("\r\n");
    REQUIRE(end != std::string::npos);
    lines.push_back(text.substr(0, end));
    text.erase(0, end + 2);
  }
  return lines;
}

bool has_line(const std::string& file, const std::string& line) {
  const auto lines = unfolded(file);
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

}  // namespace

TEST_CASE("a task is an event of a whole day with the words of the yard") {
  const std::string file = calendar_file(home_farm(), {wrap_off_of_412()});
  CHECK(has_line(file, "DTSTART;VALUE=DATE:20261129"));
  CHECK(has_line(file, "DTEND;VALUE=DATE:20261130"));
  CHECK(has_line(file, "DTSTAMP:20261127T080000Z"));
  CHECK(has_line(
      file, "SUMMARY:412: " + calendar_text(task_words(TaskKind::wrap_off, Foot::lh, Claw::none))));
  CHECK(
      has_line(file, "DESCRIPTION:For the farmer. Not before 2026-11-27\\, late from 2026-12-02."));
  CHECK(has_line(file, "STATUS:CONFIRMED"));
}

TEST_CASE("no lesion stands in a calendar") {
  CHECK(calendar_file(home_farm(), {wrap_off_of_412()}).find("dermatitis") == std::string::npos);
}

TEST_CASE(
    "a moved task keeps its UID, and a closed one comes as cancelled with a higher sequence") {
  CalendarTask task = wrap_off_of_412();
  const std::string uid = "UID:" + to_text(task.task.task) + "@evenclaw";
  CHECK(has_line(calendar_file(home_farm(), {task}), uid));
  task.task.due = day("2026-12-01");
  task.task.open = false;
  CalendarOf later = home_farm();
  later.sequence = 32;
  const std::string file = calendar_file(later, {task});
  CHECK(has_line(file, uid));
  CHECK(has_line(file, "SEQUENCE:32"));
  CHECK(has_line(file, "DTSTART;VALUE=DATE:20261201"));
  CHECK(has_line(file, "STATUS:CANCELLED"));
}

TEST_CASE("what a value may not hold is escaped") {
  CHECK(calendar_text("a;b,c\\d\r\ne\x01") == "a\\;b\\,c\\\\d\\ne ");
}

TEST_CASE("lines are folded at 75 octets and never within a character") {
  const std::string line = "SUMMARY:" + std::string(66, 'x') + "ä and on";
  CHECK(folded_line(line) == "SUMMARY:" + std::string(66, 'x') + "\r\n ä and on\r\n");
  CHECK(folded_line(std::string(75, 'x')) == std::string(75, 'x') + "\r\n");
  for (std::uint64_t stream = 0; stream < 500; ++stream) {
    RandomStream random(20261106, stream);
    std::string text;
    const std::uint32_t length = random.below(300);
    for (std::uint32_t i = 0; i < length; ++i) {
      constexpr const char* letters[] = {"a", "ä", "€", "🐄", " "};
      text += letters[random.below(5)];
    }
    CAPTURE(stream);
    const std::string folded = folded_line(text);
    std::size_t begin = 0;
    for (std::size_t end = folded.find("\r\n"); end != std::string::npos;
         end = folded.find("\r\n", begin)) {
      CHECK(end - begin <= 75);
      CHECK(is_utf8(folded.substr(begin, end - begin)));
      begin = end + 2;
    }
    CHECK(unfolded(folded) == std::vector<std::string>{text});
  }
}

TEST_CASE("a file without tasks is a calendar all the same") {
  const auto lines = unfolded(calendar_file(home_farm(), {}));
  CHECK(lines.front() == "BEGIN:VCALENDAR");
  CHECK(lines.back() == "END:VCALENDAR");
}
