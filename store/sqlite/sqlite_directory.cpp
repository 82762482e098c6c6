#include "store/sqlite/sqlite_directory.hpp"

#include "core/base/text.hpp"
#include "store/sqlite/connection.hpp"
#include "store/sqlite/scrub.hpp"
#include "store/sqlite/sqlite_store.hpp"

namespace evenclaw {

namespace {

Person person_at_row(const Statement& row) {
  Person person;
  person.id = PersonId{row.id_at(0)};
  person.name = std::string(row.text_at(1));
  person.removed = row.is_empty(1);
  return person;
}

void insert(Connection& connection, const Person& person) {
  auto statement = connection.prepared(
      "INSERT INTO person (id, name, folded) VALUES (?, ?, ?) ON CONFLICT DO NOTHING");
  statement->id(person.id.value);
  if (person.removed) {
    statement->nothing().nothing().run();
  } else {
    statement->text(person.name).text(fold_case(person.name)).run();
  }
}

void erase_name(Connection& connection, PersonId id) {
  connection.prepared("UPDATE person SET name = NULL, folded = NULL WHERE id = ?")
      ->id(id.value)
      .run();
}

}  // namespace

SqliteDirectory::SqliteDirectory(const SqliteStore& store) : connection_(store.connection_) {}

SqliteDirectory::~SqliteDirectory() = default;

Result<std::optional<Person>> SqliteDirectory::find(std::string_view name) {
  return caught([&]() -> std::optional<Person> {
    auto select =
        connection_->prepared("SELECT id, name FROM person WHERE folded = ? ORDER BY id LIMIT 1");
    if (!select->text(fold_case(name)).step()) return std::nullopt;
    return person_at_row(*select);
  });
}

Outcome SqliteDirectory::add(const Person& person) {
  return caught([&] {
    Transaction transaction(*connection_);
    insert(*connection_, person);
    if (person.removed) erase_name(*connection_, person.id);
    transaction.commit();
    if (person.removed) scrub(*connection_);
  });
}

Outcome SqliteDirectory::remove(PersonId id) {
  return caught([&] {
    Transaction transaction(*connection_);
    erase_name(*connection_, id);
    transaction.commit();
    scrub(*connection_);
  });
}

Result<std::vector<Person>> SqliteDirectory::everybody() {
  return caught([&] {
    std::vector<Person> people;
    auto select = connection_->prepared("SELECT id, name FROM person ORDER BY id");
    while (select->step()) people.push_back(person_at_row(*select));
    return people;
  });
}

}  // namespace evenclaw
