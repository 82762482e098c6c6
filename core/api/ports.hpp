// Everything the use cases need from the outside, in one value.
#pragma once

#include "core/ports/device.hpp"
#include "core/ports/directory.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

struct Ports {
  Store& store;
  Directory& directory;
  Clock& clock;
  FreshIds& ids;
};

}  // namespace evenclaw
