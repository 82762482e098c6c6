#include "core/trade/identity.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace evenclaw;

namespace {

HerdId herd(const char* name) {
  return {uuid_derived(name)};
}

DeviceId device(const char* name) {
  return {uuid_derived(name)};
}

const Day day{20758};

}  // namespace

TEST_CASE("a registered cow is the same on two tablets by herd, identifier and first day") {
  const CowId cow = registered_cow_id(herd("home"), "UK123450600001", day);
  CHECK(cow == registered_cow_id(herd("home"), "UK123450600001", day));
  CHECK(cow != registered_cow_id(herd("hill"), "UK123450600001", day));
  CHECK(cow != registered_cow_id(herd("home"), "UK123450700002", day));
  CHECK(cow != registered_cow_id(herd("home"), "UK123450600001", day + 1));
  CHECK(registered_cow_id(herd("home"), "0412", day) ==
        registered_cow_id(herd("home"), "412", day));
}

TEST_CASE("leading zeros are no part of a number") {
  CHECK(plain_number("0412") == "412");
  CHECK(plain_number("412") == "412");
  CHECK(plain_number("000") == "0");
  CHECK(plain_number("0") == "0");
  CHECK(plain_number("") == "");
  CHECK(plain_number("4012") == "4012");
}

TEST_CASE("a zero before a letter stays") {
  CHECK(plain_number("00A7") == "0A7");
}

TEST_CASE("two tablets name the same visit alike") {
  CHECK(visit_id(herd("north"), day, 1) == visit_id(herd("north"), day, 1));
}

TEST_CASE("herd, day and ordinal each make another visit") {
  const std::set<VisitId> ids = {visit_id(herd("north"), day, 1), visit_id(herd("north"), day, 2),
                                 visit_id(herd("north"), day + 1, 1),
                                 visit_id(herd("south"), day, 1)};
  CHECK(ids.size() == 4);
}

TEST_CASE("cow 0412 is cow 412 when first seen in the same visit") {
  const VisitId visit = visit_id(herd("north"), day, 1);
  CHECK(numbered_cow_id(herd("north"), "0412", visit) ==
        numbered_cow_id(herd("north"), "412", visit));
}

TEST_CASE("a number used again in a later visit can name another cow") {
  const HerdId north = herd("north");
  CHECK(numbered_cow_id(north, "412", visit_id(north, day, 1)) !=
        numbered_cow_id(north, "412", visit_id(north, day + 700, 1)));
}

TEST_CASE("cows without a number differ by visit, device, words and count") {
  const HerdId north = herd("north");
  const VisitId first = visit_id(north, day, 1);
  const VisitId second = visit_id(north, day, 2);
  const std::set<CowId> ids = {
      unnumbered_cow_id(north, first, device("a"), "brown heifer", 1),
      unnumbered_cow_id(north, second, device("a"), "brown heifer", 1),
      unnumbered_cow_id(north, first, device("b"), "brown heifer", 1),
      unnumbered_cow_id(north, first, device("a"), "Brown heifer", 1),
      unnumbered_cow_id(north, first, device("a"), "brown heifer", 2),
      unnumbered_cow_id(herd("south"), first, device("a"), "brown heifer", 1)};
  CHECK(ids.size() == 6);
}

TEST_CASE("words that hold a line feed do not pass for another count") {
  const HerdId north = herd("north");
  const VisitId visit = visit_id(north, day, 1);
  CHECK(unnumbered_cow_id(north, visit, device("a"), "2\nbrown", 1) !=
        unnumbered_cow_id(north, visit, device("a"), "brown", 12));
}

TEST_CASE("a numbered cow is never an unnumbered one") {
  const HerdId north = herd("north");
  const VisitId visit = visit_id(north, day, 1);
  CHECK(numbered_cow_id(north, "412", visit) !=
        unnumbered_cow_id(north, visit, device("a"), "412", 1));
}

TEST_CASE("tasks of one entry differ by what they are and stay the same for the same entry") {
  const EntryId entry{uuid_derived("entry")};
  CHECK(task_id(entry, "wrap-off LH") == task_id(entry, "wrap-off LH"));
  CHECK(task_id(entry, "wrap-off LH") != task_id(entry, "wrap-off RH"));
  CHECK(task_id(entry, "wrap-off LH") != task_id(EntryId{uuid_derived("other")}, "wrap-off LH"));
}

TEST_CASE("derived ids stay what they were: they stand in logs") {
  const HerdId north = herd("north");
  const VisitId visit = visit_id(north, day, 1);
  CHECK(to_text(visit) == "1206fbf9-eb40-8f6d-b31b-eb6e7283682e");
  CHECK(to_text(numbered_cow_id(north, "412", visit)) == "b03460a1-34ae-8c6c-881f-9995d9b1e3fc");
  CHECK(to_text(unnumbered_cow_id(north, visit, device("a"), "brown", 1)) ==
        "dc26948e-4ba8-8e99-8dc0-1bcfc8736e04");
  CHECK(to_text(task_id({uuid_derived("entry")}, "1")) == "c980daf0-e703-807b-b358-65e1bce8f2b0");
}

TEST_CASE("the numbers nearest to one nobody carries are one slip away, or two in a long one") {
  struct Row {
    const char* said;
    std::vector<std::string> known;
    std::vector<std::string> nearest;
  };

  const Row rows[] = {
      {"66", {"620", "77", "88", "68"}, {"68"}},  // 77 would be two slips of two digits
      {"66", {"620", "77", "88"}, {}},
      {"321", {"231", "412", "0321"}, {"0321", "231"}},
      {"412", {"412", "421", "412"}, {"421"}},  // the number itself is no neighbour
      {"0513", {"531", "510", "511", "512"}, {"510", "511", "512"}},
      {"123456", {"123465", "124356", "125634"}, {"123465", "124356"}},
      {"4l3", {"413"}, {"413"}},
      {"5", {}, {}},
  };
  for (const Row& row : rows) {
    CAPTURE(row.said);
    CHECK(nearest_numbers(row.said, row.known) == row.nearest);
  }
  CHECK(did_you_mean({"68", "86"}) == "Did you mean 68 or 86?");
  CHECK(did_you_mean({"68"}) == "Did you mean 68?");
  CHECK(did_you_mean({}).empty());
}
