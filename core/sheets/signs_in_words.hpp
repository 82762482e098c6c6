// The signs a vet has to know of that are named in words nobody has read as calls.
#pragma once

#include <string_view>
#include <vector>

#include "core/sheets/signs_for_vet.hpp"

namespace evenclaw {

/// Lines that were refused, kept as the reason why her turn was not finished.
bool is_not_understood(std::string_view end_reason);

/// What the words are, as far as it decides what may be heard in them.
struct HeardAs {
  bool may_be_found = false;      // what is found on a foot counts: a note, a refused line
  bool is_of_foot = false;        // "swollen" alone is of the foot, not of a hock
  bool is_pus_explained = false;  // a white line abscess was found there
};

/// What the words may tell of in any language, each row of the table once: why a cow was let out
/// ("went down"), a note, or a line nobody understood, of which all may be heard. Pus that nobody
/// placed is taken for pus above the horn. That something is denied is not heard: then it is only
/// asked about.
std::vector<const SignForVet*> signs_in_words(std::string_view words, const HeardAs& as = {});

/// "The vet should see it": the words name him, and not that he came or is not needed.
bool names_the_vet(std::string_view words);

}  // namespace evenclaw
