// The tables of the picture: made from the row types, thrown away when those have changed.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
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

/// Replaces the rows of many subjects, within one transaction. Which tables hold rows of a herd is
/// asked once: from those that hold none there is nothing to remove.
class PictureWriting {
 public:
  explicit PictureWriting(Connection& connection) : connection_(connection) {}

  void replace_cow(const PictureOfCow& picture);
  void replace_visit(const PictureOfVisit& picture);

 private:
  /// By the position in all_tables(): whether there were rows of the herd before this.
  using HadRows = std::vector<bool>;
  using HerdAndSubject = std::pair<std::string, std::string>;

  [[nodiscard]] const HadRows& had_rows(HerdId herd);
  void remove_rows(RowsOf of, HerdId herd, const std::string& subject);
  void insert_rows(RowsOf of, const Rows& rows);

  void remember_written(const std::string& herd, const std::string& subject);

  Connection& connection_;
  std::map<HerdId, HadRows> had_rows_;
  std::set<HerdAndSubject> written_;  // of the rows inserted here
  HerdAndSubject last_written_;
};

void empty_pictures(Connection& connection);

/// Whether the rows are not known to be whole, because they were thrown away and not all made anew.
bool is_picture_stale(Connection& connection);
void set_picture_stale(Connection& connection, bool stale);

}  // namespace evenclaw
