#include "core/api/recording/people_at_crush.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/recording/open_questions.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/offered.hpp"

namespace evenclaw {

namespace {

/// What stands in the log for a name that may be misspelt.
constexpr std::string_view near_name = "a name a letter or two off a known one";

/// What the log calls it, whatever language the day is called in.
std::string_view role_of(TermKind who) {
  return who == TermKind::caller ? "caller" : "writer";
}

}  // namespace

Outcome PeopleAtCrush::caller(std::string_view name) {
  const auto found = person(TermKind::caller, name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  book_.by.caller = (*found)->id;
  book_.visit.caller = (*found)->name;
  book_.answers.add(ReplyKind::told,
                    offered_person(TermKind::caller, book_.visit.caller, book_.language));
  return Done{};
}

Outcome PeopleAtCrush::writer(std::string_view name) {
  const auto found = person(TermKind::writer, name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  book_.by.writer = (*found)->id;
  book_.visit.writer = (*found)->name;
  book_.answers.add(ReplyKind::told,
                    offered_person(TermKind::writer, book_.visit.writer, book_.language));
  return Done{};
}

/// A name close to a known one is asked about; said a second time it is meant. Where nobody is
/// there to ask it is read as the known one, and asked about when the visit closes unless the next
/// line says it again.
Result<std::optional<Person>> PeopleAtCrush::person(TermKind who, std::string_view name) {
  if (names_two_people(name)) return refuse_two_names(who, name);
  const std::string folded = fold_case(trimmed(name));
  const bool sure = book_.typed ? asked_.is_repeated(folded)
                                : asked_.is_repeated_at_once(folded, book_.answers.line());
  auto found = person_named(book_.ports, name, sure);
  if (!found) return found.faults();
  if (const auto* doubt = std::get_if<NameInDoubt>(&*found)) {
    asked_.ask(folded, book_.answers.line());
    return in_doubt(who, *doubt);
  }
  const Outcome settled = sure ? settle_name(who) : Outcome(Done{});
  if (!settled) return settled.faults();
  return std::optional(Person{std::get<PersonId>(*found), std::string(trimmed(name))});
}

/// Who of the two it was nobody knows, and what follows is called by one.
Result<std::optional<Person>> PeopleAtCrush::refuse_two_names(TermKind who, std::string_view name) {
  const std::string said(trimmed(name));
  refuse(book_, crush_, name,
         {{.slug = "call-impossible",
           .message = said + " are two names; one person calls, and one writes, at a time.",
           .token = said,
           .line = book_.answers.line(),
           .remedy = "Say one name, and the other one when that person takes over."}});
  const Outcome kept = book_.typed
                           ? Outcome(Done{})
                           : keep_as_unread(book_, {std::string(role_of(who)), "two names at once"},
                                            "Nobody was taken down for it. Who was it?");
  if (!kept) return kept.faults();
  return std::optional<Person>();
}

/// Names stand outside the log, so the question is kept without them.
Result<std::optional<Person>> PeopleAtCrush::in_doubt(TermKind who, const NameInDoubt& doubt) {
  if (book_.typed) {
    book_.answers
        .add(ReplyKind::question, "Is " + doubt.said + " the same as " + doubt.nearest +
                                      "? Say the name again if it is somebody else.")
        .token = doubt.said;
    return std::optional<Person>();
  }
  book_.answers
      .add(ReplyKind::question, doubt.said + " was read as " + doubt.nearest + "; say \"" +
                                    offered_person(who, doubt.said, book_.language) +
                                    "\" on the next line if it is somebody else.")
      .token = doubt.said;
  const Outcome kept = keep_as_unread(book_, {std::string(role_of(who)), std::string(near_name)},
                                      "It was read as the known one. Who was it?", doubt.person);
  if (!kept) return kept.faults();
  return std::optional(Person{doubt.person, doubt.nearest});
}

/// Said twice, it is somebody else than the known one.
Outcome PeopleAtCrush::settle_name(TermKind who) {
  const UnreadNews question{std::string(role_of(who)), std::string(near_name)};
  const std::vector<UnreadNews>& open = book_.before.unread();
  const bool is_open = std::any_of(open.begin(), open.end(), [&](const UnreadNews& unread) {
    return unread.number == question.number && unread.words == question.words;
  });
  return is_open ? settle_unread(book_, question, "the name was said again") : Outcome(Done{});
}

}  // namespace evenclaw
