#include "core/trade/call_line/reason_taken_back.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace evenclaw {

namespace {

constexpr std::string_view between_words = "; ";

/// Each of the reasons that were said in words.
std::vector<std::string> worded_reasons(const Turn& turn) {
  std::vector<std::string> reasons;
  std::string_view left = turn.reason_words;
  while (!left.empty()) {
    const std::size_t end = left.find(between_words);
    reasons.emplace_back(left.substr(0, end));
    left = end == std::string_view::npos ? "" : left.substr(end + between_words.size());
  }
  return reasons;
}

bool is_said_in_words(const Turn& turn, const std::string& words) {
  const std::vector<std::string> reasons = worded_reasons(turn);
  return std::find(reasons.begin(), reasons.end(), words) != reasons.end();
}

FootSet without(FootSet feet, const FootSet& gone) {
  for (const Foot foot : all_feet) {
    if (gone.has(foot)) feet.remove(foot);
  }
  return feet;
}

void drop(Turn& turn, Reason reason) {
  if (turn.reason != reason) {
    turn.also.erase(std::remove(turn.also.begin(), turn.also.end(), reason), turn.also.end());
    return;
  }
  turn.reason = turn.also.empty() ? Reason::not_called : turn.also.front();
  if (!turn.also.empty()) turn.also.erase(turn.also.begin());
}

}  // namespace

std::optional<Refusal> why_not_taken_back(const Turn& turn, const ReasonTakenBack& said) {
  if (!came_for(turn, said.reason)) return impossible("that is not why she was said to come");
  if (!without(said.lame, turn.lame).empty()) {
    return impossible("she was not said to be lame on " + to_text(without(said.lame, turn.lame)));
  }
  const bool other_words = said.reason == Reason::other && !is_said_in_words(turn, said.words);
  if (other_words) return impossible("she came for: " + turn.reason_words);
  return std::nullopt;
}

void add_reason(Turn& turn, const ReasonSaid& said) {
  if (turn.reason == Reason::not_called) {
    turn.reason = said.reason;
  } else if (!came_for(turn, said.reason)) {
    turn.also.push_back(said.reason);
  }
  const bool is_other_leg = said.is_correction && !said.lame.empty();
  if (is_other_leg) turn.lame = {};
  turn.lame.add(said.lame);
  if (said.is_correction) turn.walks_sound = false;
}

void take_back_reason(Turn& turn, const ReasonTakenBack& said) {
  if (said.reason == Reason::lame) {
    const FootSet left = said.lame.empty() ? FootSet{} : without(turn.lame, said.lame);
    turn.lame = left;
    if (!left.empty()) return;
  }
  if (said.reason == Reason::other) {
    std::string words;
    for (const std::string& each : worded_reasons(turn)) {
      if (each == said.words) continue;
      words += (words.empty() ? "" : std::string(between_words)) + each;
    }
    turn.reason_words = words;
    if (!words.empty()) return;
  }
  drop(turn, said.reason);
}

}  // namespace evenclaw
