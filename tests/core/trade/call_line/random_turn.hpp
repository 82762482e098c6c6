// Random turns and lines for property tests: valid by construction, since they grow clause by
// clause through the draft.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/random.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/measure_reach.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw::random_turn {

template <class T, std::size_t N>
T one_of(RandomStream& draw, const T (&all)[N]) {
  return all[draw.below(static_cast<std::uint32_t>(N))];
}

template <class E>
E any_value(RandomStream& draw) {
  const auto count = static_cast<std::uint32_t>(std::size(EnumWords<E>::table));
  return EnumWords<E>::table[draw.below(count)].value;
}

// Words as people write them, with all that could be taken for something else.
inline std::string some_words(RandomStream& draw) {
  constexpr std::string_view pieces[] = {"brown",
                                         "LH",
                                         "white line",
                                         "star",
                                         "a;b",
                                         "\"quoted\"",
                                         "3",
                                         "lame",
                                         ",",
                                         "heel.",
                                         "z4",
                                         "kicks",
                                         "gr\u00fcn",
                                         "#",
                                         "no",
                                         "-",
                                         "nothing found",
                                         "\u201cso\u201d",
                                         "?",
                                         "spray",
                                         ":",
                                         "vet",
                                         "28d"};
  std::string words;
  const std::uint32_t count = 1 + draw.below(4);
  for (std::uint32_t i = 0; i < count; ++i) {
    if (!words.empty()) words += ' ';
    words += one_of(draw, pieces);
  }
  return words;
}

inline std::string cow_number(RandomStream& draw) {
  const std::string number = std::to_string(1 + draw.below(9999));
  return draw.chance(0.1) ? "0" + number : number;
}

inline CowSaid any_cow(RandomStream& draw) {
  CowSaid cow;
  cow.known = any_value<CowKnown>(draw);
  if (cow.known == CowKnown::unnumbered) {
    if (draw.chance(0.8)) cow.looks = some_words(draw);
    return cow;
  }
  cow.number = cow_number(draw);
  if (cow.known == CowKnown::doubtful && draw.chance(0.5)) {
    cow.alternatives.push_back(cow_number(draw));
  }
  return cow;
}

inline Term detail(TermKind kind, int value) {
  Term term;
  term.kind = kind;
  term.value = value;
  return term;
}

inline TimeSaid any_time(RandomStream& draw) {
  TimeSaid when;
  if (draw.chance(0.5)) {
    when.days = 1 + static_cast<int>(draw.below(100));
  } else if (draw.chance(0.2)) {
    when.date = Day{20782 + static_cast<std::int32_t>(draw.below(700))};
  } else {
    when.weekday = any_value<Weekday>(draw);
  }
  return when;
}

// Details that cannot be are refused by the item and so left out.
inline TurnClause any_finding(RandomStream& draw) {
  FindingSaid finding = new_finding(any_value<Lesion>(draw));
  const bool needs_words = is_named_by_words(finding.finding.lesion);
  if (needs_words || draw.chance(0.1)) finding.finding.words = some_words(draw);
  TurnClause item = finding;
  const auto maybe_add = [&draw, &item](double chance, TermKind kind, std::uint32_t values) {
    if (draw.chance(chance)) {
      static_cast<void>(add_detail(item, detail(kind, static_cast<int>(draw.below(values)))));
    }
  };
  if (draw.chance(0.7)) {
    constexpr Claw claws[] = {Claw::outside, Claw::inside, Claw::both};
    static_cast<void>(
        add_detail(item, detail(TermKind::claw, static_cast<int>(one_of(draw, claws)))));
  }
  if (draw.chance(0.6)) {
    const auto place = static_cast<int>(1 + draw.below(11));
    static_cast<void>(add_detail(item, detail(TermKind::place, place)));
  }
  maybe_add(0.3, TermKind::zone, 13);
  maybe_add(0.5, TermKind::degree, 4);
  maybe_add(0.4, TermKind::stage, 10);
  maybe_add(0.2, TermKind::dd_in_it, 1);
  return item;
}

// There are words for the vet's direction only.
inline ByWhom any_director(RandomStream& draw) {
  return draw.chance(0.2) ? ByWhom::vet : ByWhom::not_called;
}

inline TurnClause any_act(RandomStream& draw) {
  ActionSaid act = new_act(any_value<ActionKind>(draw));
  const ActFacts& facts = facts_of(act.action.kind);
  constexpr Claw claws[] = {Claw::not_called, Claw::outside, Claw::inside, Claw::both};
  if (facts.takes_claw) act.action.claw = one_of(draw, claws);
  if (facts.time != ActTime::none && draw.chance(0.5)) act.action.when = any_time(draw);
  if (takes_product(act.action.kind) && draw.chance(0.5)) {
    act.action.product = some_words(draw);
  }
  const auto material = any_value<Material>(draw);
  if (material != Material::not_called && takes_material(act.action.kind, material)) {
    act.action.material = material;
  }
  if (takes_by_whom(act.action.kind)) act.action.by_whom = any_value<ByWhom>(draw);
  if (takes_product(act.action.kind)) act.action.directed_by = any_director(draw);
  const bool of_milk = facts.said_as == TermKind::withheld_act && act.action.when.said();
  if (of_milk && draw.chance(0.3)) act.action.when.milking = any_value<Milking>(draw);
  return act;
}

inline TurnClause any_measure(RandomStream& draw) {
  MeasureSaid said = new_measure(any_value<MeasureKind>(draw));
  const MeasureReach& reach = reach_of(said.measure.kind);
  const auto lengths = static_cast<std::uint32_t>(reach.most.tenths_mm - reach.least.tenths_mm + 1);
  said.measure.length.tenths_mm =
      reach.least.tenths_mm + static_cast<std::int32_t>(draw.below(lengths));
  constexpr Claw claws[] = {Claw::not_called, Claw::outside, Claw::inside};
  said.measure.claw = one_of(draw, claws);
  return said;
}

inline TurnClause any_mobility(RandomStream& draw) {
  MobilityTold told;
  told.mobility.scale = any_value<MobilityScale>(draw);
  const MobilityScaleFacts& facts = facts_of(*told.mobility.scale);
  const auto scores = static_cast<std::uint32_t>(facts.highest - facts.lowest + 1);
  told.mobility.score = facts.lowest + static_cast<std::int32_t>(draw.below(scores));
  told.is_correction = draw.chance(0.3);
  return told;
}

inline FootSet some_feet(RandomStream& draw) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    if (draw.chance(0.35)) feet.add(foot);
  }
  return feet;
}

inline TurnClause any_reason(RandomStream& draw) {
  ReasonSaid said{any_value<Reason>(draw), {}, {}};
  if (said.reason == Reason::not_called) said.reason = Reason::routine;
  if (said.reason == Reason::lame) said.lame = some_feet(draw);
  if (said.reason == Reason::other) said.words = some_words(draw);
  return said;
}

inline TurnClause any_taking_back(RandomStream& draw) {
  if (draw.chance(0.2)) return NothingAfterAll{};
  if (draw.chance(0.5)) return FindingTakenBack{std::get<FindingSaid>(any_finding(draw)).finding};
  return ActTakenBack{std::get<ActionSaid>(any_act(draw)).action};
}

inline TurnClause any_clause(RandomStream& draw) {
  switch (draw.below(14)) {
    case 0:
      return any_reason(draw);
    case 1:
    case 2:
    case 3:
      return FeetNamed{some_feet(draw)};
    case 4:
      return FootStateSaid{draw.chance(0.5) ? FootState::nothing_found : FootState::not_lifted};
    case 5:
      return TrimmedSaid{draw.chance(0.5) ? Trimmed::yes : Trimmed::no};
    case 6:
    case 7:
    case 8:
      return any_finding(draw);
    case 9:
    case 10:
      return any_act(draw);
    case 11:
      return any_measure(draw);
    case 12:
      return NoteSaid{some_words(draw)};
    default:
      break;
  }
  if (draw.chance(0.3)) return any_taking_back(draw);
  if (draw.chance(0.3)) return RestFineSaid{};
  if (draw.chance(0.3)) return WalksSoundSaid{};
  if (draw.chance(0.3)) return any_mobility(draw);
  if (draw.chance(0.5)) return FootCorrected{any_value<Foot>(draw)};
  if (draw.chance(0.5)) return ClawCorrected{draw.chance(0.5) ? Claw::outside : Claw::inside};
  return EndSaid{draw.chance(0.5) ? TurnEnd::not_done : TurnEnd::unfinished, some_words(draw)};
}

inline Turn any_turn(RandomStream& draw) {
  TurnDraft draft;
  draft.turn.cow = any_cow(draw);
  const std::uint32_t clauses = draw.below(14);
  for (std::uint32_t i = 0; i < clauses; ++i) {
    static_cast<void>(add_clause(draft, any_clause(draw)));  // what cannot be is left out
  }
  return draft.turn;
}

/// Words of the language, numbers, marks and nonsense in any order.
inline std::string token_soup(RandomStream& draw, const Language& language) {
  constexpr std::string_view others[] = {"412", "28",      "7.5", "z4",   ",",   ";",
                                         ".",   "\"x y\"", "\"",  "wrpa", "?",   ":",
                                         "#",   "-",       "&",   "78mm", "28d", "@"};
  std::string line;
  const std::uint32_t count = draw.below(14);
  for (std::uint32_t i = 0; i < count; ++i) {
    if (!line.empty() && draw.chance(0.95)) line += ' ';
    const auto phrases = language.phrases();
    line += draw.chance(0.75)
                ? phrases[draw.below(static_cast<std::uint32_t>(phrases.size()))].words
                : one_of(draw, others);
  }
  return line;
}

}  // namespace evenclaw::random_turn
