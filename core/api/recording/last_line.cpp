#include "core/api/recording/last_line.hpp"

namespace evenclaw {

void LastLine::keep_but_refused(const LastLine& before) {
  *this = before;
  refused.clear();
}

void LastLine::keep_called(const LastLine& before) {
  counted = before.counted;
  let_out = before.let_out;
  whose = before.whose;
}

}  // namespace evenclaw
