// Signs of a disease the law wants reported: of which cows, and what was seen when.
#pragma once

#include <string>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// So many days a sign of an earlier visit that is answered for by itself, as by the vet being
/// asked for, still counts beside another: twice the two weeks that foot-and-mouth disease takes at
/// most to show (from memory; our judgement).
inline constexpr int paired_days = 28;

/// Two signs of hers, or one of hers beside another cow's, unless both have fever alone: seen at
/// this visit or an earlier one to which the vet has not come since. The check notifiable-signs
/// hears the same in the order it is called; here every cow of such a pair is one, whichever came
/// first.
bool may_be_notifiable(const VisitView& view, CowId cow);

/// The rule, or the word, of a Stop or sign that tells of such a disease.
bool tells_of_illness(const EarlierStop& stop);

/// Of a Stop or sign of an earlier visit: it may be notifiable, by itself or beside what was seen
/// at another.
bool is_reportable(const VisitView& view, const EarlierStop& stop);

/// "412 (fever; sore mouth, seen Tue 17 Nov)": what was seen of her, with the day where it was not
/// at this visit.
std::string notifiable_words(const VisitView& view, CowId cow);

}  // namespace evenclaw
