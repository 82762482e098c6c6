#include "core/sheets/words_of_her.hpp"

#include "core/sheets/signs_in_words.hpp"

namespace evenclaw {

std::vector<WordsOfHer> words_of_her(const CowSeen& cow) {
  std::vector<WordsOfHer> all;
  for (const TurnRow* turn : cow.turns) {
    const bool is_not_done = turn->end == TurnEnd::not_done;
    const bool has_reason = turn->end != TurnEnd::done && !turn->end_reason.empty();
    if (has_reason) {
      all.push_back(
          {is_not_done ? WordsAre::why_not_done : WordsAre::why_unfinished, turn->end_reason});
    }
    if (!turn->reason_words.empty()) all.push_back({WordsAre::came_for, turn->reason_words});
    if (!turn->note.empty()) all.push_back({WordsAre::note, turn->note});
  }
  for (const FootRow* row : cow.feet) {
    if (!row->note.empty()) all.push_back({WordsAre::note, row->note, row->foot});
  }
  return all;
}

std::string words_as_told(const WordsOfHer& said, const Wording& wording) {
  const std::string words(said.words);
  switch (said.are) {
    case WordsAre::why_not_done:
      return wording.say(Saying::with_reason,
                         {{"what", wording.say(Saying::was_not_done)}, {"why", words}});
    case WordsAre::why_unfinished:
      return wording.say(Saying::with_reason,
                         {{"what", wording.say(Saying::was_unfinished)}, {"why", words}});
    case WordsAre::came_for:
      return wording.say(BoxSaying::she_came_for, {{"what", words}});
    case WordsAre::note:
      return wording.say(BoxSaying::said_in_a_note, {{"what", words}});
  }
  return words;
}

bool is_only_asked(const WordsOfHer& said) {
  const bool is_reason = said.are == WordsAre::why_not_done || said.are == WordsAre::why_unfinished;
  return !is_reason || is_not_understood(said.words);
}

HeardAs heard_as(const WordsOfHer& said) {
  HeardAs as;
  as.may_be_found = is_only_asked(said);
  as.is_of_foot = said.foot.has_value();
  return as;
}

std::vector<WordsOfHer> words_naming_the_vet(const CowSeen& cow) {
  std::vector<WordsOfHer> naming;
  for (const WordsOfHer& said : words_of_her(cow)) {
    if (names_the_vet(said.words) && signs_in_words(said.words, heard_as(said)).empty()) {
      naming.push_back(said);
    }
  }
  return naming;
}

}  // namespace evenclaw
