#include "core/base/errors.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

bool is_kebab_case(std::string_view slug) {
  if (slug.empty() || slug.front() == '-' || slug.back() == '-') return false;
  if (slug.find("--") != std::string_view::npos) return false;
  for (const char c : slug) {
    if ((c < 'a' || c > 'z') && c != '-') return false;
  }
  return true;
}

bool is_sentence(std::string_view text) {
  return text.size() > 10 && text.front() >= 'A' && text.front() <= 'Z' && text.back() == '.' &&
         trimmed(text) == text && is_utf8(text);
}

}  // namespace

TEST_CASE("every error has a stable slug of its own") {
  std::set<std::string_view> seen;
  for (const ErrorKind& kind : all_errors()) {
    CAPTURE(std::string(kind.slug));
    CHECK(is_kebab_case(kind.slug));
    CHECK(seen.insert(kind.slug).second);
    CHECK(find_error(kind.slug) == &kind);
  }
  CHECK(seen.size() >= 32);
}

TEST_CASE("every error says what happened, what is safe and what to do, in whole sentences") {
  for (const ErrorKind& kind : all_errors()) {
    CAPTURE(std::string(kind.slug));
    CHECK(is_sentence(kind.meaning));
    CHECK(is_sentence(kind.safe));
    CHECK(is_sentence(kind.what_to_do));
  }
}

TEST_CASE("a slug that is not in the list is not found") {
  CHECK(find_error("") == nullptr);
  CHECK(find_error("disk-ful") == nullptr);
  CHECK(find_error("Disk-full") == nullptr);
}

}  // namespace evenclaw
