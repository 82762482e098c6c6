// Lines the program offers to be said back, such as the answers to a warning, in the words of the
// language in which the day is called.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "go ahead".
std::string offered_go_ahead(const Language& language);

/// "LH block on inside", "LH wrap still on"; "vet" without a foot. A claw is left out where none
/// was called.
std::string offered_act(std::optional<Foot> foot, ActionKind act, Claw claw,
                        const Language& language);

/// "LH outside swelling".
std::string offered_finding(Foot foot, Claw claw, Lesion lesion, const Language& language);

/// "injected by the vet", "LH claw amputated by the vet".
std::string offered_by_vet(std::optional<Foot> foot, ActionKind act, const Language& language);

/// "LH no, no spray; spray with bluemix": the product was another one.
std::string offered_other_product(std::optional<Foot> foot, ActionKind act, std::string_view name,
                                  const Language& language);

/// "LH no, no wrap on; wrap on, off 5d": it comes off on another day.
std::string offered_other_day(Foot foot, ActionKind act, Claw claw, int days,
                              const Language& language);

/// "no, LH", "no, inside", "no, 421", "no, mobility 3 of 3".
std::string offered_correction(Foot right, const Language& language);
std::string offered_correction(Claw right, const Language& language);
std::string offered_correction(std::string_view right_number, const Language& language);
std::string offered_correction(const MobilitySaid& right, const Language& language);

/// "LH no, no outside bruise slight": claw, lesion, stage and degree as far as they were called.
std::string offered_taking_back(Foot foot, const Finding& finding, const Language& language);

/// "LH no, no block taken off inside", "LH no, no outside 78 mm".
std::string offered_taking_back(Foot foot, ActionKind act, Claw claw, const Language& language);
std::string offered_taking_back(Foot foot, const Measure& measure, const Language& language);

/// "no, not lame"; "no, lame LH".
std::string offered_not_lame(const Language& language);
std::string offered_lame(const FootSet& feet, const Language& language);

/// "no, not withdrawal": of the cow.
std::string offered_taking_back(ActionKind act, const Language& language);

/// "LF LH"; "" of none.
std::string offered_feet(const FootSet& feet, const Language& language);

/// "caller Anna": `who` is TermKind::caller or TermKind::writer.
std::string offered_person(TermKind who, std::string_view name, const Language& language);

/// "today all four".
std::string offered_todays_feet(FeetGroup feet, const Language& language);

}  // namespace evenclaw
