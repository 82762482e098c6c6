#include "core/exchange/herd_heads.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <set>
#include <string>

#include "core/base/text.hpp"

using namespace evenclaw;

TEST_CASE("heads are known in four languages, and an unknown one is not guessed at") {
  CHECK(held_under("Date of birth") == HerdColumn::born);
  CHECK(held_under("Abgangsgrund") == HerdColumn::reason);
  CHECK(held_under("Levensnummer") == HerdColumn::tag);
  CHECK(held_under("Date de vêlage") == HerdColumn::calved);
  CHECK(held_under("VÊLAGE") == HerdColumn::calved);
  CHECK_FALSE(held_under("milk yield"));
  CHECK_FALSE(held_under(""));
}

TEST_CASE("spelling does not matter, and our own words are heads too") {
  CHECK(held_under("Dry-off_date") == HerdColumn::dry_off);
  CHECK(held_under("Cow No.") == HerdColumn::number);
  CHECK(held_under("Weight (kg)") == HerdColumn::weight);
  CHECK(held_under("due_to_calve") == HerdColumn::due_to_calve);
  CHECK_FALSE(held_under("ignore"));
}

TEST_CASE("every head in the tables is written as heads are compared, and means one thing") {
  std::set<std::string_view> all;
  for (const KnownHeads& known : known_heads()) {
    for (const std::string_view head : known.heads) {
      CAPTURE(head);
      CHECK(held_under(head) == known.holds);
      CHECK(fold_case(head) == head);
      CHECK(all.insert(head).second);
    }
  }
  CHECK(all.size() > 100);
}

TEST_CASE("the page of the import names every head that is understood") {
  std::ifstream file("docs/user/import.md", std::ios::binary);
  const std::string page = {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  for (const KnownHeads& known : known_heads()) {
    std::string row = "| " + std::string(word_of(known.holds)) + " | ";
    for (const std::string_view head : known.heads) {
      row += (head == known.heads.front() ? "" : ", ") + std::string(head);
    }
    CAPTURE(row);
    CHECK(page.find(row + " |\n") != std::string::npos);
  }
}
