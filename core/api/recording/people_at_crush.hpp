// Who calls and who types, as it is said beside the crush.
#pragma once

#include <optional>
#include <string_view>

#include "core/api/people.hpp"
#include "core/api/recording/asked_once.hpp"
#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// What follows is called, or typed, by the person who was named last and was in no doubt.
class PeopleAtCrush {
 public:
  PeopleAtCrush(VisitBook& book, Crush& crush) : book_(book), crush_(crush) {}

  Outcome caller(std::string_view name);
  Outcome writer(std::string_view name);

 private:
  Result<std::optional<Person>> person(TermKind who, std::string_view name);
  Result<std::optional<Person>> refuse_two_names(TermKind who, std::string_view name);
  Result<std::optional<Person>> in_doubt(TermKind who, const NameInDoubt& doubt);
  Outcome settle_name(TermKind who);

  VisitBook& book_;
  Crush& crush_;
  AskedOnce asked_;  // whether a name is a slip of a known one
};

}  // namespace evenclaw
