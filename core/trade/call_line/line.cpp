#include "core/trade/call_line/line.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/parser.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"

namespace evenclaw {

Clause::Clause(const Clause& other) = default;
Clause::Clause(Clause&& other) noexcept = default;
Clause& Clause::operator=(const Clause& other) = default;
Clause& Clause::operator=(Clause&& other) noexcept = default;
Clause::~Clause() = default;

bool operator==(const Clause& a, const Clause& b) {
  return static_cast<const AnyClause&>(a) == static_cast<const AnyClause&>(b);
}

namespace {

constexpr std::size_t longest_line_bytes = 4096;

Fault fault_at(std::string_view slug, std::string message, int column, const LineContext& context) {
  Fault fault;
  fault.slug = std::string(slug);
  fault.message = std::move(message);
  fault.line = context.line_number;
  fault.column = column;
  return fault;
}

bool is_control(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return (byte < 0x20 && c != '\t') || byte == 0x7F;
}

// The byte at which the text stops being UTF-8.
std::size_t first_bad_byte(std::string_view text) {
  constexpr std::size_t longest_character = 4;
  std::size_t at = 0;
  while (at < text.size()) {
    std::size_t size = 1;
    while (size <= longest_character && !is_utf8(text.substr(at, size))) ++size;
    if (size > longest_character) return at;
    at += size;
  }
  return at;
}

// How far a reading got before it met something it could not take. "102 wrap off, nothing found"
// is all read as a turn that lacks a foot, and what is asked for is the foot.
int reach(const Reading& reading, std::string_view text) {
  if (reading.tokens > 0 && reading.tokens_taken == reading.tokens) {
    return column_at(text, text.size());
  }
  return reading.faults.empty() ? column_at(text, text.size()) : reading.faults.front().column;
}

// "412 backs and RH DD": a foot right behind her number, and nothing that is news of it.
bool is_rather_of_a_turn(const Reading& news, std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t behind = first_said(tokens, language) + 1;
  const Phrase* phrase =
      behind < tokens.size() ? language.longest_match(tokens, behind).phrase : nullptr;
  const bool names_feet =
      phrase != nullptr && (phrase->kind == TermKind::foot || phrase->kind == TermKind::feet);
  return names_feet &&
         std::none_of(news.line.clauses.begin(), news.line.clauses.end(),
                      [](const Clause& said) { return std::holds_alternative<NewsSaid>(said); });
}

Faults all_faults(Reading reading) {
  if (reading.missing) reading.faults.push_back(*std::move(reading.missing));
  return std::move(reading.faults);
}

}  // namespace

bool tells_news(const Line& line) {
  return std::any_of(line.clauses.begin(), line.clauses.end(),
                     [](const Clause& clause) { return std::holds_alternative<NewsSaid>(clause); });
}

Result<Line> read_line(std::string_view text, const LineContext& context,
                       const Language& language) {
  text = without_line_end(text);
  if (std::optional<Fault> fault = not_a_line(text, context)) return *std::move(fault);
  if (is_comment_or_blank(text)) return Line{};
  std::optional<Reading> furthest;
  std::optional<Line> beside_her_past;
  for (const LineSort sort : possible_sorts(text, language)) {
    Reading reading = read_as(sort, text, context, language);
    if (reading.whole()) return std::move(reading.line);
    if (reading.whole_beside_her_past()) beside_her_past = reading.line;
    const bool goes_further = !furthest || reach(*furthest, text) < reach(reading, text);
    const bool is_asked_for =
        !furthest || sort != LineSort::news || !is_rather_of_a_turn(reading, text, language);
    if (goes_further && is_asked_for) furthest = std::move(reading);
  }
  if (beside_her_past) return *std::move(beside_her_past);
  return all_faults(std::move(*furthest));
}

std::string_view without_line_end(std::string_view text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.remove_suffix(1);
  return text;
}

std::optional<Fault> not_a_line(std::string_view text, const LineContext& context) {
  if (text.size() > longest_line_bytes) {
    return fault_at("line-too-long",
                    "the line has " + std::to_string(text.size()) + " bytes, more than " +
                        std::to_string(longest_line_bytes),
                    0, context);
  }
  if (!is_utf8(text)) {
    return fault_at("call-not-understood", "this is not text (UTF-8)",
                    column_at(text, first_bad_byte(text)), context);
  }
  const auto control = std::find_if(text.begin(), text.end(), is_control);
  if (control != text.end()) {
    const auto at = static_cast<std::size_t>(control - text.begin());
    return fault_at("call-not-understood", "a control character is no part of a called line",
                    column_at(text, at), context);
  }
  const std::string_view inner = trimmed(text);
  if (inner.size() > 1 && inner[0] == '#' && is_digit(inner[1])) {
    Fault fault =
        fault_at("call-not-understood", "# makes the line a comment, and a number follows",
                 column_at(text, static_cast<std::size_t>(inner.data() - text.data())), context);
    fault.token = "#";
    fault.remedy = "leave out # for the cow, or put a space behind it for a comment";
    return fault;
  }
  return std::nullopt;
}

bool is_comment_or_blank(std::string_view text) {
  const std::string_view inner = trimmed(text);
  return inner.empty() || inner.front() == '#';
}

}  // namespace evenclaw
