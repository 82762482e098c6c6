#include "core/log/change_rows.hpp"

#include <optional>

#include "core/log/body.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

void tell_state(FarmChangeRow& row, const ChangeTold& told) {
  if (told.state == ChangeState::not_told) return;
  row.state = told.state;
  row.finished = told.finished;
}

void tell_of_change(FarmChangeRow& row, const ChangeTold& told) {
  if (told.why != ChangeWhy::not_told) {
    row.why = told.why;
    row.why_words = told.why_words;
  }
  if (told.decided) row.decided = told.decided;
  tell_state(row, told);
  if (told.reach != ChangeReach::not_told) {
    row.reach = told.reach;
    row.animals = told.animals;
  }
}

FarmChangeRow begun(HerdId herd, const Entry& entry, const FarmChange& body) {
  FarmChangeRow row;
  row.herd = herd;
  row.change = body.change;
  row.day = body.day;
  row.driver = body.driver;
  row.words = body.altered;
  row.teller = entry.envelope.caller.value_or(PersonId{});
  row.writer = entry.envelope.writer.value_or(PersonId{});
  return row;
}

}  // namespace

void add_change_rows(HerdId herd, VisitId change, std::span<const Entry* const> counting,
                     Rows& rows) {
  std::optional<FarmChangeRow> row;
  for (const Entry* entry : counting) {
    if (!names_subject(*entry, change.value)) continue;
    const auto body = body_as<FarmChange>(*entry);
    if (!body || body->change != change) continue;
    if (body->scrapped) {
      row.reset();
      continue;
    }
    if (!row) row = begun(herd, *entry, *body);
    tell_of_change(*row, body->told);
  }
  if (row) rows.farm_changes.push_back(*row);
}

}  // namespace evenclaw
