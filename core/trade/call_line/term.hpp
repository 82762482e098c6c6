// What a word of the call line can be, whatever the language it is said in.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "core/base/enum_words.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// The terminals of the grammar. The comment names what `value` holds for a phrase of that kind.
enum class TermKind : unsigned char {
  // made by the lexer
  number,
  unknown_word,
  quoted,
  text,  // free words up to a separator or the end of the line
  comma,
  colon,
  strong,  // ; · or a full stop
  doubt,   // a question mark behind a cow's number
  stray,   // a character that belongs to no word
  // joining words
  conjunction,  // "and"
  alternative,  // "or"
  with,
  number_word,  // its value: "four", "twelve", "hundred"
  time_in,      // "in", "on" before a time or a foot
  both,         // "on both": on the two feet named before
  only,
  // cows, feet, claws
  no_number,
  unreadable,  // "can't read it", of her number
  foot,        // Foot
  feet,        // FeetGroup
  whole_cow,
  other_foot,  // FeetGroup: "her other back"
  claw,        // Claw
  good_claw,
  // findings
  lesion,  // Lesion
  other_lesion,
  place,             // Place
  white_line_place,  // Place, said in full: "white line at the heel"
  white_line_side,   // "side", which means something for a white line only
  zone_word,         // "z", "zone"
  zone,              // the number said with it
  degree,            // Degree
  stage,             // DdStage
  dd_in_it,
  unclear_word,  // UnclearWord: known, and asked about
  kept_word,     // KeptWord: kept as a note
  nicked,        // into the live: blood was drawn, perhaps on the foot that follows
  blood,         // of a nick; else it could be more than one thing
  one_side,      // of a swelling: above one of the two claws
  compared,      // "same", "better", "worse": a finding, beside the last time
  foot_state,    // FootState
  nothing_after_all,
  rest_fine,
  trimmed,  // Trimmed
  // acts
  block_act,     // ActionKind
  wrap_act,      // ActionKind
  opened_act,    // ActionKind
  product_act,   // ActionKind
  plain_act,     // ActionKind
  still_on_her,  // ActionKind: a wrap or block, of the foot that is known to carry it
  off_with_it,   // it was still on
  stump_known,   // of the foot on which a claw is known to be missing
  other_claw,    // what is left of that foot was trimmed
  block_of,      // Material: a block by what it is
  mark_of,       // Material: a mark by what it is
  material,      // Material, of a block or mark that was said
  by_whom,       // ByWhom
  directed_by,   // ByWhom: on whose direction
  see_again,     // ActionKind
  watch,         // ActionKind
  withheld_act,  // ActionKind
  handling,      // ActionKind: "kicks"
  beware,        // "careful", before it
  // times
  off,
  farmer_off,  // "him off with it": a wrap the farmer takes off
  weekday,     // Weekday
  day_unit,
  week_unit,
  days_word,  // number of days
  date,       // days since the epoch: made by the lexer
  milking,    // Milking
  till,
  // measures
  measure,  // MeasureKind
  mm,
  cm,
  measure_tail,  // "high", "long", "thick" behind a length
  // the turn
  reason,  // Reason
  lame,
  came_for,
  walks_sound,
  mobility,
  out_of,        // "of" between a score and the highest of its scale
  turn_end,      // TurnEnd
  turn_end_why,  // TurnEnd, and the words tell why: "she is going down"
  done,
  go_ahead,
  never_mind,  // a line nobody could read is not said again
  note,
  correction,
  scrapped,    // "scrap": what follows was not so
  negation,    // "not" behind a correction
  denied,      // Denied: "not lame"
  other_side,  // "other left", before it is said which foot is right
  meant,       // "I meant", behind a correction
  not_that,
  ditto,
  as_last_time,
  // the visit
  today,
  caller,
  writer,
  news_lead,
  animals,      // AnimalKind: several of them, behind their number
  all_trimmed,  // of animals that were counted
  bar,          // "all good bar the little black one"
  twice,        // "counted twice": of animals that were counted once more by mistake
  still_here,   // who was said to be gone is not
  news,         // News
  gone          // News::gone, when it is said of a cow; of a claw it is missing
};
inline constexpr std::size_t term_kind_count = static_cast<std::size_t>(TermKind::gone) + 1;

/// Words that could mean one of several things.
enum class UnclearWord { rot, abscess, dish, pain_relief, healed };

/// Words that are kept as a note. A check hears that it stinks.
enum class KeptWord { no_lesion_here, stinks };

/// Feet that are named by one word.
enum class FeetGroup { fronts, hinds, four };

constexpr FootSet feet_of(FeetGroup group) {
  switch (group) {
    case FeetGroup::fronts:
      return front_feet;
    case FeetGroup::hinds:
      return hind_feet;
    case FeetGroup::four:
      return four_feet;
  }
  return {};
}

/// One step of reading: a phrase of the language, a number, a separator, free words.
struct Term {
  TermKind kind = TermKind::stray;
  int value = 0;
  bool plural = false;
  std::string_view said;    // as typed
  std::string_view digits;  // of a number that was said in words
  std::size_t first_token = 0;
  std::size_t token_count = 0;
  int column = 0;  // in characters, from 1

  template <class E>
  [[nodiscard]] E as() const {
    return static_cast<E>(value);
  }
};

/// The digits of a number, however it was said.
constexpr std::string_view digits_of(const Term& number) {
  return number.digits.empty() ? number.said : number.digits;
}

/// The feet of a `foot` or `feet` term.
FootSet feet_in(const Term& term);

/// What is told to people when this kind was expected ("a lesion"), call words in
/// braces; "" for kinds not worth telling.
std::string_view expected_name(TermKind kind);

/// "a foot, a claw, a lesion or something done": six of them at the most.
std::string expected_names(std::span<const TermKind> kinds);

}  // namespace evenclaw
