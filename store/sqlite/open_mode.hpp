// What a file is opened for.
#pragma once

namespace evenclaw {

enum class OpenMode {
  create,    // a new file when there is none
  existing,  // fault "file-not-found" when there is none
  read_only
};

}  // namespace evenclaw
