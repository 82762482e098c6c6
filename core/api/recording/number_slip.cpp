#include "core/api/recording/number_slip.hpp"

#include <algorithm>
#include <utility>

#include "core/base/edit_distance.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// The act is done to, or tells of, one that was there before.
std::optional<Fixture> fixture_of_before(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said) return std::nullopt;
  switch (said->step) {
    case FixtureStep::stacked:
    case FixtureStep::renewed:
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
    case FixtureStep::left_on:
      return said->fixture;
    case FixtureStep::put_on:
    case FixtureStep::not_known:
      return std::nullopt;
  }
  return std::nullopt;
}

bool tells_of(const Turn& turn, const OnFootRow& row) {
  const FootCall* call = find_foot(turn, row.foot);
  return call != nullptr &&
         std::any_of(call->actions.begin(), call->actions.end(), [&](const Action& action) {
           return fixture_of_before(action) == row.fixture;
         });
}

constexpr std::string_view asked_by = "known-number-near";

Warning meant(const std::string& why, const NearCow& near, const Language& language) {
  Warning warning;
  warning.rule = asked_by;
  warning.rank = Rank::ask;
  warning.words = why + ". " + near.number + " meant?";
  warning.answers = {offered_correction(near.number, language), offered_go_ahead(language)};
  return warning;
}

Warning asked(const Turn& turn, const NearCow& near, const std::string& why,
              const Language& language) {
  return meant(plain_number(turn.cow.number) + " is new here" + why, near, language);
}

Warning asked_by_her_looks(const Turn& turn, const NearCow& near, const Language& language) {
  return meant(near.number + " was called \"" + turn.cow.looks + "\" before", near, language);
}

std::string has_on_her(const NearCow& near, const OnFootRow& row) {
  return "; " + near.number + " has a " + std::string(word_of(row.fixture)) + " on " +
         std::string(spoken(row.foot));
}

}  // namespace

bool is_slip_of(std::string_view said, std::string_view known) {
  if (edit_distance(std::string(said), std::string(known)) == 1) return true;
  if (said.size() != known.size()) return false;
  const auto [a, b] = std::mismatch(said.begin(), said.end(), known.begin());
  if (a == said.end() || a + 1 == said.end()) return false;
  return a[0] == b[1] && a[1] == b[0] && std::equal(a + 2, said.end(), b + 2);
}

std::optional<Warning> known_cow_meant(const Turn& turn, const std::vector<NearCow>& near,
                                       const Language& language) {
  for (const NearCow& cow : near) {
    if (cow.was_called_so) return asked_by_her_looks(turn, cow, language);
  }
  for (const NearCow& cow : near) {
    for (const OnFootRow& row : cow.on_her) {
      if (tells_of(turn, row)) return asked(turn, cow, has_on_her(cow, row), language);
    }
  }
  if (!came_for(turn, Reason::recheck)) return std::nullopt;
  for (const NearCow& cow : near) {
    if (!cow.on_her.empty()) return asked(turn, cow, has_on_her(cow, cow.on_her.front()), language);
  }
  for (const NearCow& cow : near) {
    if (cow.has_open_case) return asked(turn, cow, " and came for a recheck", language);
  }
  return std::nullopt;
}

bool is_the_known_cow(const Turn& turn, const std::vector<Warning>& open, const CowSaid& named,
                      const Language& language) {
  const bool says_more = !turn.feet.empty() || !turn.actions.empty() || turn.rest_fine;
  if (says_more || named.known != CowKnown::numbered) return false;
  const std::string right = offered_correction(plain_number(named.number), language);
  return std::any_of(open.begin(), open.end(), [&](const Warning& warning) {
    return warning.rule == asked_by && !warning.answers.empty() && warning.answers.front() == right;
  });
}

}  // namespace evenclaw
