// What an import answers on a terminal.
#pragma once

#include <string>

#include "core/api/herd_import.hpp"

namespace evenclaw::cli {

/// How the file was read, column by column and lesion by lesion, what was taken over, and each line
/// that was not, with its place, its reason and what to do; of more than a hundred the first
/// hundred, of words for lesions the forty most frequent.
std::string import_text(const std::string& file, const HerdImported& imported);

}  // namespace evenclaw::cli
