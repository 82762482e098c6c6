#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/long_in_crush.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"NAME", "long-in-crush", false},
                                {"VALUE", "what it is from now on", false}};
constexpr Example examples[] = {
    {"evenclaw setting", "what this business has settled"},
    {"evenclaw setting long-in-crush 25",
     "minutes in the crush from which on it is noted that she stood there for long"},
    {"evenclaw setting long-in-crush off", "no such note"}};

struct SettingShown {
  std::string name;
  std::string value;
  std::string source;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &SettingShown::name, "which setting");
    visit("value", &SettingShown::value, "its value");
    visit("source", &SettingShown::source, "where the usual value comes from");
  }
};

constexpr JsonAnswer answers[] = {{"without VALUE", JsonForm::list, field_docs<SettingShown>},
                                  {"with it", JsonForm::document, field_docs<EntryAnswer>}};

constexpr std::string_view long_name = "long-in-crush";

Exit list(Records& records, const Invocation& invocation) {
  const auto minutes = long_in_crush(records.store());
  if (!minutes) return tell_faults(minutes.faults(), invocation);
  const std::vector<SettingShown> all = {
      {std::string(long_name), *minutes ? std::to_string(**minutes) : "off",
       "usually " + std::to_string(usual_long_minutes) + " minutes: our judgement, no source"}};
  if (invocation.json) {
    print_json(all);
    return Exit::fine;
  }
  for (const SettingShown& each : all) {
    std::cout << each.name << "  " << each.value << "  (" << each.source << ")\n";
  }
  return Exit::fine;
}

Exit run(const Invocation& invocation) {
  const std::vector<std::string>& said = invocation.operands;
  if (!said.empty() && said.front() != long_name) {
    return tell_faults({{"usage", "there is no setting \"" + said.front() + "\"", said.front(), 0,
                         0, "There is: " + std::string(long_name) + "."}},
                       invocation);
  }
  const bool only_asks = said.size() < 2;
  auto records = Records::open(invocation, only_asks ? Opening::look : Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  if (only_asks) return list(**records, invocation);
  auto entry = set_long_in_crush((*records)->ports(), said[1]);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, said[0] + " is " + said[1] + " from now on.", EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command setting_command = {
    "setting", "what the business has settled for all herds", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
