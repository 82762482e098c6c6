#include "cli/farm_lines.hpp"

#include <iostream>

#include "cli/answer.hpp"
#include "core/api/people.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

Result<PersonId> person_option(Records& records, const Invocation& invocation,
                               std::string_view option) {
  if (!invocation.has(option)) return PersonId{};
  return certain_person(records.ports(), invocation.value(option), invocation.has("--sure"));
}

}  // namespace

Exit take_farm_lines(const Invocation& invocation, const FarmCall& call, const std::string& opening,
                     LineTaker taker) {
  LinesTaken taken(invocation, taker);
  return taken.take([&] {
    std::cout << opening << " Ctrl-D ends.\n";
    const Outcome typed =
        LinesTaken::each_typed([&] { return std::string(call.prompt); },
                               [&](const std::string& line) -> Outcome {
                                 const auto reply = taker.say({&line, 1});
                                 if (!reply) return reply.faults();
                                 taken.print_below(*reply, character_count(call.prompt));
                                 return Done{};
                               });
    return typed ? taken.end() : tell_faults(typed.faults(), invocation);
  });
}

Result<AtFarm> farm_meant(Records& records, const Invocation& invocation) {
  auto herd = records.herd_meant(invocation);
  if (!herd) return herd.faults();
  const auto day = day_option(invocation, "--day");
  if (!day) return day.faults();
  AtFarm where{*std::move(herd), day->value_or(records.today()), {}};
  if (where.day > records.today()) {
    return Fault{.slug = "date-in-future",
                 .message = to_text(where.day) + " lies after today",
                 .token = to_text(where.day)};
  }
  const auto caller = person_option(records, invocation, "--by");
  if (!caller) return caller.faults();
  const auto writer = person_option(records, invocation, "--writer");
  if (!writer) return writer.faults();
  where.by = {*caller, *writer};
  return where;
}

}  // namespace evenclaw::cli
