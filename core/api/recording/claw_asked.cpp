#include "core/api/recording/claw_asked.hpp"

#include <algorithm>
#include <set>
#include <span>
#include <variant>

#include "core/api/behind_words.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

/// "LH inside".
struct ClawAlone {
  std::optional<Foot> foot;
  Claw claw;
};

std::optional<Claw> claw_at(std::span<const Token> tokens, std::size_t at,
                            const Language& language) {
  const bool is_last = at + 1 == tokens.size();
  const auto in_short = is_last ? language.claw_in_short(tokens[at].folded) : std::nullopt;
  if (in_short) return in_short;
  const Language::Match match = language.longest_match(tokens, at);
  const bool is_claw = match.phrase != nullptr && match.phrase->kind == TermKind::claw &&
                       at + match.word_count == tokens.size();
  return is_claw ? std::optional(static_cast<Claw>(match.phrase->value)) : std::nullopt;
}

std::optional<ClawAlone> claw_alone(std::string_view text, const Language& language) {
  const std::string_view said = trimmed(text);
  if (!is_utf8(said)) return std::nullopt;
  const std::vector<Token> tokens = tokens_of(said);
  if (tokens.empty()) return std::nullopt;
  const Language::Match first = language.longest_match(tokens, 0);
  const bool names_foot = first.phrase != nullptr && first.phrase->kind == TermKind::foot &&
                          first.word_count < tokens.size();
  const auto claw = claw_at(tokens, names_foot ? first.word_count : 0, language);
  if (!claw) return std::nullopt;
  ClawAlone alone{std::nullopt, *claw};
  if (names_foot) alone.foot = static_cast<Foot>(first.phrase->value);
  return alone;
}

/// "No, block outside", "LH no, block on outside": the claw of one that was put on, and no more.
std::optional<ClawAlone> claw_of_block(std::string_view text, const Language& language) {
  if (!is_utf8(text)) return std::nullopt;
  const std::vector<Token> tokens = tokens_of(trimmed(text));
  std::optional<Foot> foot;
  std::size_t at = 0;
  for (const TermKind kind : {TermKind::foot, TermKind::correction, TermKind::block_act}) {
    at = behind_commas(tokens, at);
    if (at >= tokens.size()) return std::nullopt;
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_it = match.phrase != nullptr && match.phrase->kind == kind;
    if (!is_it && kind != TermKind::foot) return std::nullopt;
    if (is_it && kind == TermKind::foot) foot = static_cast<Foot>(match.phrase->value);
    if (is_it) at += match.word_count;
    const bool is_on = !is_it || kind != TermKind::block_act ||
                       static_cast<ActionKind>(match.phrase->value) == ActionKind::block_on;
    if (!is_on) return std::nullopt;
  }
  const auto claw = at < tokens.size() ? claw_at(tokens, at, language) : std::nullopt;
  return claw ? std::optional(ClawAlone{foot, *claw}) : std::nullopt;
}

/// The act that an offered answer says with that claw.
std::optional<ActionKind> act_offered(const Warning& warning, Claw claw, const Language& language) {
  LineContext context;
  context.cow_open = true;
  for (const std::string& answer : warning.answers) {
    const Result<Line> line = read_line(answer, context, language);
    if (!line || line->clauses.empty()) continue;
    const auto* clause = std::get_if<TurnClause>(&line->clauses.back());
    const auto* act = clause == nullptr ? nullptr : std::get_if<ActionSaid>(clause);
    if (act != nullptr && act->action.claw == claw) return act->action.kind;
  }
  return std::nullopt;
}

/// The last that could have a claw and has none called is such an act.
bool awaits_claw_last(const TurnDraft& so_far, Foot foot, ActionKind kind) {
  const std::vector<TurnClause>& since = so_far.since_naming;
  const auto last = std::find_if(since.rbegin(), since.rend(), awaits_claw);
  const auto* act = last == since.rend() ? nullptr : std::get_if<ActionSaid>(&*last);
  return act != nullptr && act->action.kind == kind && so_far.feet_named.has(foot);
}

struct Answered {
  FootSet feet;
  std::optional<ActionKind> act;
  bool is_one_act = true;

  void add(Foot foot, ActionKind kind) {
    feet.add(foot);
    is_one_act = is_one_act && act.value_or(kind) == kind;
    act = kind;
  }
};

}  // namespace

std::optional<std::string> answer_which_claw(std::string_view text, const OpenQuestions& questions,
                                             const TurnDraft& so_far, const Language& language) {
  const std::optional<ClawAlone> said = claw_alone(text, language);
  if (!said) return std::nullopt;
  Answered answered;
  for (const Warning& warning : questions.open) {
    const bool is_of_foot = warning.foot && (!said->foot || *said->foot == *warning.foot);
    if (!is_of_foot || warning.claw != Claw::not_called) continue;
    const std::optional<ActionKind> act = act_offered(warning, said->claw, language);
    if (!act) continue;
    const std::vector<Warning>& asked = questions.just_asked;
    const bool was_just_asked = std::find(asked.begin(), asked.end(), warning) != asked.end();
    if (was_just_asked || awaits_claw_last(so_far, *warning.foot, *act)) {
      answered.add(*warning.foot, *act);
    }
  }
  if (!answered.act || !answered.is_one_act) return std::nullopt;
  if (answered.feet == so_far.feet_named) {
    return offered_act(std::nullopt, *answered.act, said->claw, language);
  }
  for (const Foot foot : all_feet) {
    if (answered.feet == FootSet{foot})
      return offered_act(foot, *answered.act, said->claw, language);
  }
  return std::nullopt;
}

std::optional<std::string> correction_to_claw(std::string_view text, const OpenQuestions& questions,
                                              const Language& language) {
  const std::optional<ClawAlone> of_block = claw_of_block(text, language);
  const std::optional<ClawAlone> said = of_block ? of_block : claw_alone(text, language);
  if (!said) return std::nullopt;
  const std::string correction = offered_correction(said->claw, language);
  std::set<std::string> offered;
  for (const Warning& warning : questions.just_asked) {
    const bool is_open =
        std::find(questions.open.begin(), questions.open.end(), warning) != questions.open.end();
    if (!is_open || (said->foot && said->foot != warning.foot)) continue;
    if (of_block && !warning.rule.starts_with("block-")) continue;
    for (const std::string& answer : warning.answers) {
      if (answer == correction || answer.ends_with(' ' + correction)) offered.insert(answer);
    }
  }
  return offered.size() == 1 ? std::optional(*offered.begin()) : std::nullopt;
}

std::optional<std::string> claw_in_full(std::string_view text, const Language& language) {
  const std::string_view said = trimmed(text);
  if (!is_utf8(said)) return std::nullopt;
  const std::vector<Token> tokens = tokens_of(said);
  const auto claw =
      tokens.size() == 1 ? language.claw_in_short(tokens.front().folded) : std::nullopt;
  return claw ? std::optional(std::string(language.say(TermKind::claw, *claw))) : std::nullopt;
}

}  // namespace evenclaw
