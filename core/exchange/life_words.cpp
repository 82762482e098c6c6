#include "core/exchange/life_words.hpp"

#include <string>

#include "core/base/text.hpp"
#include "core/trade/leaving_words.hpp"

namespace evenclaw {

namespace {

struct EventWord {
  std::string_view words;  // folded
  EventNamed named;
};

constexpr EventNamed arrived = {LifeEvent::arrived};
constexpr EventNamed calved = {LifeEvent::calved};
constexpr EventNamed dried_off = {LifeEvent::dried_off};
constexpr EventNamed left = {LifeEvent::left};

constexpr EventWord event_words[] = {{"arrived", arrived},
                                     {"arrival", arrived},
                                     {"bought", arrived},
                                     {"purchase", arrived},
                                     {"purchased", arrived},
                                     {"zugang", arrived},
                                     {"gekauft", arrived},
                                     {"zukauf", arrived},
                                     {"aanvoer", arrived},
                                     {"entrée", arrived},
                                     {"achat", arrived},
                                     {"calved", calved},
                                     {"calving", calved},
                                     {"fresh", calved},
                                     {"kalbung", calved},
                                     {"abkalbung", calved},
                                     {"gekalbt", calved},
                                     {"afkalven", calved},
                                     {"gekalfd", calved},
                                     {"vêlage", calved},
                                     {"dried off", dried_off},
                                     {"dried_off", dried_off},
                                     {"dry off", dried_off},
                                     {"dry-off", dried_off},
                                     {"dry", dried_off},
                                     {"trocken", dried_off},
                                     {"trockenstellen", dried_off},
                                     {"trockengestellt", dried_off},
                                     {"droogzetten", dried_off},
                                     {"droog", dried_off},
                                     {"tarissement", dried_off},
                                     {"left", left},
                                     {"gone", left},
                                     {"departure", left},
                                     {"abgang", left},
                                     {"afvoer", left},
                                     {"sortie", left}};

struct ReasonWord {
  std::string_view holds;  // folded, anywhere in the text
  LeavingReason reason;
};

// In this order: what names a foot goes before what may only be why.
constexpr ReasonWord reason_words[] = {{"lame", LeavingReason::feet_and_legs},
                                       {"claw", LeavingReason::feet_and_legs},
                                       {"feet", LeavingReason::feet_and_legs},
                                       {"foot", LeavingReason::feet_and_legs},
                                       {"legs", LeavingReason::feet_and_legs},
                                       {"klaue", LeavingReason::feet_and_legs},
                                       {"gliedma", LeavingReason::feet_and_legs},
                                       {"lahm", LeavingReason::feet_and_legs},
                                       {"klauw", LeavingReason::feet_and_legs},
                                       {"kreupel", LeavingReason::feet_and_legs},
                                       {"boiterie", LeavingReason::feet_and_legs},
                                       {"membres", LeavingReason::feet_and_legs},
                                       {"mastitis", LeavingReason::udder},
                                       {"udder", LeavingReason::udder},
                                       {"euter", LeavingReason::udder},
                                       {"uier", LeavingReason::udder},
                                       {"mammite", LeavingReason::udder},
                                       {"fertil", LeavingReason::fertility},
                                       {"fruchtbar", LeavingReason::fertility},
                                       {"vruchtbaar", LeavingReason::fertility},
                                       {"calving", LeavingReason::calving},
                                       {"kalbung", LeavingReason::calving},
                                       {"vêlage", LeavingReason::calving},
                                       {"milkab", LeavingReason::milking},
                                       {"melkbarkeit", LeavingReason::milking},
                                       {"yield", LeavingReason::production},
                                       {"production", LeavingReason::production},
                                       {"leistung", LeavingReason::production},
                                       {"productie", LeavingReason::production},
                                       {"behaviour", LeavingReason::behaviour},
                                       {"temperament", LeavingReason::behaviour},
                                       {"accident", LeavingReason::accident},
                                       {"unfall", LeavingReason::accident},
                                       {"injur", LeavingReason::accident},
                                       {"nutrition", LeavingReason::nutrition},
                                       {"missing", LeavingReason::missing},
                                       {"surplus", LeavingReason::surplus},
                                       {"disease", LeavingReason::health},
                                       {"illness", LeavingReason::health},
                                       {"krank", LeavingReason::health},
                                       {"ziek", LeavingReason::health},
                                       {"maladie", LeavingReason::health},
                                       {"old age", LeavingReason::age},
                                       {"alter", LeavingReason::age},
                                       {"ouderdom", LeavingReason::age}};

}  // namespace

std::optional<EventNamed> event_named(std::string_view words) {
  const std::string folded = fold_case(trimmed(words));
  for (const EventWord& word : event_words) {
    if (word.words == folded) return word.named;
  }
  if (const auto way = leaving_way(folded)) return EventNamed{LifeEvent::left, *way};
  return std::nullopt;
}

LeavingReason reason_named(std::string_view words) {
  const std::string folded = fold_case(trimmed(words));
  if (folded.empty()) return LeavingReason::not_told;
  if (const auto own = enum_of<LeavingReason>(folded)) return *own;
  for (const ReasonWord& word : reason_words) {
    if (folded.find(word.holds) != std::string::npos) return word.reason;
  }
  return LeavingReason::other;
}

}  // namespace evenclaw
