#include "core/exchange/calendar.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace evenclaw {

namespace {

constexpr std::size_t most_octets = 75;
constexpr std::string_view line_end = "\r\n";

bool is_within_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

std::string compact_day(Day day) {
  std::string text = to_text(day);
  text.erase(std::remove(text.begin(), text.end(), '-'), text.end());
  return text;
}

std::string two_digits(std::int64_t number) {
  const std::string digits = std::to_string(number);
  return digits.size() < 2 ? "0" + digits : digits;
}

/// "20261124T081203Z": universal time, as a stamp has to be (3.8.7.2).
std::string stamp(Instant instant) {
  constexpr std::int64_t ms_a_day = 86'400'000;
  constexpr std::int64_t ms_a_second = 1'000;
  const std::int64_t days =
      instant.ms >= 0 ? instant.ms / ms_a_day : (instant.ms - ms_a_day + 1) / ms_a_day;
  const std::int64_t seconds = (instant.ms - days * ms_a_day) / ms_a_second;
  const auto day = Day{static_cast<std::int32_t>(days)};
  return compact_day(day) + "T" + two_digits(seconds / 3600) + two_digits(seconds / 60 % 60) +
         two_digits(seconds % 60) + "Z";
}

std::string_view who_does_it(Owner owner) {
  switch (owner) {
    case Owner::farmer:
      return "farmer";
    case Owner::trimmer:
      return "trimmer";
    case Owner::vet:
      return "vet";
  }
  return "";
}

class Calendar {
 public:
  void line(std::string_view name, std::string_view value) {
    file_ += folded_line(std::string(name) + ":" + std::string(value));
  }

  std::string take() && { return std::move(file_); }

 private:
  std::string file_;
};

void add_task(Calendar& calendar, const CalendarOf& of, const CalendarTask& one) {
  const TaskRow& task = one.task;
  const Day due = std::max(task.due, task.earliest);
  const std::string what =
      one.told.empty() ? task_words(task.kind, task.foot, task.claw) : one.told;
  calendar.line("BEGIN", "VEVENT");
  calendar.line("UID", to_text(task.task) + "@evenclaw");
  calendar.line("DTSTAMP", stamp(of.made_at));
  calendar.line("SEQUENCE", std::to_string(of.sequence));
  calendar.line("DTSTART;VALUE=DATE", compact_day(due));
  calendar.line("DTEND;VALUE=DATE", compact_day(due + 1));
  calendar.line("SUMMARY", calendar_text(one.cow + ": " + what));
  calendar.line("DESCRIPTION",
                calendar_text("For the " + std::string(who_does_it(task.owner)) + ". Not before " +
                              to_text(task.earliest) + ", late from " +
                              to_text(std::max(task.overdue, due)) + "."));
  calendar.line("CATEGORIES", calendar_text(of.herd));
  calendar.line("STATUS", task.open ? "CONFIRMED" : "CANCELLED");
  calendar.line("TRANSP", "TRANSPARENT");
  calendar.line("END", "VEVENT");
}

}  // namespace

std::string folded_line(std::string_view line) {
  std::string folded;
  std::size_t room = most_octets;
  while (line.size() > room) {
    std::size_t end = room;
    while (end > 0 && is_within_character(line[end])) --end;
    // Bytes that are no text have no end of a character.
    if (end == 0) end = room;
    folded += line.substr(0, end);
    folded += line_end;
    folded += ' ';
    line.remove_prefix(end);
    room = most_octets - 1;
  }
  folded += line;
  return folded + std::string(line_end);
}

std::string calendar_text(std::string_view text) {
  std::string escaped;
  for (const char c : text) {
    if (c == '\r') continue;
    if (c == '\n') {
      escaped += "\\n";
      continue;
    }
    if (c == '\\' || c == ';' || c == ',') escaped += '\\';
    // Other control characters may not stand in a value.
    const bool is_shown = static_cast<unsigned char>(c) >= 0x20 && c != 0x7F;
    escaped += is_shown || c == '\t' ? c : ' ';
  }
  return escaped;
}

std::string calendar_file(const CalendarOf& of, const std::vector<CalendarTask>& tasks) {
  Calendar calendar;
  calendar.line("BEGIN", "VCALENDAR");
  calendar.line("VERSION", "2.0");
  calendar.line("PRODID", "-//Evenclaw//Evenclaw//EN");
  calendar.line("CALSCALE", "GREGORIAN");
  calendar.line("NAME", calendar_text(of.herd));
  for (const CalendarTask& task : tasks) add_task(calendar, of, task);
  calendar.line("END", "VCALENDAR");
  return std::move(calendar).take();
}

}  // namespace evenclaw
