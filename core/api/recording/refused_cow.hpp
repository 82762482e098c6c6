// Whether a line that was refused named a cow: what is said after it would be hers.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/trade/call_line/line.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

enum class CowLikely { none, perhaps, surely };

struct RefusedCow {
  CowLikely likely = CowLikely::none;
  CowSaid
      cow;  // as far as she was named; when it is not sure that a cow was, she is a doubtful one
  // Her number is in no doubt: should a cow of the herd carry it, it is that one.
  bool is_clear_number = false;
  std::string news_of = {};  // the number the line starts with, when it goes on with news alone
};

/// One number and no other; what is sure of it does not count. "" when she has none.
std::string only_number(const CowSaid& cow);

/// surely: it starts with a cow and goes on with words of a turn. perhaps: it starts with a number
/// and goes on with nothing known ("22 nothnig found" names 22?), or
/// with a number no cow can have (a reader's with 14 digits), or with "no" and words that
/// correct nothing ("no tg, black cow" names a cow without a number, the whole line being all that
/// is known of her), or is announced ("No 413"), or goes on with news and with more that belongs to
/// a turn ("413 died, LH SU"). none: it starts otherwise, or with a list of numbers, or goes on
/// with news alone.
RefusedCow cow_in_refused(std::string_view text, const LineContext& context,
                          const Language& language);

/// The cow of "412 no, slihgt" or "412 LH no, not bad": a number, perhaps a foot, and "no", by
/// which a cow that was let out is mended.
std::optional<CowSaid> cow_mended_in_refused(std::string_view text, const LineContext& context,
                                             const Language& language);

/// A refused line that starts with a list of numbers: "883 and 884 LH DD", "885/886 LH SU".
bool names_several_cows(std::string_view text, const Language& language);

/// All that is known of the line tells what became of cows, of their wraps or blocks: nothing in it
/// was found or done in the crush.
bool tells_news_alone(std::string_view text, const Language& language);

/// The number a refused line starts with, when all that stands behind it, behind every other number
/// in it too, tells what became of a cow, her wrap or block, or is a slip of that: "101 warp off",
/// "102 wrap off?", "102 still lame; 105 wrap on still". "" for any other line.
std::string told_in_unread_news(std::string_view text, const Language& language);

/// A refused line about the feet that are lifted today, and about no cow: "today all".
bool tells_todays_feet(std::string_view text, const Language& language);

/// "Yes", "hang on", "oops, sorry", and nothing else: nothing in it is of any cow.
bool is_an_aside(std::string_view text, const Language& language);

/// "Dry cows", "heifers:": animals without a number, and nothing of any one cow.
bool is_a_heading(std::string_view text, const Language& language);

/// A refused line that does not start with what is said of a cow in the crush, or with a slip of
/// it: "next one 413", "301, 302 lame LH", "brown heifer", a line that is no text. What is said of
/// a foot after it may be of another cow.
bool may_be_of_another_cow(std::string_view text, const Language& language);

}  // namespace evenclaw
