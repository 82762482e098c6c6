#include "core/trade/lesion_definition.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view from_memory = "our words, from memory of the atlas";
constexpr std::string_view committee_brochure =
    "our words; place and claw as in the brochure of the International Lameness Committee";
constexpr std::string_view white_line_review = "our words, after the white line review of 2025";
constexpr std::string_view capion = "our words, after Capion 2024, Vet J 304:106098";
constexpr std::string_view practice = "common practice, no source";

// In the order of Lesion.
constexpr LesionDefinition definition_table[] = {
    {Lesion::dd,
     "infection of the skin of the foot: an open sore that often hurts, or long-standing thickened "
     "or growing skin",
     from_memory},
    {Lesion::id,
     "mild inflammation of the skin round the claws that is not digital dermatitis and stays "
     "shallow",
     from_memory},
    {Lesion::hhe,
     "pits or grooves in the horn of the heel, at its worst a V-shaped loss that may reach live "
     "tissue",
     from_memory},
    {Lesion::sh, "red or yellow staining in the horn of the sole or the white line", from_memory},
    {Lesion::shd, "staining spread out, pale red to yellowish, without a border", from_memory},
    {Lesion::shc, "staining with a sharp border against normal horn", from_memory},
    {Lesion::u, "horn lost right through to live or dead tissue", from_memory},
    {Lesion::su,
     "ulcer where sole and heel meet, nearer to the other claw; mostly on the outside hind claw",
     committee_brochure},
    {Lesion::bu, "ulcer in the horn of the heel", from_memory},
    {Lesion::tu, "ulcer at the toe", from_memory},
    {Lesion::tn, "dead, smelling tip of the toe, the bone in it", from_memory},
    {Lesion::wl, "the white line has come apart, with or without pus", from_memory},
    {Lesion::wlf, "the white line still parts when both soles are level; no pus",
     white_line_review},
    {Lesion::wla, "pus or dead tissue under the white line", from_memory},
    {Lesion::ip,
     "sudden even swelling of the whole foot that hurts and mostly smells, the skin between the "
     "claws often split, lame at once",
     from_memory},
    {Lesion::ih, "firm growth of skin between the claws; may carry digital dermatitis",
     from_memory},
    {Lesion::ds, "two or more layers of sole with a gap between", from_memory},
    {Lesion::ts, "the sole gives under the thumb", from_memory},
    {Lesion::hf, "crack in the wall of the claw", from_memory},
    {Lesion::hfa, "lengthwise crack in the wall that faces the other claw", from_memory},
    {Lesion::hfh, "crack in the wall that runs along with the hair line", from_memory},
    {Lesion::hfv, "lengthwise crack in the front or outer wall", from_memory},
    {Lesion::sw,
     "swelling above the horn, at the hair line or the heel, on one side or both, whatever the "
     "cause",
     from_memory},
    {Lesion::ac,
     "the two claws differ clearly in length, width or height and trimming cannot even them out",
     from_memory},
    {Lesion::cd, "seen from the side the front wall is hollow instead of straight", from_memory},
    {Lesion::cc,
     "the claw is twisted and the front edge of its wall leaves the straight line; gets worse and "
     "does not turn back",
     capion},
    {Lesion::sc, "the tips of the toes cross", from_memory},
    {Lesion::overgrown, "the toe has grown too long; how long was measured or not", practice},
    {Lesion::foreign_body, "a stone, nail or the like in the foot", practice},
    {Lesion::injury, "a wound from outside", practice},
    {Lesion::dewclaw, "a dewclaw torn, broken or sore", practice},
    {Lesion::blood_drawn, "trimmed too far, so that it bled or the sole gives", practice},
    {Lesion::unclear, "something nobody could name, in the words that were said", practice},
    {Lesion::other, "something without a row of its own, in the words that were said", practice},
};

}  // namespace

std::span<const LesionDefinition> all_lesion_definitions() {
  return definition_table;
}

}  // namespace evenclaw
