#include "core/api/recording/answer_in_short.hpp"

#include <algorithm>
#include <set>
#include <variant>

#include "core/base/text.hpp"
#include "core/trade/action.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/check.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_answer = 40;  // characters

/// "LH wrap", with which the answers that were offered begin.
std::string common_beginning(const std::vector<std::string>& answers) {
  if (answers.size() < 2) return {};
  std::string beginning = answers.front();
  for (const std::string& answer : answers) {
    const auto parts =
        std::mismatch(beginning.begin(), beginning.end(), answer.begin(), answer.end());
    beginning.erase(parts.first, beginning.end());
  }
  const std::size_t space = beginning.rfind(' ');
  return space == std::string::npos ? std::string() : beginning.substr(0, space);
}

/// The act of a line that says one, perhaps behind its foot, and nothing else.
const ActionSaid* only_act(const Result<Line>& line) {
  if (!line || line->clauses.empty() || line->clauses.size() > 2) return nullptr;
  const auto* last = std::get_if<TurnClause>(&line->clauses.back());
  const auto* first = std::get_if<TurnClause>(&line->clauses.front());
  if (last == nullptr || first == nullptr) return nullptr;
  const bool names_only_the_foot =
      line->clauses.size() == 1 || std::holds_alternative<FeetNamed>(*first);
  return names_only_the_foot ? std::get_if<ActionSaid>(last) : nullptr;
}

bool tells_its_fate(FixtureStep step) {
  return is_off_after(step) || step == FixtureStep::left_on || step == FixtureStep::not_known;
}

std::ptrdiff_t withdrawals_asked(const std::vector<Warning>& open) {
  return std::count_if(open.begin(), open.end(), [](const Warning& warning) {
    return warning.rule == withdrawal_missing_rule;
  });
}

class Answers {
 public:
  Answers(std::string_view text, const Language& language) : text_(text), language_(language) {
    context_.cow_open = true;
  }

  [[nodiscard]] Result<Line> read(const std::string& line) const {
    return read_line(line, context_, language_);
  }

  void of_fixture(const Warning& warning, Fixture fixture) {
    const std::string beginning = common_beginning(warning.answers);
    if (beginning.empty()) return;
    const std::string line = beginning + ' ' + text_;
    const Result<Line> said = read(line);
    const ActionSaid* act = only_act(said);
    const auto told = act == nullptr ? std::nullopt : fixture_said(act->action.kind);
    if (told && told->fixture == fixture && tells_its_fate(told->step)) lines_.insert(line);
  }

  /// A time alone is of both, as "withdrawal 2d" is; milkings are of the milk. Where one of the two
  /// alone was told it is of the other.
  void of_withdrawal(MilkAndMeat told) {
    using A = ActionKind;
    std::vector<A> kinds = {A::withheld, A::milk_withheld};
    if (told.milk && !told.meat) kinds = {A::meat_withheld};
    if (told.meat && !told.milk) kinds = {A::milk_withheld};
    for (const A kind : kinds) {
      const std::string line =
          std::string(language_.say(TermKind::withheld_act, kind)) + ' ' + text_;
      const Result<Line> said = read(line);
      const ActionSaid* act = only_act(said);
      if (act == nullptr || act->action.kind != kind) continue;
      lines_.insert(line);
      return;
    }
  }

  [[nodiscard]] std::optional<std::string> only_one() const {
    return lines_.size() == 1 ? std::optional(*lines_.begin()) : std::nullopt;
  }

 private:
  std::string text_;
  const Language& language_;
  LineContext context_;
  std::set<std::string> lines_;
};

}  // namespace

std::optional<std::string> answer_in_short(std::string_view text, const std::vector<Warning>& open,
                                           const Language& language, MilkAndMeat told) {
  const std::string_view said = trimmed(text);
  if (open.empty() || said.empty() || said.size() > longest_answer) return std::nullopt;
  Answers answers(said, language);
  if (answers.read(std::string(said))) return std::nullopt;
  const bool is_of_one = withdrawals_asked(open) == 1;
  for (const Warning& warning : open) {
    if (const std::optional<Fixture> fixture = fixture_asked_about(warning)) {
      answers.of_fixture(warning, *fixture);
    }
    if (is_of_one && warning.rule == withdrawal_missing_rule) answers.of_withdrawal(told);
  }
  return answers.only_one();
}

std::optional<std::string> withdrawal_of_all(std::string_view text,
                                             const std::vector<Warning>& open,
                                             const Language& language, MilkAndMeat told) {
  const std::string_view said = trimmed(text);
  if (said.empty() || said.size() > longest_answer || withdrawals_asked(open) < 2) {
    return std::nullopt;
  }
  Answers answers(said, language);
  answers.of_withdrawal(told);
  return answers.only_one();
}

std::optional<std::string> score_in_short(std::string_view text,
                                          std::span<const RefusedLine> refused,
                                          const Language& language) {
  const std::string_view said = trimmed(text);
  if (said.empty() || said.size() > longest_answer) return std::nullopt;
  const auto asks_for_a_scale = [&language](const RefusedLine& line) {
    if (!is_utf8(line.text)) return false;
    const std::vector<Token> tokens = tokens_of(line.text);
    for (std::size_t at = 0; at < tokens.size(); ++at) {
      const Phrase* phrase = language.longest_match(tokens, at).phrase;
      if (phrase != nullptr && phrase->kind == TermKind::mobility) return true;
    }
    return false;
  };
  if (std::none_of(refused.begin(), refused.end(), asks_for_a_scale)) return std::nullopt;
  const Answers answers(said, language);
  if (answers.read(std::string(said))) return std::nullopt;
  const std::string line = std::string(language.say(TermKind::mobility)) + ' ' + std::string(said);
  const Result<Line> read = answers.read(line);
  if (!read || read->clauses.size() != 1) return std::nullopt;
  const auto* clause = std::get_if<TurnClause>(&read->clauses.front());
  const bool is_score = clause != nullptr && std::holds_alternative<MobilityTold>(*clause);
  return is_score ? std::optional(line) : std::nullopt;
}

std::string told_in_full(const std::string& line, const Language& language) {
  LineContext context;
  context.cow_open = true;
  const Result<Line> said = read_line(line, context, language);
  const ActionSaid* act = only_act(said);
  const std::string both(language.say(TermKind::withheld_act, ActionKind::withheld));
  if (act == nullptr || act->action.kind != ActionKind::withheld || line.find(both) != 0) {
    return line;
  }
  return line + " (milk and meat; of the milk alone: " +
         std::string(language.say(TermKind::withheld_act, ActionKind::milk_withheld)) +
         line.substr(both.size()) + ")";
}

bool is_meant_in_short(std::string_view line, const Language& language) {
  LineContext context;
  context.cow_open = true;
  const Result<Line> said = read_line(line, context, language);
  const ActionSaid* act = only_act(said);
  if (act == nullptr) return false;
  const std::optional<FixtureSaid> told = fixture_said(act->action.kind);
  const bool tells_which_claw = is_called(act->action.claw);
  return tells_withdrawal(act->action.kind) || tells_which_claw ||
         (told && tells_its_fate(told->step));
}

}  // namespace evenclaw
