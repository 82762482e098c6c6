// Details that stand before their lesion or act, or behind a separator: whose they are.
#include <algorithm>
#include <iterator>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

void LineBuilder::hold_detail(const Term& detail) {
  said_of_finding_ = detail.said;
  loose_.push_back(detail);
}

void LineBuilder::hold_claw_after_finding(const Term& claw) {
  said_of_finding_ = claw.said;
  const TurnClause* item = open_item();
  loose_is_glued_ = item != nullptr && awaits_claw(*item);
  loose_.push_back(claw);
}

void LineBuilder::take_detail(const Term& detail) {
  said_of_finding_ = detail.said;
  if (TurnClause* item = open_item()) {
    refuse_if(add_detail(*item, detail), detail);
    return;
  }
  const bool is_compared = detail.kind == TermKind::compared;
  refuse(not_understood(
             quoted(detail.said) + " is said of nothing here",
             is_compared ? "say it behind the lesion: \"{sole ulcer}, " + std::string(detail.said) +
                               "\"; all that was found there last: \"{same as last time}\""
                         : "name the lesion or the act it belongs to, foot first: "
                           "\"{LH outside sole ulcer}\""),
         detail);
}

// "LH raw", "LH outside heel": of what was found there before. False when they are no such details.
bool LineBuilder::say_details_alone() {
  DetailCorrected said;
  said.completes = true;
  for (const Term& detail : loose_) {
    const bool is_first = (detail.kind == TermKind::claw && said.claw == Claw::not_called) ||
                          (detail.kind == TermKind::place && said.place == Place::not_called) ||
                          (detail.kind == TermKind::degree && said.degree == Degree::not_called) ||
                          (detail.kind == TermKind::stage && said.stage == DdStage::not_called);
    if (!is_first) return false;
    if (detail.kind == TermKind::claw) said.claw = detail.as<Claw>();
    if (detail.kind == TermKind::place) said.place = detail.as<Place>();
    if (detail.kind == TermKind::degree) said.degree = detail.as<Degree>();
    if (detail.kind == TermKind::stage) said.stage = detail.as<DdStage>();
  }
  add(TurnClause{said}, loose_.front());
  loose_.clear();
  loose_is_glued_ = false;
  return true;
}

void LineBuilder::add_loose_to(TurnClause* item) {
  if (item == nullptr && !loose_.empty() && say_details_alone()) return;
  for (const Term& detail : loose_) {
    if (item == nullptr) {
      take_detail(detail);
    } else {
      refuse_if(add_detail(*item, detail), detail);
    }
  }
  loose_.clear();
  loose_is_glued_ = false;
  before_paused_.reset();
}

// What waits behind an act is of the lesion that follows.
void LineBuilder::settle_loose(const Term& next) {
  constexpr TermKind lesions[] = {TermKind::lesion, TermKind::other_lesion,
                                  TermKind::white_line_place};
  const bool opens_finding =
      std::find(std::begin(lesions), std::end(lesions), next.kind) != std::end(lesions);
  if (before_paused_ && opens_finding) return;
  add_loose_to(open_item());
}

// "Block; outside, sole ulcer": what stands between an act and a comma waits for what follows.
// Behind a semicolon it leads the finding; parted by the same from both it could be of either, and
// before a semicolon it is of the act.
bool LineBuilder::pause_behind_act(Separator behind) {
  const TurnClause* item = open_item();
  const bool is_behind_act = item != nullptr && std::holds_alternative<ActionSaid>(*item) &&
                             since_open_ != Separator::none && since_open_ >= behind;
  if (!is_behind_act) return false;
  const bool leads = !awaits_claw(*item) || since_open_ > behind;
  before_paused_ = leads ? Separator::strong : Separator::weak;
  return true;
}

// "LH outside, white line abscess": where nothing stands before it the detail waits on.
void LineBuilder::pause_loose(const Term& comma) {
  if (!pause_behind_act(Separator::weak) && open_item() != nullptr) add_loose_to(open_item());
  mark_weak(comma);
}

void LineBuilder::pause_loose_longer(const Term& separator) {
  if (!pause_behind_act(Separator::strong)) add_loose_to(open_item());
  mark_strong(separator);
}

void LineBuilder::refuse_unclear_claw() {
  const Term claw = loose_.front();
  refuse(not_understood(quoted(claw.said) + " could belong to what stands before or behind it",
                        "put a comma before or behind " + quoted(claw.said)),
         claw);
  lose_thread();
}

void LineBuilder::refuse_claw_between(const Term& lesion) {
  const std::string claw(loose_.front().said);
  const std::string act(clauses_[*open_].from.said);
  const std::string found(lesion.said);
  refuse(not_understood(quoted(claw) + " could be of " + quoted(act) + " or of " + quoted(found),
                        "say \"" + act + ' ' + claw + "; " + found + "\" or \"" + act + "; " +
                            claw + ' ' + found + "\""),
         loose_.front());
  lose_thread();
}

// Acts and measures take the claw said just before them; other details go to what was before.
void LineBuilder::open_with_claw(TurnClause item, const Term& from) {
  std::optional<Term> claw;
  if (before_paused_) add_loose_to(open_item());
  const bool has_loose_claw = !loose_.empty() && loose_.back().kind == TermKind::claw;
  if (has_loose_claw && awaits_claw(item)) {
    const bool is_glued = loose_is_glued_ && loose_.size() == 1;
    const bool has_its_own = claw_stands_behind_ && std::holds_alternative<ActionSaid>(item);
    if (is_glued && !has_its_own) {
      refuse_unclear_claw();
    } else if (is_glued) {
      // "LH SU outside block inside": each has its own.
    } else {
      claw = loose_.back();
      loose_.pop_back();
    }
  }
  add_loose_to(open_item());
  open(std::move(item), from);
  if (claw) take_detail(*claw);
}

}  // namespace evenclaw
