// What a file knows of itself: whose it is, which device writes it, where it lay, its draft.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "store/sqlite/connection.hpp"

namespace evenclaw {

// Names in the table `meta`. Throws SqlFailure as connection.hpp does.
namespace meta_name {
inline constexpr std::string_view business = "business";
inline constexpr std::string_view device = "device";
inline constexpr std::string_view file_device = "file_device";
inline constexpr std::string_view file_inode = "file_inode";
inline constexpr std::string_view file_path = "file_path";
inline constexpr std::string_view file_born = "file_born";
inline constexpr std::string_view made_by_copying = "made_by_copying";
inline constexpr std::string_view draft = "draft";
inline constexpr std::string_view picture_shape = "picture_shape";
inline constexpr std::string_view picture_tables = "picture_tables";
inline constexpr std::string_view picture_stale = "picture_stale";
}  // namespace meta_name

std::optional<std::string> meta_value(Connection& connection, std::string_view name);
void set_meta(Connection& connection, std::string_view name, std::string_view value);
void forget_meta(Connection& connection, std::string_view name);

/// Takes this file for the original, wherever it lies now.
void remember_file(Connection& connection);
/// True when the file lies elsewhere than remembered, or says that it was made by copying.
bool is_copy(Connection& connection);

}  // namespace evenclaw
