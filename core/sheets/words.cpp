#include "core/sheets/words.hpp"

#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>
#include <vector>

#include "core/trade/lesion.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

namespace {

template <class E>
std::optional<std::string_view> row_of(std::span<const Worded<E>> table, E value) {
  for (const Worded<E>& row : table) {
    if (row.value == value) return row.words;
  }
  return std::nullopt;
}

template <class E>
std::string words_of(std::span<const Worded<E>> table, E value) {
  const auto words = row_of(table, value);
  assert(words.has_value());
  return std::string(words.value_or(std::string_view{}));
}

/// The texts are ours, so a place without a fill is our mistake.
std::string filled(std::string_view text, std::initializer_list<Fill> fills) {
  std::string out;
  while (true) {
    const std::size_t open = text.find('{');
    const std::size_t close = open == text.npos ? text.npos : text.find('}', open);
    out += text.substr(0, open);
    if (close == text.npos) return out;
    const std::string_view name = text.substr(open + 1, close - open - 1);
    bool found = false;
    for (const Fill& fill : fills) {
      if (fill.name != name) continue;
      out += fill.words;
      found = true;
    }
    assert(found);
    static_cast<void>(found);
    text = text.substr(close + 1);
  }
}

bool is_one(std::initializer_list<Fill> fills) {
  for (const Fill& fill : fills) {
    if (fill.name == "n") return fill.words == "1";
  }
  return false;
}

/// In its form for one or for many.
std::string said_as(std::optional<std::string_view> saying, std::initializer_list<Fill> fills) {
  std::string_view text = saying.value_or(std::string_view{});
  assert(!text.empty());
  const std::size_t bar = text.find('|');
  if (bar != text.npos) text = is_one(fills) ? text.substr(0, bar) : text.substr(bar + 1);
  return filled(text, fills);
}

/// A heel ulcer needs no heel: its name says the only place it can be at.
bool says_its_place(Lesion lesion, Place place) {
  const LesionFacts& facts = facts_of(lesion);
  return facts.nowhere_else && facts.usual_places.size() == 1 && facts.usual_places[0] == place;
}

/// Only then is it news on which claw the block is.
bool puts_block_on(ActionKind action) {
  return action == ActionKind::block_on || action == ActionKind::block_stacked ||
         action == ActionKind::block_refitted || action == ActionKind::block_again;
}

constexpr std::string_view between_parts = ", ";

std::vector<std::string> parts_of(std::string_view list) {
  std::vector<std::string> parts;
  while (!list.empty()) {
    const std::size_t end = std::min(list.find(between_parts), list.size());
    parts.emplace_back(list.substr(0, end));
    list.remove_prefix(std::min(end + between_parts.size(), list.size()));
  }
  return parts;
}

void append(std::string& list, std::string_view part) {
  if (part.empty()) return;
  if (!list.empty()) list += between_parts;
  list += part;
}

}  // namespace

std::string Wording::foot(Foot foot) const {
  return words_of(tables_.feet, foot);
}

std::string Wording::animals(AnimalKind animals) const {
  return words_of(tables_.animals, animals);
}

std::string Wording::feet(const FootSet& feet) const {
  if (feet == four_feet) return say(Saying::four_feet);
  if (feet == hind_feet) return say(Saying::hind_feet);
  if (feet == front_feet) return say(Saying::front_feet);
  std::vector<std::string> names;
  for (const Foot one : all_feet) {
    if (feet.has(one)) names.push_back(foot(one));
  }
  return names.empty() ? say(Saying::no_feet) : list(names);
}

std::string Wording::claw(Claw claw) const {
  switch (claw) {
    case Claw::none:
      return {};
    case Claw::not_called:
      return say(Saying::claw_not_called);
    case Claw::both:
      return say(Saying::both_claws);
    case Claw::outside:
    case Claw::inside:
      return say(Saying::claw_named, {{"claw", words_of(tables_.claws, claw)}});
  }
  return {};
}

std::string Wording::lesion(Lesion lesion, std::string_view words) const {
  if (lesion == Lesion::other && !words.empty()) return std::string(words);
  std::string name(row_of(tables_.lesions, lesion).value_or(facts_of(lesion).name));
  if (lesion == Lesion::unclear && !words.empty()) name += ": " + std::string(words);
  return name;
}

std::string Wording::stage(DdStage stage) const {
  return words_of(tables_.stages, stage);
}

std::string Wording::state(FootState state) const {
  return state == FootState::finding ? std::string() : words_of(tables_.states, state);
}

std::string Wording::place(Place place, Lesion lesion) const {
  if (place == Place::not_called || says_its_place(lesion, place)) return {};
  if (facts_of(lesion).family == Lesion::wl) {
    const auto shorter = row_of(tables_.places_beside_white_line, place);
    if (shorter) return std::string(*shorter);
  }
  return std::string(row_of(tables_.places, place).value_or(facts_of(place).said));
}

/// A number stands only where the words do not tell it already.
std::string Wording::zone(const FindingRow& row) const {
  const bool is_told = !row.zone || facts_of(row.place).zone == *row.zone;
  return is_told ? std::string() : say(Saying::zone_named, {{"n", std::to_string(*row.zone)}});
}

/// A doubt, called as "bad?" beside "bad", is told with what is doubted.
std::string Wording::details(const FindingRow& row) const {
  std::string words;
  std::vector<std::string> beside;
  if (!is_named_by_words(row.lesion)) beside = parts_of(row.words);
  const auto add = [&](const std::string& detail) {
    const auto doubt = std::find(beside.begin(), beside.end(), detail + '?');
    append(words, doubt == beside.end() ? detail : *doubt);
    if (doubt != beside.end()) beside.erase(doubt);
  };
  if (row.stage != DdStage::not_called) add(std::string(words_of(tables_.stages, row.stage)));
  add(place(row.place, row.lesion));
  if (row.degree != Degree::not_called) add(std::string(words_of(tables_.degrees, row.degree)));
  for (const std::string& part : beside) append(words, part);
  if (row.dd_infected) append(words, say(Saying::dd_in_it));
  return words;
}

std::string Wording::finding(const FindingRow& row) const {
  std::string words = lesion(row.lesion, row.words);
  append(words, details(row));
  std::string inside;
  if (facts_of(row.lesion).code_known != CodeKnown::none) inside = word_of(row.lesion);
  append(inside, zone(row));
  return inside.empty() ? words : say(Saying::in_brackets, {{"what", words}, {"aside", inside}});
}

std::string Wording::finding_name(const FindingRow& row) const {
  const std::string name = lesion(row.lesion, row.words);
  if (facts_of(row.lesion).code_known == CodeKnown::none) return name;
  return say(Saying::in_brackets, {{"what", name}, {"aside", std::string(word_of(row.lesion))}});
}

std::string Wording::finding_details(const FindingRow& row) const {
  std::string words = claw_of(row);
  append(words, details(row));
  append(words, zone(row));
  return words;
}

std::string Wording::claw_of(const FindingRow& row) const {
  const bool needs_claw = facts_of(row.lesion).kept_on == KeptOn::claw;
  const bool left_out = row.claw == Claw::not_called && !needs_claw;
  return left_out ? std::string() : claw(row.claw);
}

std::string Wording::finding_at_claw(const FindingRow& row) const {
  const std::string where = claw_of(row);
  const bool is_of_one = row.claw == Claw::outside || row.claw == Claw::inside;
  if (row.lesion == Lesion::sw && is_of_one) {
    return say(BoxSaying::above_the_claw, {{"what", finding(row)}, {"claw", where}});
  }
  return where.empty() ? finding(row) : where + ": " + finding(row);
}

/// "milk held back up to and with the evening milking of Thu 29 Oct".
std::string Wording::held_back(std::string what, const ActionRow& row, Day near) const {
  const std::optional<Day> till = row.milk_till ? row.milk_till : row.meat_till;
  if (!till) return what;
  const std::string to = date(*till, near);
  if (!row.milk_milking) return say(Saying::held_back_to, {{"what", what}, {"date", to}});
  return say(
      Saying::held_back_to_milking,
      {{"what", what}, {"date", to}, {"milking", words_of(tables_.milkings, *row.milk_milking)}});
}

std::string Wording::act(const ActionRow& row, Day near) const {
  std::string words = words_of(tables_.acts, row.action);
  if (row.material != Material::not_called) {
    words = say(Saying::in_brackets,
                {{"what", words}, {"aside", words_of(tables_.materials, row.material)}});
  }
  if (row.by_whom != ByWhom::not_called) {
    words = say(Saying::in_brackets,
                {{"what", words}, {"aside", words_of(tables_.by_whoms, row.by_whom)}});
  }
  const bool left_out = row.claw == Claw::not_called && !puts_block_on(row.action);
  const std::string where = left_out ? std::string() : claw(row.claw);
  if (!where.empty()) words = say(Saying::at_claw, {{"what", words}, {"claw", where}});
  if (!row.product.empty()) {
    words = say(Saying::in_brackets, {{"what", words}, {"aside", row.product}});
  }
  if (row.directed_by != ByWhom::not_called) {
    words = say(Saying::directed_by,
                {{"what", words}, {"who", words_of(tables_.by_whoms, row.directed_by)}});
  }
  if (tells_withdrawal(row.action)) return held_back(words, row, near);
  if (!row.said_for) return words;
  const bool comes_off = row.action == ActionKind::wrap_on ||
                         row.action == ActionKind::wrap_still_on ||
                         row.action == ActionKind::block_still_on || puts_block_on(row.action);
  return say(comes_off ? Saying::off_by : Saying::by_date,
             {{"what", words}, {"date", date(*row.said_for, near)}});
}

std::string Wording::measure(const MeasureRow& row) const {
  std::string words;
  if (row.claw != Claw::not_called) append(words, claw(row.claw));
  append(words, words_of(tables_.measures, row.measure) + ' ' + to_text(row.length));
  return words;
}

std::string Wording::lameness(const FootSet& legs) const {
  if (legs.empty()) return say(Saying::lame_leg_not_called);
  return say(Saying::lame_on, {{"feet", feet(legs)}});
}

std::string Wording::reasons(const TurnRow& row) const {
  std::string words;
  const auto add = [&](Reason reason) {
    if (reason == Reason::lame) {
      append(words, lameness(row.lame));
    } else if (reason == Reason::other && !row.reason_words.empty()) {
      append(words, row.reason_words);
    } else {
      append(words, words_of(tables_.reasons, reason));
    }
  };
  ReasonSet others = row.also;
  if (row.came_lame) others.add(Reason::lame);
  if (row.reason != Reason::not_called || others.empty()) add(row.reason);
  for (const EnumWord<Reason>& known : EnumWords<Reason>::table) {
    if (others.has(known.value) && known.value != row.reason) add(known.value);
  }
  return words;
}

std::string Wording::mobility(const TurnRow& row) const {
  if (!row.mobility_scale || !row.mobility_score) return {};
  return say(Saying::mobility, {{"n", std::to_string(*row.mobility_score)},
                                {"of", std::to_string(facts_of(*row.mobility_scale).highest)}});
}

std::string Wording::date(Day day, Day near) const {
  const CivilDate date = civil_of(day);
  std::string words = words_of(tables_.weekdays, weekday_of(day)) + ' ' + std::to_string(date.day) +
                      ' ' + std::string(tables_.months[static_cast<std::size_t>(date.month - 1)]);
  if (date.year != civil_of(near).year) words += ' ' + std::to_string(date.year);
  return words;
}

std::string Wording::full_date(Day day) const {
  return date(day, day) + ' ' + std::to_string(civil_of(day).year);
}

std::string Wording::list(const std::vector<std::string>& parts) const {
  if (parts.size() < 2) return parts.empty() ? std::string() : parts[0];
  const bool holds_commas = std::any_of(parts.begin(), parts.end(), [](const std::string& part) {
    return part.find(between_parts) != part.npos;
  });
  if (holds_commas) return clauses(parts);
  std::string head;
  for (std::size_t i = 0; i + 1 < parts.size(); ++i) append(head, parts[i]);
  return say(Saying::and_joined, {{"head", head}, {"last", parts.back()}});
}

std::string Wording::say(Saying saying, std::initializer_list<Fill> fills) const {
  return said_as(row_of(tables_.sayings, saying), fills);
}

std::string Wording::say(TrackSaying saying, std::initializer_list<Fill> fills) const {
  return said_as(row_of(tables_.track_sayings, saying), fills);
}

std::string Wording::say(BoxSaying saying, std::initializer_list<Fill> fills) const {
  return said_as(row_of(tables_.box_sayings, saying), fills);
}

std::string Wording::count(Saying saying, std::size_t n) const {
  return say(saying, {{"n", std::to_string(n)}});
}

std::string capitalised(std::string text) {
  if (text.empty()) return text;
  const auto first = static_cast<unsigned char>(text[0]);
  if (first >= 'a' && first <= 'z') {
    text[0] = static_cast<char>(first - 'a' + 'A');
  } else if (first == 0xC3 && text.size() > 1) {
    // The small letters U+00E0 to U+00FE stand 0x20 after their capitals, but for the sign U+00F7.
    const auto second = static_cast<unsigned char>(text[1]);
    const bool small = second >= 0xA0 && second <= 0xBE && second != 0xB7;
    if (small) text[1] = static_cast<char>(second - 0x20);
  }
  return text;
}

std::string unbroken(const std::string& words) {
  std::string held;
  for (const char letter : words) {
    if (letter == ' ') {
      held += "\u00a0";
    } else {
      held += letter;
    }
  }
  return held;
}

std::string clauses(const std::vector<std::string>& parts) {
  std::string words;
  for (const std::string& part : parts) {
    if (!words.empty() && words.back() == '.') words.pop_back();
    words += (words.empty() ? "" : "; ") + part;
  }
  return words;
}

std::string as_sentence(std::string text) {
  text = capitalised(std::move(text));
  const bool has_end =
      text.empty() || std::string_view(".?!:;").find(text.back()) != std::string_view::npos;
  return has_end ? text : text + '.';
}

}  // namespace evenclaw
