// News as it is shown again: in the words in which it was told, newest or first told first.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// What was told of a cow who was not called.
struct NewsSeen {
  Day day;
  std::string words;  // as said, without what the line told of other cows only
  std::string asked;  // what is or was asked about it, or how it was taken back; "" when it holds

  friend bool operator==(const NewsSeen&, const NewsSeen&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &NewsSeen::day, "day it was told");
    visit("words", &NewsSeen::words, "as said, without what the line told of other cows");
    visit("asked", &NewsSeen::asked, "what was asked about it, or how it was taken back");
  }
};

/// What a line of news tells of a cow with one of these numbers: "412, 513 wraps off; 77 gone"
/// tells of 77 "77 gone", without the word "news" in front. All of it where that cannot be told, as
/// of numbers in words.
std::string part_told_of(std::string_view line, std::span<const std::string> numbers);

/// All that was told of these cows, who are one, the newest day first.
Result<std::vector<NewsSeen>> news_of_cow(Store& store, HerdId herd, std::span<const CowId> group);

/// The lines of clear news told at the visit and not taken back, each once, in the order they were
/// told. That a cow is
/// gone does not name its visit: what was told on its day counts.
Result<std::vector<std::string>> news_of_visit(Store& store, const Visit& visit);

}  // namespace evenclaw
