// The tables of the picture: made from the row types, thrown away when those have changed.
#pragma once

#include <string>
#include <vector>

#include "core/log/selection.hpp"
#include "core/ports/store.hpp"
#include "store/sqlite/connection.hpp"

namespace evenclaw {

/// The statement that makes the table of a row type; the herd leads its key.
std::string create_sql(const TableShape& shape);

/// What all tables of this program look like, as one text short enough to be kept beside them.
std::string shape_of_all();

// The rest throws SqlFailure.

/// True when the tables in the file are the ones of this program.
bool has_own_shape(Connection& connection);

/// Makes the tables, or makes them anew and empty when a program with other row types made those
/// in the file; then, if there are entries, the picture counts as stale. Within a transaction.
void make_picture_tables(Connection& connection);

void replace_cow(Connection& connection, const PictureOfCow& picture);
void replace_visit(Connection& connection, const PictureOfVisit& picture);
void empty_pictures(Connection& connection);

/// Whether the rows are not known to be whole, because they were thrown away and not all made anew.
bool is_picture_stale(Connection& connection);
void set_picture_stale(Connection& connection, bool stale);

}  // namespace evenclaw
