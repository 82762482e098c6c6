// The lines about her in the crush that nobody could read: they stay with her until they are said
// again.
#pragma once

#include <string_view>

#include "core/api/recording/in_crush.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// Keeps one of them.
void keep_refused(InCrush& cow, std::string_view text, const Language& language);

/// Said twice it is kept once.
void keep_refused_once(InCrush& cow, std::string_view text, const Language& language);

/// What `text` says again, by itself or with the lines taken since, is open no more.
void given_again(InCrush& cow, std::string_view text, const Language& language);

/// The refused line names a cow of whom the news is, by her number or her words.
bool names_one_told_of(std::string_view refused, const Line& news, const Language& language);

/// What the line, read from `text`, says again is open no more: news of another cow says again
/// only what named that cow.
void settle_refused(InCrush& cow, const Line& line, std::string_view text,
                    const Language& language);

}  // namespace evenclaw
