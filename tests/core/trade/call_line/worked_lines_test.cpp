// The worked lines of docs/format/call-line.md, read from that page and tried as they stand there.
#include "tests/core/trade/call_line/worked_lines.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <string>
#include <vector>

#include "tests/core/trade/call_line/enciphered.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using saying::rows_under;
using saying::WorkedLine;

namespace {

/// A language, and what turns its words into those of the page.
struct Tongue {
  const Language& language;
  std::string (*on_the_page)(std::string_view);
};

std::string as_it_is(std::string_view text) {
  return std::string(text);
}

const Tongue in_english = {english(), as_it_is};
const Tongue in_cipher = {enciphered::language(), enciphered::in_english};

/// The same line in a language of which the page knows no word.
WorkedLine in_other_words(WorkedLine row) {
  for (std::string& line : row.before) line = enciphered::said(line);
  row.line = enciphered::said(row.line);
  return row;
}

struct ToldClause {
  const Tongue& tongue;

  std::string operator()(const CowNamed& said) const { return said.cow.number; }

  std::string operator()(const TurnClause&) const { return "said of the cow"; }

  std::string operator()(const TurnEnded&) const { return "done"; }

  std::string operator()(const TodaysFeetSaid& said) const { return "today " + to_text(said.feet); }

  std::string operator()(const CallerSaid& said) const {
    return "caller " + tongue.on_the_page(said.name);
  }

  std::string operator()(const WriterSaid& said) const {
    return "writer " + tongue.on_the_page(said.name);
  }

  std::string operator()(const GoAheadSaid&) const { return "go ahead"; }

  std::string operator()(const BatchSaid&) const { return "counted"; }

  std::string operator()(const NewsSaid& said) const {
    const std::string feet = said.feet.empty() ? "" : " " + to_text(said.feet);
    const std::string all = said.all ? ", all" : "";
    return "news " + said.number + " " + std::string(word_of(said.news)) + feet + all;
  }
};

std::string joined_with(std::string_view mark, const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : std::string(mark)) + part;
  return text;
}

std::string told_batch(const BatchSaid& said, const Tongue& tongue) {
  const Batch& batch = said.batch;
  std::string words = std::to_string(batch.counted) + ' ' + std::string(word_of(batch.animals));
  if (said.mends) return "mended to " + words;
  if (!batch.place.empty()) words += ", " + tongue.on_the_page(batch.place);
  words += "; lifted " + (batch.lifted.empty() ? "today's feet" : to_text(batch.lifted));
  if (batch.nothing_found) words += "; nothing found";
  if (batch.trimmed == Trimmed::yes) words += "; trimmed";
  if (batch.apart.empty()) return words;
  return words + "; apart " + tongue.on_the_page(joined_with(", ", batch.apart));
}

bool counts_animals(const Line& line) {
  return !line.clauses.empty() && std::holds_alternative<BatchSaid>(line.clauses.front());
}

/// The count, and each cow that is apart.
std::string batch_read_back(const Line& line, const Tongue& tongue) {
  std::vector<std::string> told;
  for (const Clause& clause : line.clauses) {
    if (const auto* said = std::get_if<BatchSaid>(&clause))
      told.push_back(told_batch(*said, tongue));
    const auto* named = std::get_if<CowNamed>(&clause);
    if (named == nullptr) continue;
    told.push_back("cow " + named->cow.number + tongue.on_the_page(named->cow.looks));
  }
  return saying::joined(told);
}

bool speaks_of_a_turn(const Line& line) {
  for (const Clause& clause : line.clauses) {
    if (std::holds_alternative<CowNamed>(clause)) return true;
    if (std::holds_alternative<TurnClause>(clause)) return true;
  }
  return false;
}

std::string read_back(const WorkedLine& row, const Tongue& tongue) {
  TurnDraft draft;
  bool cow_open = false;
  for (const std::string& line : row.before) {
    CHECK(saying::say(draft, cow_open, line, tongue.language).empty());
  }
  const Result<Line> line = read_line(row.line, saying::in_crush(cow_open), tongue.language);
  const Faults faults = saying::say(draft, cow_open, row.line, tongue.language);
  if (!faults.empty()) return "refused: " + faults.front().message;
  if (counts_animals(line.value())) return batch_read_back(line.value(), tongue);
  if (speaks_of_a_turn(line.value())) {
    return tongue.on_the_page(saying::joined(print_turn(draft.turn, tongue.language)));
  }
  std::vector<std::string> told;
  for (const Clause& clause : line.value().clauses) {
    told.push_back(std::visit(ToldClause{tongue}, clause));
  }
  return saying::joined(told);
}

std::string refused(const WorkedLine& row, const Tongue& tongue) {
  std::vector<std::string> told;
  for (const Fault& fault : saying::faults_of(row.line, !row.before.empty(), tongue.language)) {
    told.push_back(std::to_string(fault.column) + " " + tongue.on_the_page(fault.token) + ": " +
                   fault.slug);
  }
  return saying::joined(told);
}

}  // namespace

TEST_CASE("the worked lines of the page read back as the page says") {
  const std::vector<WorkedLine> rows = rows_under("read back");
  CHECK(rows.size() == 101);
  for (const WorkedLine& row : rows) {
    INFO("line ", row.number, ": ", row.line);
    CHECK(read_back(row, in_english) == row.outcome);
  }
}

TEST_CASE("the refused lines of the page are refused where the page says") {
  const std::vector<WorkedLine> rows = rows_under("refused");
  CHECK(rows.size() == 75);
  for (const WorkedLine& row : rows) {
    INFO("line ", row.number, ": ", row.line);
    CHECK(refused(row, in_english) == row.outcome);
  }
}

TEST_CASE("in other words every worked line says the same and is printed in those words") {
  for (const WorkedLine& row : rows_under("read back")) {
    INFO("line ", row.number, ": ", row.line);
    CHECK(read_back(in_other_words(row), in_cipher) == row.outcome);
    CHECK(in_other_words(row).line != row.line);
  }
}

TEST_CASE("in other words every refused line is refused at the same place") {
  for (const WorkedLine& row : rows_under("refused")) {
    INFO("line ", row.number, ": ", row.line);
    CHECK(refused(in_other_words(row), in_cipher) == row.outcome);
  }
}

TEST_CASE("the page lists every word that is understood") {
  std::ifstream file(saying::page);
  const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  for (const Phrase& phrase : english().phrases()) {
    CAPTURE(phrase.words);
    CHECK(text.find("`" + std::string(phrase.words) + "`") != std::string::npos);
  }
}
