#include "tests/compat/second_reader.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/base/random.hpp"
#include "core/trade/identity.hpp"
#include "tests/cli/program.hpp"
#include "tests/compat/golden_entry.hpp"
#include "tests/core/log/farm.hpp"
#include "tests/core/log/history.hpp"

namespace evenclaw {

namespace {

using test::Lines;

Uuid any_id(RandomStream& random) {
  Uuid id;
  for (std::uint8_t& byte : id.bytes) byte = static_cast<std::uint8_t>(random.below(256));
  return id;
}

/// The log of a history as it may arrive: shuffled, some twice, some missing, some without their
/// bodies, a few in another herd or from a device whose counter ran away.
Lines arrived(std::uint64_t seed, BusinessId business = {}) {
  RandomStream random(seed, 7);
  const Uuid elsewhere = any_id(random);
  Lines lines;
  for (Entry entry : make_history(seed, 25).entries) {
    entry.envelope.business = business;
    if (random.chance(0.05)) entry.envelope.scope = elsewhere;
    if (random.chance(0.03)) entry.envelope.order += largest_order_jump + random.below(3);
    if (random.chance(0.05)) entry.body.reset();
    if (random.chance(0.05)) continue;
    for (int copy = random.chance(0.2) ? 2 : 1; copy > 0; --copy) {
      lines.push_back(entry_line(entry));
    }
  }
  for (std::size_t left = lines.size(); left > 1; --left) {
    std::swap(lines[left - 1], lines[random.below(static_cast<std::uint32_t>(left))]);
  }
  return lines;
}

/// The text with one thing changed, in the pieces JSON is made of.
std::string damaged(std::string text, RandomStream& random) {
  constexpr std::string_view pieces[] = {"\"",
                                         "\\",
                                         "{",
                                         "}",
                                         "[",
                                         "]",
                                         ",",
                                         ":",
                                         "0",
                                         "1",
                                         "-",
                                         "+",
                                         ".",
                                         "e",
                                         " ",
                                         "\r",
                                         "\t",
                                         "null",
                                         "true",
                                         "1.0",
                                         "-0",
                                         "01",
                                         "\\u0041",
                                         "\\ud800",
                                         "\\/",
                                         "\xC3\xB6",
                                         "\xFF",
                                         "A",
                                         "f",
                                         "_",
                                         "\x7F",
                                         "\\u001F",
                                         "[]",
                                         "{}",
                                         "\xED\xA0\x80",
                                         "T",
                                         "Z",
                                         "\\ud83d\\ude00",
                                         "9007199254740992",
                                         "\"a\":1,",
                                         ",\"z\":[]",
                                         "\xEF\xBB\xBF"};
  const auto place = [&] { return random.below(static_cast<std::uint32_t>(text.size()) + 1); };
  const std::string_view piece = pieces[random.below(std::size(pieces))];
  const std::size_t at = place();
  switch (random.below(4)) {
    case 0:
      return text.insert(at, piece);
    case 1:
      return text.erase(at, 1 + random.below(3));
    case 2:
      return text.insert(at, text.substr(place(), 1 + random.below(12)));
    default:
      return text.replace(at, std::min(piece.size(), text.size() - at), piece);
  }
}

/// A line whose digest fits its body, whatever that body is.
std::string line_with_body(const Envelope& envelope, const std::string& body) {
  Entry entry = make_entry(envelope, body);
  entry.body.reset();
  return "{\"body\":" + body + ",\"envelope\":" + envelope_bytes(entry) + "}";
}

/// "kind entry" of every flaw in an answer of a reader; a gap names no entry.
std::multiset<std::string> flaws_in(const std::string& answer) {
  std::multiset<std::string> told;
  const Json json = *json_from_text(answer);
  for (const Json& flaw : *json.member("flaws")->as_array()) {
    const std::string& words = *flaw.as_string();
    const std::string kind = words.substr(0, words.find(' '));
    told.insert(kind == "gap" ? kind : kind + words.substr(words.rfind(' ')));
  }
  return told;
}

/// The same as the program tells it when it is asked to check the log.
std::multiset<std::string> flaws_told_by(const test::Workshop& workshop) {
  std::multiset<std::string> told;
  const auto json = json_from_text(workshop.run({"check", "--json"}).out);
  REQUIRE(json);
  const Json* findings = json->member("findings");
  if (findings == nullptr) return told;
  for (const Json& finding : *findings->as_array()) {
    const std::string& kind = *finding.member("what")->as_string();
    const Json* entry = finding.member("entry");
    const bool is_of_the_log = kind == "gap" || kind == "seq_used_twice" || kind == "order_jump" ||
                               kind.rfind("supersedes_", 0) == 0;
    if (is_of_the_log) told.insert(entry == nullptr ? kind : kind + ' ' + *entry->as_string());
  }
  return told;
}

std::string json_list(const Lines& fields) {
  JsonArray array;
  for (const std::string& field : fields) array.emplace_back(field);
  return canonical_json(Json(std::move(array)));
}

}  // namespace

TEST_CASE("a reader made from the page alone agrees on what every history says") {
  std::vector<Lines> logs;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) logs.push_back(arrived(seed));
  const Lines answers = test::second_answers(logs);
  REQUIRE(answers.size() == logs.size());
  for (std::size_t i = 0; i < logs.size(); ++i) {
    CAPTURE(i + 1);
    CHECK(test::OwnAnswer(logs[i]).text() == answers[i]);
  }
}

TEST_CASE("both refuse the same damaged lines") {
  RandomStream random(1, 8);
  Lines lines;
  for (const GoldenEntry& golden : golden_entries()) {
    for (int i = 0; i < 100; ++i) lines.push_back(damaged(golden.line, random));
  }
  const Lines answers = test::second_answers({lines});
  REQUIRE(answers.size() == 1);
  CHECK(test::OwnAnswer(lines).text() == answers.front());
}

TEST_CASE("both refuse the same bodies, digest or not") {
  RandomStream random(1, 9);
  Farm farm;
  const Envelope envelope = farm.next_envelope();
  Lines lines;
  for (const std::string body :
       {R"({"a":[1,true,"x"],"b":{"c":-5,"d":"\u0001\"\\\n"}})", R"({"":[[],{}],"é":"€","😀":0})"}) {
    for (int i = 0; i < 1000; ++i) {
      Envelope own = envelope;
      own.id = EntryId{any_id(random)};
      lines.push_back(line_with_body(own, damaged(body, random)));
    }
  }
  for (std::size_t levels = 61; levels <= 66; ++levels) {
    std::string body = R"({"a":)" + std::string(levels, '[') + std::string(levels, ']') + "}";
    lines.push_back(line_with_body(envelope, body));
  }
  const Lines answers = test::second_answers({lines});
  REQUIRE(answers.size() == 1);
  CHECK(test::OwnAnswer(lines).text() == answers.front());
}

TEST_CASE("golden entries are golden to both") {
  const std::vector<GoldenEntry> all = golden_entries();
  Lines lines;
  for (const GoldenEntry& golden : all) lines.push_back(golden.line);
  const Lines read = test::second_reader("golden", lines);
  std::size_t at = 0;
  for (const GoldenEntry& golden : all) {
    CAPTURE(golden.name);
    REQUIRE(at + 3 <= read.size());
    CHECK(read[at++] == "line " + golden.line);
    CHECK(read[at++] == "digest " + golden.digest);
    CHECK(read[at++] == "readable " + golden.readable);
    while (at < read.size() && read[at].rfind("value ", 0) == 0) ++at;
  }
  CHECK(at == read.size());
}

TEST_CASE("derived ids come out alike") {
  Farm farm;
  const std::string herd = to_text(farm.herd());
  const VisitId visit = visit_id(farm.herd(), day("2026-11-24"), 2);
  const DeviceId device = device_named("tablet");
  const EntryId entry{named_id("entry")};
  const std::string looks = "brown heifer, white star\nö";
  const Lines ids = test::second_reader(
      "ids", {json_list({"visit", herd, "2026-11-24", "2"}),
              json_list({"cow", herd, to_text(visit), "412"}),
              json_list({"cow without number", herd, to_text(visit), to_text(device), "3", looks}),
              json_list({"task", to_text(entry), "vet vet no foot none"})});
  REQUIRE(ids.size() == 4);
  CHECK(ids[0] == to_text(visit));
  CHECK(ids[1] == to_text(numbered_cow_id(farm.herd(), "0412", visit)));
  CHECK(ids[2] == to_text(unnumbered_cow_id(farm.herd(), visit, device, looks, 3)));
  CHECK(ids[3] == to_text(task_id(entry, "vet vet no foot none")));
}

TEST_CASE("the log that the program gives out is in order, whole and without flaws to both") {
  const test::Workshop workshop;
  const std::string file = workshop.file("example.db");
  REQUIRE(workshop.run({"example", "--file", file}).exit == 0);
  const Lines log = test::lines_of(workshop.run({"log", "--file", file}).out);
  REQUIRE(log.size() > 50);
  const Lines answers = test::second_answers({log});
  REQUIRE(answers.size() == 1);
  CHECK(test::OwnAnswer(log).text() == answers.front());
  const Json answer = *json_from_text(answers.front());
  CHECK(*answer.member("refused") == Json(JsonArray{}));
  CHECK(*answer.member("flaws") == Json(JsonArray{}));
  JsonArray in_order;
  for (const std::string& line : log) {
    in_order.emplace_back(to_text(digest_of(*entry_from_line(line))));
  }
  CHECK(*answer.member("everything") == Json(std::move(in_order)));
}

TEST_CASE("logs taken in by the program are given out as the union, redacted where they must be") {
  for (const std::uint64_t seed : {304, 307, 308, 314, 321, 323}) {
    CAPTURE(seed);
    const test::Workshop workshop;
    write_bytes(workshop.file("none"), "");
    CHECK(workshop.run({"take-in", workshop.file("none")}).exit == 0);
    // A new file begins with the entry that names its device.
    Lines log = test::lines_of(workshop.run({"log"}).out);
    REQUIRE(log.size() == 1);
    const Lines others = arrived(seed, entry_from_line(log.front())->envelope.business);
    log.insert(log.end(), others.begin(), others.end());
    const auto half = log.begin() + static_cast<std::ptrdiff_t>(log.size() / 2);
    write_bytes(workshop.file("some"), test::text_of({log.begin(), half}));
    write_bytes(workshop.file("all"), test::text_of({log.rbegin(), log.rend()}));
    for (const char* part : {"some", "all", "some"}) {
      CHECK(workshop.run({"take-in", workshop.file(part)}).err.empty());
    }
    const Lines given = test::lines_of(workshop.run({"log"}).out);
    const Lines answers = test::second_answers({log, given});
    REQUIRE(answers.size() == 2);
    CHECK(answers[0] == answers[1]);
    CHECK(flaws_told_by(workshop) == flaws_in(answers[0]));
  }
}

}  // namespace evenclaw
