#include "core/api/show.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "cli/show_text.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/identities.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"WHAT", "cow, visit or herd"},
    {"WHICH", "her number or the words she was called by; the day; the herd", false, true}};
constexpr Option options[] = {
    {"--herd", "HERD", "the herd, when there are several"},
    {"--day", "DAY", "the visit of that day; else the open or the latest"}};
constexpr Example examples[] = {
    {"evenclaw show cow 412", "her feet through time, what is on them, what is open"},
    {"evenclaw show visit", "what is still to be asked of the last visit, and how to answer it"},
    {"evenclaw show herd home", "cows, visits and counts of a herd"}};
constexpr JsonAnswer answers[] = {{"of a cow", JsonForm::document, field_docs<CowShown>},
                                  {"of a herd", JsonForm::document, field_docs<HerdShown>},
                                  {"of a visit", JsonForm::document, field_docs<VisitShown>}};

/// A cow in doubt that may be the one looked for is shown and settled by commands.
Faults with_commands(Faults faults, Records& records, const Herd& herd, const std::string& named) {
  if (faults.front().slug != "cow-not-found") return faults;
  const auto maybe = cows_that_may_be(records.store(), herd.herd, named);
  if (!maybe || maybe->empty()) return faults;
  const std::string called = recorded_as(maybe->front());
  const bool is_number = named.find_first_not_of("0123456789") == std::string::npos;
  faults.front().remedy = "Look: evenclaw show cow \"" + called +
                          "\". If it is her: evenclaw cow number \"" + called + "\" " +
                          (is_number ? named : "NUMBER");
  return faults;
}

Exit show_one(Records& records, const Herd& herd, const Invocation& invocation) {
  if (invocation.operands.size() < 2) {
    return tell_faults({{"usage", "which cow?", "", 0, 0, "For example: evenclaw show cow 412"}},
                       invocation);
  }
  const std::string named = recorded_as(invocation.words_from(1), records.language());
  auto cow = show_cow(records.store(), herd.herd, named, records.today());
  if (!cow) {
    return tell_faults(with_commands(cow.faults(), records, herd, named), invocation);
  }
  if (invocation.json) {
    print_json(*cow);
  } else {
    std::cout << cow_text(*cow, records.today());
  }
  return Exit::fine;
}

/// "show herd home" names the herd as "show herd --herd home" does.
Invocation with_herd(Invocation invocation) {
  if (invocation.operands.front() == "herd" && invocation.operands.size() > 1) {
    invocation.options["--herd"] = invocation.words_from(1);
  }
  return invocation;
}

Exit show_all(Records& records, const Herd& herd, const Invocation& invocation) {
  auto shown = show_herd(records.store(), herd.herd);
  if (!shown) return tell_faults(shown.faults(), invocation);
  if (invocation.json) {
    print_json(*shown);
  } else {
    std::cout << herd_text(*shown, records.today());
  }
  return Exit::fine;
}

/// "show visit 2026-11-24" names the day as "show visit --day 2026-11-24" does.
Exit show_visited(Records& records, Invocation invocation) {
  if (invocation.operands.size() > 1) invocation.options["--day"] = invocation.words_from(1);
  const auto visit = records.visit_meant(invocation, VisitState::any);
  if (!visit) return tell_faults(visit.faults(), invocation);
  const auto shown = show_visit(records.ports(), *visit);
  if (!shown) return tell_faults(shown.faults(), invocation);
  if (invocation.json) {
    print_json(*shown);
  } else {
    std::cout << visit_text(*shown, records.today());
  }
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  const std::string& what = invocation.operands.front();
  if (what == "visit") return show_visited(**records, invocation);
  auto herd = (*records)->herd_meant(with_herd(invocation));
  if (!herd) return tell_faults(herd.faults(), invocation);
  if (what == "cow") return show_one(**records, *herd, invocation);
  if (what == "herd") return show_all(**records, *herd, invocation);
  return tell_faults({{"usage", "show what? \"" + what + "\" is neither cow nor visit nor herd",
                       what, 0, 0, "For example: evenclaw show cow 412"}},
                     invocation);
}

}  // namespace

extern const Command show_command = {
    "show", "a cow's feet through time, a visit, or a herd", operands, options, examples, run,
    answers};

}  // namespace evenclaw::cli
