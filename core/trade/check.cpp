#include "core/trade/check.hpp"

#include <algorithm>
#include <array>

#include "core/trade/checks/situation.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view still_on_slug = "still-on-not-mentioned";

constexpr std::array rules = {
    CheckRule{"block-on-painful-claw", Rank::stop,
              "A block puts her whole weight on that claw; it belongs on the good one.",
              "block on the sound claw only: Cattle Lameness claw trimming group, Cramer 2015 "
              "(University of Minnesota)",
              "412\nLH outside sole ulcer, plain; block on outside",
              "412\nLH outside sole ulcer, plain; block on inside"},
    CheckRule{"both-claws-blocked", Rank::stop,
              "A block rests the other claw; with one on both neither is rested.",
              "common practice, no source",
              "412\nLH outside sole ulcer; block on inside\n---\n412\nLH inside white line "
              "abscess; block on outside",
              "412\nLH outside sole ulcer; block on inside\n---\n412\nLH outside sole ulcer; "
              "block again inside"},
    CheckRule{"block-side-not-called", Rank::ask,
              "Nobody can check or take off a block whose side is not known.",
              "common practice, no source", "412\nLH outside sole ulcer; block on",
              "412\nLH outside sole ulcer; block on inside; block stacked"},
    CheckRule{"lame-nothing-found", Rank::stop,
              "A lame cow has a cause; when the foot shows none, it is deeper or higher up.",
              "common practice, no source; a cow lame for weeks seldom gets sound again: Thomas "
              "2016, Vet Rec 178:116",
              "412 lame LH\nLH nothing found", "412 lame LH\nLH nothing found; vet"},
    CheckRule{"side-or-claw-swapped", Rank::ask,
              "Left for right and inside for outside are the slips most easily made.",
              "common practice, no source",
              "412\nLH outside sole ulcer\n---\n412\nLH inside sole ulcer",
              "412\nLH outside sole ulcer\n---\n412\nLH outside sole ulcer\nRH outside sole ulcer"},
    CheckRule{
        "called-in-two-ways", Rank::ask,
        "One lesion has one stage and one degree; the later word may mend the first or add to "
        "it.",
        "common practice, no source", "412\nRH DD raw behind; DD chronic behind",
        "412\nRH DD raw behind; DD chronic in front"},
    CheckRule{still_on_slug, Rank::ask,
              "A forgotten wrap cuts in, a forgotten block tips her back on the heel.",
              "wraps off after 3 to 7 days: derived from Fiedler 2015; a block left on too long "
              "is a listed error: AHDB",
              "412\nLH DD raw behind; wrap on\n---\n412\nrest fine",
              "412\nLH DD raw behind; wrap on\n---\n412\nLH wrap taken off; nothing found"}};

using Check = std::vector<Firing> (*)(const Situation&);

// In the order of the table above. It decides between two of one rank that share a cause: a wrap
// told of on the wrong foot is a slip, not a wrap forgotten.
constexpr std::array<Check, rules.size()> checks = {
    block_on_painful_claw, both_claws_blocked, block_side_not_called, lame_nothing_found,
    side_or_claw_swapped,  called_in_two_ways, still_on_not_mentioned};

std::vector<Firing> all_firings(const Situation& situation) {
  std::vector<Firing> firings;
  for (std::size_t i = 0; i < rules.size(); ++i) {
    for (Firing& firing : checks[i](situation)) {
      firing.warning.rule = rules[i].slug;
      firing.warning.rank = rules[i].rank;
      firings.push_back(std::move(firing));
    }
  }
  return firings;
}

bool same_place(const Warning& a, const Warning& b) {
  return a.rule == b.rule && a.foot == b.foot && a.claw == b.claw;
}

bool share_cause(const Firing& a, const Firing& b) {
  return std::any_of(a.causes.begin(), a.causes.end(), [&](const Cause& cause) {
    return std::find(b.causes.begin(), b.causes.end(), cause) != b.causes.end();
  });
}

bool is_covered_by(const Firing& kept, const Firing& other) {
  if (kept.warning.rule == other.warning.rule) return same_place(kept.warning, other.warning);
  return share_cause(kept, other);
}

}  // namespace

std::span<const CheckRule> all_checks() {
  return rules;
}

std::vector<Warning> check_turn(const Turn& turn, const CowPast& past, Day today, bool finished,
                                const Language& language) {
  std::vector<Firing> firings = all_firings({turn, past, today, finished, language});
  std::stable_sort(firings.begin(), firings.end(), [](const Firing& a, const Firing& b) {
    return a.warning.rank > b.warning.rank;
  });
  std::vector<Firing> kept;
  std::vector<Warning> warnings;
  for (const Firing& firing : firings) {
    const bool covered = std::any_of(kept.begin(), kept.end(), [&](const Firing& higher) {
      return is_covered_by(higher, firing);
    });
    if (covered) continue;
    kept.push_back(firing);
    warnings.push_back(firing.warning);
  }
  return warnings;
}

/// A wrap has no claw, a block has one, be it not called.
std::optional<Fixture> fixture_asked_about(const Warning& warning) {
  if (warning.rule != still_on_slug) return std::nullopt;
  return warning.claw == Claw::none ? Fixture::wrap : Fixture::block;
}

}  // namespace evenclaw
