// Cows that stay near and are not for transport or sale yet, with why.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Each cow once, by number, with all that keeps her: told at this visit to stand on straw, near
/// the parlour or to walk short ways only; near calving or heavy in calf; the vet asked for, or a
/// Stop for the vet not answered; pus, bone, blood, a swelling or a fall; lame when she came, or
/// told to be so still; a block or wrap on her, whether she was seen or not; milk or meat held
/// back, or not known since this visit or an earlier one. Not those that left. Whether a cow is fit
/// to travel is not judged. Nothing when there is none.
std::vector<Block> stay_near(const VisitView& view);

}  // namespace evenclaw
