#include "store/sqlite/meta.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "store/sqlite/backup.hpp"
#include "store/sqlite/file_identity.hpp"
#include "store/sqlite/sqlite_store.hpp"
#include "tests/store/sample_entries.hpp"
#include "tests/store/temporary_folder.hpp"

using namespace evenclaw;

namespace {

struct OwnedFile {
  TemporaryFolder folder;
  std::string file = folder.file("records");
  BusinessId business{sample_id("business", 1)};

  OwnedFile() {
    auto store = SqliteStore::open(file, OpenMode::create);
    REQUIRE(store.ok());
    REQUIRE((*store)->set_identity(business, sample_device(1)).ok());
  }
};

StoreIdentity identity_of(const std::string& file, OpenMode mode = OpenMode::existing) {
  auto store = SqliteStore::open(file, mode);
  REQUIRE(store.ok());
  const auto identity = (*store)->identity();
  REQUIRE(identity.ok());
  return *identity;
}

}  // namespace

TEST_CASE("a value is set, changed and forgotten") {
  const OwnedFile owned;
  Connection connection(owned.file, Access::write);
  CHECK_FALSE(meta_value(connection, "word").has_value());
  set_meta(connection, "word", "one");
  set_meta(connection, "word", "two");
  CHECK(meta_value(connection, "word") == "two");
  forget_meta(connection, "word");
  CHECK_FALSE(meta_value(connection, "word").has_value());
}

TEST_CASE("a file opened again where it lay is the original") {
  const OwnedFile owned;
  CHECK_FALSE(identity_of(owned.file).copied);
  CHECK_FALSE(identity_of(owned.file, OpenMode::read_only).copied);
}

TEST_CASE("a copied file knows it until it gets a device of its own") {
  const OwnedFile owned;
  const std::string copy = owned.folder.file("copy");
  std::filesystem::copy_file(owned.file, copy);
  CHECK(identity_of(copy).copied);
  CHECK(identity_of(copy).device == sample_device(1));
  {
    auto store = SqliteStore::open(copy, OpenMode::existing);
    REQUIRE(store.ok());
    REQUIRE((*store)->set_identity(owned.business, sample_device(2)).ok());
    CHECK_FALSE((*store)->identity()->copied);
  }
  CHECK_FALSE(identity_of(copy).copied);
  CHECK_FALSE(identity_of(owned.file).copied);
}

TEST_CASE("a file moved elsewhere counts as copied, for nobody can tell") {
  const OwnedFile owned;
  std::filesystem::rename(owned.file, owned.folder.file("moved"));
  CHECK(identity_of(owned.folder.file("moved")).copied);
}

TEST_CASE("a file removed and made again from a plain copy is a copy, whatever number it got") {
  const OwnedFile owned;
  const std::string bytes = bytes_of(owned.file);
  std::filesystem::remove(owned.file);
  write_bytes(owned.file, bytes);
  CHECK(identity_of(owned.file).copied);
}

TEST_CASE("a file made at another time than remembered is a copy, one that remembers none is not") {
  const OwnedFile owned;
  {
    Connection connection(owned.file, Access::write);
    set_meta(connection, meta_name::file_born, "");
  }
  CHECK_FALSE(identity_of(owned.file).copied);
  {
    Connection connection(owned.file, Access::write);
    set_meta(connection, meta_name::file_born, "1.000000001");
  }
  const bool birth_is_told = !file_identity(owned.file)->born.empty();
  CHECK(identity_of(owned.file).copied == birth_is_told);
}

// What decision 0006 says is not noticed, and why it costs nothing.
TEST_CASE("an older state laid byte by byte over the file loses nothing once the log comes back") {
  const OwnedFile owned;
  const Entry lost = sample_entry(1, sample_device(1), sample_herd(1));
  const std::string older = bytes_of(owned.file);
  const auto keep = [&](const Entry& entry, bool arrived) {
    auto store = SqliteStore::open(owned.file, OpenMode::existing);
    REQUIRE(store.ok());
    Write write;
    write.entries = {entry};
    write.arrived = arrived;
    REQUIRE((*store)->write(write).ok());
  };
  keep(lost, false);
  write_bytes(owned.file, older);
  CHECK_FALSE(identity_of(owned.file).copied);
  Envelope again = sample_envelope(2, sample_device(1), sample_herd(1));
  again.seq = 1;
  keep(entry_of(again, CowLeft{sample_cow(1), Day{20'000}, "sold", {}}), false);
  keep(lost, true);
  CHECK(identity_of(owned.file).copied);
  auto store = SqliteStore::open(owned.file, OpenMode::read_only);
  CHECK_FALSE(store.ok());  // rows of what came back are made when it is opened for writing
  store = SqliteStore::open(owned.file, OpenMode::existing);
  REQUIRE(store.ok());
  CHECK((*store)->find_entry(lost.envelope.id)->has_value());
  CHECK((*store)->find_entry(again.id)->has_value());
}

TEST_CASE("a backup laid over the file it was made of is still a copy") {
  const OwnedFile owned;
  const std::string backup = owned.folder.file("backup");
  REQUIRE(back_up(owned.file, backup).ok());
  write_bytes(owned.file, bytes_of(backup));
  CHECK(identity_of(owned.file).copied);
}
