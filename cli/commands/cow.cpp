#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/cow_details.hpp"
#include "cli/records.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/identities.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"ACT", "register, facts, number, same, parted or left"},
    {"COW", "her number (- for none), tag, name, or what she was called"},
    {"OTHER", "the new number, or the other cow", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--from", "DAY", "number, tag and facts hold from that day"},
                              {"--to", "DAY", "the last day the number is hers"},
                              {"--tag", "TAG", "number of her official ear tag"},
                              {"--eid", "NUMBER", "electronic number in it, 15 digits"},
                              {"--alias", "NAME", "another name or number she goes by"},
                              {"--breed", "BREED", "her breed"},
                              {"--born", "DAY", "day of her birth"},
                              {"--is", "WHAT", "heifer or cow"},
                              {"--weight", "KG", "as near as you can tell"},
                              {"--calved", "DAY", "she calved last on that day"},
                              {"--lactation", "N", "which lactation that began"},
                              {"--dry-off", "DAY", "she was or is to be dried off then"},
                              {"--due-to-calve", "DAY", "she is to calve on that day"},
                              {"--why", "WORDS", "why she left"},
                              {"--sure", "", "although it looks doubtful"}};
constexpr Example examples[] = {
    {"evenclaw cow register 414 --tag \"UK 123450 600001\" --is heifer",
     "a cow nobody has recorded yet"},
    {"evenclaw cow facts 414 --breed Jersey --weight 380", "tells more of one that is known"},
    {"evenclaw cow facts 412 --calved 2026-09-01 --lactation 3 --dry-off 2027-06-20",
     "what her routine trims are counted from"},
    {"evenclaw cow number \"brown heifer, white star\" 418", "an unnumbered cow was recognised"},
    {"evenclaw cow same 412 \"513 or 531\"", "two records are one cow"},
    {"evenclaw cow same 77 77", "77 was said to be gone and is back: the same cow"},
    {"evenclaw cow parted 412 \"513 or 531\"", "takes that back"},
    {"evenclaw cow left 77 --why sold",
     "she is gone; her open tasks are closed, an end of withdrawal stays"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<EntryAnswer>}};

constexpr std::string_view no_herd_number = "-";

struct Asked {
  Records& records;
  HerdId herd;
  CowId cow;
  Day day;
  const Invocation& invocation;

  /// The cow named at that place of the command.
  [[nodiscard]] std::string cow_at(std::size_t operand) const {
    return recorded_as(invocation.operands[operand], records.language());
  }

  /// "same 77 77": the one that carries the number and the one that carried it before her.
  [[nodiscard]] Result<CowId> other() const {
    const std::vector<std::string>& named = invocation.operands;
    if (named[1] == named[2]) return other_carrier(records.store(), herd, named[2], cow);
    return find_cow(records.store(), herd, cow_at(2), day);
  }

  [[nodiscard]] bool sure() const { return invocation.has("--sure"); }
};

Result<Day> from_day(const Asked& asked) {
  const auto from = day_option(asked.invocation, "--from");
  if (!from) return from.faults();
  return from->value_or(asked.day);
}

Result<EntryId> registered(const Asked& asked) {
  const auto from = from_day(asked);
  if (!from) return from.faults();
  const auto to = day_option(asked.invocation, "--to");
  if (!to) return to.faults();
  const auto details = details_in(asked.invocation);
  if (!details) return details.faults();
  const std::string& typed = asked.invocation.operands[1];
  const std::string number = typed == no_herd_number ? std::string() : typed;
  return register_cow(asked.records.ports(), asked.herd, {number, *from, *to}, *details,
                      asked.sure());
}

Result<EntryId> told_more(const Asked& asked) {
  const auto from = from_day(asked);
  if (!from) return from.faults();
  const auto details = details_in(asked.invocation);
  if (!details) return details.faults();
  return tell_of_cow(asked.records.ports(), asked.herd, {asked.cow, *from, *details}, asked.sure());
}

Result<EntryId> numbered(const Asked& asked) {
  auto from = from_day(asked);
  if (!from) return from.faults();
  const NumberGiven given{asked.cow, asked.invocation.operands[2], *from};
  return give_number(asked.records.ports(), asked.herd, given, asked.sure());
}

Result<EntryId> united(const Asked& asked) {
  auto other = asked.other();
  if (!other) return other.faults();
  return unite_cows(asked.records.ports(), asked.herd, asked.cow, *other, asked.sure());
}

Result<EntryId> parted(const Asked& asked) {
  const auto member = [&](std::size_t operand) {
    return find_member(asked.records.store(), asked.herd, asked.cow_at(operand), asked.day);
  };
  auto first = member(1);
  if (!first) return first.faults();
  auto second = member(2);
  if (!second) return second.faults();
  return part_cows(asked.records.ports(), asked.herd, *first, *second);
}

Result<EntryId> gone(const Asked& asked) {
  const std::string why = asked.invocation.value("--why");
  return cow_left(asked.records.ports(), asked.herd, asked.cow, asked.day,
                  why.empty() ? "gone" : why);
}

struct Act {
  std::string_view word;
  std::size_t operands;
  bool is_known;  // the first cow is one that was recorded
  Result<EntryId> (*run)(const Asked&);
  std::string_view between;  // what is recorded, said with both names
  std::string_view after;
};

constexpr Act acts[] = {
    {"register", 2, false, registered, "", " is registered."},
    {"facts", 2, true, told_more, "", ": kept what was told of her."},
    {"number", 3, true, numbered, " carries the number ", " now."},
    {"same", 3, true, united, " and ", " are one cow."},
    {"parted", 3, true, parted, " and ", " are two cows again."},
    {"left", 2, true, gone, "",
     " has left the herd; her open tasks are closed, an end of withdrawal stays."}};

std::string done_words(const Act& act, const Invocation& invocation) {
  const std::string& named = invocation.operands[1];
  std::string words = (named == no_herd_number ? "She" : named) + std::string(act.between);
  if (act.operands > 2) words += invocation.operands[2];
  return words + std::string(act.after);
}

const Act* act_of(const Invocation& invocation) {
  for (const Act& act : acts) {
    if (act.word == invocation.operands.front() && act.operands == invocation.operands.size()) {
      return &act;
    }
  }
  return nullptr;
}

Result<EntryId> carried_out(Records& records, const Act& act, const Invocation& invocation) {
  auto herd = records.herd_meant(invocation);
  if (!herd) return herd.faults();
  if (!act.is_known) return act.run({records, herd->herd, {}, records.today(), invocation});
  const std::string named = recorded_as(invocation.operands[1], records.language());
  auto cow = find_cow(records.store(), herd->herd, named, records.today());
  if (!cow) return cow.faults();
  return act.run({records, herd->herd, *cow, records.today(), invocation});
}

Exit run(const Invocation& invocation) {
  const Act* act = act_of(invocation);
  if (act == nullptr) {
    return tell_faults({{"usage",
                         "a cow is registered, gets facts or a number, is the same as another, is "
                         "parted, or left",
                         invocation.operands.front(), 0, 0,
                         "See: evenclaw help cow; a whole list is taken over by evenclaw import"}},
                       invocation);
  }
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto entry = carried_out(**records, *act, invocation);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, done_words(*act, invocation), EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command cow_command = {
    "cow",    "who she is: register, facts, numbers, same cow, left the herd",
    operands, options,
    examples, run,
    answers};

}  // namespace evenclaw::cli
