// Whole days called in a language of which the sources know no word: what is on record is the same.
#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/base/text.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/trade/call_line/enciphered.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

namespace {

using Lines = std::vector<std::string>;

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool goes_on_in_a_word(char c) {
  return is_letter(c) || (c >= '0' && c <= '9') || c == '\'';
}

/// Calls `each` with every word of the text ("don't", "M2") and where it begins.
template <class F>
void for_each_word(const std::string& text, F&& each) {
  std::size_t from = 0;
  while (from < text.size()) {
    std::size_t to = from;
    if (is_letter(text[to])) {
      while (to < text.size() && goes_on_in_a_word(text[to])) ++to;
    }
    if (to > from) each(text.substr(from, to - from), from);
    from = to + 1;
  }
}

/// Turns what was said in the second language back; what the program says is English already.
class Interpreter {
 public:
  explicit Interpreter(const Lines& english_lines) {
    for (const Phrase& phrase : english().phrases()) learn(std::string(phrase.words));
    for (const std::string& line : english_lines) learn(line);
  }

  [[nodiscard]] std::string in_english(std::string text) const {
    std::string translated = text;
    for_each_word(text, [&](const std::string& word, std::size_t at) {
      const std::string meant = enciphered::in_english(word);
      if (known_.count(fold_case(meant)) > 0) translated.replace(at, word.size(), meant);
    });
    return translated;
  }

 private:
  void learn(const std::string& text) {
    for_each_word(text,
                  [this](const std::string& word, std::size_t) { known_.insert(fold_case(word)); });
  }

  std::set<std::string> known_;
};

/// Ids in the order in which they turn up: of cows without a number they are made of the words.
class Ids {
 public:
  std::string numbered(const std::string& text) {
    constexpr std::size_t id_size = 36;
    std::string out;
    std::size_t at = 0;
    while (at < text.size()) {
      const std::string piece = text.substr(at, id_size);
      if (uuid_from_text(piece)) {
        const std::size_t next = seen_.size() + 1;
        out += "#" + std::to_string(seen_.try_emplace(piece, next).first->second);
        at += id_size;
      } else {
        out += text[at++];
      }
    }
    return out;
  }

 private:
  std::map<std::string, std::size_t> seen_;
};

/// One visit: its day, today's feet, and its lines in English.
struct CalledVisit {
  std::string day;
  Lines lines;
};

enum class Entering { typed, from_a_file };

/// Everything on record, entry by entry, and what was asked when each visit was closed.
struct OnRecord {
  Lines entries;
  Lines asked;
};

Lines in_cipher(const Lines& lines) {
  Lines said;
  for (const std::string& line : lines) {
    said.push_back(line.rfind('#', 0) == 0 ? line : enciphered::said(line));
  }
  return said;
}

void enter(Recording recording, const Lines& lines, Entering entering) {
  if (entering == Entering::from_a_file) {
    (void)recording.say_all(lines).value();
    return;
  }
  for (const std::string& line : lines) (void)recording.say(line).value();
}

OnRecord recorded(const std::vector<CalledVisit>& visits, const Language& language,
                  Entering entering) {
  const bool is_cipher = &language != &english();
  Workplace place;
  Lines all;
  OnRecord record;
  for (const CalledVisit& called : visits) {
    all.insert(all.end(), called.lines.begin(), called.lines.end());
    const Lines lines = is_cipher ? in_cipher(called.lines) : called.lines;
    const Visit visit = place.start(called.day, {});
    enter(Recording::open(place.ports(), visit, language).value(), lines, entering);
    const VisitEnded ended = end_visit(place.ports(), visit, language).value();
    for (const OpenPoint& point : ended.open) {
      record.asked.push_back(std::string(word_of(point.kind)) + " " + point.words);
    }
  }
  const Interpreter interpreter(all);
  Ids ids;
  (void)place.store.read_everything([&](const Entry& entry) {
    const std::string body = ids.numbered(entry.body ? entry.body->bytes() : std::string());
    record.entries.push_back(entry.envelope.kind + " " +
                             (is_cipher ? interpreter.in_english(body) : body));
    return true;
  });
  if (!is_cipher) return record;
  for (std::string& words : record.asked) words = interpreter.in_english(words);
  return record;
}

void check_same(const std::vector<CalledVisit>& visits) {
  for (const Entering entering : {Entering::typed, Entering::from_a_file}) {
    const OnRecord in_english = recorded(visits, english(), entering);
    const OnRecord in_other_words = recorded(visits, enciphered::language(), entering);
    REQUIRE(in_other_words.entries.size() == in_english.entries.size());
    CHECK(in_english.entries.size() > visits.size());
    for (std::size_t i = 0; i < in_english.entries.size(); ++i) {
      CHECK(in_other_words.entries[i] == in_english.entries[i]);
    }
    CHECK(in_other_words.asked == in_english.asked);
  }
}

/// A visit of the files in data/; the file is named after its day.
CalledVisit visit_in(const std::string& folder, const std::string& name) {
  constexpr std::size_t length_of_day = 10;
  CalledVisit visit{name.substr(name.size() - length_of_day), {}};
  std::ifstream file("data/" + folder + "/" + name + ".calls");
  REQUIRE(file.is_open());
  for (std::string line; std::getline(file, line);) visit.lines.push_back(line);
  return visit;
}

}  // namespace

TEST_CASE("warnings answered, wraps still on, corrections and take-backs mean the same") {
  check_same({{"2026-10-06",
               {"caller Anna, writer Ben", "today all four", "118 lame LH",
                "LH outside sole ulcer middle, bad; block on inside; see again 28d", "rest fine",
                "205 lame RH", "RH DD raw behind; spray; wrap on, off Thu", "rest fine",
                "33 LH DD raw behind; wrap on", "rest fine", "44 RH DD raw behind; wrap on",
                "rest fine", "done"}},
              {"2026-10-27",
               {"44 wraps still on",
                "today all four",
                "205 recheck",
                "rest fine",
                "RH wrap still on",
                "33 routine",
                "rest fine",
                "done",
                "done",
                "33 wrap came off by itself",
                "118 recheck",
                "RH outside sole ulcer middle, plain; block still on",
                "no, left hind",
                "rest fine",
                "60 lame LH",
                "LH outside sole ulcer middle, bad; block on outside",
                "no, inside",
                "rest fine",
                "61 LH outside SU middle, bad; block on outside",
                "go ahead",
                "rest fine",
                "62 LH outside SU middle; DD raw behind",
                "no, no sole ulcer; no, no block",
                "no, no sole ulcer",
                "no, chronic",
                "rest fine",
                "done",
                "no, 63",
                "64 lame LH",
                "LH nothing found; rest fine",
                "done",
                "go ahead",
                "done",
                "321 recheck; RH wrap taken off; rest fine",
                "no, 231",
                "513 or 531 routine",
                "LH HHE slight; RH thin sole ulcer",
                "rest fine",
                "65 both hinds DD raw behind",
                "RH nothing after all",
                "rest fine",
                "no tag; LH SU; spray twice",
                "No 413",
                "413",
                "66, 67 stil lame",
                "66 and 67 still lame",
                "68 LH DD raw behind; DD chronic behind",
                "rest fine",
                "done"}}});
}

TEST_CASE("the days of the example and the messy ones leave the same on record") {
  check_same({visit_in("example", "2026-09-29"), visit_in("example", "2026-10-13"),
              visit_in("example", "2026-10-27")});
  check_same({visit_in("messy", "gate-2026-10-06"), visit_in("messy", "gate-2026-10-20")});
  check_same({visit_in("messy", "rain-2026-09-24"), visit_in("messy", "rain-2026-10-22")});
  check_same({visit_in("messy", "trainee-2026-09-25"), visit_in("messy", "trainee-2026-10-23")});
}
