#include "core/api/importing/taking_over.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/base/random.hpp"
#include "tests/core/api/importing/list_taken.hpp"

namespace evenclaw::test {

namespace {

/// Lists as herds have them, few numbers and few days so that everything meets: cows that leave and
/// whose numbers are given on, tags of some, events of some, names told twice.
class AnyList {
 public:
  explicit AnyList(std::uint64_t seed) : random_(20261104, seed) {}

  std::string cows() {
    std::string text = "number;tag;name;breed;born;calved;lactation;dry off;due;left;reason\n";
    const std::uint32_t rows = 1 + random_.below(7);
    for (std::uint32_t i = 0; i < rows; ++i) text += cow_line();
    return text;
  }

  std::string events() {
    std::string text = "number;tag;event;day;lactation;reason\n";
    const std::uint32_t rows = 1 + random_.below(9);
    for (std::uint32_t i = 0; i < rows; ++i) text += event_line();
    return text;
  }

  /// Words that are codes of the atlas, said word by word, passed over, not known, or none.
  std::string findings() {
    std::string text = "number;tag;day;leg;claw;lesion;degree;stage;remark\n";
    const std::uint32_t rows = 1 + random_.below(9);
    for (std::uint32_t i = 0; i < rows; ++i) text += finding_line();
    return text;
  }

  bool chance(double p) { return random_.chance(p); }

  std::string visit_line() { return number() + " nothing found"; }

  std::string any_day() {
    std::string text = "202" + std::to_string(4 + random_.below(3));
    text += "-0" + std::to_string(1 + random_.below(9));
    return text + "-0" + std::to_string(1 + random_.below(9));
  }

 private:
  std::string one_of(std::initializer_list<const char*> words) {
    return words.begin()[random_.below(static_cast<std::uint32_t>(words.size()))];
  }

  std::string number() { return std::to_string(410 + random_.below(3)); }

  std::string tag() { return "DE 03123123" + std::to_string(40 + random_.below(4)); }

  std::string perhaps(double p, const std::string& cell) {
    return random_.chance(p) ? cell : std::string();
  }

  // One draw a statement: compilers work out the parts of a sum in an order of their own.
  std::string event_line() {
    std::string line = number() + ';';
    line += perhaps_tag(0.2) + ';';
    line += one_of({"calved", "dry", "sold", "died", "arrived"}) + ';';
    line += any_day() + ';';
    line += (random_.chance(0.3) ? std::to_string(1 + random_.below(3)) : std::string()) + ';';
    line += random_.chance(0.3) ? one_of({"lame", "udder", "old"}) : std::string();
    return line + '\n';
  }

  std::string finding_line() {
    std::string line = number() + ';';
    line += perhaps_tag(0.2) + ';';
    line += (random_.chance(0.5) ? any_day() : std::string("2025-05-01")) + ';';
    line += one_of({"LH", "RH", "", "1"}) + ';';
    line += one_of({"", "", "outside", "?"}) + ';';
    line += one_of({"DD", "SU", "A", "A", "B", "X", ""}) + ';';
    line += one_of({"", "", "bad", "0"}) + ';';
    line += one_of({"", "", "", "M2"}) + ';';
    line += one_of({"", "block", "spray", "block / spray"});
    return line + '\n';
  }

  std::string perhaps_tag(double p) { return random_.chance(p) ? tag() : std::string(); }

  std::string cow_line() {
    std::string line = perhaps(0.9, number()) + ';';
    line += perhaps(0.4, tag()) + ';';
    line += perhaps(0.3, one_of({"Bella", "Anna"})) + ';';
    line += perhaps(0.4, one_of({"Jersey", "Holstein"})) + ';';
    line += perhaps(0.3, one_of({"2019-01-01", "2021-05-05"})) + ';';
    line += perhaps(0.6, any_day()) + ';';
    line += perhaps(0.4, std::to_string(random_.below(4))) + ';';
    line += perhaps(0.3, random_.chance(0.5) ? any_day() : std::string("2027-05-01")) + ';';
    line += perhaps(0.3, one_of({"2026-12-01", "2027-04-01"})) + ';';
    line += perhaps(0.4, any_day()) + ';';
    line += perhaps(0.3, one_of({"sold", "lame", "Euter"}));
    return line + '\n';
  }

  RandomStream random_;
};

/// The same list with its last line first.
std::string turned_round(const std::string& list) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < list.size();) {
    const std::size_t end = list.find('\n', at);
    lines.push_back(list.substr(at, end - at + 1));
    at = end + 1;
  }
  std::string turned = lines.front();
  for (std::size_t at = lines.size() - 1; at > 0; --at) turned += lines[at];
  return turned;
}

/// What is on record: the rows of every table that a list touches.
std::vector<Cells> rows_on_record(ListTaken& herd) {
  std::vector<Cells> all;
  for (const char* table : {"cow", "cow_number", "cow_tag", "cow_alias", "cow_facts", "cow_life",
                            "past_finding", "task"}) {
    const auto rows = herd.place.store.select({table, herd.herd(), {}, {}});
    REQUIRE(rows.ok());
    all.insert(all.end(), rows->begin(), rows->end());
  }
  return all;
}

/// Nobody carries a number that another cow carries on the same day, as long as she was not gone.
bool any_number_is_carried_twice(ListTaken& herd) {
  const auto cows = select_as<CowRow>(herd.place.store, herd.herd()).value();
  const auto left = [&](CowId cow) {
    const auto at =
        std::find_if(cows.begin(), cows.end(), [&](const CowRow& row) { return row.cow == cow; });
    return at == cows.end() ? std::nullopt : at->left_on;
  };
  const auto numbers = select_as<CowNumberRow>(herd.place.store, herd.herd()).value();
  for (const CowNumberRow& a : numbers) {
    for (const CowNumberRow& b : numbers) {
      if (a.number != b.number || !(a.cow < b.cow)) continue;
      const auto end = [&](const CowNumberRow& row) {
        const Day forever{1'000'000};
        return std::min(row.valid_to.value_or(forever), left(row.cow).value_or(forever));
      };
      if (a.valid_from <= end(b) && b.valid_from <= end(a)) return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("any list that is read again writes nothing and leaves every row as it is") {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    CAPTURE(seed);
    AnyList any(seed);
    ListTaken herd;
    std::string visit;
    if (any.chance(0.4)) {
      const std::string day = "2026-0" + std::to_string(5 + seed % 4) + "-13";
      const std::string line = any.visit_line();
      visit = day + ' ' + line;
      (void)herd.place.visited(day, {line, "done"});
    }
    CAPTURE(visit);
    // Something may be on record from an earlier list already.
    std::string earlier;
    if (any.chance(0.4)) earlier = any.chance(0.5) ? any.cows() : any.events();
    if (!earlier.empty()) (void)herd.take(earlier);
    CAPTURE(earlier);
    const std::string list = any.chance(0.5) ? any.cows() : any.events();
    CAPTURE(list);
    ImportWish wished = ListTaken::wish();
    wished.is_sure = any.chance(0.3);
    CAPTURE(wished.is_sure);
    const auto first = herd.take(list, wished);
    const std::size_t entries = herd.entries();
    const std::vector<Cells> rows = rows_on_record(herd);
    const auto second = herd.take(list, wished);
    CHECK(first.ok() == second.ok());
    CHECK(herd.entries() == entries);
    CHECK(rows_on_record(herd) == rows);
    if (second) {
      CHECK(second->entered == 0);
      CHECK(second->told_more == 0);
      CHECK(second->events == 0);
    }
  }
}

TEST_CASE(
    "any list of findings that is read again writes nothing, also once its words are mended") {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    CAPTURE(seed);
    AnyList any(3000 + seed);
    ListTaken herd;
    if (any.chance(0.4)) (void)herd.place.visited("2026-08-13", {any.visit_line(), "done"});
    if (any.chance(0.4)) (void)herd.take(any.chance(0.5) ? any.cows() : any.events());
    ImportWish first_words = ListTaken::wish_with("icar, A=TU, X=ignore", "degree:0=ignore");
    if (any.chance(0.4)) (void)herd.take(any.findings(), first_words);
    const std::string list = any.findings();
    CAPTURE(list);
    first_words.is_sure = any.chance(0.3);
    const ImportWish mended = ListTaken::wish_with("A=BU, B=DS, SU=ignore", "foot:1=LF");
    for (const ImportWish& wished : {first_words, mended}) {
      const auto first = herd.take(list, wished);
      const std::size_t entries = herd.entries();
      const std::vector<Cells> rows = rows_on_record(herd);
      const auto second = herd.take(list, wished);
      CHECK(first.ok() == second.ok());
      CHECK(herd.entries() == entries);
      CHECK(rows_on_record(herd) == rows);
      if (second) CHECK(second->findings == 0);
    }
  }
}

TEST_CASE("the order of the lines of a list of findings plays no part") {
  const ImportWish wished = ListTaken::wish_with("icar, A=TU, X=ignore", "degree:0=ignore");
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    CAPTURE(seed);
    const std::string list = AnyList(4000 + seed).findings();
    CAPTURE(list);
    ListTaken one;
    ListTaken other;
    const auto first = one.take(list, wished);
    const auto second = other.take(turned_round(list), wished);
    REQUIRE((first.ok() && second.ok()));
    CHECK(first->left_out_lines == second->left_out_lines);
    CHECK(first->passed_over == second->passed_over);
    CHECK(one.past() == other.past());
  }
}

TEST_CASE("a second tag of a cow in one list is left out, and changes nothing when read again") {
  ListTaken herd;
  const std::string list =
      "number;tag;event;day\n"
      "411;DE 0312312342;dry;2024-02-06\n"
      "411;DE 0312312343;dry;2025-09-05\n";
  ImportWish sure = ListTaken::wish();
  sure.is_sure = true;
  const std::string told = herd.told(list, sure);
  CHECK(told ==
        "1 entered, 0 told more, 0 unchanged, 1 events; 3: 411 has another tag in another line of "
        "this list: DE312312343");
  const std::size_t entries = herd.entries();
  (void)herd.told(list, sure);
  CHECK(herd.entries() == entries);
}

TEST_CASE("lists alone never give a number to two cows on one day") {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    CAPTURE(seed);
    AnyList any(1000 + seed);
    ListTaken herd;
    const std::string list = any.chance(0.5) ? any.cows() : any.events();
    CAPTURE(list);
    REQUIRE(herd.take(list).ok());
    CHECK_FALSE(any_number_is_carried_twice(herd));
  }
}

TEST_CASE("the order of the lines of a list plays no part") {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    CAPTURE(seed);
    AnyList any(2000 + seed);
    const std::string list = any.events();
    ListTaken one;
    ListTaken other;
    const auto first = one.take(list);
    const auto second = other.take(turned_round(list));
    REQUIRE((first.ok() && second.ok()));
    CHECK(first->left_out_lines == second->left_out_lines);
    CHECK(one.lives() == other.lives());
  }
}

}  // namespace evenclaw::test
