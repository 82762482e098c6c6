#include "core/sheets/work_tally.hpp"

#include <string>
#include <utility>

#include "core/trade/visit_work.hpp"

namespace evenclaw {

namespace {

Saying saying_of(Work work) {
  switch (work) {
    case Work::cows:
      return Saying::work_cows;
    case Work::not_finished:
      return Saying::work_not_finished;
    case Work::feet_lifted:
      return Saying::work_feet;
    case Work::feet_not_trimmed:
      return Saying::work_not_trimmed;
    case Work::block_on:
      return Saying::work_blocks_on;
    case Work::block_again:
      return Saying::work_blocks_again;
    case Work::block_stacked:
      return Saying::work_blocks_stacked;
    case Work::block_refitted:
      return Saying::work_blocks_refitted;
    case Work::block_off:
      return Saying::work_blocks_off;
    case Work::wrap_on:
      return Saying::work_wraps_on;
    case Work::wrap_off:
      return Saying::work_wraps_off;
    case Work::product:
      return Saying::work_product;
    case Work::animals_together:
      return Saying::work_animals;
    case Work::feet_together:
      return Saying::work_animals_feet;
  }
  return Saying::work_cows;
}

std::string name_of(const WorkDone& done, const VisitView& view) {
  if (done.work != Work::product) return view.wording.say(saying_of(done.work));
  ActionRow row;
  row.action = done.act;
  row.product = done.product;
  row.by_whom = done.by_whom;
  return capitalised(view.wording.act(row, view.input.visit.day));
}

std::string on_cows(const WorkDone& done, const Wording& wording) {
  const bool says_itself = done.work == Work::cows || done.work == Work::not_finished;
  if (says_itself || done.cows == 0) return {};
  return wording.count(Saying::cow_count, static_cast<std::size_t>(done.cows));
}

}  // namespace

std::vector<Block> work_tally(const VisitView& view) {
  const Wording& wording = view.wording;
  Table table{"",
              {{wording.say(Saying::column_work)},
               {wording.say(Saying::column_count), Align::end},
               {wording.say(Saying::column_on_cows), Align::end}},
              {},
              RowHead::words};
  for (const WorkDone& done : work_done(view.input.rows, view.input.visit.visit)) {
    table.rows.push_back({{plain(name_of(done, view))},
                          {plain(std::to_string(done.count))},
                          {plain(on_cows(done, wording))}});
  }
  if (table.rows.empty()) return {};
  return {Heading{2, wording.say(Saying::work_title)}, std::move(table),
          Note{{plain(wording.say(Saying::work_note))}}};
}

}  // namespace evenclaw
