#include "core/trade/visit_work.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

const VisitId today{uuid_derived("today")};

CowId cow_of(int number) {
  return CowId{uuid_derived("cow " + std::to_string(number))};
}

void add_turn(Rows& rows, int cow, TurnEnd end, FootSet lifted = {}) {
  TurnRow row;
  row.cow = cow_of(cow);
  row.turn = EntryId{uuid_derived("turn " + std::to_string(rows.turns.size()))};
  row.visit = today;
  row.end = end;
  row.lifted = lifted;
  rows.turns.push_back(row);
}

ActionRow& add_act(Rows& rows, int cow, ActionKind action, std::optional<Foot> foot = Foot::lh,
                   Claw claw = Claw::none) {
  ActionRow row;
  row.cow = cow_of(cow);
  row.visit = today;
  row.action = action;
  row.foot = foot;
  row.claw = claw;
  rows.actions.push_back(row);
  return rows.actions.back();
}

/// "block_on 2 on 1", one line each.
std::string tally_told(const Rows& rows) {
  std::string lines;
  for (const WorkDone& done : work_done(rows, today)) {
    lines += std::string(word_of(done.work)) + ' ';
    if (done.work == Work::product) lines += std::string(word_of(done.act)) + ' ';
    if (!done.product.empty()) lines += done.product + ' ';
    if (done.by_whom != ByWhom::not_called) {
      lines += "by " + std::string(word_of(done.by_whom)) + ' ';
    }
    lines += std::to_string(done.count) + " on " + std::to_string(done.cows) + '\n';
  }
  return lines;
}

}  // namespace

TEST_CASE("each act that is work is counted under its own kind, and no other is") {
  const struct {
    ActionKind act;
    const char* line;
  } rows[] = {{ActionKind::block_on, "block_on 1 on 1\n"},
              {ActionKind::block_again, "block_again 1 on 1\n"},
              {ActionKind::block_stacked, "block_stacked 1 on 1\n"},
              {ActionKind::block_refitted, "block_refitted 1 on 1\n"},
              {ActionKind::block_off, "block_off 1 on 1\n"},
              {ActionKind::wrap_on, "wrap_on 1 on 1\n"},
              {ActionKind::wrap_off, "wrap_off 1 on 1\n"},
              {ActionKind::spray, "product spray 1 on 1\n"},
              {ActionKind::paste, "product paste 1 on 1\n"},
              {ActionKind::powder, "product powder 1 on 1\n"},
              {ActionKind::gel, "product gel 1 on 1\n"},
              {ActionKind::given, "product given 1 on 1\n"},
              {ActionKind::injected, "product injected 1 on 1\n"}};

  for (const EnumWord<ActionKind>& act : EnumWords<ActionKind>::table) {
    Rows day;
    add_act(day, 412, act.value);
    std::string expected;
    for (const auto& row : rows) {
      if (row.act == act.value) expected = row.line;
    }
    CHECK_MESSAGE(tally_told(day) == expected, act.word);
  }
}

TEST_CASE("cows in the crush are counted once, those never finished beside them, others not") {
  Rows day;
  add_turn(day, 1, TurnEnd::done);
  add_turn(day, 1, TurnEnd::done);
  add_turn(day, 2, TurnEnd::unfinished);
  add_turn(day, 3, TurnEnd::unfinished);
  add_turn(day, 3, TurnEnd::done);
  add_turn(day, 4, TurnEnd::not_done);
  CHECK(tally_told(day) == "cows 3 on 3\nnot_finished 1 on 1\n");
}

TEST_CASE("a foot that was lifted in two turns is one foot") {
  Rows day;
  add_turn(day, 1, TurnEnd::done, {Foot::lh, Foot::rh});
  add_turn(day, 1, TurnEnd::done, {Foot::lh});
  add_turn(day, 2, TurnEnd::done, {Foot::rh});
  CHECK(tally_told(day) == "cows 2 on 2\nfeet_lifted 3 on 2\n");
}

TEST_CASE("feet are counted as not trimmed only where that was said") {
  Rows day;
  for (const Trimmed trimmed : {Trimmed::yes, Trimmed::no, Trimmed::not_called}) {
    FootRow row;
    row.cow = cow_of(1);
    row.visit = today;
    row.foot = all_feet[day.feet.size()];
    row.state = FootState::nothing_found;
    row.trimmed = trimmed;
    day.feet.push_back(row);
  }
  CHECK(tally_told(day) == "feet_lifted 3 on 1\nfeet_not_trimmed 1 on 1\n");
}

TEST_CASE("a block called in two turns counts once, on both claws twice") {
  Rows day;
  add_act(day, 1, ActionKind::block_on, Foot::lh, Claw::inside);
  add_act(day, 1, ActionKind::block_on, Foot::lh, Claw::inside);
  add_act(day, 1, ActionKind::block_on, Foot::lh, Claw::not_called);
  CHECK(tally_told(day) == "block_on 1 on 1\n");
  add_act(day, 1, ActionKind::block_on, Foot::rh, Claw::not_called);
  CHECK(tally_told(day) == "block_on 2 on 1\n");
  add_act(day, 2, ActionKind::block_on, Foot::lh, Claw::both);
  CHECK(tally_told(day) == "block_on 4 on 2\n");
}

TEST_CASE("products are counted by name and by who gave them") {
  Rows day;
  add_act(day, 1, ActionKind::spray, Foot::lh).product = "blue";
  add_act(day, 1, ActionKind::spray, Foot::rh).product = "blue";
  add_act(day, 2, ActionKind::spray, Foot::lh).product = "blue";
  add_act(day, 2, ActionKind::spray, Foot::rh).product = "tar";
  ActionRow& given = add_act(day, 3, ActionKind::injected, std::nullopt);
  given.product = "painfree";
  given.by_whom = ByWhom::vet;
  CHECK(tally_told(day) ==
        "product spray blue 3 on 2\nproduct spray tar 1 on 1\n"
        "product injected painfree by vet 1 on 1\n");
}

TEST_CASE("animals counted together are counted apart from the cows") {
  Rows day;
  BatchRow row;
  row.visit = today;
  row.counted = 12;
  row.together = 11;
  row.feet = 22;
  day.batches.push_back(row);
  CHECK(tally_told(day) == "animals_together 11 on 0\nfeet_together 22 on 0\n");
}

TEST_CASE("work of another visit is no work of this one") {
  Rows day;
  add_turn(day, 1, TurnEnd::done, {Foot::lh});
  add_act(day, 1, ActionKind::wrap_on);
  BatchRow row;
  row.together = row.feet = 5;
  day.batches.push_back(row);
  CHECK(work_done(day, VisitId{uuid_derived("another day")}).empty());
}

}  // namespace evenclaw
