// "416 walks sound", "416 kicks" and nothing else: her turn, or news of a cow that is elsewhere?
#pragma once

#include <optional>
#include <vector>

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The cow of a line that gives a sure number and says that she walks sound, or one thing about how
/// she has to be handled, and nothing else; null for any other line.
const CowSaid* says_only_how_she_is(const Line& line);

/// That one thing as news, when nothing else was said of her: no foot, no other act, no reason.
std::optional<News> only_news_in(const Turn& turn);

/// "201 RH wrap off", "201 LH wrap and block off" and nothing else, one of them known on one of the
/// feet, as news; empty for any other turn. `past` is her rows before it.
std::vector<NewsSaid> only_fate_in(const Turn& turn, const Rows& past);

/// That news foot by foot where `line` named one after the other, "301 RH wrap off; LH wrap off",
/// and last of those on which none is known; else as it is.
std::vector<NewsSaid> told_foot_by_foot(const NewsSaid& news, const Line& line, const Rows& past);

/// What an act tells of a wrap or block from before, as news: off, gone or still on. Nothing for
/// any other act, or one of a claw that is called.
std::optional<News> fate_told_by(const Action& act);

/// Only how she walks or has to be handled was said: perhaps she was not in the crush at all.
bool says_nothing_of_her_feet(const Turn& turn);

/// "308 walks sound", "308 not lame" and nothing else, as news; nothing for any other line.
std::optional<NewsSaid> tells_that_she_walks_sound(const Line& line);

/// Her number and one such thing is all that was said before the next cow came.
bool walked_by(const VisitBook& book, const InCrush& cow, LetOutBy why);

}  // namespace evenclaw
