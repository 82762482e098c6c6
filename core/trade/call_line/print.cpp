#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/done_where_fine.hpp"
#include "core/trade/call_line/free_text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

using K = TermKind;

// One line in the making: what comes after the cow or foot is parted by ";", words by spaces.
class LineWriter {
 public:
  explicit LineWriter(const Language& language) : language_(language) {}

  LineWriter& part() {
    if (!is_at_head_) text_ += "; ";
    starts_part_ = !is_at_head_;
    is_at_head_ = false;
    return *this;
  }

  // The head stays joined to the first part: "LH outside ...".
  LineWriter& end_head(bool joins_first_part) {
    is_at_head_ = joins_first_part;
    return *this;
  }

  LineWriter& raw(std::string_view words) {
    if (words.empty()) return *this;
    if (!starts_part_) text_ += ' ';
    text_ += words;
    starts_part_ = false;
    return *this;
  }

  LineWriter& mark(std::string_view sign) {
    text_ += sign;
    return *this;
  }

  template <class E>
  LineWriter& say(K kind, E value) {
    return raw(language_.say(kind, value));
  }

  LineWriter& say(K kind) { return raw(language_.say(kind)); }

  [[nodiscard]] std::string_view words_for(K kind) const { return language_.say(kind); }

  template <class E>
  [[nodiscard]] std::string_view words_for(K kind, E value) const {
    return language_.say(kind, value);
  }

  LineWriter& quoted(std::string_view words) { return raw(in_quotes(words)); }

  LineWriter& free(std::string_view words, TextExtent extent) {
    return raw(printed_text(words, extent, language_));
  }

  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  const Language& language_;
  std::string text_;
  bool starts_part_ = true;
  bool is_at_head_ = false;
};

void write_claw(LineWriter& out, Claw claw) {
  if (is_called(claw)) out.say(K::claw, claw);
}

// "28d", but "28 days" where the unit is a word.
void write_time(LineWriter& out, const TimeSaid& when) {
  constexpr std::size_t longest_glued_unit = 2;
  if (when.days) {
    const std::string_view unit = out.words_for(K::day_unit);
    const bool is_glued = unit.size() <= longest_glued_unit;
    out.raw(std::to_string(*when.days) + (is_glued ? "" : " ") + std::string(unit));
  }
  if (when.weekday) out.say(K::weekday, *when.weekday);
  if (when.date) out.raw(to_text(*when.date));
  if (when.milking) out.say(K::milking, *when.milking);
}

void write_feet(LineWriter& out, const FootSet& feet) {
  for (const FeetGroup group : {FeetGroup::four, FeetGroup::hinds, FeetGroup::fronts}) {
    if (feet == feet_of(group)) {
      out.say(K::feet, group);
      return;
    }
  }
  bool is_first = true;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (!is_first) out.say(K::conjunction);
    out.say(K::foot, foot);
    is_first = false;
  }
}

// The place said with a white line lesion is short for the white line there.
void write_place(LineWriter& out, const Finding& finding) {
  if (finding.place == Place::not_called) return;
  const bool in_short = is_of_the_white_line(finding.lesion);
  if (finding.place == Place::white_line_side) {
    in_short ? out.say(K::white_line_side) : out.say(K::white_line_place, finding.place);
  } else if (finding.place == Place::white_line_heel) {
    in_short ? out.say(K::place, Place::heel) : out.say(K::white_line_place, finding.place);
  } else if (finding.place == Place::white_line_toe) {
    in_short ? out.say(K::place, Place::toe) : out.say(K::white_line_place, finding.place);
  } else {
    out.say(K::place, finding.place);
  }
  if (finding.zone && finding.zone != facts_of(finding.place).zone) {
    out.raw(std::string(out.words_for(K::zone_word)) + std::to_string(*finding.zone));
  }
}

void write_finding(LineWriter& out, const Finding& finding) {
  write_claw(out.part(), finding.claw);
  if (is_named_by_words(finding.lesion)) {
    out.say(K::other_lesion, finding.lesion).quoted(finding.words);
  } else {
    out.say(K::lesion, finding.lesion);
  }
  if (finding.stage != DdStage::not_called) out.say(K::stage, finding.stage);
  write_place(out, finding);
  const bool has_words = !is_named_by_words(finding.lesion) && !finding.words.empty();
  if (has_words) out.quoted(finding.words);
  if (finding.degree != Degree::not_called) out.mark(",").say(K::degree, finding.degree);
  if (finding.dd_infected) out.mark(",").say(K::dd_in_it);
}

// A shoe is a block by its name; other materials stand behind the act.
void write_act(LineWriter& out, const Action& action) {
  const K said_as = facts_of(action.kind).said_as;
  if (action.material == Material::not_called) {
    out.say(said_as, action.kind);
    return;
  }
  const bool is_detail = !out.words_for(K::material, action.material).empty();
  const bool names_the_act = !is_detail && action.kind == ActionKind::block_on;
  if (!names_the_act) out.say(said_as, action.kind);
  out.say(is_detail ? K::material : K::block_of, action.material);
}

void write_action(LineWriter& out, const Action& action) {
  write_act(out.part(), action);
  if (action.by_whom != ByWhom::not_called) out.say(K::by_whom, action.by_whom);
  if (action.directed_by != ByWhom::not_called) out.say(K::directed_by, action.directed_by);
  write_claw(out, action.claw);
  if (!action.product.empty()) {
    out.say(K::with).free(action.product, TextExtent::to_separator);
  }
  const bool comes_off = facts_of(action.kind).time == ActTime::comes_off;
  if (action.when.said() && comes_off) out.mark(",").say(K::off);
  const bool names_a_day = action.when.weekday || action.when.date;
  if (names_a_day && facts_of(action.kind).said_as == K::withheld_act) out.say(K::till);
  write_time(out, action.when);
}

void write_measure(LineWriter& out, const Measure& measure) {
  write_claw(out.part(), measure.claw);
  const std::string length = to_text(measure.length);
  out.say(K::measure, measure.kind).raw(length.substr(0, length.find(' '))).say(K::mm);
}

void write_mobility(LineWriter& out, const MobilitySaid& mobility) {
  if (!mobility.said()) return;
  out.part().say(K::mobility).raw(std::to_string(*mobility.score));
  out.say(K::out_of).raw(std::to_string(facts_of(*mobility.scale).highest));
}

void write_note(LineWriter& out, std::string_view note) {
  if (!note.empty()) out.part().say(K::note).mark(":").raw(note);
}

void write_cow(LineWriter& out, const CowSaid& cow) {
  if (cow.known == CowKnown::unnumbered) {
    out.say(K::no_number);
    if (!cow.looks.empty()) out.mark(",").free(cow.looks, TextExtent::to_strong);
    return;
  }
  out.raw(cow.number);
  for (const std::string& other : cow.alternatives) out.say(K::alternative).raw(other);
  if (cow.known == CowKnown::doubtful && cow.alternatives.empty()) out.mark("?");
}

void write_reason(LineWriter& out, const Turn& turn, Reason reason) {
  if (reason == Reason::not_called) return;
  out.part();
  if (reason == Reason::lame) {
    write_feet(out.say(K::lame), turn.lame);
  } else if (reason == Reason::other) {
    out.say(K::came_for).free(turn.reason_words, TextExtent::of_a_reason);
  } else {
    out.say(K::reason, reason);
  }
}

std::string cow_line(const Turn& turn, const Language& language) {
  LineWriter out(language);
  write_cow(out, turn.cow);
  out.end_head(turn.cow.known != CowKnown::unnumbered);
  write_reason(out, turn, turn.reason);
  for (const Reason reason : turn.also) write_reason(out, turn, reason);
  for (const Action& action : turn.actions) write_action(out, action);
  if (turn.walks_sound) out.part().say(K::walks_sound);
  write_mobility(out, turn.mobility);
  if (turn.rest_fine) out.part().say(K::rest_fine);
  if (turn.end != TurnEnd::done) {
    out.part().say(K::turn_end, turn.end);
    if (!turn.end_reason.empty()) out.mark(",").free(turn.end_reason, TextExtent::of_an_end);
  }
  write_note(out, turn.note);
  return out.text();
}

/// "Wrap on; nothing found" can be said, the other way round it is asked which foot is meant.
bool is_treated(const FootCall& call) {
  return std::any_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
    return treats(action.kind) || plans(action.kind);
  });
}

std::string foot_line(const FootCall& call, const Language& language) {
  LineWriter out(language);
  out.say(K::foot, call.foot).end_head(true);
  const bool has_plain_state =
      call.state == FootState::not_lifted || call.state == FootState::nothing_found;
  const bool state_is_last = has_plain_state && is_treated(call);
  if (has_plain_state && !state_is_last) out.part().say(K::foot_state, call.state);
  for (const Finding& finding : call.findings) write_finding(out, finding);
  for (const Action& action : call.actions) write_action(out, action);
  if (state_is_last) out.part().say(K::foot_state, call.state);
  for (const Measure& measure : call.measures) write_measure(out, measure);
  if (call.trimmed != Trimmed::not_called) out.part().say(K::trimmed, call.trimmed);
  write_note(out, call.note);
  return out.text();
}

}  // namespace

std::vector<std::string> print_turn(const Turn& turn, const Language& language) {
  std::vector<std::string> lines = {cow_line(turn, language)};
  for (const FootCall& call : turn.feet) lines.push_back(foot_line(call, language));
  return lines;
}

}  // namespace evenclaw
