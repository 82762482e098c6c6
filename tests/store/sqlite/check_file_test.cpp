#include "store/sqlite/check_file.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "store/sqlite/connection.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/sound_file.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

/// A file with twelve entries of two devices in two herds, then changed by hand.
struct Tampered {
  TemporaryFolder folder;
  std::string file = folder.file("records");

  explicit Tampered(const std::string& sql, const std::vector<Entry>& more = {}) {
    {
      auto store = SqliteStore::open(file, OpenMode::create);
      REQUIRE(store.ok());
      Write write;
      for (std::int64_t i = 1; i <= 6; ++i) {
        write.entries.push_back(sample_entry(i, sample_device(1), sample_herd(1)));
        write.entries.push_back(sample_entry(i, sample_device(2), sample_herd(2)));
      }
      write.entries.insert(write.entries.end(), more.begin(), more.end());
      REQUIRE((*store)->write(write).ok());
    }
    Connection connection(file, Access::write);
    if (!sql.empty()) connection.run(sql);
  }

  [[nodiscard]] FileReport report() const {
    auto report = check_file(file);
    REQUIRE(report.ok());
    return *std::move(report);
  }

  [[nodiscard]] std::vector<std::string> slugs() const {
    std::vector<std::string> slugs;
    for (const Fault& fault : report().damaged) slugs.push_back(fault.slug);
    return slugs;
  }
};

using Slugs = std::vector<std::string>;

}  // namespace

TEST_CASE("a sound file is told to be sound, redactions and second versions included") {
  const Entry target = sample_entry(1, sample_device(1), sample_herd(1));
  const Tampered sound("", {other_version(sample_entry(2, sample_device(1), sample_herd(1)), 3),
                            sample_redact(7, sample_device(1), target)});
  const FileReport report = sound.report();
  CHECK(is_sound(report));
  CHECK(report.entries == 14);
}

TEST_CASE("a changed body does not fit its digest") {
  const Tampered tampered("UPDATE entry SET body = replace(body, '401', '999')");
  const FileReport report = tampered.report();
  REQUIRE(report.damaged.size() == 2);
  CHECK(report.damaged.front().slug == "entry-digest-wrong");
  CHECK_FALSE(report.damaged.front().remedy.empty());
  const auto ids = {to_text(sample_entry(1, sample_device(1), sample_herd(1)).envelope.id),
                    to_text(sample_entry(1, sample_device(2), sample_herd(2)).envelope.id)};
  for (const std::string& id : ids) {
    CHECK(std::any_of(report.damaged.begin(), report.damaged.end(),
                      [&](const Fault& fault) { return fault.token == id; }));
  }
}

TEST_CASE("a changed envelope is seen even when it is written in canonical form") {
  const Tampered tampered(
      "UPDATE entry SET envelope = replace(envelope, '\"signature\":\"\"',"
      " '\"signature\":\"x\"') WHERE seq = 3");
  CHECK(tampered.slugs() == Slugs{"entry-digest-wrong", "entry-digest-wrong"});
}

TEST_CASE("an envelope that is no longer canonical cannot be read") {
  const Tampered tampered("UPDATE entry SET envelope = envelope || ' ' WHERE seq = 3");
  CHECK(tampered.slugs() == Slugs{"entry-not-canonical", "entry-not-canonical"});
  // What cannot be read leaves a hole in the count.
  CHECK(tampered.report().flaws.size() == 2);
}

TEST_CASE("columns that do not say what the envelope says are told") {
  const char* changes[] = {"order_ = 99",       "seq = 77",
                           "kind = 'cow_left'", "at = '2020-01-01T00:00:00.000+00:00'",
                           "supersedes = id",   "device = zeroblob(16)"};
  for (const char* change : changes) {
    CAPTURE(change);
    const Tampered tampered("UPDATE entry SET " + std::string(change) +
                            " WHERE seq = 2 AND rowid = 3");
    CHECK(tampered.slugs() == Slugs{"row-unreadable"});
  }
}

TEST_CASE("a subject that is missing is told") {
  const Tampered tampered(
      "DELETE FROM entry_subject WHERE (scope, subject, id) IN"
      " (SELECT scope, subject, id FROM entry_subject LIMIT 1)");
  CHECK(tampered.slugs() == Slugs{"row-unreadable"});
}

TEST_CASE("a subject that no entry touches is told") {
  const Tampered tampered(
      "INSERT INTO entry_subject SELECT scope, zeroblob(16), kind, id, digest FROM entry LIMIT 1");
  CHECK(tampered.slugs() == Slugs{"row-unreadable"});
}

TEST_CASE("a hole in a device's count is told with its place") {
  Envelope far = sample_envelope(9, sample_device(1), sample_herd(1));
  const Tampered tampered("", {entry_of(far, CowLeft{sample_cow(1), Day{20'000}, "", {}})});
  const FileReport report = tampered.report();
  CHECK(report.damaged.empty());
  REQUIRE(report.flaws.size() == 1);
  CHECK(report.flaws.front() ==
        LogFlaw{LogFlaw::Kind::gap, sample_herd(1).value, sample_device(1), 7, EntryId{}});
}

TEST_CASE("a page that was overwritten is told and the rest still looked at") {
  std::vector<Entry> many;
  for (std::int64_t i = 7; i <= 300; ++i) {
    many.push_back(sample_entry(i, sample_device(1), sample_herd(1)));
  }
  const Tampered tampered("PRAGMA wal_checkpoint(TRUNCATE)", many);
  std::string bytes = bytes_of(tampered.file);
  bytes.replace(bytes.size() / 2, 4096, 4096, '\x5a');
  write_bytes(tampered.file, bytes);
  const FileReport report = tampered.report();
  REQUIRE_FALSE(report.damaged.empty());
  CHECK(report.damaged.front().slug == "file-damaged");
  CHECK_FALSE(is_sound(report));
}

TEST_CASE("a file that is not there or not ours cannot be looked at") {
  const TemporaryFolder folder;
  write_bytes(folder.file("junk"), std::string(5000, 'j'));
  const auto missing = check_file(folder.file("nothing"));
  REQUIRE_FALSE(missing.ok());
  CHECK(missing.faults().front().slug == "file-not-found");
  const auto junk = check_file(folder.file("junk"));
  REQUIRE_FALSE(junk.ok());
  CHECK(junk.faults().front().slug == "not-our-file");
}
