#include "core/trade/call_line/foot_behind.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

namespace {

bool is_one_of(TermKind kind, const TermKind* begin, const TermKind* end) {
  return std::find(begin, end, kind) != end;
}

// What can be told of a foot on its own; the words it is told again with in a remedy.
constexpr TermKind main_words[] = {
    TermKind::lesion,    TermKind::other_lesion, TermKind::white_line_place, TermKind::foot_state,
    TermKind::trimmed,   TermKind::block_act,    TermKind::wrap_act,         TermKind::opened_act,
    TermKind::plain_act, TermKind::block_of,     TermKind::product_act,      TermKind::see_again,
    TermKind::measure,   TermKind::nicked,       TermKind::as_last_time,     TermKind::handling};

constexpr TermKind details[] = {
    TermKind::claw,       TermKind::place,       TermKind::white_line_side,
    TermKind::zone,       TermKind::degree,      TermKind::stage,
    TermKind::quoted,     TermKind::off,         TermKind::nothing_after_all,
    TermKind::dd_in_it,   TermKind::material,    TermKind::by_whom,
    TermKind::correction, TermKind::directed_by, TermKind::milking,
    TermKind::compared,   TermKind::one_side,    TermKind::stump_known,
    TermKind::other_claw, TermKind::blood};

// Of her, not of a foot, when a foot stands just before.
bool is_of_the_cow(const Term& term) {
  if (term.kind == TermKind::rest_fine) return true;
  const bool is_act = term.kind == TermKind::plain_act || term.kind == TermKind::product_act ||
                      term.kind == TermKind::withheld_act || term.kind == TermKind::handling;
  return is_act && is_always_of_the_cow(term.as<ActionKind>());
}

bool is_main_word(TermKind kind) {
  return is_one_of(kind, std::begin(main_words), std::end(main_words));
}

bool is_detail(TermKind kind) {
  return is_one_of(kind, std::begin(details), std::end(details));
}

bool may_end_her_turn(TermKind kind) {
  return kind == TermKind::turn_end || kind == TermKind::note;
}

std::string_view from_to(std::string_view first, std::string_view last) {
  return {first.data(), static_cast<std::size_t>(last.data() + last.size() - first.data())};
}

bool are_all_in(const FootSet& feet, FootSet others) {
  others.add(feet);
  return !feet.empty() && others.count() == feet.count();
}

}  // namespace

std::optional<PlacedFault> FootBehind::take(const Step& step, const Term& term) {
  std::optional<PlacedFault> found;
  if (step.act == &LineBuilder::name_feet) {
    found = give_up();
    begin_waiting(term);
    return found;
  }
  if (waiting_) found = go_on_waiting(step, term);
  if (!waiting_) note_said(step, term);
  return found;
}

std::optional<PlacedFault> FootBehind::at_end() const {
  if (!waiting_) return std::nullopt;
  return fault();
}

void FootBehind::begin_waiting(const Term& feet) {
  const bool is_lame_foot_again = lame_ && are_all_in(lame_feet_, feet_in(feet));
  if (said_.empty() || gap_ == Gap::hard || is_lame_foot_again) return;
  Waiting waiting;
  waiting.feet = feet;
  waiting.is_glued = gap_ == Gap::none;
  waiting_ = waiting;
}

std::optional<PlacedFault> FootBehind::go_on_waiting(const Step& step, const Term& term) {
  if (step.act == &LineBuilder::name_more_feet) {
    Term& feet = waiting_->feet;
    feet.said = from_to(feet.said, term.said);
    feet.token_count = term.first_token + term.token_count - feet.first_token;
    waiting_->and_said = false;
    return std::nullopt;
  }
  if (term.kind == TermKind::colon) return std::nullopt;
  if (term.kind == TermKind::comma || term.kind == TermKind::strong) {
    return is_in_doubt() ? give_up() : std::nullopt;
  }
  if (term.kind == TermKind::conjunction) {
    waiting_->and_said = true;
    return std::nullopt;
  }
  const bool is_said_of_it = (is_main_word(term.kind) && !is_of_the_cow(term)) ||
                             is_detail(term.kind) ||
                             (may_end_her_turn(term.kind) && !waiting_->is_glued);
  if (!is_said_of_it || (waiting_->and_said && is_in_doubt())) return give_up();
  waiting_.reset();
  return std::nullopt;
}

std::optional<PlacedFault> FootBehind::give_up() {
  if (!waiting_) return std::nullopt;
  PlacedFault found = fault();
  waiting_.reset();
  return found;
}

void FootBehind::note_said(const Step& step, const Term& term) {
  switch (term.kind) {
    case TermKind::comma:
    case TermKind::colon:
    case TermKind::conjunction:
      if (gap_ == Gap::none) gap_ = Gap::weak;
      return;
    case TermKind::strong:
      gap_ = Gap::hard;
      return;
    default:
      gap_ = Gap::none;
  }
  if (term.kind == TermKind::lame) {
    lame_word_ = term.said;
    lame_feet_ = {};
  } else if (step.act == &LineBuilder::add_lame_feet) {
    said_ = from_to(lame_word_, term.said);
    lame_ = true;
    lame_feet_.add(feet_in(term));
  } else if (is_of_the_cow(term)) {
    said_ = {};
    lame_ = false;
  } else if (is_main_word(term.kind) || (said_.empty() && is_detail(term.kind))) {
    said_ = term.said;
    lame_ = false;
  }
}

PlacedFault FootBehind::fault() const {
  const std::string feet(waiting_->feet.said);
  const std::string said(said_);
  Refusal refusal =
      lame_ ? not_understood("is \"" + feet + "\" lame too, or is something to be said of it?",
                             "say: " + said + " {and} " + feet + "; or put ; before " + feet +
                                 " and say what was found")
            : not_understood("is \"" + feet + "\" meant for what stands before it?",
                             "say the foot first: " + feet + " " + said + "; or put ; before " +
                                 feet + " when more is to be said of it");
  return {std::move(refusal), waiting_->feet};
}

}  // namespace evenclaw
