// A cow that is called again in the same visit: the one turn that both calls make.
#pragma once

#include <optional>

#include "core/trade/turn.hpp"

namespace evenclaw {

/// What `more` makes of `before`, both settled. As within one turn, what was not called is filled
/// in and what is new is added; an unfinished turn is finished when `more` is. Nothing when both
/// cannot be one: a foot found fine and with a finding, one lesion told in two ways, other lesions
/// than before on a foot, an opposite. Then each is a turn of its own.
std::optional<Turn> gone_on(const Turn& before, const Turn& more);

}  // namespace evenclaw
