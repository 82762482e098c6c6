#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/long_in_crush.hpp"
#include "core/api/whom_to_ring.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"NAME", "long-in-crush or ring", false},
                                {"VALUE", "what it is from now on", false}};
constexpr Example examples[] = {
    {"evenclaw setting", "what this business has settled"},
    {"evenclaw setting long-in-crush 25",
     "minutes in the crush from which on it is noted that she stood there for long"},
    {"evenclaw setting long-in-crush off", "no such note"},
    {"evenclaw setting ring \"Anna, 01234 567890\"",
     "name and telephone on every visit sheet: whom the farm rings about a cow"},
    {"evenclaw setting ring off", "erases them; the sheet leaves a line to write them on"}};

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

Result<SettingShown> long_in_crush_shown(const Ports& ports) {
  const auto minutes = long_in_crush(ports.store);
  if (!minutes) return minutes.faults();
  return SettingShown{
      "long-in-crush", *minutes ? std::to_string(**minutes) : "off",
      "usually " + std::to_string(usual_long_minutes) + " minutes: our judgement, no source"};
}

Result<SettingShown> ring_shown(const Ports& ports) {
  const auto whom = whom_to_ring(ports);
  if (!whom) return whom.faults();
  return SettingShown{"ring", whom->empty() ? "off" : *whom,
                      "usually off: the sheet leaves a line to write on"};
}

struct Setting {
  std::string_view name;
  Result<SettingShown> (*shown)(const Ports&);
  Result<EntryId> (*settle)(const Ports&, std::string_view);
};

constexpr Setting settings[] = {{"long-in-crush", long_in_crush_shown, set_long_in_crush},
                                {"ring", ring_shown, set_whom_to_ring}};

const Setting* setting_named(const std::string& name) {
  for (const Setting& setting : settings) {
    if (setting.name == name) return &setting;
  }
  return nullptr;
}

Exit list(const Ports& ports, const Invocation& invocation) {
  std::vector<SettingShown> all;
  for (const Setting& setting : settings) {
    auto shown = setting.shown(ports);
    if (!shown) return tell_faults(shown.faults(), invocation);
    all.push_back(*std::move(shown));
  }
  if (invocation.json) {
    print_json(all);
    return Exit::fine;
  }
  for (const SettingShown& each : all) {
    std::cout << each.name << "  " << each.value << "  (" << each.source << ")\n";
  }
  return Exit::fine;
}

Fault no_such_setting(const std::string& name) {
  std::string there;
  for (const Setting& setting : settings) {
    there += (there.empty() ? "" : ", ") + std::string(setting.name);
  }
  return {"usage", "there is no setting \"" + name + "\"", name, 0, 0, "There is: " + there + "."};
}

Exit run(const Invocation& invocation) {
  const std::vector<std::string>& said = invocation.operands;
  const Setting* setting = said.empty() ? nullptr : setting_named(said.front());
  if (!said.empty() && setting == nullptr) {
    return tell_faults({no_such_setting(said.front())}, invocation);
  }
  const bool only_asks = said.size() < 2;
  auto records = Records::open(invocation, only_asks ? Opening::look : Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  if (only_asks) return list((*records)->ports(), invocation);
  auto entry = setting->settle((*records)->ports(), said[1]);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, said[0] + " is " + said[1] + " from now on.", EntryAnswer{*entry});
  return Exit::fine;
}

}  // namespace

extern const Command setting_command = {
    "setting", "what the business has settled for all herds", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
