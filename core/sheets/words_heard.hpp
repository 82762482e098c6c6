// Whether what somebody said holds the words of a table, as they stand there or misspelt.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace evenclaw {

/// The words as they are compared: folded, without quotes; numbers and signs as they stand.
std::vector<std::string> heard_words(std::string_view said);

/// A word of a phrase of the call line in any language: then it is no slip of another.
bool is_word_of_the_call(std::string_view folded);

/// "Withdrawl" for "withdrawal": five letters or more, the first one kept, one slip in each four of
/// the shorter one; of a word of five letters no other letter in its place ("tunes" is not
/// "tubes"). Our judgement. No word of the call line is a slip.
bool is_slip_of(const std::string& said, const std::string& known);

/// Those words stand in it one behind the other, each whole, as they are or with a slip.
bool holds_phrase(const std::vector<std::string>& said, std::string_view phrase);

}  // namespace evenclaw
