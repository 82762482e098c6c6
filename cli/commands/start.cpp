#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/herds.hpp"
#include "core/api/said_day.hpp"
#include "core/api/visits.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"HERD", "name of the herd, or its beginning", true, true}};
constexpr Option options[] = {
    {"--feet", "FEET", "today's feet: all, hinds, fronts, or such as \"LH RH\""},
    {"--caller", "NAME", "who trims and calls out"},
    {"--writer", "NAME", "who writes down"},
    {"--day", "DAY", "the day of the visit when it is not today, as 2026-11-24"},
    {"--new-herd", "", "the herd is new here"},
    {"--from-paper", "", "it is typed from paper: no time of it is known"},
    {"--second", "", "a second visit to that herd on the same day"},
    {"--sure", "", "a name that looks misspelt, or a day long ago, is meant so"}};
constexpr Example examples[] = {
    {"evenclaw start \"Home Farm\" --feet all --caller Anna --writer Ben",
     "starts today's visit, or goes on with it"},
    {"evenclaw start \"Hill Farm\" --new-herd --feet hinds", "a herd that was never visited"},
    {"evenclaw start home --day 2026-11-24 --from-paper", "enters a day from paper, later"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Visit>}};

/// A herd of exactly that name which nobody has visited: what an import entered, or an older
/// --new-herd left.
Result<std::optional<Herd>> herd_without_visit(Records& records, const std::string& name) {
  auto herds = all_herds(records.store());
  if (!herds) return herds.faults();
  for (const Herd& herd : *herds) {
    if (fold_case(herd.name) != fold_case(name)) continue;
    const auto visit = find_visit(records.ports(), herd.herd, std::nullopt);
    const bool is_new = !visit && visit.faults().front().slug == "visit-not-found";
    return is_new ? std::optional(herd) : std::nullopt;
  }
  return std::optional<Herd>();
}

/// A herd is entered only when its first visit can begin as it is wanted.
Result<Herd> herd_for(Records& records, const Invocation& invocation, const VisitWanted& wanted) {
  const std::string name = invocation.words_from(0);
  if (!invocation.has("--new-herd")) return find_herd(records.store(), name);
  auto begun = herd_without_visit(records, name);
  if (!begun) return begun.faults();
  if (begun->has_value()) return **std::move(begun);
  const Outcome can_begin = check_first_visit(records.ports(), wanted);
  if (!can_begin) return can_begin.faults();
  auto herd = register_herd(records.ports(), name, invocation.has("--sure"));
  const bool is_a_name = !name.empty() && is_one_plain_line(name);
  if (herd || herd.faults().front().slug != "usage" || !is_a_name) return herd;
  Faults faults = herd.faults();
  faults.front().remedy = "Leave out --new-herd.";
  return faults;
}

Result<VisitWanted> wanted_visit(Records& records, const Invocation& invocation) {
  auto day = day_option(invocation, "--day");
  if (!day) return day.faults();
  auto feet = feet_option(invocation, "--feet");
  if (!feet) return feet.faults();
  VisitWanted wanted;
  wanted.day = *day;
  wanted.today = records.today();
  wanted.todays_feet = *feet;
  wanted.caller = invocation.value("--caller");
  wanted.writer = invocation.value("--writer");
  wanted.from_paper = invocation.has("--from-paper");
  wanted.second_that_day = invocation.has("--second");
  wanted.sure = invocation.has("--sure");
  auto herd = herd_for(records, invocation, wanted);
  if (!herd) return herd.faults();
  wanted.herd = herd->herd;
  return wanted;
}

/// What was asked for a visit that goes on as it was begun: each is a line away while recording.
std::string to_be_said(const Visit& visit, const VisitWanted& wanted, const Language& language) {
  std::string lines;
  const auto add = [&](TermKind first, const std::string& rest) {
    lines += "  " + std::string(language.say(first)) + " " + rest + "\n";
  };
  const bool other_feet = !wanted.todays_feet.empty() && wanted.todays_feet != visit.todays_feet;
  if (other_feet) add(TermKind::today, feet_words(wanted.todays_feet, language));
  const bool other_caller = !wanted.caller.empty() && wanted.caller != visit.caller;
  if (other_caller) add(TermKind::caller, wanted.caller);
  const bool other_writer = !wanted.writer.empty() && wanted.writer != visit.writer;
  if (other_writer) add(TermKind::writer, wanted.writer);
  if (lines.empty()) return lines;
  return "It goes on as it was begun. To change that, say while recording:\n" + lines;
}

void print_feet(const Visit& visit, const Language& language) {
  if (visit.todays_feet.empty()) {
    const std::string today(language.say(TermKind::today));
    std::cout << "Today's feet were not said: say \"" << today << ' '
              << feet_words(four_feet, language) << "\" or \"" << today << ' '
              << feet_words(hind_feet, language) << "\"\nbefore \""
              << language.say(TermKind::rest_fine) << "\".\n";
  } else {
    std::cout << "Today's feet: " << feet_words(visit.todays_feet, language) << '\n';
  }
}

void print(const Visit& visit, const VisitWanted& wanted, const Records& records) {
  std::cout << (visit.goes_on ? "Going on with the visit to " : "Visit started: ")
            << visit.herd_name << ", " << said_day(visit.day, records.today());
  if (visit.ordinal > 1) std::cout << " (visit " << visit.ordinal << " of that day)";
  std::cout << '\n';
  if (visit.from_paper) std::cout << "From paper: its day is known, no time of it is.\n";
  print_feet(visit, records.language());
  if (visit.goes_on) std::cout << to_be_said(visit, wanted, records.language());
  if (!visit.closed) {
    std::cout << "Now: evenclaw record\n";
    return;
  }
  std::cout << "It had been ended. To add to it: evenclaw record --day " << to_text(visit.day)
            << " --herd \"" << visit.herd_name << "\"\n"
            << "A second visit on that day: the same command with --second\n";
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::create);
  if (!records) return tell_faults(records.faults(), invocation);
  auto wanted = wanted_visit(**records, invocation);
  if (!wanted) return tell_faults(wanted.faults(), invocation);
  auto visit = start_visit((*records)->ports(), *wanted);
  if (!visit) return tell_faults(visit.faults(), invocation);
  if (invocation.json) {
    print_json(*visit);
  } else {
    print(*visit, *wanted, **records);
  }
  return Exit::fine;
}

}  // namespace

extern const Command start_command = {
    "start", "start a visit to a herd", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
