#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/import_text.hpp"
#include "cli/input_file.hpp"
#include "cli/records.hpp"
#include "core/api/herd_import.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a list of cows, of what happened to them or of what was found"}};
constexpr Option options[] = {
    {"--herd", "HERD", "the herd, when there are several"},
    {"--new-herd", "", "enters that herd first"},
    {"--from", "DAY", "the list holds from that day; today when not said"},
    {"--columns", "WHAT", "what columns hold: \"number=Tiernr, ignore=Milk\""},
    {"--dates", "ORDER", "dmy, mdy or ymd where the days leave it open"},
    {"--lesions", "WHAT", "what lesions are: icar, or \"A=DD, B=SU, X=ignore\""},
    {"--words", "WHAT", "what other words are: \"foot:1=LH, degree:2=plain\""},
    {"--try", "", "tells what would come of it and writes nothing"},
    {"--all-or-nothing", "", "takes over nothing when one line is left out"},
    {"--sure", "", "the list is right wherever it asks"}};
constexpr Example examples[] = {
    {"evenclaw import herd.csv --try", "how its columns are read, and what would come of it"},
    {"evenclaw import herd.csv", "takes it over; the same file again changes nothing"},
    {"evenclaw import herd.csv --columns \"number=Tiernr, ignore=Milk\"",
     "says what columns hold; kept for the next list of this herd"},
    {"evenclaw import events.csv --dates dmy", "01/09/2026 is the first of September"},
    {"evenclaw import herd.csv --herd \"Home Farm\" --new-herd", "begins a herd with its list"},
    {"evenclaw import past.csv --lesions icar",
     "what an earlier record says was found, in codes of the ICAR atlas"},
    {"evenclaw import past.csv --lesions \"A=DD, B=sole ulcer, X=ignore\"",
     "in words of its own; kept for the next list of this herd"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<HerdImported>}};

Fault wrongly_asked(std::string message, std::string token, std::string remedy) {
  return {"usage", std::move(message), std::move(token), 0, 0, std::move(remedy)};
}

Result<ImportWish> wish_in(const Invocation& invocation, Day today) {
  const auto from = day_option(invocation, "--from");
  if (!from) return from.faults();
  auto columns = columns_said(invocation.value("--columns"));
  if (!columns) return columns.faults();
  auto lesions = lesions_said(invocation.value("--lesions"));
  if (!lesions) return lesions.faults();
  const auto words = words_said(invocation.value("--words"));
  if (!words) return words.faults();
  ImportWish wish;
  wish.from = from->value_or(today);
  wish.columns = *std::move(columns);
  wish.findings = with_words_said(*std::move(lesions), *words);
  if (invocation.has("--dates")) {
    wish.dates = enum_of<DayOrder>(invocation.value("--dates"));
    if (!wish.dates) {
      return wrongly_asked("days are written dmy, mdy or ymd", invocation.value("--dates"),
                           "For example: --dates dmy for 31/12/2026");
    }
  }
  wish.is_sure = invocation.has("--sure");
  wish.all_or_nothing = invocation.has("--all-or-nothing");
  wish.only_tries = invocation.has("--try");
  return wish;
}

/// A new herd is entered only when its list will be taken over.
Result<Herd> herd_for(Records& records, const Invocation& invocation, std::string_view bytes,
                      ImportWish wish) {
  if (!invocation.has("--new-herd")) return records.herd_meant(invocation);
  wish.only_tries = true;
  const auto tried = import_herd(records.ports(), HerdId{}, bytes, wish);
  if (!tried) return tried.faults();
  return register_herd(records.ports(), invocation.value("--herd"), invocation.has("--sure"));
}

std::optional<Fault> contradiction(const Invocation& invocation) {
  if (!invocation.has("--new-herd")) return std::nullopt;
  if (!invocation.has("--herd")) {
    return wrongly_asked("a new herd needs its name", "--new-herd", "Say: --herd NAME --new-herd");
  }
  if (invocation.has("--try")) {
    return wrongly_asked("a try enters no new herd", "--try",
                         "Leave out --try, or enter the herd first.");
  }
  return std::nullopt;
}

Exit answered(const HerdImported& imported, const Invocation& invocation) {
  if (invocation.json) {
    print_json(imported);
  } else {
    std::cout << import_text(invocation.operands.front(), imported);
  }
  return imported.left_out.empty() ? Exit::fine : Exit::asked;
}

Exit run(const Invocation& invocation) {
  if (const auto fault = contradiction(invocation)) return tell_faults({*fault}, invocation);
  const auto bytes = bytes_of_file(invocation.operands.front(), largest_import_bytes);
  if (!bytes) return tell_faults(bytes.faults(), invocation);
  const Opening opening = invocation.has("--new-herd") ? Opening::create
                          : invocation.has("--try")    ? Opening::look
                                                       : Opening::existing;
  auto records = Records::open(invocation, opening);
  if (!records) return tell_faults(records.faults(), invocation);
  const auto wish = wish_in(invocation, (*records)->today());
  if (!wish) return tell_faults(wish.faults(), invocation);
  const auto herd = herd_for(**records, invocation, *bytes, *wish);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto imported = import_herd((*records)->ports(), herd->herd, *bytes, *wish);
  if (!imported) return tell_faults(imported.faults(), invocation);
  return answered(*imported, invocation);
}

}  // namespace

extern const Command import_command = {
    "import", "take over cows, what happened to them, what was found on them",
    operands, options,
    examples, run,
    answers};

}  // namespace evenclaw::cli
