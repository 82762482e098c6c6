#include "core/api/cow_register.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/api/cow_names.hpp"
#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/identity_rows.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

Fault answer_needed(std::string message, std::string remedy) {
  return {.slug = "answer-needed", .message = std::move(message), .remedy = std::move(remedy)};
}

Fault wrongly_asked(std::string message, std::string token = {}) {
  return {.slug = "usage", .message = std::move(message), .token = std::move(token)};
}

void add_faults(Faults& all, const Faults& more) {
  all.insert(all.end(), more.begin(), more.end());
}

/// One line of plain words, or a fault.
std::optional<std::string> plain_words(std::string_view typed, Faults& faults) {
  const std::string words(trimmed(typed));
  if (words.empty()) return std::nullopt;
  if (!is_one_plain_line(words)) {
    faults.push_back(wrongly_asked("That holds a character that cannot be shown.", words));
  }
  return words;
}

/// What happened, and cannot have happened later than it is told of.
std::optional<Day> not_after(Day from, std::optional<Day> day, const std::string& what,
                             Faults& faults) {
  if (day && *day > from) {
    faults.push_back({.slug = "date-in-future",
                      .message = "She would " + what + " after the day from which this holds.",
                      .token = to_text(*day)});
  }
  return day;
}

void tell_lactation(CowRegistered& body, const CowDetails& details, Faults& faults) {
  body.calved = not_after(body.valid_from, details.calved, "have calved", faults);
  body.lactation = details.lactation;
  body.dry_off = details.dry_off;
  body.due_to_calve = details.due_to_calve;
  if (body.due_to_calve && *body.due_to_calve < body.valid_from) {
    faults.push_back(wrongly_asked("She would be due to calve before the day it is told.",
                                   to_text(*body.due_to_calve)));
  }
}

CowRegistered body_of(const CowDetails& details, Day from, Faults& faults) {
  CowRegistered body;
  body.valid_from = from;
  if (!trimmed(details.tag).empty()) {
    const auto tag = national_tag(trimmed(details.tag));
    if (tag) body.tag = to_text(*tag);
    if (!tag) add_faults(faults, tag.faults());
  }
  if (!trimmed(details.electronic).empty()) {
    const auto number = electronic_number(trimmed(details.electronic));
    if (number) body.electronic = to_text(*number);
    if (!number) add_faults(faults, number.faults());
  }
  if (const auto alias = plain_words(details.alias, faults)) body.aliases.push_back(*alias);
  body.breed = plain_words(details.breed, faults);
  body.born = not_after(from, details.born, "be born", faults);
  body.heifer_or_cow = details.heifer_or_cow;
  body.weight = details.weight;
  tell_lactation(body, details, faults);
  return body;
}

std::string name_in(const std::vector<CowRow>& cows, CowId cow) {
  const auto at =
      std::find_if(cows.begin(), cows.end(), [&](const CowRow& row) { return row.cow == cow; });
  return at == cows.end() ? std::string("another cow") : recorded_as(*at);
}

/// What a person has to say before this is written: it is the tag of a known cow, and not of `her`.
Outcome no_question_about_tags(Store& store, HerdId herd, const CowRegistered& body,
                               std::optional<CowId> her) {
  Faults questions;
  const auto cows = select_as<CowRow>(store, herd);
  if (!cows) return cows.faults();
  for (const std::optional<std::string>& carried : {body.tag, body.electronic}) {
    if (!carried) continue;
    const auto carrier = carrier_of_tag(store, herd, *carried);
    if (!carrier) return carrier.faults();
    if (!*carrier || *carrier == her) continue;
    questions.push_back(answer_needed(
        *carried + " is known as the tag of " + name_in(*cows, **carrier) + ".",
        "If she is that cow, tell it of her by her name there; if not, say that you are sure."));
  }
  if (const auto asked = asked_of_reader(body)) questions.push_back(*asked);
  return questions.empty() ? Outcome(Done{}) : Outcome(std::move(questions));
}

Outcome no_question_about_number(Store& store, HerdId herd, const HerdNumber& number) {
  const std::string plain = plain_number(trimmed(number.number));
  if (plain.empty()) return Done{};
  const auto rows = select_as<CowNumberRow>(store, herd);
  if (!rows) return rows.faults();
  const bool is_carried = std::any_of(rows->begin(), rows->end(), [&](const CowNumberRow& row) {
    const bool ends_before = row.valid_to && *row.valid_to < number.from;
    const bool begins_after = number.to && *number.to < row.valid_from;
    return row.number == plain && !ends_before && !begins_after;
  });
  if (!is_carried) return Done{};
  return answer_needed("A cow carries " + plain + " already.",
                       "Tell more of her as of one that is known; if it is another cow with the "
                       "same number, say that you are sure.");
}

}  // namespace

bool tells_anything(const CowRegistered& body) {
  return body.tag || body.electronic || !body.aliases.empty() || body.breed || body.born ||
         body.heifer_or_cow || body.weight || body.calved || body.lactation || body.dry_off ||
         body.due_to_calve;
}

std::string strongest_identifier(const CowRegistered& body) {
  const auto tag = national_tag(body.tag.value_or(""));
  if (tag) return tag->country + plain_number(tag->digits);
  return body.electronic.value_or(body.number);
}

std::optional<Fault> asked_of_reader(const CowRegistered& body) {
  const auto number = electronic_number(body.electronic.value_or(""));
  if (!number || kind_of(*number) != ElectronicKind::test) return std::nullopt;
  return answer_needed("Numbers that begin with 999 are for trying a reader out.",
                       "Read her again, or say that you are sure.");
}

Result<EntryId> register_cow(const Ports& ports, HerdId herd, const HerdNumber& number,
                             const CowDetails& details, bool sure) {
  Faults faults;
  CowRegistered body = body_of(details, number.from, faults);
  body.number = plain_words(number.number, faults).value_or("");
  body.valid_to = number.to;
  if (is_written_as_electronic(body.number)) faults.push_back(is_no_herd_number(body.number));
  const bool ends_too_early = number.to && *number.to < number.from;
  if (ends_too_early) faults.push_back(wrongly_asked("Her number would end before it begins."));
  const std::string strongest = strongest_identifier(body);
  if (faults.empty() && strongest.empty()) {
    faults.push_back(
        wrongly_asked("A herd number, an ear tag or an electronic number is missing."));
  }
  if (!faults.empty()) return faults;
  body.cow = registered_cow_id(herd, strongest, number.from);
  if (!sure) {
    const Outcome tags = no_question_about_tags(ports.store, herd, body, std::nullopt);
    if (!tags) add_faults(faults, tags.faults());
    const Outcome numbers = no_question_about_number(ports.store, herd, number);
    if (!numbers) add_faults(faults, numbers.faults());
    if (!faults.empty()) return faults;
  }
  return write_one(ports, herd.value, body, {});
}

Result<EntryId> tell_of_cow(const Ports& ports, HerdId herd, const CowTold& told, bool sure) {
  Faults faults;
  CowRegistered body = body_of(told.details, told.from, faults);
  if (!faults.empty()) return faults;
  if (!tells_anything(body)) return wrongly_asked("Nothing was told of her.");
  body.cow = told.cow;
  if (!sure) {
    const Outcome asked = no_question_about_tags(ports.store, herd, body, told.cow);
    if (!asked) return asked.faults();
  }
  return write_one(ports, herd.value, body, {});
}

Fault is_no_herd_number(const std::string& number) {
  return {.slug = "usage",
          .message = number + " is an electronic number and no herd number.",
          .token = number,
          .remedy = "Tell it as her electronic number."};
}

Result<std::optional<CowId>> carrier_of_tag(Store& store, HerdId herd, std::string_view typed) {
  const auto electronic = electronic_number(trimmed(typed));
  const auto tag = national_tag(trimmed(typed));
  if (!electronic && !tag) return std::optional<CowId>();
  const auto rows = select_as<CowTagRow>(store, herd, {}, {"valid_from"});
  if (!rows) return rows.faults();
  const auto fits = [&](const CowTagRow& row) {
    if (electronic) return row.electronic == to_text(*electronic);
    const auto carried = national_tag(row.tag);
    return carried.ok() && *carried == *tag;
  };
  const auto newest = std::find_if(rows->rbegin(), rows->rend(), fits);
  return newest == rows->rend() ? std::optional<CowId>() : std::optional<CowId>(newest->cow);
}

std::string tag_as_printed(std::string_view stored) {
  const auto tag = national_tag(stored);
  return tag ? spoken(*tag) : std::string(stored);
}

Result<std::optional<CowId>> known_otherwise(Store& store, HerdId herd, std::string_view typed) {
  auto tagged = carrier_of_tag(store, herd, typed);
  if (!tagged || *tagged) return tagged;
  const auto rows = select_as<CowAliasRow>(store, herd);
  if (!rows) return rows.faults();
  const std::string folded = fold_case(trimmed(typed));
  const auto at = std::find_if(rows->begin(), rows->end(), [&](const CowAliasRow& row) {
    return fold_case(row.alias) == folded;
  });
  return at == rows->end() ? std::optional<CowId>() : std::optional<CowId>(at->cow);
}

}  // namespace evenclaw
