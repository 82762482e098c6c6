#include "store/sqlite/failure.hpp"

#include <doctest/doctest.h>

#include "core/base/errors.hpp"

using namespace evenclaw;

namespace {

// Result codes as published in the SQLite documentation.
constexpr int code_perm = 3;
constexpr int code_busy = 5;
constexpr int code_locked = 6;
constexpr int code_readonly = 8;
constexpr int code_ioerr = 10;
constexpr int code_corrupt = 11;
constexpr int code_full = 13;
constexpr int code_cantopen = 14;
constexpr int code_protocol = 15;
constexpr int code_toobig = 18;
constexpr int code_notadb = 26;
constexpr int code_ioerr_shmsize = 4874;
constexpr int code_readonly_directory = 1544;
constexpr int code_busy_snapshot = 517;

}  // namespace

TEST_CASE("each refusal of SQLite becomes a fault of the published list, with a remedy") {
  struct Case {
    int code;
    std::string_view slug;
  };

  const Case cases[] = {
      {code_perm, "file-unreadable"},     {code_busy, "store-busy"},
      {code_locked, "store-busy"},        {code_readonly, "file-read-only"},
      {code_ioerr, "disk-failed"},        {code_corrupt, "file-damaged"},
      {code_full, "disk-full"},           {code_cantopen, "file-unreadable"},
      {code_protocol, "store-busy"},      {code_toobig, "file-too-large"},
      {code_notadb, "not-our-file"},      {code_ioerr_shmsize, "disk-full"},
      {code_busy_snapshot, "store-busy"}, {code_readonly_directory, "file-read-only"},
  };
  for (const Case& c : cases) {
    CAPTURE(c.code);
    const Fault fault = fault_of_sqlite(nullptr, c.code, "/farm/records");
    CHECK(fault.slug == c.slug);
    CHECK(find_error(fault.slug) != nullptr);
    CHECK(fault.message.find("/farm/records: ") == 0);
    CHECK(fault.token == "/farm/records");
    CHECK_FALSE(fault.remedy.empty());
  }
}

TEST_CASE("what was thrown comes back as a fault, what was returned as a value") {
  const auto value = caught([] { return 7; });
  REQUIRE(value.ok());
  CHECK(*value == 7);
  CHECK(caught([] {}).ok());
  const auto fault = caught([]() -> int { throw SqlFailure{Fault{"disk-full", "no room"}}; });
  REQUIRE_FALSE(fault.ok());
  CHECK(fault.faults().front().slug == "disk-full");
}

TEST_CASE("a page that the disk refused to read is no damage, one that is missing or wrong is") {
  struct Case {
    std::string_view said;
    std::string_view slug;
  };

  // As SQLite 3.40.1 words them; 266 is a refused read, 522 one that ended too early.
  const Case cases[] = {
      {"*** in database main ***\nPage 26: unable to get the page. error code=266", "disk-failed"},
      {"*** in database main ***\nPage 26: unable to get the page. error code=522", "file-damaged"},
      {"*** in database main ***\nPage 26: unable to get the page. error code=11", "file-damaged"},
      {"row 3 missing from index entry_of_kind", "file-damaged"}};
  for (const Case& test : cases) {
    CAPTURE(test.said);
    const Fault fault = fault_of_pages("records", test.said);
    CHECK(fault.slug == test.slug);
    CHECK(fault.message.find(test.said) != std::string::npos);
    CHECK_FALSE(fault.remedy.empty());
  }
}
