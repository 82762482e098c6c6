#include "core/ports/directory.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a name is shown while it is there, and that it was removed once it is not") {
  const PersonId anna{uuid_derived("Anna")};
  const PersonId ben{uuid_derived("Ben")};
  const std::vector<Person> everybody = {{anna, "Anna", false}, {ben, "", true}};
  CHECK(shown_name(everybody, anna) == "Anna");
  CHECK(shown_name(everybody, ben) == "person removed");
  CHECK(shown_name(everybody, PersonId{uuid_derived("Cleo")}) == "unknown person");
  CHECK(shown_name({}, anna) == "unknown person");
}

}  // namespace evenclaw
