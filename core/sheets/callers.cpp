#include "core/sheets/callers.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>
#include <vector>

namespace evenclaw {

namespace {

using WhoOfTurn = PersonId TurnRow::*;

struct CowsCalled {
  PersonId person;
  std::string name;
  std::size_t cows = 0;
};

std::string name_in(const VisitSheetInput& input, PersonId person, const Wording& wording) {
  const auto known = std::find_if(input.people.begin(), input.people.end(),
                                  [&](const NamedPerson& named) { return named.person == person; });
  return known == input.people.end() ? wording.say(Saying::person_not_said) : known->name;
}

/// Whoever began the visit first, then who judged most, then by name.
std::vector<CowsCalled> shares(const VisitSheetInput& input, WhoOfTurn who, PersonId began,
                               const Wording& wording) {
  std::map<PersonId, std::set<CowId>> cows;
  for (const TurnRow& turn : input.rows.turns) {
    if (turn.visit == input.visit.visit) cows[turn.*who].insert(turn.cow);
  }
  std::vector<CowsCalled> all;
  all.reserve(cows.size());
  for (const auto& [person, seen] : cows) {
    all.push_back({person, name_in(input, person, wording), seen.size()});
  }
  std::sort(all.begin(), all.end(), [&](const CowsCalled& a, const CowsCalled& b) {
    const bool a_began = a.person == began;
    const bool b_began = b.person == began;
    if (a_began != b_began) return a_began;
    if (a.cows != b.cows) return a.cows > b.cows;
    return a.name != b.name ? a.name < b.name : a.person < b.person;
  });
  return all;
}

/// `at_opening` is told when no turn names anybody.
std::string told(const std::vector<CowsCalled>& shares, const std::string& at_opening,
                 const Wording& wording) {
  if (shares.empty()) return at_opening;
  if (shares.size() == 1) {
    return shares.front().person.is_nil() ? at_opening : shares.front().name;
  }
  std::vector<std::string> names;
  names.reserve(shares.size());
  for (const CowsCalled& share : shares) {
    names.push_back(wording.say(Saying::person_with_cows,
                                {{"name", share.name}, {"n", std::to_string(share.cows)}}));
  }
  return wording.list(names);
}

}  // namespace

std::string callers_of(const VisitSheetInput& input, const Wording& wording) {
  return told(shares(input, &TurnRow::caller, input.visit.caller, wording), input.caller, wording);
}

std::string writers_of(const VisitSheetInput& input, const Wording& wording) {
  return told(shares(input, &TurnRow::writer, PersonId{}, wording), input.writer, wording);
}

std::string other_caller(const VisitSheetInput& input, const TurnRow& turn,
                         const Wording& wording) {
  const std::vector<CowsCalled> all = shares(input, &TurnRow::caller, input.visit.caller, wording);
  const bool is_first = all.empty() || all.front().person == turn.caller;
  return is_first ? std::string() : name_in(input, turn.caller, wording);
}

}  // namespace evenclaw
