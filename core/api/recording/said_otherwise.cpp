#include "core/api/recording/said_otherwise.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

#include "core/api/recording/amount_alone.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/nearest.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// A phrase, a number or a word nobody knows.
struct Heard {
  TermKind kind = TermKind::unknown_word;
  int value = 0;
  std::string words;                // the first of them
  std::vector<std::string> phrase;  // all of them
  bool is_pointed_at = false;
  bool is_followed_closely = false;    // by another word, without a separator
  const Phrase* looks_like = nullptr;  // an unknown word: the known one it is a slip of
};

struct HeardLine {
  std::string number;
  FootSet feet;
  std::vector<Heard> said;  // without number, feet and what only joins
};

bool is_a_foot(TermKind kind) {
  return kind == TermKind::foot || kind == TermKind::feet;
}

const std::vector<TermKind>& all_kinds() {
  static const std::vector<TermKind> kinds = [] {
    std::vector<TermKind> all;
    all.reserve(term_kind_count);
    for (std::size_t i = 0; i < term_kind_count; ++i) all.push_back(static_cast<TermKind>(i));
    return all;
  }();
  return kinds;
}

const Phrase* looks_like(const std::vector<Token>& tokens, std::size_t at,
                         const Language& language) {
  const Nearest near = nearest_phrase(tokens, at, at, all_kinds(), language);
  if (near.words.empty() || is_another_word(tokens[at].folded, near)) return nullptr;
  return language.longest_match(tokens_of(near.words), 0).phrase;
}

/// Where the refusal points, in columns.
class Pointed {
 public:
  Pointed(std::string_view line, const Language& language) {
    const auto read = read_line(line, {Day{}, true, 1}, language);
    if (!read) faults_ = read.faults();
  }

  [[nodiscard]] bool at(int column) const {
    return std::any_of(faults_.begin(), faults_.end(), [&](const Fault& fault) {
      return fault.column <= column &&
             column < fault.column + static_cast<int>(character_count(fault.token));
    });
  }

 private:
  Faults faults_;
};

std::string word_at(std::string_view line, const Token& token) {
  return fold_case(line.substr(token.offset, token.length));
}

HeardLine heard(std::string_view line, const Language& language) {
  HeardLine all;
  const std::vector<Token> tokens = spoken_tokens(line, language);
  const Pointed pointed(line, language);
  std::size_t at = first_said(tokens, language);
  if (at < tokens.size() && tokens[at].kind == TokenKind::number) {
    all.number = line.substr(tokens[at].offset, tokens[at].length);
    if (!tokens[at].folded.empty()) all.number = tokens[at].folded;
    ++at;
  }
  while (at < tokens.size()) {
    const Token& token = tokens[at];
    const Language::Match match = language.longest_match(tokens, at);
    Heard part;
    part.is_pointed_at = pointed.at(column_at(line, token.offset));
    part.words = word_at(line, token);
    if (match.phrase != nullptr) {
      part.kind = match.phrase->kind;
      part.value = match.phrase->value;
      if (is_a_foot(part.kind)) all.feet.add(feet_in(*match.phrase));
    } else if (token.kind == TokenKind::number || token.kind == TokenKind::quoted) {
      part.kind = TermKind::number;
    } else if (token.kind == TokenKind::word) {
      part.looks_like = looks_like(tokens, at, language);
    }
    const bool is_word = token.kind == TokenKind::word && !language.fills(token.folded);
    const bool tells = match.phrase != nullptr || is_word || part.kind == TermKind::number;
    const std::size_t count = match.phrase == nullptr ? 1 : match.word_count;
    for (std::size_t i = at; i < at + count; ++i) part.phrase.push_back(word_at(line, tokens[i]));
    at += count;
    part.is_followed_closely = at < tokens.size() && tokens[at].kind == TokenKind::word;
    if (tells && !is_a_foot(part.kind) && !only_joins(part.kind)) all.said.push_back(part);
  }
  return all;
}

/// "Not done" and "unfinished" are the same kind of end; "both claws" are outside and inside.
bool is_the_same(const Heard& before, const Heard& now) {
  if (before.kind == TermKind::unknown_word || before.kind == TermKind::number) {
    return edit_distance(before.words, now.words) <= before.words.size() / 3;
  }
  if (before.kind != now.kind) return false;
  if (before.kind == TermKind::turn_end) return true;
  const bool is_both = before.kind == TermKind::claw && now.value == static_cast<int>(Claw::both);
  return is_both || before.value == now.value;
}

/// Takes the first that says it out of `now`, unless it is one that stands for two.
bool take(const Heard& before, std::vector<Heard>& now) {
  const auto same = std::find_if(now.begin(), now.end(),
                                 [&](const Heard& each) { return is_the_same(before, each); });
  if (same == now.end()) return false;
  const bool stands_for_two = before.kind == TermKind::claw && before.value != same->value;
  if (!stands_for_two) now.erase(same);
  return true;
}

bool puts_on_or_takes_off(TermKind kind) {
  return kind == TermKind::block_act || kind == TermKind::wrap_act;
}

/// What the rest of a refused line is worth once it is said again.
struct RestSaid {
  bool any = false;     // it held more than its slips, if only a foot
  bool called = false;  // what was found or done among it
  bool named_feet = false;
};

/// A word that nobody knows and that is no slip may be left out where what was found or done is
/// said again; to a word of two letters everything is near.
bool may_be_left_out(const Heard& slip) {
  constexpr std::size_t letters_of_no_slip = 2;
  if (slip.kind != TermKind::unknown_word) return false;
  return slip.looks_like == nullptr || slip.words.size() <= letters_of_no_slip;
}

bool is_called_of_a_foot(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::lesion,    TermKind::other_lesion, TermKind::block_act,
                                TermKind::wrap_act,  TermKind::product_act,  TermKind::opened_act,
                                TermKind::plain_act, TermKind::foot_state,   TermKind::lame};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

/// What can be put down by itself: left out, it is lost.
bool tells_by_itself(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::see_again, TermKind::watch,        TermKind::withheld_act, TermKind::handling,
      TermKind::block_of,  TermKind::mark_of,      TermKind::directed_by,  TermKind::mobility,
      TermKind::reason,    TermKind::unclear_word, TermKind::walks_sound,  TermKind::news,
      TermKind::gone,      TermKind::bar};
  return is_called_of_a_foot(kind) ||
         std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

/// "Pain relief" means one of two acts, "rot" one of several lesions.
bool may_be_meant_by(const Heard& unclear, const Heard& now) {
  const bool is_of_medicine = static_cast<UnclearWord>(unclear.value) == UnclearWord::pain_relief;
  const bool is_pain_relief =
      now.kind == TermKind::plain_act &&
      (static_cast<ActionKind>(now.value) == ActionKind::pain_relief_asked ||
       static_cast<ActionKind>(now.value) == ActionKind::pain_relief_given);
  return is_of_medicine ? is_pain_relief : is_called_of_a_foot(now.kind);
}

/// A word that nobody knows needs that more is said, for alone it could have been anything. "Wrap
/// on" without its foot is mended by words of a wrap, not by a finding; "DD" that lacked no more
/// than its foot by DD alone.
bool is_mended(const Heard& slip, const std::vector<Heard>& more, const RestSaid& rest) {
  const bool says_more = rest.any;
  if (rest.called && may_be_left_out(slip)) return true;
  const bool lacks_its_foot = is_called_of_a_foot(slip.kind) && !rest.named_feet;
  if (lacks_its_foot && !puts_on_or_takes_off(slip.kind)) return false;
  if (slip.kind == TermKind::unclear_word) {
    return std::any_of(more.begin(), more.end(),
                       [&](const Heard& each) { return may_be_meant_by(slip, each); });
  }
  if (puts_on_or_takes_off(slip.kind)) {
    return std::any_of(more.begin(), more.end(),
                       [&](const Heard& each) { return each.kind == slip.kind; });
  }
  if (slip.looks_like == nullptr) {
    const bool is_known = slip.kind != TermKind::unknown_word;
    if (!is_known) return !more.empty() && says_more;
    return !more.empty() || (says_more && !tells_by_itself(slip.kind));
  }
  return std::any_of(more.begin(), more.end(), [&](const Heard& each) {
    return each.kind == slip.looks_like->kind && each.value == slip.looks_like->value;
  });
}

/// "No wrap", "no DD": what is not so is left out when the line is said again.
void leave_out_what_is_not_so(std::vector<Heard>& said) {
  for (std::size_t at = 0; at + 1 < said.size();) {
    const bool is_denied =
        said[at].kind == TermKind::correction && said[at].is_followed_closely &&
        said[at + 1].is_pointed_at &&
        (is_called_of_a_foot(said[at + 1].kind) || said[at + 1].kind == TermKind::block_of);
    const auto first = said.begin() + static_cast<std::ptrdiff_t>(at);
    if (is_denied) {
      said.erase(first, first + 2);
    } else {
      ++at;
    }
  }
}

bool starts_a_correction(const HeardLine& line) {
  return !line.said.empty() && line.said.front().kind == TermKind::correction;
}

/// "Both wrapped": not of the foot that was named last.
bool is_of_both_feet(std::string_view line, const Language& language) {
  const std::vector<Token> tokens = tokens_of(line);
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const Phrase* phrase = language.longest_match(tokens, at).phrase;
    if (phrase != nullptr && phrase->kind == TermKind::both) return true;
  }
  return false;
}

bool has_all(const FootSet& feet, const FootSet& these) {
  return std::all_of(all_feet.begin(), all_feet.end(),
                     [&](Foot foot) { return feet.has(foot) || !these.has(foot); });
}

/// Words that tell of the cow or of her turn, not of a foot of hers.
bool is_of_the_cow(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::correction,  TermKind::lame,      TermKind::reason,   TermKind::came_for,
      TermKind::watch,       TermKind::mobility,  TermKind::turn_end, TermKind::turn_end_why,
      TermKind::walks_sound, TermKind::rest_fine, TermKind::news,     TermKind::today,
      TermKind::no_number,   TermKind::caller,    TermKind::writer,   TermKind::ditto,
      TermKind::whole_cow,   TermKind::done,      TermKind::go_ahead, TermKind::denied};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

/// It cannot be put on in two ways: one of them was wrong.
bool is_put_on_in_another_way(const Heard& before, const std::vector<Heard>& now) {
  const auto is_put_on = [](const Heard& each) {
    const auto said = puts_on_or_takes_off(each.kind)
                          ? fixture_said(static_cast<ActionKind>(each.value))
                          : std::nullopt;
    return said && is_on_after(said->step);
  };
  return is_put_on(before) && std::any_of(now.begin(), now.end(), [&](const Heard& each) {
           return each.kind == before.kind && is_put_on(each);
         });
}

/// True when `now` holds every word of `refused` of a kind that counts, or its like.
template <class Counts>
bool holds_all(std::string_view refused, std::string_view now, const Language& language,
               Counts counts) {
  if (!is_utf8(refused) || !is_utf8(now)) return false;
  const std::vector<Heard> said = heard(now, language).said;
  std::vector<Heard> after = said;
  std::vector<std::string> words;
  for (const Token& token : tokens_of(now)) words.push_back(word_at(now, token));
  const std::vector<Heard> before = heard(refused, language).said;
  return std::all_of(before.begin(), before.end(), [&](const Heard& part) {
    // "Sole" of "sole ulcr" is no measure once the line is said as it was meant.
    return !counts(part.kind) || take(part, after) || is_put_on_in_another_way(part, said) ||
           std::all_of(part.phrase.begin(), part.phrase.end(), [&](const std::string& word) {
             return std::find(words.begin(), words.end(), word) != words.end();
           });
  });
}

}  // namespace

bool only_joins(TermKind kind) {
  return kind == TermKind::time_in || kind == TermKind::conjunction || kind == TermKind::with ||
         kind == TermKind::both;
}

bool is_said_in_other_words(std::string_view refused, std::string_view now,
                            const Language& language) {
  if (!is_utf8(refused) || !is_utf8(now)) return false;
  if (is_amount_alone(refused, language)) return holds_the_amount(refused, now, language);
  HeardLine before = heard(refused, language);
  HeardLine after = heard(now, language);
  const std::size_t said_first = before.said.size();
  leave_out_what_is_not_so(before.said);
  const bool was_denied = before.said.size() < said_first;
  if (said_first == 0 || starts_a_correction(before) || starts_a_correction(after)) return false;
  if (!before.number.empty() && !after.number.empty() && before.number != after.number) {
    return false;
  }
  if (!before.feet.empty() && !has_all(after.feet, before.feet)) return false;
  if (before.said.empty() && (before.feet.empty() || after.said.empty())) return false;
  RestSaid rest{!before.feet.empty(), was_denied, !before.feet.empty()};
  std::vector<Heard> slips;
  for (const Heard& part : before.said) {
    if (take(part, after.said)) {
      rest.any = true;
      rest.called = rest.called || is_called_of_a_foot(part.kind);
    } else if (part.is_pointed_at) {
      slips.push_back(part);
    } else {
      return false;
    }
  }
  // "Frnts" is "fronts" once those are named.
  FootSet feet = before.feet;
  std::erase_if(slips, [&](const Heard& slip) {
    const bool is_named = slip.looks_like != nullptr && is_a_foot(slip.looks_like->kind) &&
                          has_all(after.feet, feet_in(*slip.looks_like));
    if (is_named) feet.add(feet_in(*slip.looks_like));
    return is_named;
  });
  // With every word, and the foot that one of them lacked.
  const bool adds_a_foot = !feet.empty() && feet != after.feet;
  if (adds_a_foot && !slips.empty()) return false;
  return std::all_of(slips.begin(), slips.end(),
                     [&](const Heard& slip) { return is_mended(slip, after.said, rest); });
}

bool holds_what_was_known(std::string_view refused, std::string_view now,
                          const Language& language) {
  return holds_all(refused, now, language, [](TermKind kind) {
    return kind != TermKind::unknown_word && kind != TermKind::number && !only_joins(kind);
  });
}

bool holds_what_was_called(std::string_view refused, std::string_view now,
                           const Language& language) {
  return holds_all(refused, now, language, tells_by_itself);
}

bool may_be_of_the_same_feet(std::string_view refused, FootSet spoken_of, std::string_view now,
                             FootSet named_last, const Language& language) {
  if (spoken_of.empty() || !is_utf8(refused) || !is_utf8(now)) return true;
  if (is_of_both_feet(refused, language)) return true;
  const RefusedFeet told = feet_in_refused(refused, language);
  if (!told.named.empty() || !told.one_of.empty()) return true;
  const std::vector<Heard> said = heard(refused, language).said;
  const bool is_of_her = std::any_of(said.begin(), said.end(),
                                     [](const Heard& part) { return is_of_the_cow(part.kind); });
  if (is_of_her) return true;
  const FootSet feet = feet_in_refused(now, language).named;
  return (feet.empty() ? named_last : feet) == spoken_of;
}

}  // namespace evenclaw
