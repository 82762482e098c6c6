// The grammar of the call line as one table, used both to read a line and to tell what may follow.
#pragma once

#include <string_view>
#include <vector>

#include "core/trade/call_line/free_text.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// Where in a line one stands: what was said just before.
enum class Spot : unsigned char {
  first_without_cow,  // start of a line, nobody in the crush
  first_with_cow,
  visit,  // only words about the visit may follow
  today,
  today_feet,
  caller,
  writer,
  cow,  // behind her number
  cow_or,
  looks,
  turn,  // anything about the cow may follow
  lame,
  lame_on,
  lame_feet,
  lame_and,
  lame_number,  // a mobility score behind "lame"
  lame_of,
  lame_scored,  // the leg may follow
  came_for,
  feet,
  only_feet,  // behind "just": the feet that were lifted
  loose,      // behind a detail whose lesion is still to come
  loose_place,
  paused,  // behind a detail and a semicolon: the lesion may follow, or anything else
  finding,
  finding_on,  // behind "on": the feet named before
  nicked,      // the foot may follow
  other_words,
  other_text,
  block,
  wrap,
  opened,
  product,
  product_name,
  both_done,  // behind "both": what was done to the two feet
  see_again,
  watch,     // a time must follow, perhaps behind a comma
  withheld,  // alike
  beware,    // behind "careful": what she does must follow
  handled,   // behind what she does: "careful" may follow
  warned,    // behind that: more of what she does may follow
  time,      // a time must follow
  time_number,
  measure,
  measure_number,
  measured,
  mobility,
  mobility_number,
  mobility_of,
  note,
  note_text,
  turn_end,
  correction,
  number_right,  // behind it the number of hers that is right, or its unit of time
  corrected,     // behind what is right
  taking_back,
  measure_back,  // behind a measure that is taken back: its claw and length may follow
  place_back,    // a length must follow
  detail_back,   // behind a degree or stage that is taken back
  ended,
  news_first,
  news_number,
  news_feet,
  news_said,
  news_more,
  news_foot,  // a foot behind a comma: of what was told, or of what is told next
  news_next,
  batch_first,
  batch_number,
  batch,  // behind the animals: where they are may follow, and what became of them
  batch_only,
  batch_told,
  batch_feet,  // "backs only"
  batch_bar,
  batch_apart,
  batch_more  // behind a comma: another one may follow, or what became of them
};
inline constexpr std::size_t spot_count = static_cast<std::size_t>(Spot::batch_more) + 1;

using Act = void (LineBuilder::*)(const Term&);

/// In `from`, a term of kind `on` is taken: the act is carried out and reading goes on in `to`.
struct Step {
  Spot from;
  TermKind on;
  Spot to;
  Act act = nullptr;
};

struct SpotFacts {
  Spot spot;
  Spot otherwise;                      // whose steps count as well; itself when none do
  std::string_view still_needs;        // what is missing when the line ends here; "" when it may
  TextExtent text = TextExtent::none;  // free words may stand here, this far
  Act leave = nullptr;  // carried out when a step of `otherwise` is taken, or at the end
};

const SpotFacts& facts_of(Spot spot);

/// The step for a term of this kind, its own or one it takes over; null when the term cannot stand
/// here.
const Step* step_from(Spot spot, TermKind kind);

/// Kinds that may stand here, likeliest first.
std::vector<TermKind> kinds_after(Spot spot);

}  // namespace evenclaw
