// The signs a vet has to know of: how soon, what is left alone until then, and who says so.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/saying.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// How soon the vet is needed; his box tells of the cows in this order. `reportable`: signs of a
/// disease the law wants reported, before all else, for it leaves the farm with people and lorries.
enum class VetUrgency { reportable, at_once, today, later };

/// One row: a sign that was called, a lesion that was found, or neither, where the warning of the
/// check is all there is to tell by.
struct SignForVet {
  std::string_view check;          // the slug of the check that warns of it; "" when none does
  std::optional<ActionKind> seen;  // of a foot or of her
  std::optional<Lesion> found;     // on a foot
  bool is_above_both = false;      // of a swelling: above both claws, which is taken for foul
  VetUrgency urgency = VetUrgency::today;
  std::optional<Saying> until_then = std::nullopt;  // what is left alone
  std::string_view source;
};

std::span<const SignForVet> signs_for_vet();

/// The check that both claws of a foot hurt. Its row holds neither sign nor lesion: that they do
/// follows from all that was found on the foot.
inline constexpr std::string_view both_claws_rule = "both-claws-painful";

/// The note that a claw was blocked again because it did not heal: more than other notes, his box
/// tells of it.
inline constexpr std::string_view blocked_again_rule = "blocked-again";

/// A sign of hers and the foot it is on; of all of her when on none.
struct SignOfHer {
  const SignForVet* sign = nullptr;
  std::optional<Foot> foot;
  bool is_only_asked = false;  // words nobody has read as a call may tell of it
};

/// What was called, found, or said as the reason why she was let out ("went down"), each once for a
/// place. A fall said so stands for the call "went down in the crush". Then what a note, the words
/// she came for or a line that was not understood may tell of.
std::vector<SignOfHer> signs_of_her(const CowSeen& cow);

/// What was found on each of the claws hurts: no good one is left for a block.
bool do_both_claws_hurt(const CowSeen& cow, Foot foot);

/// The signs of that foot in words, or of the whole cow when no foot is given, each once. What was
/// found is not among them.
std::vector<std::string> signs_of(const VisitView& view, const CowSeen& cow,
                                  std::optional<Foot> foot);

/// Seen in her mouth or on her foot, or fever: called of no cow that is well.
bool is_sign_of_illness(ActionKind kind);

}  // namespace evenclaw
