// Objects of C libraries that are released by a function of the library.
#pragma once

#include <memory>

namespace evenclaw {

template <auto release>
struct ReleasedBy {
  template <class T>
  void operator()(T* object) const {
    release(object);
  }
};

template <class T, auto release>
using Owned = std::unique_ptr<T, ReleasedBy<release>>;

}  // namespace evenclaw
