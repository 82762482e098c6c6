#include "core/api/identities.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/journal.hpp"
#include "core/api/united_tasks.hpp"
#include "core/base/text.hpp"
#include "core/log/body.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

Fault answer_needed(std::string message, std::string remedy) {
  return {.slug = "answer-needed", .message = std::move(message), .remedy = std::move(remedy)};
}

Fault wrongly_asked(std::string message, std::string remedy = {}) {
  return {.slug = "usage", .message = std::move(message), .remedy = std::move(remedy)};
}

bool is_valid(const CowNumberRow& row, std::optional<Day> day) {
  return day && row.valid_from <= *day && (!row.valid_to || *day <= *row.valid_to);
}

Fault no_such_cow(const std::vector<CowNumberRow>& rows, const std::string& said) {
  std::vector<std::string> numbers;
  numbers.reserve(rows.size());
  for (const CowNumberRow& row : rows) numbers.push_back(row.number);
  return {.slug = "cow-not-found",
          .message = "No cow of this herd is known as " + said + ".",
          .token = said,
          .remedy = did_you_mean(nearest_numbers(said, std::move(numbers)))};
}

Result<std::set<VisitId>> visits_seen(Store& store, HerdId herd, CowId cow) {
  const auto turns = select_as<TurnRow>(store, herd, {{"cow", Compare::equal, Cell(to_text(cow))}});
  if (!turns) return turns.faults();
  std::set<VisitId> visits;
  for (const TurnRow& turn : *turns) visits.insert(turn.visit);
  return visits;
}

std::string without_doubt(std::string_view words) {
  while (!words.empty() && words.back() == '?') words.remove_suffix(1);
  return fold_case(words);
}

bool is_called(std::string_view called, std::string_view said) {
  return !called.empty() && without_doubt(called) == without_doubt(said);
}

/// The numbers that "159 or 195" or "106?" may stand for.
std::set<std::string> numbers_in(std::string_view called) {
  std::set<std::string> numbers;
  const std::string words = without_doubt(called);
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t end = std::min(words.find(' ', at), words.size());
    const std::string word = words.substr(at, end - at);
    const bool is_number =
        !word.empty() && word.find_first_not_of("0123456789") == std::string::npos;
    if (is_number) numbers.insert(plain_number(word));
    at = end + 1;
  }
  return numbers;
}

/// Which cows in doubt it may be, and how that is settled.
void name_those_in_doubt(Fault& fault, const std::vector<CowRow>& maybe) {
  if (maybe.empty()) return;
  std::string names;
  for (const CowRow& row : maybe) {
    names +=
        (names.empty() ? "" : ", ") + recorded_as(row) + " (seen " + spoken(row.last_seen) + ")";
  }
  fault.message += " In doubt, and may be her: " + names + ".";
  fault.remedy =
      "If that is her, give her the number." + (fault.remedy.empty() ? "" : " " + fault.remedy);
}

constexpr std::string_view before_the_day = " of ";

struct CalledOn {
  std::string called;
  std::optional<Day> day;
};

/// "Brown heifer of 2026-10-27" is one who was called so on that day.
CalledOn called_on(const std::string& said) {
  constexpr std::size_t letters_of_a_day = 10;
  const std::size_t tail = letters_of_a_day + before_the_day.size();
  if (said.size() <= tail) return {said, std::nullopt};
  const auto day = day_from_text(std::string_view(said).substr(said.size() - letters_of_a_day));
  const std::string_view lead = std::string_view(said).substr(said.size() - tail);
  if (!day || lead.substr(0, before_the_day.size()) != before_the_day) return {said, std::nullopt};
  return {said.substr(0, said.size() - tail), *day};
}

/// By the words of any of her turns, the one called so last.
Result<std::optional<CowId>> called_in_a_turn(Store& store, HerdId herd, const std::string& words) {
  const auto turns = select_as<TurnRow>(store, herd);
  if (!turns) return turns.faults();
  const auto [said, day] = called_on(words);
  const TurnRow* last = nullptr;
  for (const TurnRow& turn : *turns) {
    if (day && turn.day != *day) continue;
    const bool fits = is_called(turn.called, said) || turn.called == plain_number(said);
    if (fits && (last == nullptr || turn.day > last->day)) last = &turn;
  }
  return last == nullptr ? std::optional<CowId>() : std::optional<CowId>(last->cow);
}

std::vector<std::string> kinds_that_name() {
  return {std::string(CowRegistered::kind), std::string(NumberGiven::kind),
          std::string(TurnRecorded::kind)};
}

/// The cow an entry says was numbered or called so.
std::optional<CowId> named_by(const Entry& entry, const std::string& said) {
  const std::string plain = plain_number(said);
  if (const auto registered = body_as<CowRegistered>(entry)) {
    if (plain_number(registered->number) == plain) return registered->cow;
  }
  if (const auto given = body_as<NumberGiven>(entry)) {
    if (plain_number(given->number) == plain) return given->cow;
  }
  if (const auto turn = body_as<TurnRecorded>(entry)) {
    if (is_called(called_as(turn->turn.cow), said)) return turn->cow;
  }
  return std::nullopt;
}

/// The newest entry that united the two and was not taken back.
Result<std::optional<EntryId>> union_of(Store& store, HerdId herd, CowId first, CowId second) {
  HerdLog log(store, herd);
  const auto groups = log.groups();
  if (!groups) return groups.faults();
  const std::vector<CowId> group = groups->group_of(first);
  std::optional<EntryId> found;
  std::optional<EntryId> exactly;
  std::set<EntryId> taken_back;
  const Outcome read = store.read_entries(
      {herd.value, std::nullopt, {std::string(SameCow::kind), std::string(SameCowTakenBack::kind)}},
      [&](const Entry& entry) {
        if (const auto back = body_as<SameCowTakenBack>(entry)) taken_back.insert(back->same_cow);
        return true;
      });
  if (!read) return read.faults();
  const auto is_of_group = [&](CowId cow) {
    return std::find(group.begin(), group.end(), cow) != group.end();
  };
  const Outcome read_unions = store.read_entries(
      {herd.value, std::nullopt, {std::string(SameCow::kind)}}, [&](const Entry& entry) {
        const auto body = body_as<SameCow>(entry);
        if (!body || taken_back.count(entry.envelope.id) > 0) return true;
        const auto names = [&](CowId cow) { return body->first == cow || body->second == cow; };
        const bool joins = is_of_group(body->first) && is_of_group(body->second);
        if (!joins || !is_of_group(second)) return true;
        if (names(first) && names(second)) exactly = entry.envelope.id;
        if (names(first) || names(second)) found = entry.envelope.id;
        return true;
      });
  if (!read_unions) return read_unions.faults();
  return exactly ? exactly : found;
}

Result<bool> is_united(Store& store, HerdId herd, CowId first, CowId second) {
  HerdLog log(store, herd);
  const auto groups = log.groups();
  if (!groups) return groups.faults();
  return groups->representative(first) == groups->representative(second);
}

/// The one who carries or last carried the number; null when nobody did.
const CowNumberRow* best_of(const std::vector<CowNumberRow>& numbers, const std::string& plain,
                            std::optional<Day> day) {
  const CowNumberRow* best = nullptr;
  for (const CowNumberRow& row : numbers) {
    if (row.number != plain) continue;
    const bool better = best == nullptr || std::pair(is_valid(row, day), row.valid_from) >
                                               std::pair(is_valid(*best, day), best->valid_from);
    if (better) best = &row;
  }
  return best;
}

/// The one who is called so and was seen last; null when nobody is.
const CowRow* last_called(const std::vector<CowRow>& cows, const std::string& words) {
  const CowRow* named = nullptr;
  for (const CowRow& row : cows) {
    if (fold_case(recorded_as(row)) != fold_case(words)) continue;
    if (named == nullptr || row.last_seen > named->last_seen) named = &row;
  }
  return named;
}

/// By the id that pages and answers show.
Result<std::optional<CowId>> of_that_id(Store& store, HerdId herd, const std::string& words) {
  if (!uuid_from_text(words)) return std::optional<CowId>();
  const auto hers = select_as<CowRow>(store, herd, {{"cow", Compare::equal, Cell(words)}});
  if (!hers) return hers.faults();
  return hers->empty() ? std::optional<CowId>() : std::optional(hers->front().cow);
}

/// Nobody is known by these words: who may be meant, or was called so until it was put right.
Result<CowId> nobody_called(Store& store, HerdId herd, const std::string& words,
                            const std::vector<CowNumberRow>& numbers,
                            const std::vector<CowRow>& cows) {
  Fault fault = no_such_cow(numbers, words);
  const auto called = find_cow_called(store, herd, words);
  if (!called) return called.faults();
  const auto maybe = cows_that_may_be(store, herd, words);
  if (!maybe) return maybe.faults();
  name_those_in_doubt(fault, *maybe);
  for (const CowRow& row : cows) {
    if (*called != row.cow) continue;
    fault.remedy = "A cow was called that until it was put right: she is " + recorded_as(row) + ".";
  }
  return fault;
}

}  // namespace

Result<CowId> find_cow(Store& store, HerdId herd, std::string_view said, std::optional<Day> day) {
  const std::string words(trimmed(said));
  const auto numbers = select_as<CowNumberRow>(store, herd);
  if (!numbers) return numbers.faults();
  if (const CowNumberRow* best = best_of(*numbers, plain_number(words), day)) return best->cow;
  const auto by_id = of_that_id(store, herd, words);
  if (!by_id) return by_id.faults();
  if (*by_id) return **by_id;
  const auto otherwise = known_otherwise(store, herd, words);
  if (!otherwise) return otherwise.faults();
  if (*otherwise) return **otherwise;
  const auto cows = select_as<CowRow>(store, herd);
  if (!cows) return cows.faults();
  if (const CowRow* named = last_called(*cows, words)) return named->cow;
  const auto in_a_turn = called_in_a_turn(store, herd, words);
  if (!in_a_turn) return in_a_turn.faults();
  if (*in_a_turn) return **in_a_turn;
  return nobody_called(store, herd, words, *numbers, *cows);
}

std::string dated(const std::string& called, Day day) {
  return called + std::string(before_the_day) + to_text(day);
}

Result<std::vector<CowRow>> cows_that_may_be(Store& store, HerdId herd, std::string_view said) {
  const std::set<std::string> wanted = numbers_in(said);
  std::vector<CowRow> maybe;
  if (wanted.empty()) return maybe;
  auto cows = select_as<CowRow>(
      store, herd, {{"known", Compare::equal, Cell(std::string(word_of(CowKnown::doubtful)))}});
  if (!cows) return cows.faults();
  for (CowRow& row : *cows) {
    const std::set<std::string> hers = numbers_in(recorded_as(row));
    const bool fits = std::any_of(wanted.begin(), wanted.end(), [&](const std::string& number) {
      return hers.count(number) > 0;
    });
    if (fits) maybe.push_back(std::move(row));
  }
  std::stable_sort(maybe.begin(), maybe.end(),
                   [](const CowRow& a, const CowRow& b) { return b.last_seen < a.last_seen; });
  return maybe;
}

Result<std::optional<CowId>> find_cow_called(Store& store, HerdId herd, std::string_view said) {
  const std::string words(trimmed(said));
  const auto rows = select_as<CowCalledRow>(store, herd);
  if (!rows) return rows.faults();
  const CowCalledRow* last = nullptr;
  for (const CowCalledRow& row : *rows) {
    const bool is_said =
        row.called == plain_number(words) || fold_case(row.called) == fold_case(words);
    if (is_said && (last == nullptr || row.day > last->day)) last = &row;
  }
  return last == nullptr ? std::optional<CowId>() : std::optional<CowId>(last->cow);
}

Result<CowId> find_member(Store& store, HerdId herd, std::string_view said,
                          std::optional<Day> day) {
  const auto cow = find_cow(store, herd, said, day);
  if (!cow) return cow.faults();
  HerdLog log(store, herd);
  const auto groups = log.groups();
  if (!groups) return groups.faults();
  const std::vector<CowId> group = groups->group_of(*cow);
  if (group.size() == 1) return *cow;
  const std::string words(trimmed(said));
  for (const CowId member : group) {
    bool is_meant = false;
    const Outcome read =
        store.read_entries({herd.value, member.value, kinds_that_name()}, [&](const Entry& entry) {
          is_meant = is_meant || named_by(entry, words) == member;
          return !is_meant;
        });
    if (!read) return read.faults();
    if (is_meant) return member;
  }
  return *cow;
}

Result<CowId> other_carrier(Store& store, HerdId herd, std::string_view number, CowId than) {
  const std::string plain = plain_number(trimmed(number));
  const auto numbers = select_as<CowNumberRow>(store, herd);
  if (!numbers) return numbers.faults();
  const CowNumberRow* last = nullptr;
  for (const CowNumberRow& row : *numbers) {
    if (row.number != plain || row.cow == than) continue;
    if (last == nullptr || row.valid_from > last->valid_from) last = &row;
  }
  if (last != nullptr) return last->cow;
  return wrongly_asked("No other cow carries or carried " + plain + ".");
}

Result<EntryId> give_number(const Ports& ports, HerdId herd, NumberGiven given, bool sure) {
  given.number = std::string(trimmed(given.number));
  const std::string plain = plain_number(given.number);
  if (plain.empty()) return wrongly_asked("A number is missing.");
  if (is_written_as_electronic(given.number)) return is_no_herd_number(given.number);
  const auto numbers = select_as<CowNumberRow>(ports.store, herd);
  if (!numbers) return numbers.faults();
  for (const CowNumberRow& row : *numbers) {
    if (row.number != plain || !is_valid(row, given.valid_from) || sure) continue;
    if (row.cow == given.cow) return wrongly_asked("She carries " + plain + " already.");
    return answer_needed("Another cow carries " + plain + " already.",
                         "If they are one cow, say that they are the same; if not, say that you "
                         "are sure.");
  }
  return write_one(ports, herd.value, given, {});
}

Result<EntryId> unite_cows(const Ports& ports, HerdId herd, CowId first, CowId second, bool sure) {
  const auto united = is_united(ports.store, herd, first, second);
  if (!united) return united.faults();
  if (first == second || *united) return wrongly_asked("They are one cow already.");
  const auto first_visits = visits_seen(ports.store, herd, first);
  if (!first_visits) return first_visits.faults();
  const auto second_visits = visits_seen(ports.store, herd, second);
  if (!second_visits) return second_visits.faults();
  const bool met = std::any_of(first_visits->begin(), first_visits->end(),
                               [&](VisitId visit) { return second_visits->count(visit) > 0; });
  if (met && !sure) {
    return answer_needed("Both were in the crush at the same visit, so they are likely two cows.",
                         "Say that you are sure if they are one.");
  }
  SameCow body;
  body.first = first;
  body.second = second;
  auto journal = Journal::open(ports, herd.value);
  if (!journal) return journal.faults();
  const EntryId entry = journal->fresh_id();
  Outcome added = journal->add(body, {entry});
  if (added) added = close_by_the_other(ports.store, herd, {first, second}, *journal);
  if (added) added = close_by_the_other(ports.store, herd, {second, first}, *journal);
  if (!added) return added.faults();
  const auto written = journal->write();
  if (!written) return written.faults();
  return entry;
}

Result<EntryId> part_cows(const Ports& ports, HerdId herd, CowId first, CowId second) {
  const auto united = union_of(ports.store, herd, first, second);
  if (!united) return united.faults();
  if (!*united) return wrongly_asked("Nobody said that these two are one cow.");
  const auto entry = ports.store.find_entry(**united);
  if (!entry) return entry.faults();
  SameCowTakenBack body;
  body.same_cow = **united;
  EntryFacts facts;
  if (*entry) facts.subjects = (*entry)->envelope.subjects;
  return write_one(ports, herd.value, body, facts);
}

Result<EntryId> cow_left(const Ports& ports, HerdId herd, CowId cow, Day day,
                         std::string_view words) {
  const auto tasks = select_as<TaskRow>(ports.store, herd,
                                        {{"cow", Compare::equal, Cell(to_text(cow))},
                                         {"open", Compare::equal, Cell(std::int64_t{1})}});
  if (!tasks) return tasks.faults();
  CowLeft body;
  body.cow = cow;
  body.day = day;
  body.words = trimmed(words);
  for (const TaskRow& task : *tasks) {
    if (!ends_when_she_leaves(task)) continue;
    body.closes.push_back({task.task, body.words.empty() ? "gone" : body.words});
  }
  return write_one(ports, herd.value, body, {});
}

}  // namespace evenclaw
