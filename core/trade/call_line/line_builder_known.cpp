// The acts of LineBuilder for what is said with what is known of her in mind, and of a nick.
#include <utility>

#include "core/base/quotation.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

KnownOfHer known_by(TermKind kind) {
  if (kind == TermKind::stump_known) return KnownOfHer::stump;
  return kind == TermKind::other_claw ? KnownOfHer::other_claw : KnownOfHer::as_last_time;
}

bool is_nick(const TurnClause* item) {
  const auto* said = item == nullptr ? nullptr : std::get_if<FindingSaid>(item);
  return said != nullptr && said->finding.lesion == Lesion::blood_drawn;
}

/// "It" is what was said to be still on.
ActionSaid* left_on(TurnClause* item) {
  auto* said = item == nullptr ? nullptr : std::get_if<ActionSaid>(item);
  const auto fixture = said == nullptr ? std::nullopt : fixture_said(said->action.kind);
  return fixture && fixture->step == FixtureStep::left_on ? said : nullptr;
}

}  // namespace

void LineBuilder::name_other_foot(const Term& words) {
  close();
  add(TurnClause{OtherFootNamed{feet_of(words.as<FeetGroup>())}}, words);
}

void LineBuilder::begin_nick(const Term& word) {
  nick_word_ = word;
}

// "I nicked her other back": the foot stands behind it.
void LineBuilder::nick_foot(const Term& foot) {
  if (foot.kind == TermKind::other_foot) {
    name_other_foot(foot);
  } else {
    name_feet(foot);
  }
  open_nick(foot);
}

void LineBuilder::open_nick(const Term&) {
  open(new_finding(Lesion::blood_drawn), nick_word_);
}

// "Bit of blood at the toe": of the nick said before; by itself it could be in the horn.
void LineBuilder::say_blood(const Term& word) {
  if (is_nick(open_item())) return add_loose_to(open_item());
  refuse(not_understood(quoted(word.said) + " could mean more than one thing",
                        "which is it: {bruise}, {blood drawn}, or {bleeding does not stop}?"),
         word);
  open(new_finding(Lesion::sh), word);  // of which the rest is said, whichever it is
  add_loose_to(open_item());
}

void LineBuilder::say_known(const Term& words) {
  close();
  const KnownOfHer what = known_by(words.kind);
  add(TurnClause{KnownSaid{what, std::string(words.said)}}, words);
}

void LineBuilder::say_still_on_her(const Term& words) {
  const ActionSaid act = new_act(words.as<ActionKind>());
  const bool is_wrap = fixture_said(act.action.kind)->fixture == Fixture::wrap;
  const KnownOfHer what = is_wrap ? KnownOfHer::wrapped_foot : KnownOfHer::blocked_foot;
  add(TurnClause{KnownSaid{what, std::string(words.said)}}, words);
  open(act, words);
}

void LineBuilder::say_off_with_it(const Term& words) {
  ActionSaid* said = left_on(open_item());
  if (said == nullptr) {
    refuse(not_understood("nothing was said just before that could come off",
                          "say what came off: \"{wrap taken off}\", \"{block taken off}\""),
           words);
    return;
  }
  const bool is_wrap = said->action.kind == ActionKind::wrap_still_on;
  said->action.kind = is_wrap ? ActionKind::wrap_off : ActionKind::block_off;
}

}  // namespace evenclaw
