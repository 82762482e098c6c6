// Invented value types with every kind of member, for the tests of this folder.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/length.hpp"

namespace evenclaw {

/// Packed like a set of feet: two halves written "1+2".
struct Halves {
  int left = 0;
  int right = 0;
  friend bool operator==(const Halves&, const Halves&) = default;
};

inline std::string to_text(const Halves& halves) {
  return std::to_string(halves.left) + "+" + std::to_string(halves.right);
}

inline std::optional<Halves> value_from_text(std::string_view text, std::type_identity<Halves>) {
  if (text.size() != 3 || text[1] != '+') return std::nullopt;
  return Halves{text[0] - '0', text[2] - '0'};
}

struct Note {
  Weekday weekday = Weekday::monday;
  std::optional<Length> height;
  std::vector<std::string> words;
  friend bool operator==(const Note&, const Note&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("weekday", &Note::weekday, "when");
    visit("height", &Note::height, "how high");
    visit("words", &Note::words, "as said");
  }
};

struct Sample {
  bool is_open = true;
  std::int32_t count = 7;
  std::int64_t large = 0;
  std::string name;
  Halves halves;
  Day day;
  Instant at;
  HerdId herd;
  std::optional<std::string> remark;
  std::optional<Note> last;
  std::vector<Weekday> weekdays;
  std::vector<Note> notes;
  Note first;
  friend bool operator==(const Sample&, const Sample&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("is_open", &Sample::is_open, "open");
    visit("count", &Sample::count, "how many");
    visit("large", &Sample::large, "a large number");
    visit("name", &Sample::name, "called");
    visit("halves", &Sample::halves, "both halves");
    visit("day", &Sample::day, "the day");
    visit("at", &Sample::at, "the instant");
    visit("herd", &Sample::herd, "the herd");
    visit("remark", &Sample::remark, "if any");
    visit("last", &Sample::last, "the last note");
    visit("weekdays", &Sample::weekdays, "on which days");
    visit("notes", &Sample::notes, "all notes");
    visit("first", &Sample::first, "the first note");
  }
};

struct FlatRow {
  HerdId herd;
  Day day;
  std::string name;
  Weekday weekday = Weekday::monday;
  bool is_open = false;
  std::int32_t count = 0;
  Halves halves;
  std::optional<Length> height;
  std::optional<std::string> remark;
  std::optional<Day> until;
  friend bool operator==(const FlatRow&, const FlatRow&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &FlatRow::herd, "the herd");
    visit("day", &FlatRow::day, "the day");
    visit("name", &FlatRow::name, "called");
    visit("weekday", &FlatRow::weekday, "on which day");
    visit("is_open", &FlatRow::is_open, "open");
    visit("count", &FlatRow::count, "how many");
    visit("halves", &FlatRow::halves, "both halves");
    visit("height", &FlatRow::height, "how high");
    visit("remark", &FlatRow::remark, "if any");
    visit("until", &FlatRow::until, "last day");
  }
};

}  // namespace evenclaw
