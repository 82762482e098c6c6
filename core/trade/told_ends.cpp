#include "core/trade/told_ends.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

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

bool denies_withdrawal(const Action& action) {
  return action.kind == ActionKind::no_withdrawal;
}

std::string none_told(const WithdrawalEnds& listed) {
  std::string words = "no withdrawal told, the list states ";
  if (listed.milk) words += "milk till " + spoken_end(*listed.milk);
  if (listed.milk && listed.meat) words += " and ";
  if (listed.meat) words += "meat till " + spoken(*listed.meat);
  return words + ": the list holds";
}

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
  const bool is_denied = std::any_of(turn.actions.begin(), turn.actions.end(), denies_withdrawal);
  if (is_denied && (ends.listed.milk || ends.listed.meat)) told.push_back(none_told(ends.listed));
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
  std::set<EntryId> is_listed;
  for (const ActionRow& row : rows) {
    LatestEnds& ends = latest[row.turn];
    put_later(ends.milk, milk_end(row));
    put_later(ends.meat, row.meat_till);
    const bool has_end = row.milk_till || row.meat_till;
    if (has_end && !tells_withdrawal(row.action)) is_listed.insert(row.turn);
  }
  for (ActionRow& row : rows) {
    if (tells_withdrawal(row.action)) move_to_the_latest(row, latest[row.turn]);
  }
  // A page that says "no withdrawal" beside an end would say both.
  std::erase_if(rows, [&](const ActionRow& row) {
    return row.action == ActionKind::no_withdrawal && is_listed.count(row.turn) > 0;
  });
}

}  // namespace evenclaw
