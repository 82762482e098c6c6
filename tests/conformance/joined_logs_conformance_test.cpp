// Logs that met: whatever arrives when, every store shows the same rows, and the same as anew.
#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/api/transfer.hpp"
#include "core/api/visits.hpp"
#include "core/base/random.hpp"
#include "core/log/body.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/identity.hpp"
#include "tests/conformance/every_store.hpp"
#include "tests/core/api/workplace.hpp"
#include "tests/core/log/history.hpp"
#include "tests/store/sample_entries.hpp"

using namespace evenclaw;

namespace {

const HerdId herd = sample_herd(1);
const Day visit_day{20'754};
const VisitId visit = visit_id(herd, visit_day, 1);
const CowId called = sample_cow(412);
const CowId first_guess = sample_cow(413);
const CowId second_guess = sample_cow(421);

void take(EmptyStore& opened, const std::vector<Entry>& entries) {
  test::SteppingClock clock;
  test::SeededIds ids(1);
  std::size_t next = 0;
  taken(take_in({*opened.store, *opened.directory, clock, ids},
                [&]() -> Result<std::optional<std::string>> {
                  if (next == entries.size()) return std::optional<std::string>();
                  return std::optional(entry_line(entries[next++]));
                }));
}

std::vector<std::vector<Cells>> all_rows(Store& store) {
  std::vector<std::vector<Cells>> rows;
  for (const TableShape& shape : all_tables()) {
    rows.push_back(taken(store.select({std::string(shape.name), std::nullopt, {}, {}})));
  }
  return rows;
}

void check_as_made_anew(Store& store) {
  const auto kept_up = all_rows(store);
  taken(rebuild_picture(store, {}));
  CHECK(kept_up == all_rows(store));
}

Entry opening() {
  return entry_of(sample_envelope(1, sample_device(1), herd),
                  VisitOpened{visit, visit_day, 1, hind_feet});
}

TurnRecorded turn_of(CowId cow, std::string number) {
  TurnRecorded turn;
  turn.visit = visit;
  turn.cow = cow;
  turn.words = {number + " LH DD raw behind"};
  turn.turn.cow.number = std::move(number);
  FootCall call;
  call.foot = Foot::lh;
  call.state = FootState::finding;
  call.findings = {Finding{}};
  call.findings.front().lesion = Lesion::dd;
  turn.turn.feet = {call};
  return turn;
}

Entry said_of_412() {
  return entry_of(sample_envelope(2, sample_device(1), herd), turn_of(called, "412"));
}

Entry corrected_on(DeviceId device, CowId cow, std::string number) {
  Envelope envelope = sample_envelope(3, device, herd);
  envelope.supersedes = said_of_412().envelope.id;
  envelope.subjects = said_of_412().envelope.subjects;
  return entry_of(std::move(envelope), turn_of(cow, std::move(number)));
}

struct Arrival {
  Entry first;
  Entry second;
};

}  // namespace

TEST_CASE("a turn that two tablets corrected to two cows apart is shown once, on one of them") {
  const Entry by_one = corrected_on(sample_device(1), first_guess, "413");
  const Entry by_other = corrected_on(sample_device(2), second_guess, "421");
  const Entry counts = comes_before(by_one, by_other) ? by_other : by_one;
  const CowId right = counts == by_one ? first_guess : second_guess;
  for (const Arrival& came : {Arrival{by_one, by_other}, Arrival{by_other, by_one}}) {
    for_every_store([&](EmptyStore& opened) {
      take(opened, {opening(), said_of_412(), came.first});
      take(opened, {came.second});
      const auto turns = taken(select_as<TurnRow>(*opened.store, herd));
      REQUIRE(turns.size() == 1);
      CHECK(turns.front().cow == right);
      CHECK(turns.front().turn == counts.envelope.id);
      const auto findings = taken(select_as<FindingRow>(*opened.store, herd));
      REQUIRE(findings.size() == 1);
      CHECK(findings.front().cow == right);
      check_as_made_anew(*opened.store);
    });
  }
}

TEST_CASE("a turn that came in two versions is shown once and asked about when the visit ends") {
  const Entry one = said_of_412();
  const Entry other = entry_of(one.envelope, turn_of(first_guess, "413"));
  const bool one_is_shown = digest_of(one) < digest_of(other);
  for (const Arrival& came : {Arrival{one, other}, Arrival{other, one}}) {
    for_every_store([&](EmptyStore& opened) {
      take(opened, {opening(), came.first});
      take(opened, {came.second});
      const auto turns = taken(select_as<TurnRow>(*opened.store, herd));
      REQUIRE(turns.size() == 1);
      CHECK(turns.front().cow == (one_is_shown ? called : first_guess));
      Visit closing;
      closing.herd = herd;
      closing.visit = visit;
      closing.day = visit_day;
      const auto state = taken(closing_state(*opened.store, closing));
      const auto asked = std::count_if(
          state.open.begin(), state.open.end(),
          [](const OpenPoint& point) { return point.kind == OpenPointKind::two_versions; });
      CHECK(asked == 1);
      const auto checked = taken(check_store(*opened.store));
      const auto listed =
          std::count_if(checked.findings.begin(), checked.findings.end(),
                        [](const CheckFinding& finding) { return finding.what == "two_versions"; });
      CHECK(listed == 1);
      check_as_made_anew(*opened.store);
    });
  }
}

TEST_CASE("a log that was taken in whole leaves no rows missing, whether or not anything was new") {
  for_every_store([&](EmptyStore& opened) {
    take(opened, {opening(), said_of_412()});
    CHECK_FALSE(taken(opened.store->needs_rebuild()));
    take(opened, {said_of_412()});
    CHECK_FALSE(taken(opened.store->needs_rebuild()));
    taken(opened.store->forget_pictures());
    take(opened, {corrected_on(sample_device(2), first_guess, "413")});
    CHECK(taken(opened.store->needs_rebuild()));
  });
}

TEST_CASE("histories of several devices give every store the rows that making all anew gives") {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    CAPTURE(seed);
    const History history = make_history(seed, 25);
    std::vector<std::vector<std::vector<Cells>>> of_stores;
    for_every_store([&](EmptyStore& opened) {
      RandomStream random(seed, 4);
      std::vector<Entry> waiting = history.entries;
      while (!waiting.empty()) {
        std::vector<Entry> batch;
        for (std::uint32_t left = 1 + random.below(8); left > 0 && !waiting.empty(); --left) {
          const std::uint32_t at = random.below(static_cast<std::uint32_t>(waiting.size()));
          batch.push_back(std::move(waiting[at]));
          waiting.erase(waiting.begin() + at);
        }
        take(opened, batch);
      }
      of_stores.push_back(all_rows(*opened.store));
      check_as_made_anew(*opened.store);
    });
    CHECK(of_stores.front() == of_stores.back());
  }
}
