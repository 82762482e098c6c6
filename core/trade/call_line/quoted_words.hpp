// What a sentence told to people quotes of the call line, in the words of the language of the day.
#pragma once

#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"

namespace evenclaw {

/// The sentence with what stands in braces, a line or part of one in English, said in `language`:
/// "say {no, right hind}". Numbers and separators stay; braces around anything that is no call line
/// stay as they are, for somebody may have typed them.
std::string with_quoted_words(std::string_view sentence, const Language& language);

}  // namespace evenclaw
