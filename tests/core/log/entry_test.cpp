#include "core/log/entry.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/log/body.hpp"
#include "tests/core/log/farm.hpp"
#include "tests/core/log/history.hpp"

namespace evenclaw {

namespace {

Entry any_entry() {
  Farm farm;
  farm.turn(cow_named("412"), "2026-11-24", {foot(Foot::lh, {lesion(Lesion::wla)})});
  return farm.last();
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

std::string slug_of(const Result<Entry>& result) {
  return result ? "no fault" : result.faults().front().slug;
}

}  // namespace

TEST_CASE("printing an entry and reading it back is the identity on every history") {
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    for (const Entry& entry : make_history(seed, 20).entries) {
      const auto from_line = entry_from_line(entry_line(entry));
      REQUIRE(from_line);
      REQUIRE(*from_line == entry);
      const auto from_parts = entry_from_parts(envelope_bytes(entry), entry.body->bytes());
      REQUIRE(from_parts);
      REQUIRE(*from_parts == entry);
    }
  }
}

TEST_CASE("a redacted entry has the digest of the full one and still reads") {
  const Entry full = any_entry();
  Entry redacted = full;
  redacted.body.reset();
  CHECK(digest_of(redacted) == digest_of(full));
  const auto read = entry_from_line(entry_line(redacted));
  REQUIRE(read);
  CHECK(*read == redacted);
  CHECK(entry_from_parts(envelope_bytes(redacted), std::nullopt));
}

TEST_CASE("the digest tells apart entries that differ in envelope or body") {
  const Entry entry = any_entry();
  Entry later = entry;
  later.envelope.order += 1;
  CHECK(digest_of(later) != digest_of(entry));
  const Entry other = make_entry(entry.envelope, "{}");
  CHECK(digest_of(other) != digest_of(entry));
}

TEST_CASE("kept parts give the entry back, full or redacted, as long as their digests fit") {
  const Entry entry = any_entry();
  const std::string envelope = envelope_bytes(entry);
  const Digest digest = digest_of(entry);
  const auto full = entry_from_kept_parts(envelope, entry.body->bytes(), digest);
  REQUIRE(full);
  CHECK(*full == entry);
  const auto redacted = entry_from_kept_parts(envelope, std::nullopt, digest);
  REQUIRE(redacted);
  CHECK_FALSE(redacted->body);
  const std::string other_body = replaced(entry.body->bytes(), "as said", "as sold");
  CHECK(slug_of(entry_from_kept_parts(envelope, other_body, digest)) == "entry-digest-wrong");
  const std::string other_envelope = replaced(envelope, "\"seq\":", "\"seq\":1");
  CHECK(slug_of(entry_from_kept_parts(other_envelope, entry.body->bytes(), digest)) ==
        "entry-digest-wrong");
}

TEST_CASE("a body that was changed on the way does not fit its digest") {
  const std::string line = entry_line(any_entry());
  CHECK(slug_of(entry_from_line(replaced(line, "as said", "as sold"))) == "entry-digest-wrong");
  const Entry entry = any_entry();
  CHECK(slug_of(entry_from_parts(envelope_bytes(entry), "{}")) == "entry-digest-wrong");
}

TEST_CASE("an entry not in its one canonical form is refused") {
  const std::string line = entry_line(any_entry());
  const std::string scope = to_text(any_entry().envelope.scope);

  const struct {
    std::string what;
    std::string line;
  } refused[] = {
      {"a space", replaced(line, "\"envelope\":", "\"envelope\": ")},
      {"an unknown member of the envelope",
       replaced(line, "\"version\":4", "\"v\":1,\"version\":4")},
      {"an unknown part of the line", replaced(line, "\"envelope\":", "\"also\":1,\"envelope\":")},
      {"an id in capitals",
       replaced(line, to_text(any_entry().envelope.id), "0000000A-0000-0000-0000-000000000000")},
      {"no scope", replaced(line, "\"scope\":\"" + scope, "\"scope\":\"" + to_text(Uuid{}))},
      {"a seq of nothing", replaced(line, "\"seq\":2", "\"seq\":0")},
      {"an order below nothing", replaced(line, "\"order\":2", "\"order\":-2")},
      {"a kind that is no word", replaced(line, "\"kind\":\"turn\"", "\"kind\":\"Turn\"")},
      {"a time without its offset", replaced(line, "+01:00", "")},
      {"a fraction", replaced(line, "\"order\":2", "\"order\":2.5")},
      {"a line cut off", line.substr(0, line.size() - 1)},
      {"a second line", line + "\n" + line},
      {"nothing at all", ""},
      {"something else", "[]"},
  };

  for (const auto& row : refused) {
    CAPTURE(row.what);
    CHECK(slug_of(entry_from_line(row.line)) == "entry-not-canonical");
  }
}

TEST_CASE("a body holds an object in canonical form without null") {
  const Envelope envelope = any_entry().envelope;
  for (const std::string body :
       {"[]", "{ }", R"({"b":1,"a":1})", R"({"a":null})", R"({"a":[{"b":null}]})", "\"text\""}) {
    CAPTURE(body);
    const Entry entry = make_entry(envelope, body);
    CHECK(slug_of(entry_from_parts(envelope_bytes(entry), body)) == "entry-not-canonical");
  }
}

TEST_CASE("a body nests no deeper than its line can be read again") {
  const Envelope envelope = any_entry().envelope;
  for (const std::size_t levels : {62, 63}) {
    CAPTURE(levels);
    const std::string body = R"({"a":)" + std::string(levels, '[') + std::string(levels, ']') + "}";
    const Entry entry = make_entry(envelope, body);
    const auto from_parts = entry_from_parts(envelope_bytes(entry), body);
    CHECK(from_parts.ok() == (levels == 62));
    CHECK(from_parts.ok() == entry_from_line(entry_line(entry)).ok());
  }
}

TEST_CASE("subjects are sorted and stand once each") {
  Envelope envelope = any_entry().envelope;
  const Uuid a = named_id("a");
  const Uuid b = named_id("b");
  envelope.subjects = {b, a, b};
  const Entry entry = make_entry(envelope, "{}");
  REQUIRE(entry.envelope.subjects.size() == 2);
  CHECK(entry.envelope.subjects[0] < entry.envelope.subjects[1]);

  Entry unsorted = entry;
  std::swap(unsorted.envelope.subjects[0], unsorted.envelope.subjects[1]);
  CHECK(slug_of(entry_from_parts(envelope_bytes(unsorted), "{}")) == "entry-not-canonical");
}

TEST_CASE("the total order goes by order, device, seq and id, never by the clock") {
  Entry a = any_entry();
  Entry b = a;
  b.envelope.id = EntryId{named_id("another")};
  b.envelope.order = a.envelope.order + 1;
  b.envelope.at.ms = a.envelope.at.ms - 315'360'000'000;
  CHECK(comes_before(a, b));
  CHECK_FALSE(comes_before(b, a));

  b.envelope.order = a.envelope.order;
  b.envelope.seq = a.envelope.seq + 1;
  CHECK(comes_before(a, b));
  b.envelope.device = DeviceId{};
  CHECK(comes_before(b, a));
  CHECK_FALSE(comes_before(a, a));
}

TEST_CASE("two versions of one id are ordered by their digests") {
  const Entry a = any_entry();
  const Entry b = make_entry(a.envelope, "{}");
  CHECK(comes_before(a, b) == (digest_of(a) < digest_of(b)));
  CHECK(comes_before(a, b) != comes_before(b, a));
}

}  // namespace evenclaw
