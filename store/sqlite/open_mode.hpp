// What a file is opened for.
#pragma once

namespace evenclaw {

enum class OpenMode {
  create,    // a new file when there is none
  existing,  // fault "file-not-found" when there is none
  read_only,
  salvage  // to read only, and not looked over for damage: what can be read is given out
};

}  // namespace evenclaw
