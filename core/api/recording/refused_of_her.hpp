// The lines about her in the crush that nobody could read: they stay with her until they are said
// again.
#pragma once

#include <string_view>

#include "core/api/recording/in_crush.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// Keeps one of them.
void keep_refused(InCrush& cow, std::string_view text, const Language& language);

/// Said twice it is kept once.
void keep_refused_once(InCrush& cow, std::string_view text, const Language& language);

/// What `text` says again, by itself or with the lines taken since, is open no more.
void given_again(InCrush& cow, std::string_view text, const Language& language);

}  // namespace evenclaw
