#include "core/log/change_rows.hpp"

#include <doctest/doctest.h>

#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

class ChangedFarm {
 public:
  void tell(ChangeTold told, std::string_view on, bool scrapped = false) {
    FarmChange body;
    body.change = change();
    body.day = day(on);
    body.driver = ChangeDriver::footbath;
    body.altered = "copper";
    body.told = std::move(told);
    body.scrapped = scrapped;
    farm.write(body);
  }

  [[nodiscard]] VisitId change() const {
    return change_id(farm.herd(), {ChangeDriver::footbath, "copper", "", day("2026-10-01")});
  }

  [[nodiscard]] std::vector<FarmChangeRow> rows() const {
    return farm.rows_of(change()).farm_changes;
  }

  Farm farm;
};

}  // namespace

TEST_CASE("what is told later of a change adds to it, and what is told otherwise holds") {
  ChangedFarm home;
  ChangeTold first;
  first.why = ChangeWhy::bad_visit;
  first.decided = day("2026-10-01");
  first.state = ChangeState::going_on;
  home.tell(first, "2026-10-02");
  ChangeTold later;
  later.state = ChangeState::finished;
  later.finished = day("2026-11-20");
  home.tell(later, "2026-11-21");
  const auto rows = home.rows();
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].day == day("2026-10-02"));
  CHECK(rows[0].why == ChangeWhy::bad_visit);
  CHECK(rows[0].decided == day("2026-10-01"));
  CHECK(rows[0].state == ChangeState::finished);
  CHECK(rows[0].finished == day("2026-11-20"));
}

TEST_CASE("a change that is going on again after all has no day on which it was finished") {
  ChangedFarm home;
  ChangeTold finished;
  finished.state = ChangeState::finished;
  finished.finished = day("2026-11-20");
  home.tell(finished, "2026-11-21");
  ChangeTold again;
  again.state = ChangeState::going_on;
  home.tell(again, "2026-11-24");
  CHECK_FALSE(home.rows().at(0).finished.has_value());
}

TEST_CASE("a change that was none is none") {
  ChangedFarm home;
  home.tell({}, "2026-10-02");
  home.tell({}, "2026-10-03", true);
  CHECK(home.rows().empty());
}

}  // namespace evenclaw
