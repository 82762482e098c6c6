#include "core/api/recording/visit_book.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/herd_log.hpp"
#include "core/api/long_in_crush.hpp"
#include "core/api/products.hpp"
#include "core/api/recording/reader.hpp"
#include "core/trade/call_line/news_by_looks.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// Day and feet may have been put right since the visit was looked up.
Result<Visit> as_it_is_now(Store& store, Visit visit) {
  const auto rows = select_as<VisitRow>(store, visit.herd,
                                        {{"visit", Compare::equal, Cell(to_text(visit.visit))}});
  if (!rows) return rows.faults();
  if (rows->empty()) {
    return Fault{.slug = "visit-not-found", .message = "The visit was never started."};
  }
  visit.day = rows->front().day;
  visit.todays_feet = rows->front().todays_feet;
  visit.from_paper = rows->front().from_paper;
  visit.closed = rows->front().closed;
  return visit;
}

/// A product is asked about once at a visit, whatever other cow it was said of first.
MedicineRules medicine_known_for(const VisitBook& book, CowId cow, const RecordedTurn* corrected) {
  MedicineRules known = book.medicine;
  known.asked = book.before.products_said_of_others(cow, corrected);
  return known;
}

/// "104? wrap came off": of no foot, so she is not in the crush for it.
bool tells_of_a_doubtful_cow(const Line& line) {
  const auto* named = line.clauses.empty() ? nullptr : std::get_if<CowNamed>(&line.clauses.front());
  if (named == nullptr || named->cow.known != CowKnown::doubtful || line.clauses.size() < 2) {
    return false;
  }
  return std::all_of(line.clauses.begin() + 1, line.clauses.end(), [](const Clause& clause) {
    const auto* said = std::get_if<TurnClause>(&clause);
    const auto* act = said == nullptr ? nullptr : std::get_if<ActionSaid>(said);
    const auto told = act == nullptr ? std::nullopt : fixture_said(act->action.kind);
    return told && (is_off_after(told->step) || told->step == FixtureStep::left_on);
  });
}

}  // namespace

Result<VisitBook> VisitBook::open(const Ports& ports, const Visit& wanted,
                                  const Language& language) {
  const auto visit = as_it_is_now(ports.store, wanted);
  if (!visit) return visit.faults();
  auto journal = Journal::open(ports, visit->herd.value);
  if (!journal) return journal.faults();
  auto finder =
      CowFinder::open(ports.store, {visit->herd, visit->visit, visit->day, journal->device()});
  if (!finder) return finder.faults();
  auto before = RecordedBefore::open(ports.store, *visit);
  if (!before) return before.faults();
  auto medicine = medicine_rules(ports.store, visit->herd, visit->day);
  if (!medicine) return medicine.faults();
  const auto long_minutes = long_in_crush(ports.store);
  if (!long_minutes) return long_minutes.faults();
  const SaidBy by = before->last_said_by();
  return VisitBook{ports,
                   *visit,
                   language,
                   *std::move(journal),
                   *std::move(finder),
                   *std::move(before),
                   *std::move(medicine),
                   *long_minutes,
                   by};
}

Result<CowPast> past_of(const VisitBook& book, CowId cow, const RecordedTurn* corrected) {
  HerdLog log(book.ports.store, book.visit.herd);
  log.also(book.journal.unwritten());
  if (corrected != nullptr) {
    for (const RecordedTurn* turn : book.before.line_of(corrected->entry)) {
      log.without(turn->entry);
    }
  }
  auto past = log.past_of_one_here(cow, book.visit.visit);
  if (past) past->medicine = medicine_known_for(book, cow, corrected);
  return past;
}

Result<CowPast> past_told(const VisitBook& book, CowId cow) {
  HerdLog log(book.ports.store, book.visit.herd);
  log.also(book.journal.unwritten());
  return log.past_of(cow, book.visit.visit);
}

CowSaid who_was_read(const VisitBook& book, const CowSaid& said) {
  const CowSaid cow = book.finder.as_read(said);
  if (cow == said) return said;
  const CowSaid bare{CowKnown::unnumbered, {}, {}, said.number};
  return book.before.turns_called(bare).empty() ? cow : bare;
}

Result<Line> read_in_herd(const VisitBook& book, std::string_view text,
                          const LineContext& context) {
  auto line = read_line(text, context, book.language);
  if (!line || tells_of_a_doubtful_cow(*line)) {
    auto news = news_by_looks(text, book.finder.names_without_number(), context, book.language);
    if (news) return *std::move(news);
  }
  if (!line) return line;
  return with_cows_as(*std::move(line),
                      [&](const CowSaid& said) { return who_was_read(book, said); });
}

LineContext after_let_out(const VisitBook& book) {
  return {book.visit.day, true, book.answers.line()};
}

}  // namespace evenclaw
