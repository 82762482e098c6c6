#include "core/sheets/yard_list.hpp"

#include <doctest/doctest.h>

#include "core/paper/text.hpp"
#include "core/trade/leaving_yard.hpp"

namespace evenclaw {

TEST_CASE("the list for leaving the yard has a box for each line and tells where it comes from") {
  Document document;
  document.title = "Hollow Meadow";
  document.blocks = before_leaving();
  const std::string text = to_plain_text(document);
  std::size_t boxes = 0;
  for (auto at = text.find("[ ]"); at != std::string::npos; at = text.find("[ ]", at + 1)) ++boxes;
  CHECK(boxes == before_leaving_the_yard().size());
  CHECK(text.find("damaged gloves changed (protocols of AHDB") != std::string::npos);
  CHECK(text.find("discs and rasps as the knives (common practice, no source)") !=
        std::string::npos);
}

}  // namespace evenclaw
