#include "core/api/show.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "cli/show_text.hpp"
#include "core/api/cow_names.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"WHAT", "cow or herd"},
    {"WHICH", "her number or the words she was called by; the herd", false, true}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"}};
constexpr Example examples[] = {
    {"evenclaw show cow 412", "her feet through time, what is on them, what is open"},
    {"evenclaw show herd home", "cows, visits and counts of a herd"}};
constexpr JsonAnswer answers[] = {{"of a cow", JsonForm::document, field_docs<CowShown>},
                                  {"of a herd", JsonForm::document, field_docs<HerdShown>}};

Exit show_one(Records& records, const Herd& herd, const Invocation& invocation) {
  if (invocation.operands.size() < 2) {
    return tell_faults({{"usage", "which cow?", "", 0, 0, "For example: evenclaw show cow 412"}},
                       invocation);
  }
  const std::string named = recorded_as(invocation.words_from(1), records.language());
  auto cow = show_cow(records.store(), herd.herd, named, records.today());
  if (!cow) return tell_faults(cow.faults(), invocation);
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

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto herd = (*records)->herd_meant(with_herd(invocation));
  if (!herd) return tell_faults(herd.faults(), invocation);
  const std::string& what = invocation.operands.front();
  if (what == "cow") return show_one(**records, *herd, invocation);
  if (what == "herd") return show_all(**records, *herd, invocation);
  return tell_faults({{"usage", "show what? \"" + what + "\" is neither cow nor herd", what, 0, 0,
                       "For example: evenclaw show cow 412"}},
                     invocation);
}

}  // namespace

extern const Command show_command = {
    "show", "a cow's feet through time, or a herd", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
