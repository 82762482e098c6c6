#include "core/trade/call_line/line_builder.hpp"

#include <cstddef>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/trade/call_line/cow_number.hpp"
#include "core/trade/call_line/possible.hpp"

namespace evenclaw {

namespace {

bool is_finding(const TurnClause& item) {
  return std::holds_alternative<FindingSaid>(item);
}

std::string shown(std::string_view said) {
  return quoted(said);
}

TurnClause taken_back(const TurnClause& item) {
  if (const auto* said = std::get_if<FindingSaid>(&item)) return FindingTakenBack{said->finding};
  if (const auto* said = std::get_if<ActionSaid>(&item)) return ActTakenBack{said->action};
  if (const auto* said = std::get_if<MeasureSaid>(&item)) {
    return MeasureTakenBack{said->measure.kind, said->measure.claw, std::nullopt};
  }
  return item;
}

}  // namespace

void LineBuilder::add(Clause clause, const Term& from) {
  auto* foot = last<FootCorrected>();
  const bool names_it_right = foot != nullptr && since_open_ == Separator::none &&
                              std::holds_alternative<TurnClause>(clause);
  if (names_it_right) foot->slip = FootSlip::name;
  PlacedClause placed{std::move(clause), from};
  clauses_.push_back(std::move(placed));
}

void LineBuilder::open(TurnClause item, const Term& from) {
  if (takes_back_) item = taken_back(item);
  takes_back_ = false;
  const bool instead = std::exchange(finds_instead_, false);
  if (auto* said = std::get_if<FindingSaid>(&item)) said->instead = instead;
  add(std::move(item), from);
  open_ = clauses_.size() - 1;
  since_open_ = Separator::none;
}

void LineBuilder::close() {
  open_.reset();
}

void LineBuilder::refuse(Refusal refusal, const Term& at) {
  PlacedFault fault{std::move(refusal), at};
  faults_.push_back(std::move(fault));
}

void LineBuilder::refuse_if(std::optional<Refusal> refusal, const Term& at) {
  if (refusal) refuse(*std::move(refusal), at);
}

void LineBuilder::join_what_is_instead() {
  close();
  const auto finding_at = [this](std::size_t at) {
    auto* clause = std::get_if<TurnClause>(&clauses_[at].clause);
    return clause == nullptr ? nullptr : std::get_if<FindingSaid>(clause);
  };
  for (std::size_t at = 0; at + 1 < clauses_.size();) {
    FindingSaid* first = finding_at(at);
    const FindingSaid* next = finding_at(at + 1);
    const bool is_joined = first != nullptr && first->instead && next != nullptr && !next->instead;
    if (!is_joined) {
      ++at;
      continue;
    }
    first->also.push_back(next->finding);
    clauses_.erase(clauses_.begin() + static_cast<std::ptrdiff_t>(at) + 1);
  }
}

void LineBuilder::say_only(const Term&) {
  says_only_ = true;
}

void LineBuilder::lose_thread() {
  close();
  loose_.clear();
  loose_is_glued_ = false;
  before_paused_.reset();
  takes_back_ = false;
  finds_instead_ = false;
  says_only_ = false;
}

TurnClause* LineBuilder::open_item() {
  return open_ ? std::get_if<TurnClause>(&clauses_[*open_].clause) : nullptr;
}

void LineBuilder::check_cow_number(const Term& number) {
  refuse_if(why_no_cow_number(number.said, digits_of(number)), number);
}

void LineBuilder::name_cow(const Term& number) {
  check_cow_number(number);
  CowNamed named;
  named.cow.number = std::string(digits_of(number));
  add(std::move(named), number);
}

void LineBuilder::name_unnumbered(const Term& words) {
  CowNamed named;
  named.cow.known = CowKnown::unnumbered;
  add(std::move(named), words);
}

CowSaid* LineBuilder::cow_being_named() {
  if (clauses_.empty()) return nullptr;
  if (auto* named = std::get_if<CowNamed>(&clauses_.back().clause)) return &named->cow;
  auto* corrected = last<CowCorrected>();
  return corrected == nullptr ? nullptr : &corrected->cow;
}

void LineBuilder::add_looks(const Term& text) {
  if (CowSaid* cow = cow_being_named()) cow->looks = words_in(text);
}

void LineBuilder::doubt_cow(const Term&) {
  if (CowSaid* cow = cow_being_named()) cow->known = CowKnown::doubtful;
}

void LineBuilder::add_alternative(const Term& number) {
  check_cow_number(number);
  CowSaid* cow = cow_being_named();
  if (cow == nullptr) return;
  cow->known = CowKnown::doubtful;
  cow->alternatives.emplace_back(digits_of(number));
}

void LineBuilder::say_why(ReasonSaid why, const Term& from) {
  close();
  if (std::exchange(takes_back_, false)) {
    add(TurnClause{ReasonTakenBack{why.reason, why.lame, std::move(why.words)}}, from);
  } else {
    add(TurnClause{std::move(why)}, from);
  }
}

void LineBuilder::say_lame(const Term& word) {
  say_why({Reason::lame, {}, {}}, word);
}

// "Lame 3 of 5 RF": the score may stand between.
void LineBuilder::add_lame_feet(const Term& feet) {
  const bool is_scored = last<MobilityTold>() != nullptr && clauses_.size() > 1;
  auto* clause = std::get_if<TurnClause>(&clauses_[clauses_.size() - (is_scored ? 2 : 1)].clause);
  auto* said = clause == nullptr ? nullptr : std::get_if<ReasonSaid>(clause);
  auto* back = clause == nullptr ? nullptr : std::get_if<ReasonTakenBack>(clause);
  if (said != nullptr) said->lame.add(feet_in(feet));
  if (back != nullptr) back->lame.add(feet_in(feet));
  if (said != nullptr || back != nullptr) return;
  refuse(not_understood("it is unclear what is said of " + shown(feet.said),
                        "put ; before it and say what holds of that foot"),
         feet);
}

// "No, lame LH": she was said to walk sound.
void LineBuilder::correct_to_lame(const Term& word) {
  ReasonSaid said{Reason::lame, {}, {}, true};
  say_why(std::move(said), word);
}

void LineBuilder::deny(const Term& words) {
  close();
  add(TurnClause{NoteSaid{std::string(words.said), words.as<Denied>()}}, words);
}

// "No, not lame", "no, vet not needed": it was said before.
void LineBuilder::take_back_denied(const Term& words) {
  begin_taking_back(words);
  switch (words.as<Denied>()) {
    case Denied::lame:
      return say_lame(words);
    case Denied::vet:
      return open(new_act(ActionKind::vet), words);
  }
}

void LineBuilder::say_reason(const Term& reason) {
  say_why({reason.as<Reason>(), {}, {}}, reason);
}

void LineBuilder::say_other_reason(const Term& text) {
  say_why({Reason::other, {}, words_in(text)}, text);
}

void LineBuilder::name_feet(const Term& feet) {
  close();
  add(TurnClause{FeetNamed{feet_in(feet)}}, feet);
}

// "Backs, RH DD": one of the feet that were named just before is the one spoken of.
void LineBuilder::name_more_feet(const Term& feet) {
  auto* named = last<FeetNamed>();
  if (named == nullptr) return;
  FootSet all = named->feet;
  all.add(feet_in(feet));
  if (all == named->feet && all != feet_in(feet)) return name_feet(feet);
  named->feet = all;
}

// "Just the backs": the others stayed down.
void LineBuilder::name_only_feet(const Term& feet) {
  close();
  const FootSet lifted = feet_in(feet);
  FootSet down;
  for (const Foot foot : all_feet) {
    if (!lifted.has(foot)) down.add(foot);
  }
  if (!down.empty()) {
    add(TurnClause{FeetNamed{down}}, feet);
    add(TurnClause{FootStateSaid{FootState::not_lifted}}, feet);
  }
  add(TurnClause{FeetNamed{lifted}}, feet);
}

void LineBuilder::name_whole_cow(const Term& words) {
  close();
  add(TurnClause{FeetNamed{}}, words);
}

// "Slurry heel on both": of the feet named in this line, when they are two.
void LineBuilder::check_both(const Term& word) {
  constexpr std::size_t two = 2;
  const FeetNamed* named = nullptr;
  for (const PlacedClause& placed : clauses_) {
    const auto* clause = std::get_if<TurnClause>(&placed.clause);
    const auto* feet = clause == nullptr ? nullptr : std::get_if<FeetNamed>(clause);
    if (feet != nullptr) named = feet;
  }
  if (named != nullptr && named->feet.count() == two) return;
  refuse(not_understood("it is unclear on which feet that is",
                        "say the feet first: \"{both hinds}\" or \"{both fronts}\""),
         word);
}

// "Both wrapped".
void LineBuilder::name_both(const Term& word) {
  close();
  add(TurnClause{BothFeetNamed{}}, word);
}

// "Spray both": said behind the act, and of it.
void LineBuilder::done_on_both(const Term& word) {
  PlacedClause both{TurnClause{BothFeetNamed{}}, word};
  clauses_.insert(clauses_.end() - 1, std::move(both));
  open_ = clauses_.size() - 1;
}

// "Both opened": on two feet, or on the two claws of one.
void LineBuilder::open_on_both(const Term& act) {
  if (auto* both = last<BothFeetNamed>()) both->may_be_claws = true;
  open_act(act);
}

// "No, not bad": how bad it is, nobody said.
void LineBuilder::take_back_detail(const Term& detail) {
  takes_back_ = false;
  correct_detail(detail);
  if (auto* said = last<DetailCorrected>()) said->takes_back = true;
}

// "bruise white line heel": a bruise in the white line, or two findings?
bool LineBuilder::could_be_its_place(const Term& lesion) {
  const TurnClause* item = open_item();
  if (item == nullptr || !is_finding(*item) || !loose_.empty()) return false;
  const Finding& before = std::get<FindingSaid>(*item).finding;
  const bool awaits_place = before.place == Place::not_called && is_of_a_claw(before.lesion) &&
                            !facts_of(before.lesion).nowhere_else;
  return lesion.as<Lesion>() == Lesion::wl && lesion.token_count > 1 && awaits_place;
}

void LineBuilder::open_finding(const Term& lesion) {
  if (since_open_ == Separator::none && could_be_its_place(lesion)) {
    refuse(not_understood("it is unclear whether the white line is a place or a lesion of its own",
                          "put ; between two lesions, or say \"{white line at the heel}\""),
           lesion);
  }
  const auto paused = std::exchange(before_paused_, std::nullopt);
  const bool is_claw = !loose_.empty() && loose_.front().kind == TermKind::claw;
  if (is_claw && paused == Separator::weak) refuse_claw_between(lesion);
  FindingSaid finding = new_finding(lesion.as<Lesion>());
  TurnClause item = finding;
  if (loose_is_glued_ && awaits_claw(item)) refuse_unclear_claw();
  if (loose_is_glued_) {
    take_detail(loose_.front());
    loose_.erase(loose_.begin());
  }
  open(std::move(item), lesion);
  add_loose_to(open_item());
  said_of_finding_ = lesion.said;
}

// "Sole ulcer outside?": the finding is kept as called, and that it is doubtful beside it.
void LineBuilder::doubt_finding(const Term& mark) {
  const std::string_view doubtful = said_of_finding_;
  add_loose_to(open_item());
  TurnClause* item = open_item();
  auto* said = item == nullptr ? nullptr : std::get_if<FindingSaid>(item);
  if (said == nullptr || is_named_by_words(said->finding.lesion)) {
    refuse(not_understood("it is unclear what is doubtful",
                          "a question mark stands behind the number of a cow, or behind the lesion "
                          "or what is said of it: {LH sole ulcer outside}?"),
           mark);
    return;
  }
  std::string& words = said->finding.words;
  words += (words.empty() ? "" : ", ") + std::string(doubtful) + "?";
}

void LineBuilder::open_white_line_at(const Term& place) {
  Term lesion = place;
  lesion.kind = TermKind::lesion;
  lesion.value = static_cast<int>(Lesion::wl);
  if (since_open_ == Separator::weak && could_be_its_place(lesion)) {
    refuse(not_understood("it is unclear whether the white line is a place or a lesion of its own",
                          "put ; between two lesions, or leave out the comma"),
           place);
  }
  since_open_ = Separator::strong;
  open_finding(lesion);
  take_detail(place);
}

void LineBuilder::say_foot_state(const Term& state) {
  close();
  add(TurnClause{FootStateSaid{state.as<FootState>()}}, state);
}

// "Lame RF and nothing found": joined so closely, it is said of the leg she is lame on.
void LineBuilder::say_state_of_lame_feet(const Term& state) {
  const auto* said = last<ReasonSaid>();
  if (said == nullptr) {
    refuse(not_understood("it is unclear of which feet " + shown(state.said) + " is said",
                          "say the foot before it"),
           state);
    return;
  }
  add(TurnClause{FeetNamed{said->lame}}, state);
  say_foot_state(state);
}

void LineBuilder::say_trimmed(const Term& trimmed) {
  add(TurnClause{TrimmedSaid{trimmed.as<Trimmed>()}}, trimmed);
}

void LineBuilder::say_rest_fine(const Term& words) {
  close();
  add(TurnClause{RestFineSaid{}}, words);
}

void LineBuilder::say_walks_sound(const Term& words) {
  close();
  add(TurnClause{WalksSoundSaid{}}, words);
}

void LineBuilder::mark_weak(const Term&) {
  if (since_open_ == Separator::none) since_open_ = Separator::weak;
}

void LineBuilder::mark_strong(const Term&) {
  since_open_ = Separator::strong;
}

}  // namespace evenclaw
