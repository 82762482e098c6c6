// What holds for every line and every turn, tried on seeded random ones.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "core/base/text.hpp"
#include "core/trade/call_line/parser.hpp"
#include "tests/core/trade/call_line/random_turn.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

constexpr std::uint64_t seed = 412;

void check_faults_lie_inside(const std::string& line, const Faults& faults) {
  const int last = static_cast<int>(character_count(valid_utf8(line)));
  for (const Fault& fault : faults) {
    CHECK_FALSE(fault.message.empty());
    CHECK(fault.column >= 1);
    CHECK(fault.column <= std::max(last, 1));
    CHECK(line.find(fault.token) != std::string::npos);
  }
}

std::vector<Reading> readings_of(const std::string& line, const LineContext& context) {
  std::vector<Reading> readings;
  for (const LineSort sort : possible_sorts(line, english())) {
    readings.push_back(read_as(sort, line, context, english()));
  }
  return readings;
}

bool all_tokens_taken(const std::string& line, bool cow_open) {
  const std::vector<Reading> readings = readings_of(line, saying::in_crush(cow_open));
  return std::all_of(readings.begin(), readings.end(), [](const Reading& reading) {
    return !reading.whole() || reading.tokens_taken == reading.tokens;
  });
}

// Reads or is refused with faults that point into the line; an accepted line has lost no token.
void check_line(const std::string& line, bool cow_open) {
  INFO("line: ", line);
  const Result<Line> result = read_line(line, saying::in_crush(cow_open), english());
  if (!result.ok()) {
    CHECK_FALSE(result.faults().empty());
    check_faults_lie_inside(line, result.faults());
  } else if (!is_comment_or_blank(line)) {
    CHECK(all_tokens_taken(line, cow_open));
  }
}

// "spray with X" may also be said "spray X", and a zone alone names its wall.
bool is_said_twice(const std::vector<Token>& tokens, std::size_t at, const Language::Match& match) {
  const std::size_t next = at + match.word_count;
  const bool zone_follows = next < tokens.size() && english().zone_in(tokens[next].folded);
  return match.phrase->kind == TermKind::with || zone_follows;
}

bool reads_so_far(const std::string& line, const LineContext& context) {
  const std::vector<Reading> readings = readings_of(line, context);
  return std::any_of(readings.begin(), readings.end(),
                     [](const Reading& reading) { return reading.faults.empty(); });
}

}  // namespace

TEST_CASE("every turn reads back as it was printed") {
  for (std::uint64_t stream = 0; stream < 3000; ++stream) {
    RandomStream draw(seed, stream);
    const Turn turn = random_turn::any_turn(draw);
    const std::vector<std::string> lines = print_turn(turn, english());
    INFO("stream ", stream, ": ", saying::joined(lines));
    CHECK(saying::turn_of(lines) == turn);
  }
}

TEST_CASE("random bytes are read or refused, never more") {
  for (std::uint64_t stream = 0; stream < 3000; ++stream) {
    RandomStream draw(seed + 1, stream);
    std::string bytes;
    const std::uint32_t size = draw.below(60);
    for (std::uint32_t i = 0; i < size; ++i) bytes += static_cast<char>(draw.below(256));
    check_line(bytes, draw.chance(0.5));
  }
}

TEST_CASE("known words in any order are read or refused, and no accepted line loses a token") {
  std::size_t accepted = 0;
  for (std::uint64_t stream = 0; stream < 6000; ++stream) {
    RandomStream draw(seed + 2, stream);
    const std::string line = random_turn::token_soup(draw, english());
    check_line(line, true);
    accepted += saying::faults_of(line).empty() ? 1 : 0;
  }
  CHECK(accepted > 200);  // the soup is not all refused, so the property is tried
}

TEST_CASE("a printed line without one of its phrases says something else or is refused") {
  for (std::uint64_t stream = 0; stream < 500; ++stream) {
    RandomStream draw(seed + 3, stream);
    Turn turn = random_turn::any_turn(draw);
    if (turn.feet.empty()) continue;
    turn.feet.resize(1);
    turn.feet.front().note.clear();
    const std::string line = print_turn(turn, english())[1];
    const Line whole = read_line(line, saying::in_crush(), english()).value();
    const std::vector<Token> tokens = tokens_of(line);
    for (std::size_t at = 0; at < tokens.size(); ++at) {
      const Language::Match match = english().longest_match(tokens, at);
      if (match.phrase == nullptr || is_said_twice(tokens, at, match)) continue;
      const Token& last = tokens[at + match.word_count - 1];
      const std::string shorter =
          line.substr(0, tokens[at].offset) + line.substr(last.offset + last.length);
      INFO(line, " without ", match.phrase->words);
      const Result<Line> other = read_line(shorter, saying::in_crush(), english());
      const bool says_the_same = other.ok() && other.value().clauses == whole.clauses;
      CHECK_FALSE(says_the_same);
      at += match.word_count - 1;
    }
  }
}

TEST_CASE("whatever is offered behind a half line can be said there") {
  for (std::uint64_t stream = 0; stream < 25; ++stream) {
    RandomStream draw(seed + 4, stream);
    const LineContext context = saying::in_crush(draw.chance(0.5));
    std::string half = draw.chance(0.5) ? "412" : "";
    for (int step = 0; step < 8; ++step) {
      const std::vector<Suggestion> offered = what_may_follow(half, context, english());
      INFO("half line: ", half);
      for (const Suggestion& each : offered) {
        INFO("offered: ", each.words);
        CHECK(reads_so_far(half + " " + each.words, context));
      }
      if (offered.empty()) break;
      half += " " + offered[draw.below(static_cast<std::uint32_t>(offered.size()))].words;
    }
  }
}

TEST_CASE("a line in capitals or with hyphens says the same") {
  for (std::uint64_t stream = 0; stream < 500; ++stream) {
    RandomStream draw(seed + 5, stream);
    Turn turn = random_turn::any_turn(draw);
    if (turn.feet.empty()) continue;
    turn.feet.resize(1);
    FootCall& call = turn.feet.front();
    call.note.clear();
    for (Finding& finding : call.findings) finding.words.clear();
    for (Action& action : call.actions) action.product.clear();
    call.findings.erase(
        std::remove_if(call.findings.begin(), call.findings.end(),
                       [](const Finding& f) { return is_named_by_words(f.lesion); }),
        call.findings.end());
    std::string line = print_turn(turn, english())[1];
    const Line plain = read_line(line, saying::in_crush(), english()).value();
    std::transform(line.begin(), line.end(), line.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
    INFO(line);
    const Result<Line> loud = read_line(line, saying::in_crush(), english());
    REQUIRE(loud.ok());
    CHECK(loud.value().clauses == plain.clauses);
  }
}
