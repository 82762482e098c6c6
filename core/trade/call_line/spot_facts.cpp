// What may end or still has to follow at each spot of the grammar.
#include <cassert>
#include <cstddef>
#include <iterator>

#include "core/trade/call_line/grammar.hpp"

namespace evenclaw {

namespace {

using S = Spot;
using B = LineBuilder;

constexpr std::string_view may_end = "";

constexpr SpotFacts spot_table[] = {
    {S::first_without_cow, S::visit, may_end},
    {S::first_with_cow, S::turn, may_end},
    {S::visit, S::visit, may_end},
    {S::today, S::today, "the feet that are lifted today"},
    {S::today_feet, S::visit, may_end},
    {S::caller, S::caller, "the caller's name", TextExtent::to_separator},
    {S::writer, S::writer, "the writer's name", TextExtent::to_separator},
    {S::cow, S::turn, may_end},
    {S::cow_or, S::cow_or, "the other number it might be"},
    {S::looks, S::turn, may_end, TextExtent::to_strong},
    {S::turn, S::visit, may_end},
    {S::lame, S::turn, may_end},
    {S::lame_on, S::lame_on, "the leg she is lame on"},
    {S::lame_feet, S::turn, may_end},
    {S::lame_and, S::turn, may_end},
    {S::lame_number, S::turn, may_end, TextExtent::none, &B::refuse_scale},
    {S::lame_of, S::lame_of, "the highest score of the scale: 3 or 5"},
    {S::lame_scored, S::turn, may_end},
    {S::came_for, S::came_for, "what she came for", TextExtent::of_a_reason},
    {S::feet, S::turn, may_end},
    {S::only_feet, S::only_feet, "the feet that are lifted"},
    {S::loose, S::turn, may_end, TextExtent::none, &B::settle_loose},
    {S::loose_place, S::loose, may_end},
    {S::paused, S::turn, may_end, TextExtent::none, &B::settle_loose},
    {S::finding, S::turn, may_end},
    {S::finding_on, S::finding_on, "the claw, or {both} when it is on both feet named"},
    {S::nicked, S::finding, may_end, TextExtent::none, &B::open_nick},
    {S::other_words, S::other_words, "what it is, in quotes"},
    {S::other_text, S::other_text, "what it is", TextExtent::to_separator},
    {S::block, S::turn, may_end},
    {S::wrap, S::turn, may_end},
    {S::opened, S::turn, may_end},
    {S::product, S::turn, may_end},
    {S::product_name, S::product_name, "the name of it", TextExtent::to_separator},
    {S::both_done, S::both_done, "what was done to both feet"},
    {S::see_again, S::turn, may_end},
    {S::watch, S::watch, "by when, such as {14d} or {Thu}"},
    {S::withheld, S::withheld, "till when, such as {Thu} or {4d}"},
    {S::beware, S::beware, "what she does: {kicks}, {jumps}, {lies down} or {needs the hoist}"},
    {S::handled, S::turn, may_end},
    {S::warned, S::turn, may_end},
    {S::time, S::time, "a time, such as {28d} or {Thu}"},
    {S::time_number, S::time_number, "the unit of the number: {d} or {weeks}"},
    {S::measure, S::measure, "a length, such as {78 mm}"},
    {S::measure_number, S::measure_number, "the unit of the number: {mm} or {cm}"},
    {S::measured, S::turn, may_end},
    {S::mobility, S::mobility, "the score and its scale, such as {mobility 2 of 3}"},
    {S::mobility_number, S::turn, may_end, TextExtent::none, &B::refuse_scale},
    {S::mobility_of, S::mobility_of, "the highest score of the scale: 3 or 5"},
    {S::note, S::note, "the words to note", TextExtent::to_line_end},
    {S::note_text, S::note_text, "the words to note", TextExtent::to_line_end},
    {S::turn_end, S::turn, may_end, TextExtent::of_an_end},
    {S::correction, S::correction,
     "what is right: a foot, a claw, a place, a degree, a stage or a number"},
    {S::number_right, S::cow, may_end},
    {S::corrected, S::turn, may_end},
    {S::taking_back, S::taking_back,
     "what is taken back: a lesion, something done, a measure or why she came"},
    {S::measure_back, S::turn, may_end},
    {S::place_back, S::place_back, "a length, such as 42 mm"},
    {S::detail_back, S::detail_back, may_end},
    {S::ended, S::ended, may_end},
    {S::news_first, S::news_first, "the number of a cow"},
    {S::news_number, S::news_number, "what became of her"},
    {S::news_feet, S::news_feet, "what became of it"},
    {S::news_said, S::news_said, may_end},
    {S::news_more, S::news_more, may_end},
    {S::news_foot, S::news_said, may_end},
    {S::news_next, S::news_next, may_end},
    {S::batch_first, S::batch_first, "how many animals"},
    {S::batch_number, S::batch_number, "what animals they are"},
    {S::batch, S::batch_told, may_end, TextExtent::of_a_batch},
    {S::batch_only, S::batch_only, "the feet that were lifted"},
    {S::batch_told, S::batch_told, may_end, TextExtent::none, &B::settle_batch},
    {S::batch_feet, S::batch_told, may_end},
    {S::batch_bar, S::batch_bar, "who was not like the others", TextExtent::of_a_batch},
    {S::batch_apart, S::batch_told, may_end},
    {S::batch_more, S::batch_told, may_end},
};
static_assert(std::size(spot_table) == spot_count);

constexpr std::size_t index_of(Spot spot) {
  return static_cast<std::size_t>(spot);
}

}  // namespace

const SpotFacts& facts_of(Spot spot) {
  assert(spot_table[index_of(spot)].spot == spot);
  return spot_table[index_of(spot)];
}

}  // namespace evenclaw
