// Lines nobody could be sure of: kept as they were said and asked about when the visit closes,
// unless something that is said until then settles them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Of whom a line without a number is: of her in the crush, else of her who was let out last. Null
/// where there is none.
struct WhoIsMeant {
  const CowSaid* in_crush = nullptr;
  const CowSaid* let_out = nullptr;
};

/// Keeps the words for `question`, once. `person` is who was taken for the one that was named.
Outcome keep_as_unread(VisitBook& book, const UnreadNews& news, const std::string& question,
                       std::optional<PersonId> person = {});

/// News nobody could read is kept for every number it names, at once, so that nothing is lost when
/// the power goes; the next line may say it again.
Outcome keep_unread(VisitBook& book, std::string_view text);

/// Refuses a line by which somebody's record was to be mended and is not: that is kept for the end
/// of the visit.
Outcome refuse_mending(VisitBook& book, Crush& crush, const std::string& number, Fault fault,
                       std::string_view text);

/// "No, rigt hind", without a number.
bool corrects_without_number(std::string_view text, const Language& language);

/// Such a line, said while nobody stands in the crush, is kept for the cow it names; else for her
/// who was let out last.
Outcome keep_correction(VisitBook& book, const WhoIsMeant& meant, std::string_view text);

/// What was kept is not asked about any more: `text` said what holds.
Outcome settle_unread(VisitBook& book, const UnreadNews& news, std::string_view text);

/// Settles all that the line says again in clearer words. In the same words it is no clearer than
/// it was.
Outcome settle_news_said_again(VisitBook& book, const WhoIsMeant& meant, std::string_view text);

/// The line counts animals, read or not.
bool is_of_a_batch(std::string_view text, const Language& language);

}  // namespace evenclaw
