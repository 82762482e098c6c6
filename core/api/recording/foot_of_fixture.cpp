#include "core/api/recording/foot_of_fixture.hpp"

#include <optional>
#include <vector>

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

std::optional<Fixture> fixture_told_of(std::string_view said, const Language& language) {
  const std::vector<Token> tokens = tokens_of(said);
  if (tokens.empty()) return std::nullopt;
  const Phrase* phrase = language.longest_match(tokens, 0).phrase;
  const bool is_act = phrase != nullptr &&
                      (phrase->kind == TermKind::block_act || phrase->kind == TermKind::wrap_act);
  if (!is_act) return std::nullopt;
  const auto told = fixture_said(static_cast<ActionKind>(phrase->value));
  if (!told || told->step == FixtureStep::put_on) return std::nullopt;
  return told->fixture;
}

}  // namespace

std::string remedy_with_foot(const Rows& past, std::string_view said, const Language& language) {
  const std::optional<Fixture> fixture = fixture_told_of(said, language);
  if (!fixture) return {};
  std::string lines;
  for (const Foot foot : all_feet) {
    if (fixtures_left(past, foot, *fixture).empty()) continue;
    if (!lines.empty()) lines += ", ";
    lines += '"' + std::string(language.say(TermKind::foot, foot)) + ' ' + std::string(said) + '"';
  }
  if (!lines.empty()) return "say the foot first: " + lines;
  return with_quoted_words(
      "no " + std::string(name_of(*fixture)) +
          " is known on her; was it another cow? Else say the foot first: {LF, "
          "RF, LH, RH}",
      language);
}

}  // namespace evenclaw
