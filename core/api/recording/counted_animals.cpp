#include "core/api/recording/counted_animals.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

#include "core/api/recording/held_back.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// What is said anew holds, the rest stays.
Batch mended(Batch batch, const Batch& right) {
  batch.counted = right.counted;
  batch.animals = right.animals;
  if (!right.place.empty()) batch.place = right.place;
  if (right.nothing_found) batch.nothing_found = true;
  if (right.trimmed != Trimmed::not_called) batch.trimmed = right.trimmed;
  if (!right.lifted.empty()) batch.lifted = right.lifted;
  batch.apart.insert(batch.apart.end(), right.apart.begin(), right.apart.end());
  return batch;
}

bool holds(const std::vector<std::string>& words, std::string_view line) {
  return std::find(words.begin(), words.end(), trimmed(line)) != words.end();
}

/// There is no count that "no, 11 heifers" or "12 heifers counted twice" could be of.
Fault why_not_mended(const BatchSaid& said, const Language& language, int line_number) {
  const std::string name = name_of(said.batch, language);
  if (said.counted_twice) {
    return {.slug = "call-impossible",
            .message = name + " are not counted twice at this visit, or at more than one place.",
            .line = line_number,
            .remedy = "Say how many and where they stand, as they were counted: \"" + name +
                      ", ..., " + std::string(language.say(TermKind::twice)) + "\"."};
  }
  return {.slug = "call-impossible",
          .message = "No animals were counted at this visit.",
          .line = line_number,
          .remedy =
              "Say the count without \"" + std::string(language.say(TermKind::correction)) + "\"."};
}

/// "No, 11" and nothing else.
const CowSaid* number_mended(const Line& line) {
  if (line.clauses.size() != 1) return nullptr;
  const auto* said = std::get_if<TurnClause>(&line.clauses.front());
  const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
  return right == nullptr ? nullptr : &right->cow;
}

/// "12 heifers", as it was said.
std::string counted_as(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  for (std::size_t at = 0; at + 1 < tokens.size(); ++at) {
    if (tokens[at].kind != TokenKind::number) continue;
    std::size_t end = at + 1;
    const auto counts_to = [&](std::size_t here) {
      const Phrase* phrase = language.longest_match(tokens, here).phrase;
      return phrase != nullptr && phrase->kind == TermKind::animals;
    };
    while (end + 1 < tokens.size() && !counts_to(end)) ++end;
    if (!counts_to(end)) end = at + 1;
    const std::size_t words = language.longest_match(tokens, end).word_count;
    const Token& last = tokens[end + std::max<std::size_t>(words, 1) - 1];
    return std::string(
        text.substr(tokens[at].offset, last.offset + last.length - tokens[at].offset));
  }
  return std::string(trimmed(text));
}

std::optional<std::int32_t> count_of(const CowSaid& said) {
  constexpr std::size_t most_digits = 3;
  const std::string digits = plain_number(said.number);
  if (said.known != CowKnown::numbered) return std::nullopt;
  const std::optional<int> count = whole_number(digits, most_digits);
  const bool could_be = count && *count >= fewest_in_a_batch && *count <= most_in_a_batch;
  return could_be ? count : std::nullopt;
}

}  // namespace

Outcome CountedAnimals::record(const BatchSaid& said, std::string_view text) {
  if (const RecordedBatch* same = book_.typed ? nullptr : batches_.again(text)) {
    book_.answers.add_there_already(name_of(said.batch, book_.language), same->entry);
    return Done{};
  }
  BatchRecorded body{book_.visit.visit, said.batch, {std::string(trimmed(text))}};
  if (body.batch.lifted.empty()) body.batch.lifted = book_.visit.todays_feet;
  const RecordedBatch* before = batches_.at_the_place_of(body.batch);
  // Without a place, the same words in a file are of another yard.
  if (before == nullptr && book_.typed && body.batch.place.empty())
    before = batches_.in_words(text);
  if (before != nullptr) {
    const bool is_meant =
        asked_.is_repeated_at_once(std::string(trimmed(text)), book_.answers.line());
    const Outcome asked =
        is_meant ? settle_unread(book_, {counted_as(text, book_.language), asked_.said()}, text)
                 : ask_whether_counted_before(before->body.batch, text);
    if (!asked || !is_meant) return asked;
  }
  return add(std::move(body), nullptr);
}

Outcome CountedAnimals::mend(const BatchSaid& said, std::string_view text) {
  const RecordedBatch* wrong =
      said.counted_twice ? batches_.counted_twice(said.batch) : batches_.meant_by(said.batch);
  const RecordedBatch* given = wrong;
  if (said.counted_twice) given = book_.typed ? nullptr : batches_.taken_back_in(text);
  const bool is_given_again = !book_.typed && given != nullptr && holds(given->body.words, text);
  if (is_given_again) {
    book_.answers.add_there_already(
        name_of(said.counted_twice ? said.batch : given->body.batch, book_.language), given->entry);
    return Done{};
  }
  if (wrong == nullptr) {
    refuse(book_, crush_, text, {why_not_mended(said, book_.language, book_.answers.line())});
    return Done{};
  }
  BatchRecorded body = wrong->body;
  body.batch = mended(body.batch, said.batch);
  body.words.emplace_back(trimmed(text));
  if (said.counted_twice) {
    body.batch = wrong->body.batch;
    body.batch.counted = 0;
    return add(std::move(body), wrong);
  }
  if (body.batch.together() < 1) {
    refuse(book_, crush_, text,
           {{.slug = "call-impossible",
             .message = "As many are on their own as would be counted.",
             .line = book_.answers.line(),
             .remedy = "Say how many they were, those on their own among them."}});
    return Done{};
  }
  return add(std::move(body), wrong);
}

/// A cow of the herd carries it, or nobody miscounts so far: more than twice as many (our
/// judgement).
bool CountedAnimals::may_be_the_next_cow(const CowSaid& right, std::int32_t count,
                                         const Batch& counted) const {
  return book_.finder.carrier(right.number).has_value() || count > 2 * counted.counted;
}

Result<bool> CountedAnimals::is_mended_by(std::string_view text, bool is_behind_batch) {
  const RecordedBatch* last = batches_.last();
  if (!is_behind_batch || last == nullptr) return false;
  const auto line = read_in_herd(book_, text, after_let_out(book_));
  const CowSaid* right = line ? number_mended(*line) : nullptr;
  if (right == nullptr) return false;
  const std::optional<std::int32_t> count = count_of(*right);
  if (!count && crush_.cow) return false;
  const std::string no(book_.language.say(TermKind::correction));
  const std::string animals(book_.language.say(TermKind::animals, last->body.batch.animals));
  const std::string mending = "\"" + no + ", " + right->number + ' ' + animals + "\"";
  const bool may_be_a_cow = count && may_be_the_next_cow(*right, *count, last->body.batch);
  if (count && !crush_.cow && !may_be_a_cow) {
    BatchSaid said;
    said.batch.counted = *count;
    said.batch.animals = last->body.batch.animals;
    said.mends = true;
    const Outcome mended = mend(said, text);
    if (!mended) return mended.faults();
    book_.last_line.counted = true;
    return true;
  }
  std::string what = "So many are not counted together, and no cow was named since.";
  std::string remedy = "Say how many they were: \"" + no + ", 11 " + animals +
                       "\"; or her number and all that holds.";
  if (count) {
    what = std::string("It is unclear whether that is how many they were, or the number of ") +
           (crush_.cow ? "the one who stands there." : "a cow.");
    remedy = "How many: " + mending +
             (crush_.cow ? "; her number: call what was found on her first, then this."
                         : "; a cow: \"" + std::string(book_.language.say(TermKind::never_mind)) +
                               "\", then " + right->number + " and what was found on her.");
  }
  refuse(book_, crush_, text,
         {{.slug = "call-impossible",
           .message = what,
           .line = book_.answers.line(),
           .remedy = remedy}});
  book_.last_line.counted = true;
  const Outcome kept =
      keep_as_unread(book_, {name_of(last->body.batch, book_.language), std::string(trimmed(text))},
                     what + " What holds?");
  if (!kept) return kept.faults();
  return true;
}

Outcome CountedAnimals::refused(std::string_view text) {
  book_.last_line.counted = false;
  hold_back_after(book_, crush_, text);
  return keep_as_unread(book_, {counted_as(text, book_.language), std::string(trimmed(text))},
                        "This count was not understood. How many were they, and what was found?");
}

void CountedAnimals::drop_misread_count(const Batch& batch) {
  if (!crush_.cow || !crush_.cow->named_in_refused || !crush_.cow->draft.words.empty()) return;
  if (plain_number(crush_.cow->draft.turn.cow.number) != std::to_string(batch.counted)) return;
  take_out(book_, crush_);
}

/// Said twice it may be another twelve, or the same: said once more right behind, it is others.
/// `before` is the count on record.
Outcome CountedAnimals::ask_whether_counted_before(const Batch& before, std::string_view text) {
  const std::string place = before.place.empty() ? "" : ", " + before.place + ',';
  asked_.ask(std::string(trimmed(text)), book_.answers.line());
  const std::string counted =
      name_of(before, book_.language) + place + " were counted at this visit already.";
  const RecordedBatch* last = batches_.last();
  const bool may_mend =
      last != nullptr && &last->body.batch == &before && batches_.in_words(text) == nullptr;
  const std::string mending = may_mend ? "; the same, as it is said now: \"" +
                                             std::string(book_.language.say(TermKind::correction)) +
                                             ", " + asked_.said() + '"'
                                       : std::string();
  refuse(book_, crush_, text,
         {{.slug = "call-impossible",
           .message = counted,
           .line = book_.answers.line(),
           .remedy = "Others, once more so many: say the line again now. The same: \"" +
                     std::string(book_.language.say(TermKind::never_mind)) + '"' + mending + '.'}});
  return keep_as_unread(book_, {counted_as(text, book_.language), asked_.said()},
                        counted + " Are they others, or the same?");
}

Outcome CountedAnimals::add(BatchRecorded body, const RecordedBatch* wrong) {
  const EntryId entry = book_.journal.fresh_id();
  EntryFacts facts{entry, {}, book_.by, {}};
  if (wrong != nullptr) facts.supersedes = wrong->entry;
  const Outcome added = book_.journal.add(body, facts);
  if (!added) return added;
  const bool is_taken_back = body.batch.counted == 0 && wrong != nullptr;
  const Batch& named = is_taken_back ? wrong->body.batch : body.batch;
  const std::string name = name_of(named, book_.language);
  ReplyItem& saved = book_.answers.add(ReplyKind::saved, "");
  saved.cow = name;
  saved.entry = entry;
  book_.answers
      .add(ReplyKind::told,
           (is_taken_back ? "counted twice, this one counts no more: " : std::string()) +
               told_of(named, book_.language))
      .cow = name;
  if (body.batch.lifted.empty()) {
    book_.answers.add(ReplyKind::mark, "which feet were lifted is not said: \"" +
                                           std::string(book_.language.say(TermKind::today)) +
                                           " ...\"");
  }
  if (wrong != nullptr) {
    batches_.mend(wrong->entry, entry, std::move(body));
  } else {
    batches_.add(entry, std::move(body));
  }
  return Done{};
}

}  // namespace evenclaw
