#include <doctest/doctest.h>

#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/log/body.hpp"
#include "core/wire/field_docs.hpp"
#include "core/wire/value_json.hpp"
#include "tests/compat/golden_entry.hpp"

namespace evenclaw {

namespace {

Entry entry_in(const GoldenEntry& golden) {
  auto entry = entry_from_line(golden.line);
  REQUIRE_MESSAGE(entry, golden.name << " is no entry any more");
  return *std::move(entry);
}

template <class Body>
void add_said(const Entry& entry, std::vector<std::string>& said) {
  if (const auto body = body_as<Body>(entry)) add_leaves(to_json(*body), "", said);
}

/// All that this program reads in the body.
template <class... Bodies>
std::vector<std::string> said_in(const Entry& entry, const std::tuple<Bodies...>*) {
  std::vector<std::string> said;
  (add_said<Bodies>(entry, said), ...);
  return said;
}

std::vector<std::string> said_in(const Entry& entry) {
  return said_in(entry, static_cast<const AllBodies*>(nullptr));
}

/// The members of a kind at its version of today that stand in no golden entry of it.
template <class Body>
void add_unshown(const std::vector<GoldenEntry>& all, std::vector<std::string>& unshown) {
  std::set<std::string> shown;
  for (const GoldenEntry& golden : all) {
    const Entry entry = entry_in(golden);
    if (entry.envelope.kind != Body::kind || entry.envelope.version != Body::version) continue;
    for (const std::string& value : golden.values) shown.insert(dictionary_path(value));
  }
  for (const FieldDoc& field : field_docs<Body>()) {
    if (shown.count(field.path) == 0) unshown.push_back(std::string(Body::kind) + " " + field.path);
  }
}

template <class... Bodies>
std::vector<std::string> unshown_members(const std::tuple<Bodies...>*) {
  std::vector<std::string> unshown;
  const std::vector<GoldenEntry> all = golden_entries();
  (add_unshown<Bodies>(all, unshown), ...);
  return unshown;
}

}  // namespace

TEST_CASE("every entry that was ever written keeps its bytes and its digest") {
  const std::vector<GoldenEntry> all = golden_entries();
  REQUIRE_FALSE(all.empty());
  for (const GoldenEntry& golden : all) {
    CAPTURE(golden.name);
    const Entry entry = entry_in(golden);
    CHECK(entry_line(entry) == golden.line);
    CHECK(to_text(digest_of(entry)) == golden.digest);
    const std::string kind_and_version =
        entry.envelope.kind + "." + std::to_string(entry.envelope.version);
    CHECK(golden.name.rfind(kind_and_version, 0) == 0);
  }
}

TEST_CASE("every entry that was ever written is understood as it was then") {
  for (const GoldenEntry& golden : golden_entries()) {
    CAPTURE(golden.name);
    const Entry entry = entry_in(golden);
    CHECK(word_of(readable(entry)) == golden.readable);
    const std::vector<std::string> list = said_in(entry);
    const std::set<std::string> said(list.begin(), list.end());
    CHECK(said.empty() == golden.values.empty());
    for (const std::string& value : golden.values) {
      CAPTURE(value);
      CHECK(said.count(value) == 1);
    }
  }
}

TEST_CASE("every kind has a golden entry of each of its versions") {
  std::set<std::pair<std::string, std::int32_t>> there;
  for (const GoldenEntry& golden : golden_entries()) {
    const Envelope envelope = entry_in(golden).envelope;
    if (golden.readable == "yes") there.insert({envelope.kind, envelope.version});
  }
  for (const std::string_view kind : all_kinds()) {
    for (std::int32_t version = 1; version <= *current_version(kind); ++version) {
      CAPTURE(kind);
      CAPTURE(version);
      CHECK(there.count({std::string(kind), version}) == 1);
    }
  }
}

TEST_CASE("every member of a body stands in a golden entry of its kind") {
  const auto unshown = unshown_members(static_cast<const AllBodies*>(nullptr));
  for (const std::string& member : unshown) {
    FAIL_CHECK("no golden entry shows " << member << ": see tests/compat/README.md");
  }
  CHECK(unshown.empty());
}

TEST_CASE("entries of kinds and versions nobody knows here and redacted ones are among them") {
  std::set<std::string> there;
  for (const GoldenEntry& golden : golden_entries()) there.insert(golden.readable);
  CHECK(there == std::set<std::string>{"newer_version", "redacted", "unknown_kind", "yes"});
}

}  // namespace evenclaw
