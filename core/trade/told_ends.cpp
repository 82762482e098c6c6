#include "core/trade/told_ends.hpp"

#include <algorithm>
#include <map>
#include <optional>

#include "core/trade/medicine_use.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/withdrawal_tasks.hpp"

namespace evenclaw {

namespace {

template <class T>
void put_later(std::optional<T>& end, const std::optional<T>& other) {
  if (other && (!end || *end < *other)) end = other;
}

struct ToldAndListed {
  WithdrawalEnds told;
  WithdrawalEnds listed;

  void add(const Action& action, Day visit_day) {
    const WithdrawalEnds ends = withdrawal_ends(action, visit_day);
    WithdrawalEnds& all = tells_withdrawal(action.kind) ? told : listed;
    put_later(all.milk, ends.milk);
    put_later(all.meat, ends.meat);
  }
};

std::string shorter(std::string_view what, const std::string& told, const std::string& listed) {
  return std::string(what) + " told till " + told + ", the list states " + listed +
         ": the later holds";
}

std::string spoken_end(const MilkEnd& end) {
  return spoken(end.day) + ' ' + std::string(word_of(end.milking));
}

std::optional<MilkEnd> milk_end(const ActionRow& row) {
  if (!row.milk_till) return std::nullopt;
  return MilkEnd{*row.milk_till, row.milk_milking.value_or(Milking::evening)};
}

struct LatestEnds {
  std::optional<MilkEnd> milk;
  std::optional<Day> meat;
};

}  // namespace

std::vector<std::string> told_shorter_than_listed(const Turn& turn, Day visit_day) {
  ToldAndListed ends;
  for (const FootCall& call : turn.feet) {
    for (const Action& action : call.actions) ends.add(action, visit_day);
  }
  for (const Action& action : turn.actions) ends.add(action, visit_day);
  std::vector<std::string> told;
  if (ends.told.milk && ends.listed.milk && *ends.told.milk < *ends.listed.milk) {
    told.push_back(shorter("milk", spoken_end(*ends.told.milk), spoken_end(*ends.listed.milk)));
  }
  if (ends.told.meat && ends.listed.meat && *ends.told.meat < *ends.listed.meat) {
    told.push_back(shorter("meat", spoken(*ends.told.meat), spoken(*ends.listed.meat)));
  }
  return told;
}

namespace {

void move_to_the_latest(ActionRow& row, const LatestEnds& latest) {
  if (row.meat_till) row.meat_till = latest.meat;
  const std::optional<MilkEnd> told = milk_end(row);
  if (!told || *latest.milk <= *told) return;
  row.milk_till = latest.milk->day;
  const bool names_milking = row.milk_milking || latest.milk->milking != Milking::evening;
  if (names_milking) row.milk_milking = latest.milk->milking;
}

}  // namespace

void let_later_ends_hold(std::vector<ActionRow>& rows) {
  std::map<EntryId, LatestEnds> latest;
  for (const ActionRow& row : rows) {
    LatestEnds& ends = latest[row.turn];
    put_later(ends.milk, milk_end(row));
    put_later(ends.meat, row.meat_till);
  }
  for (ActionRow& row : rows) {
    if (tells_withdrawal(row.action)) move_to_the_latest(row, latest[row.turn]);
  }
}

}  // namespace evenclaw
