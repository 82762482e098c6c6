// The acts of LineBuilder that concern times: when something comes off or is to happen, and a time
// that is put right.
#include <algorithm>

#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/line_builder.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t most_days_digits = 5;

}  // namespace

void LineBuilder::expect_off(const Term& word) {
  const TurnClause* item = open_item();
  if (item != nullptr && awaits_off(*item)) return;
  refuse(not_understood("nothing was said just before that could come off",
                        "say what comes off: \"{wrap on, off Thu}\", \"{wrap taken off}\""),
         word);
  close();
}

// Wraps are taken off by the farmer unless somebody says otherwise; blocks are not.
void LineBuilder::expect_farmer_off(const Term& words) {
  const TurnClause* item = open_item();
  const auto* said = item == nullptr ? nullptr : std::get_if<ActionSaid>(item);
  const bool is_wrap = said != nullptr && facts_of(said->action.kind).said_as == TermKind::wrap_act;
  if (is_wrap && awaits_off(*item)) return;
  refuse(not_understood("only a wrap that was put on is left to the farmer to take off",
                        "say it behind the wrap: \"{wrap on, off Thu}\""),
         words);
  close();
}

void LineBuilder::keep_number(const Term& number) {
  number_ = number;
}

// "Wrap, block outside, off Thu": within days it is the wrap that comes off, and nobody said so.
bool LineBuilder::could_be_of_the_wrap(const TimeSaid& when) {
  constexpr int soonest_of_a_block = 14;
  const TurnClause* item = open_item();
  const auto* block = item == nullptr ? nullptr : std::get_if<ActionSaid>(item);
  const bool is_soon = when.weekday || (when.days && *when.days < soonest_of_a_block);
  if (block == nullptr || !is_soon || *open_ == 0) return false;
  const auto* before = std::get_if<TurnClause>(&clauses_[*open_ - 1].clause);
  const auto* wrap = before == nullptr ? nullptr : std::get_if<ActionSaid>(before);
  return wrap != nullptr && wrap->action.kind == ActionKind::wrap_on && awaits_off(*before) &&
         facts_of(block->action.kind).said_as == TermKind::block_act && awaits_off(*item);
}

// Without an open act its refusal has been told already.
void LineBuilder::set_time(const TimeSaid& when, const Term& at) {
  if (could_be_of_the_wrap(when)) {
    refuse(not_understood("it is unclear whether the wrap or the block comes off then",
                          "say it behind the one that is meant: \"{wrap on, off Thu}\""),
           at);
    return;
  }
  if (TurnClause* item = open_item()) refuse_if(add_time(*item, when), at);
}

void LineBuilder::set_days(int days_each, const Term& unit) {
  const std::optional<int> number = whole_number(digits_of(number_), most_days_digits);
  if (!number) {
    refuse(not_understood("\"" + std::string(number_.said) + "\" is not a number of days",
                          "give whole days or weeks"),
           number_);
    return;
  }
  TimeSaid when;
  when.days = *number * days_each;
  Term from = number_;
  from.token_count = unit.first_token + unit.token_count - number_.first_token;
  set_time(when, from);
}

// Hours, 24 of them a day, and milkings, two a day: common practice, no source.
void LineBuilder::set_parts_of_days(const Term& unit) {
  constexpr std::size_t most_parts_digits = 4;
  constexpr int milkings_a_day = 2;
  const int number = whole_number(digits_of(number_), most_parts_digits).value_or(0);
  const int days = (number + unit.value - 1) / unit.value;
  Term from = number_;
  from.token_count = unit.first_token + unit.token_count - number_.first_token;
  const TurnClause* item = open_item();
  const auto* act = item == nullptr ? nullptr : std::get_if<ActionSaid>(item);
  const auto* right = item == nullptr ? nullptr : std::get_if<TimeCorrected>(item);
  const bool is_of_milk = (act != nullptr && act->action.kind == ActionKind::milk_withheld) ||
                          (right != nullptr && right->act == ActionKind::milk_withheld);
  if (unit.value == milkings_a_day && !is_of_milk) {
    refuse(not_understood("milkings are counted of milk that is withheld",
                          "say such as \"{milk withheld} 8 milkings\"; of meat say days"),
           from);
    return;
  }
  if (days == 0 || number % unit.value != 0) {
    refuse(not_understood("a time is counted in whole days of 24 hours, or two milkings",
                          "say whole days, never less than what is stated: \"" +
                              std::to_string(std::max(days, 1)) + "d\""),
           from);
    return;
  }
  TimeSaid when;
  when.days = days;
  set_time(when, from);
}

void LineBuilder::time_in_days(const Term& unit) {
  if (unit.value > 1) return set_parts_of_days(unit);
  set_days(1, unit);
}

void LineBuilder::time_in_weeks(const Term& unit) {
  set_days(7, unit);
}

void LineBuilder::time_on_weekday(const Term& weekday) {
  TimeSaid when;
  when.weekday = weekday.as<Weekday>();
  set_time(when, weekday);
}

void LineBuilder::time_in_words(const Term& days) {
  TimeSaid when;
  when.days = days.value;
  set_time(when, days);
}

void LineBuilder::time_on_date(const Term& date) {
  TimeSaid when;
  when.date = Day{date.value};
  set_time(when, date);
}

// "No, 5d", "no, off Thu": what follows is the time that is right.
void LineBuilder::correct_time(const Term& first) {
  close();
  TimeCorrected right;
  if (first.kind == TermKind::off) right.lead = TimeLead::off;
  if (first.kind == TermKind::till) right.lead = TimeLead::till;
  open(TurnClause{right}, first);
}

// "No, wrap off 5d".
void LineBuilder::correct_time_of_act(const Term& act) {
  close();
  TimeCorrected right;
  right.act = act.as<ActionKind>();
  open(TurnClause{right}, act);
}

// "No, 5": a number of hers, until its unit is said.
void LineBuilder::correct_to_days(const Term& unit) {
  begin_time_from_number(unit);
  time_in_days(unit);
}

void LineBuilder::correct_to_weeks(const Term& unit) {
  begin_time_from_number(unit);
  time_in_weeks(unit);
}

void LineBuilder::begin_time_from_number(const Term& unit) {
  if (last<CowCorrected>() == nullptr) return;
  const Term number = clauses_.back().from;
  clauses_.pop_back();
  std::erase_if(faults_, [&](const PlacedFault& fault) {
    return fault.at.first_token == number.first_token;
  });
  keep_number(number);
  correct_time(unit);
}

void LineBuilder::correct_to_weekday(const Term& weekday) {
  correct_time(weekday);
  time_on_weekday(weekday);
}

void LineBuilder::correct_to_words(const Term& days) {
  correct_time(days);
  time_in_words(days);
}

void LineBuilder::correct_to_date(const Term& date) {
  correct_time(date);
  time_on_date(date);
}

}  // namespace evenclaw
