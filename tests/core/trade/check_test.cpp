#include "core/trade/check.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <tuple>

#include "core/base/random.hpp"
#include "core/base/text.hpp"
#include "core/trade/medicine_use.hpp"
#include "tests/core/trade/told_medicine.hpp"
#include "tests/core/trade/told_turns.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

template <class E>
E any_of_words(RandomStream& random) {
  return EnumWords<E>::table[random.below(std::size(EnumWords<E>::table))].value;
}

FootCall any_foot(RandomStream& random, Foot where) {
  FootCall call = with_state(where, any_of_words<FootState>(random));
  const std::uint32_t findings = random.below(3);
  for (std::uint32_t i = 0; i < findings; ++i) {
    Lesion lesion = any_of_words<Lesion>(random);
    if (random.chance(0.2)) lesion = random.chance(0.5) ? Lesion::dd : Lesion::ip;
    Finding finding = found(lesion, any_of_words<Claw>(random), any_of_words<Degree>(random));
    if (finding.lesion == Lesion::dd) finding.stage = any_of_words<DdStage>(random);
    call.findings.push_back(finding);
  }
  if (random.chance(0.2)) {
    const int tenths_mm = 650 + static_cast<int>(random.below(150));
    call.measures.push_back(
        {any_of_words<MeasureKind>(random), any_of_words<Claw>(random), Length{tenths_mm}});
  }
  const std::uint32_t acts = random.below(4);
  for (std::uint32_t i = 0; i < acts; ++i) {
    Action done = act(any_of_words<ActionKind>(random), any_of_words<Claw>(random));
    if (random.chance(0.2)) done.when.days = 1 + static_cast<std::int32_t>(random.below(60));
    call.actions.push_back(done);
  }
  return call;
}

Turn any_turn(RandomStream& random) {
  Turn turn = cow({});
  for (const Foot where : all_feet) {
    if (random.chance(0.7)) turn.feet.push_back(any_foot(random, where));
    if (random.chance(0.2)) turn.lame.add(where);
  }
  if (!turn.lame.empty() || random.chance(0.1)) turn.reason = Reason::lame;
  turn.rest_fine = random.chance(0.3);
  if (random.chance(0.2)) turn.mobility = {MobilityScale::zero_to_three, 3};
  if (random.chance(0.3)) {
    const int days = static_cast<int>(random.below(28));
    turn.actions.push_back(act(ActionKind::watch_her_walk, Claw::none, in_days(days)));
  }
  turn.end = any_of_words<TurnEnd>(random);
  return turn;
}

/// The medicines of a turn with names of the invented list, near them, or of none.
Turn with_any_products(Turn turn, RandomStream& random) {
  constexpr std::string_view names[] = {"plainmix", "slowmix", "strongmix", "plainmx", "tar", ""};
  for (FootCall& call : turn.feet) {
    for (Action& action : call.actions) {
      if (is_medicine_act(action.kind)) action.product = names[random.below(6)];
    }
  }
  return turn;
}

/// With words that a check hears.
Turn with_any_words(Turn turn, RandomStream& random) {
  for (FootCall& call : turn.feet) {
    if (random.chance(0.1)) call.note = "it stinks";
    for (Finding& finding : call.findings) {
      const bool is_doubtful = finding.claw == Claw::outside && random.chance(0.2);
      if (is_doubtful && !is_named_by_words(finding.lesion)) finding.words = "outside?";
      if (finding.lesion != Lesion::sw || random.chance(0.5)) continue;
      finding.claw = Claw::not_called;
      finding.words = "on one side";
    }
  }
  return turn;
}

FootRow without_inside_claw(Foot foot) {
  FootRow row;
  row.foot = foot;
  row.missing = Claw::inside;
  return row;
}

Past any_past(RandomStream& random) {
  Past past;
  const std::uint32_t turns = random.below(4);
  for (std::uint32_t i = 0; i < turns; ++i) {
    past.then(any_turn(random), first_of_november - 90 + static_cast<int>(i) * 30);
  }
  if (turns > 0 && random.chance(0.2)) past.in_same_visit();
  past.known.so_far = {static_cast<int>(random.below(4)), static_cast<int>(random.below(4)),
                       static_cast<int>(random.below(2))};
  return past;
}

Turn any_ordinary_turn(RandomStream& random) {
  Turn turn = cow({});
  for (const Foot where : all_feet) {
    if (random.chance(0.5)) turn.feet.push_back(fine(where));
  }
  turn.rest_fine = random.chance(0.5);
  turn.reason = Reason::routine;
  return turn;
}

}  // namespace

TEST_CASE("each check has a name of its own, a reason and a source") {
  std::set<std::string_view> slugs;
  for (const CheckRule& rule : all_checks()) {
    CAPTURE(rule.slug);
    slugs.insert(rule.slug);
    CHECK_FALSE(rule.why.empty());
    CHECK_FALSE(rule.source.empty());
    CHECK_FALSE(rule.fires_on.empty());
    CHECK_FALSE(rule.silent_on.empty());
  }
  CHECK(slugs.size() == all_checks().size());
}

TEST_CASE("the more urgent warning comes first") {
  Past past;
  past.then(cow({foot(Foot::rh, {}, {act(ActionKind::wrap_on)})}), first_of_november - 6);
  const Turn turn = lame(cow({fine(Foot::lh)}), {Foot::lh});
  CHECK(fired(turn, past.known, first_of_november) ==
        Names{"stop lame-nothing-found LH", "ask still-on-not-mentioned RH"});
}

TEST_CASE("a cow with nothing found, not lame and without a past is never warned about") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 1);
    const Turn turn = any_ordinary_turn(random);
    CHECK(check_turn(turn, {}, first_of_november, random.chance(0.5), english()).empty());
  }
}

TEST_CASE("whatever is said, one rule warns once of a claw") {
  for (std::uint64_t seed = 1; seed <= 600; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 2);
    const Past past = any_past(random);
    std::set<std::tuple<std::string, int, Claw>> seen;
    for (const Warning& warning :
         check_turn(any_turn(random), past.known, first_of_november, true, english())) {
      const int where = warning.foot ? static_cast<int>(*warning.foot) : -1;
      CHECK(seen.emplace(warning.rule, where, warning.claw).second);
    }
  }
}

TEST_CASE("whatever is said, warnings are in the table, short, and can be answered") {
  std::set<std::string> fired_rules;
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 3);
    Past past = any_past(random);
    past.known.medicine = invented_list();
    const Turn said = with_any_words(with_any_products(any_turn(random), random), random);
    const Turn turn = with_medicines(said, past.known.medicine, first_of_november);
    if (random.chance(0.2))
      past.then(turn, first_of_november - 56).then(turn, first_of_november - 28);
    if (random.chance(0.2)) past.known.rows.feet.push_back(without_inside_claw(Foot::lh));
    if (random.chance(0.2)) past.known.in_crush = TimeInCrush{1800, 20};
    for (const Warning& warning :
         check_turn(turn, past.known, first_of_november, true, english())) {
      CAPTURE(warning.words);
      const auto rules = all_checks();
      const auto rule = std::find_if(rules.begin(), rules.end(), [&](const CheckRule& row) {
        return row.slug == warning.rule && row.rank == warning.rank;
      });
      CHECK(rule != rules.end());
      CHECK_FALSE(warning.words.empty());
      CHECK(character_count(warning.words) <= 90);
      CHECK(warning.answers.empty() == (warning.rank == Rank::note));  // a note asks nothing
      fired_rules.insert(warning.rule);
    }
  }
  for (const CheckRule& rule : all_checks()) {
    CAPTURE(rule.slug);
    CHECK(fired_rules.count(std::string(rule.slug)) == 1);
  }
}

TEST_CASE("what was said so far never gives a stop that the end of the turn takes back") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    CAPTURE(seed);
    RandomStream random(seed, 4);
    const Past past = any_past(random);
    const Turn turn = any_turn(random);
    const Names at_end = fired(turn, past.known, first_of_november, true);
    for (const std::string& name : fired(turn, past.known, first_of_november, false)) {
      if (name.substr(0, 4) != "stop") continue;
      CHECK(std::find(at_end.begin(), at_end.end(), name) != at_end.end());
    }
  }
}
