// What one caller did to several cows today: it shows in no single cow, only in the row of them.
#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"

namespace evenclaw {

namespace {

/// Our judgement: once or twice happens. Asked at the third, then each time it has doubled.
constexpr int first_asked_at = 3;

bool is_asked_between(int before, int now) {
  for (int at = first_asked_at; at <= now; at *= 2) {
    if (before < at) return true;
  }
  return false;
}

Firing about_the_day(std::string words, const Language& language) {
  Firing firing;
  firing.warning.words = std::move(words);
  firing.warning.answers = {offered_go_ahead(language)};
  firing.causes = {{std::nullopt, About::callers_knife}};
  return firing;
}

}  // namespace

std::vector<Firing> blood_drawn_on_several(const Situation& situation) {
  const int before = situation.past.so_far.feet_bled;
  const int now = before + feet_with(situation.turn, Lesion::blood_drawn);
  if (!is_asked_between(before, now)) return {};
  return {about_the_day("Blood drawn on " + std::to_string(now) +
                            " feet today, one caller: leave more sole, or change hands?",
                        situation.language)};
}

std::vector<Firing> thin_soles_on_several(const Situation& situation) {
  const int before = situation.past.so_far.cows_with_thin_soles;
  const int now = before + (feet_with(situation.turn, Lesion::ts) > 0 ? 1 : 0);
  if (!is_asked_between(before, now)) return {};
  Firing firing = about_the_day("Thin soles on " + std::to_string(now) +
                                    " cows today, one caller: too much off, or worn by the floor?",
                                situation.language);
  firing.causes.push_back({std::nullopt, About::thin_sole});
  return {firing};
}

}  // namespace evenclaw
