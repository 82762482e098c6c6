#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/log/entry.hpp"
#include "core/trade/identity.hpp"
#include "tests/core/log/farm.hpp"
#include "tests/store/temporary_folder.hpp"

namespace evenclaw {

namespace {

std::string page() {
  return bytes_of("docs/format/log.md");
}

/// The texts between the fences of the page, without their last line feeds.
std::vector<std::string> fenced_texts() {
  const std::string text = page();
  const std::string fence = "\n```\n";
  std::vector<std::string> found;
  std::size_t at = text.find(fence);
  while (at != std::string::npos) {
    const std::size_t start = at + fence.size();
    const std::size_t end = text.find(fence, start);
    REQUIRE(end != std::string::npos);
    found.push_back(text.substr(start, end - start));
    at = text.find(fence, end + 1);
  }
  return found;
}

void check_stands_in_page(const std::string& words) {
  CAPTURE(words);
  CHECK(page().find(words) != std::string::npos);
}

}  // namespace

TEST_CASE("the entry on the page has the bytes and digests the page says") {
  const std::vector<std::string> texts = fenced_texts();
  REQUIRE(texts.size() == 5);
  const auto entry = entry_from_line(texts[4]);
  REQUIRE(entry);
  REQUIRE(entry->body);
  CHECK(entry->body->bytes() == texts[0]);
  CHECK(to_text(sha256(texts[0])) == texts[1]);
  CHECK(envelope_bytes(*entry) == texts[2]);
  CHECK(to_text(sha256(texts[2])) == texts[3]);
  CHECK(to_text(digest_of(*entry)) == texts[3]);
  check_stands_in_page("The body, " + std::to_string(texts[0].size()) + " bytes");
}

TEST_CASE("the ids on the page are those that its fields give") {
  const auto entry = entry_from_line(fenced_texts().at(4));
  REQUIRE(entry);
  const HerdId herd{entry->envelope.scope};
  const VisitId visit = visit_id(herd, day("2026-11-24"), 1);
  check_stands_in_page("visit=" + to_text(visit) + "\n");
  check_stands_in_page("`" + to_text(numbered_cow_id(herd, "0412", visit)) + "`");
  check_stands_in_page(
      "`" + to_text(task_id(entry->envelope.id, "see-again look_at_foot LH none")) + "`");
  check_stands_in_page("`" +
                       to_text(unnumbered_cow_id(herd, visit, entry->envelope.device,
                                                 "brown heifer, white star", 1)) +
                       "`");
}

}  // namespace evenclaw
