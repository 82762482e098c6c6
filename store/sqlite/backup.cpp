#include "store/sqlite/backup.hpp"

#include "store/sqlite/file_identity.hpp"
#include "store/sqlite/open_file.hpp"
#include "store/sqlite/verified_copy.hpp"

namespace evenclaw {

namespace {

Outcome copied(const std::string& from, const std::string& to) {
  return caught([&] {
    Connection source = opened_as_it_is(from);
    copy_verified(source, absolute_name(to), CopyKind::of_its_own);
  });
}

}  // namespace

Outcome back_up(const std::string& file, const std::string& to) {
  return copied(file, to);
}

Outcome restore(const std::string& backup, const std::string& to) {
  return copied(backup, to);
}

}  // namespace evenclaw
