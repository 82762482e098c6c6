// News as it is shown again: in the words in which it was told, newest or first told first.
#pragma once

#include <span>
#include <string>
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
  std::string words;  // the line as said, also where it tells of other cows as well
  std::string asked;  // what is or was asked about it; "" when it was clear

  friend bool operator==(const NewsSeen&, const NewsSeen&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &NewsSeen::day, "day it was told");
    visit("words", &NewsSeen::words, "as said, with what the line told of other cows");
    visit("asked", &NewsSeen::asked, "what was asked about it, where it was not clear");
  }
};

/// All that was told of these cows, who are one, the newest day first.
Result<std::vector<NewsSeen>> news_of_cow(Store& store, HerdId herd, std::span<const CowId> group);

/// The lines of clear news told at the visit, each once, in the order they were told. That a cow is
/// gone does not name its visit: what was told on its day counts.
Result<std::vector<std::string>> news_of_visit(Store& store, const Visit& visit);

}  // namespace evenclaw
