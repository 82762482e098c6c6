#include "core/sheets/visit_sheet.hpp"

#include "core/sheets/appended.hpp"
#include "core/sheets/callers.hpp"
#include "core/sheets/cow_cards.hpp"
#include "core/sheets/farmers_page.hpp"
#include "core/sheets/track.hpp"
#include "core/sheets/vets_page.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

namespace {

std::vector<Fact> facts_of_visit(const VisitSheetInput& input, const Wording& wording) {
  std::vector<Fact> facts;
  const std::string callers = callers_of(input, wording);
  const std::string writers = writers_of(input, wording);
  if (!callers.empty()) facts.push_back({wording.say(Saying::called_by), callers});
  if (!writers.empty()) facts.push_back({wording.say(Saying::written_by), writers});
  facts.push_back({wording.say(Saying::todays_feet), wording.feet(input.visit.todays_feet)});
  if (input.printed != input.visit.day) {
    const std::string made = wording.date(input.printed, input.visit.day);
    facts.push_back({wording.say(Saying::made), wording.say(Saying::made_later, {{"date", made}})});
  }
  if (input.visit.from_paper) {
    facts.push_back({wording.say(Saying::times), wording.say(Saying::times_not_known)});
  }
  return facts;
}

}  // namespace

Document visit_sheet(const VisitSheetInput& input, const Wording& wording) {
  const VisitView view = view_of(input, wording);
  const std::string day = wording.full_date(input.visit.day);
  Document document;
  document.language = std::string(wording.tables().language);
  document.kind = wording.say(Saying::visit_kind);
  document.title = wording.say(Saying::title, {{"herd", input.herd_name}, {"date", day}});
  document.facts = facts_of_visit(input, wording);
  document.mark = product_mark(wording);
  document.foot =
      wording.say(Saying::sheet_foot, {{"herd", input.herd_name},
                                       {"day", day},
                                       {"printed", wording.date(input.printed, input.visit.day)},
                                       {"version", input.version}});
  document.blocks = farmers_page(view);
  if (!input.visit.closed) {
    document.blocks.emplace_back(Note{{plain(wording.say(Saying::visit_open))}});
  }
  append(document.blocks, has_few_cows(view) ? vets_part_of_few(view) : vets_page(view));
  if (!view.cows.empty()) append(document.blocks, cow_by_cow(view));
  return document;
}

}  // namespace evenclaw
