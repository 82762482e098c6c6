// The golden entries: what they are, read from tests/compat/golden.
#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include "core/wire/json.hpp"

namespace evenclaw {

/// One file: the bytes of an entry, its digest, what can be done with it, what its body says.
struct GoldenEntry {
  std::string name;  // of the file, without its ending
  std::string line;
  std::string digest;
  std::string readable;
  std::vector<std::string> values;  // "turn.feet[0].foot \"LH\""
};

inline GoldenEntry golden_entry_in(const std::filesystem::path& path) {
  GoldenEntry golden{path.stem().string(), {}, {}, {}, {}};
  std::ifstream file(path, std::ios::binary);
  for (std::string text; std::getline(file, text);) {
    const std::size_t end = text.find(' ');
    const std::string word = text.substr(0, end);
    const std::string rest = text.substr(std::min(end + 1, text.size()));
    if (word == "line") golden.line = rest;
    if (word == "digest") golden.digest = rest;
    if (word == "readable") golden.readable = rest;
    if (word == "value") golden.values.push_back(rest);
  }
  return golden;
}

inline std::vector<GoldenEntry> golden_entries() {
  std::vector<std::filesystem::path> paths;
  std::error_code fault;
  for (const auto& file : std::filesystem::directory_iterator("tests/compat/golden", fault)) {
    paths.push_back(file.path());
  }
  std::sort(paths.begin(), paths.end());
  std::vector<GoldenEntry> entries;
  entries.reserve(paths.size());
  for (const auto& path : paths) entries.push_back(golden_entry_in(path));
  return entries;
}

/// "path value" of everything in a value that holds nothing else; an empty list says nothing.
inline void add_leaves(const Json& json, const std::string& path,
                       std::vector<std::string>& leaves) {
  if (const JsonObject* object = json.as_object()) {
    for (const auto& [name, held] : *object) {
      add_leaves(held, path.empty() ? name : path + "." + name, leaves);
    }
  } else if (const JsonArray* array = json.as_array()) {
    for (std::size_t i = 0; i < array->size(); ++i) {
      add_leaves((*array)[i], path + "[" + std::to_string(i) + "]", leaves);
    }
  } else {
    leaves.push_back(path + " " + canonical_json(json));
  }
}

/// "turn.feet[].foot" of "turn.feet[0].foot \"LH\"": as the data dictionary names it.
inline std::string dictionary_path(std::string_view leaf) {
  std::string path;
  bool in_brackets = false;
  for (const char c : leaf.substr(0, leaf.find(' '))) {
    in_brackets = c == '[' || (in_brackets && c != ']');
    if (!in_brackets || c == '[') path += c;
  }
  return path;
}

}  // namespace evenclaw
