// A finding that was called with a question mark: it is kept as called, and asked about.
#include <algorithm>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/possible.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool is_at(const Finding& finding, Place said) {
  const bool white_line = is_of_the_white_line(finding.lesion);
  const bool is_heel = said == Place::heel && finding.place == Place::white_line_heel;
  const bool is_toe = said == Place::toe && finding.place == Place::white_line_toe;
  return finding.place == said || (white_line && (is_heel || is_toe));
}

/// What was doubtful still stands in the finding; put right since, nothing is doubtful any more.
bool still_says(const Finding& finding, const Phrase& said) {
  switch (said.kind) {
    case TermKind::claw:
      return finding.claw == static_cast<Claw>(said.value);
    case TermKind::lesion:
      return finding.lesion == static_cast<Lesion>(said.value);
    case TermKind::degree:
      return finding.degree == static_cast<Degree>(said.value);
    case TermKind::stage:
      return finding.stage == static_cast<DdStage>(said.value);
    case TermKind::place:
      return is_at(finding, static_cast<Place>(said.value));
    default:
      return false;
  }
}

struct Doubted {
  std::string words;
  TermKind kind;
};

/// What is said at a token; "out" is the claw.
std::optional<Phrase> phrase_at(const std::vector<Token>& tokens, std::size_t at,
                                const Language::Match& match, const Language& language) {
  const bool may_be_short = match.word_count < 2 && tokens[at].kind == TokenKind::word;
  const auto claw = may_be_short ? language.claw_in_short(tokens[at].folded) : std::nullopt;
  if (claw) {
    Phrase in_short{};
    in_short.kind = TermKind::claw;
    in_short.value = static_cast<int>(*claw);
    return in_short;
  }
  return match.phrase == nullptr ? std::nullopt : std::optional(*match.phrase);
}

/// "outside?" among the words beside a finding.
std::optional<Doubted> doubted_in(const Finding& finding, const Language& language) {
  if (is_named_by_words(finding.lesion)) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(finding.words, language);
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const std::size_t behind = at + std::max<std::size_t>(match.word_count, 1);
    const std::optional<Phrase> said = phrase_at(tokens, at, match, language);
    const bool is_doubtful =
        said && behind < tokens.size() && tokens[behind].kind == TokenKind::doubt;
    if (is_doubtful && still_says(finding, *said)) {
      const std::size_t from = tokens[at].offset;
      return Doubted{finding.words.substr(from, tokens[behind].offset + 1 - from), said->kind};
    }
    at = behind;
  }
  return std::nullopt;
}

Firing asked(const Situation& situation, const FootCall& call, const Finding& finding,
             const Doubted& doubted) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = finding.claw;
  firing.warning.words = sentence(std::string(spoken(call.foot))) + ", " + spoken_name(finding) +
                         ": \"" + doubted.words + "\" Is it so?";
  const Claw other = partner(finding.claw);
  if (doubted.kind == TermKind::claw && other != finding.claw) {
    firing.warning.answers = claw_correction(situation, call, finding, other);
  }
  firing.warning.answers.push_back(offered_go_ahead(situation.language));
  firing.causes = {{call.foot, About::doubt}};
  return firing;
}

}  // namespace

std::vector<Firing> called_in_doubt(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Finding& finding : call.findings) {
      const std::optional<Doubted> doubted = doubted_in(finding, situation.language);
      if (doubted) firings.push_back(asked(situation, call, finding, *doubted));
    }
  }
  return firings;
}

}  // namespace evenclaw
