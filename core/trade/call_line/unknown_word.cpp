#include "core/trade/call_line/unknown_word.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/batch_line.hpp"
#include "core/trade/call_line/lookalike.hpp"
#include "core/trade/call_line/nearest.hpp"

namespace evenclaw {

namespace {

std::string_view said_by(const UnknownWord& word, std::size_t first, std::size_t count) {
  const Token& last = word.tokens[first + count - 1];
  const std::size_t begin = word.tokens[first].offset;
  return word.text.substr(begin, last.offset + last.length - begin);
}

Term term_of(const UnknownWord& word, std::size_t first, std::size_t count) {
  Term term;
  term.kind = TermKind::unknown_word;
  term.said = said_by(word, first, count);
  term.first_token = first;
  term.token_count = count;
  return term;
}

bool fills(const Token& token, const Language& language) {
  return token.kind == TokenKind::word && language.fills(token.folded);
}

// How many words stand here that only join others. Of words so short everything is near, so none is
// taken for a slip, unless with the word behind it: "the outsde".
std::size_t fillers_at(const UnknownWord& word, const Language& language) {
  std::size_t end = word.at;
  while (end < word.tokens.size() && fills(word.tokens[end], language) &&
         language.longest_match(word.tokens, end).phrase == nullptr) {
    ++end;
  }
  const std::size_t count = end - word.at;
  if (count == 0) return 0;
  const Nearest near =
      nearest_phrase(word.tokens, word.at, word.at, kinds_after(word.spot), language);
  return near.token_count > count ? 0 : count;
}

/// "12 heifers all good but 413 has DD": who was not like the others is named behind "bar".
std::optional<PlacedFault> one_apart(const UnknownWord& word, const Language& language) {
  const std::size_t number = word.at + 1;
  const bool is_behind_a_count = word.spot == Spot::batch_told || word.spot == Spot::batch_feet ||
                                 word.spot == Spot::batch_apart;
  const bool names_one = is_behind_a_count && number < word.tokens.size() &&
                         word.tokens[number].kind == TokenKind::number &&
                         fills(word.tokens[word.at], language);
  if (!names_one) return std::nullopt;
  const std::string_view before = trimmed(word.text.substr(0, word.tokens[word.at].offset));
  const Term shown = term_of(word, word.at, 1);
  return PlacedFault{not_understood(quoted(shown.said) + " is not understood",
                                    "say \"" + std::string(before) + ' ' +
                                        std::string(language.say(TermKind::bar)) + ' ' +
                                        std::string(said_by(word, number, 1)) +
                                        "\"; what was found on her is called on the next line"),
                     shown};
}

}  // namespace

PlacedFault refusal_of(const UnknownWord& word, const Language& language) {
  if (auto apart = one_apart(word, language)) return *std::move(apart);
  if (const std::size_t fillers = fillers_at(word, language)) {
    const Term shown = term_of(word, word.at, fillers);
    return {not_understood(quoted(shown.said) + " is not understood", "leave it out"), shown};
  }
  const Term first = term_of(word, word.at, 1);
  if (const std::string latin = in_latin_letters(first.said); !latin.empty()) {
    return {not_understood(
                quoted(first.said) + " holds letters of another alphabet that only look like these",
                "type it anew: " + latin),
            first};
  }
  const std::vector<TermKind> kinds = kinds_after(word.spot);
  const std::vector<TermKind> kinds_before = kinds_after(word.spot_before);
  const Nearest alone = nearest_phrase(word.tokens, word.at, word.at, kinds, language);
  const Nearest together =
      nearest_phrase(word.tokens, word.at, word.last_term, kinds_before, language);
  // The word may belong to what was taken just before: "sole ulsr" began as "sole".
  const bool is_together = together.first_token < word.at && together.distance <= alone.distance;
  const Nearest& near = is_together ? together : alone;
  const Term shown = term_of(word, near.first_token, near.token_count);
  // Words that are known, but not here, are no slip of themselves; to a single letter all is near.
  const bool is_a_slip = fold_case(near.words) != fold_case(shown.said) && shown.said.size() > 1 &&
                         !is_another_word(shown.said, near);
  std::string remedy = is_a_slip ? meant_by(near) : "";
  if (word.spot == Spot::batch_number) remedy = remedy_behind_a_count;
  if (remedy.empty() && word.spot == Spot::today) {
    remedy = "say such as \"{today all four}\", \"{today hinds}\"";
  }
  return {not_understood(quoted(shown.said) + " is not understood; expected " +
                             expected_names(is_together ? kinds_before : kinds),
                         std::move(remedy)),
          shown};
}

}  // namespace evenclaw
