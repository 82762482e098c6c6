// Asking for help about a command that is none.
#include <doctest/doctest.h>

#include "tests/cli/program.hpp"

namespace evenclaw::test {

TEST_CASE("Help about a command that is none proposes the nearest one, as running it does") {
  const Workshop workshop;
  const Ran helped = workshop.run({"help", "recrod"});
  const Ran run = workshop.run({"recrod"});
  CHECK(helped.exit == 2);
  CHECK(helped.err.find("evenclaw record") != std::string::npos);
  CHECK(helped.err == run.err);
  CHECK(helped.out.empty());
}

}  // namespace evenclaw::test
