#include "tests/stories/recorded_day.hpp"

#include <algorithm>
#include <map>
#include <string_view>

#include "core/api/cow_names.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw::test {
namespace {

void add_word(std::string& line, std::string_view word) {
  if (word.empty()) return;
  if (!line.empty()) line += ' ';
  line += word;
}

void add_part(std::string& line, const std::string& part) {
  line += (line.empty() ? "" : "; ") + part;
}

std::string claw_word(Claw claw) {
  const bool is_one = claw == Claw::outside || claw == Claw::inside || claw == Claw::both;
  return is_one ? std::string(word_of(claw)) : std::string();
}

std::string finding_words(const FindingRow& row) {
  std::string words = claw_word(row.claw);
  add_word(words, word_of(row.lesion));
  add_word(words, row.words);
  if (row.place != Place::not_called) add_word(words, word_of(row.place));
  if (row.degree != Degree::not_called) add_word(words, word_of(row.degree));
  if (row.stage != DdStage::not_called) add_word(words, word_of(row.stage));
  return words;
}

std::string act_words(const ActionRow& row) {
  std::string words(word_of(row.action));
  add_word(words, claw_word(row.claw));
  add_word(words, row.product);
  if (row.said_for) add_word(words, "for " + to_text(*row.said_for));
  return words;
}

/// All rows of one herd that a day is told from.
struct Told {
  std::vector<TurnRow> turns;
  std::vector<FootRow> feet;
  std::vector<FindingRow> findings;
  std::vector<ActionRow> acts;
  std::map<CowId, std::string> unsure;  // what a cow without a certain number was called
};

class TurnLine {
 public:
  TurnLine(const Told& told, const TurnRow& turn) : told_(told), turn_(turn) {}

  [[nodiscard]] std::string words() {
    line_ = who();
    if (turn_.reason != Reason::not_called) add_word(line_, word_of(turn_.reason));
    add_word(line_, to_text(turn_.lame));
    for (const Foot foot : all_feet) add_foot(foot);
    add_feet("fine", fine_);
    add_feet("not lifted", not_lifted_);
    add_section("cow:", acts_on({}));
    if (turn_.walks_sound) line_ += " | walks sound";
    if (!turn_.note.empty()) line_ += " | note: " + turn_.note;
    if (turn_.end != TurnEnd::done) {
      line_ += " | " + std::string(word_of(turn_.end)) + ": " + turn_.end_reason;
    }
    return line_;
  }

 private:
  [[nodiscard]] std::string who() const {
    const auto unsure = told_.unsure.find(turn_.cow);
    return unsure == told_.unsure.end() ? turn_.number_said : unsure->second;
  }

  [[nodiscard]] std::string acts_on(std::optional<Foot> foot) const {
    std::string words;
    for (const ActionRow& act : told_.acts) {
      if (act.turn == turn_.turn && act.foot == foot) add_part(words, act_words(act));
    }
    return words;
  }

  void add_section(std::string_view head, const std::string& words) {
    if (!words.empty()) line_ += " | " + std::string(head) + " " + words;
  }

  void add_feet(std::string_view head, const FootSet& feet) { add_section(head, to_text(feet)); }

  void add_foot(Foot foot) {
    const auto row = std::find_if(told_.feet.begin(), told_.feet.end(), [&](const FootRow& one) {
      return one.turn == turn_.turn && one.foot == foot;
    });
    if (row == told_.feet.end()) return;
    std::string words;
    for (const FindingRow& finding : told_.findings) {
      const bool is_here = finding.turn == turn_.turn && finding.foot == foot;
      if (is_here) add_part(words, finding_words(finding));
    }
    const std::string acts = acts_on(foot);
    const bool is_plain = words.empty() && acts.empty() && row->trimmed == Trimmed::not_called;
    if (row->state == FootState::nothing_found && is_plain) return fine_.add(foot);
    if (row->state == FootState::not_lifted && is_plain) return not_lifted_.add(foot);
    if (words.empty()) words = state_words(row->state);
    if (!acts.empty()) add_part(words, acts);
    if (row->trimmed == Trimmed::yes) add_part(words, "trimmed");
    if (row->trimmed == Trimmed::no) add_part(words, "not trimmed");
    add_section(word_of(foot), words);
  }

  static std::string state_words(FootState state) {
    return state == FootState::unsaid ? "not called" : std::string(word_of(state));
  }

  const Told& told_;
  const TurnRow& turn_;
  std::string line_;
  FootSet fine_;
  FootSet not_lifted_;
};

Told told_of(Store& store, HerdId herd, VisitId visit) {
  const std::vector<Filter> there = {{"visit", Compare::equal, Cell(to_text(visit))}};
  Told told;
  told.turns = select_as<TurnRow>(store, herd, there).value();
  told.feet = select_as<FootRow>(store, herd, there).value();
  told.findings = select_as<FindingRow>(store, herd, there, {"position"}).value();
  told.acts = select_as<ActionRow>(store, herd, there, {"position"}).value();
  const std::vector<CowRow> cows = select_as<CowRow>(store, herd).value();
  for (const CowRow& cow : cows) {
    if (cow.known != CowKnown::numbered) told.unsure[cow.cow] = recorded_as(cow);
  }
  std::sort(told.turns.begin(), told.turns.end(),
            [](const TurnRow& a, const TurnRow& b) { return a.turn < b.turn; });
  return told;
}

}  // namespace

std::vector<std::string> recorded_day(Store& store, HerdId herd, VisitId visit) {
  const Told told = told_of(store, herd, visit);
  std::vector<std::string> lines;
  for (const TurnRow& turn : told.turns) lines.push_back(TurnLine(told, turn).words());
  return lines;
}

}  // namespace evenclaw::test
