// The data dictionary of any value type, made from its fields().
#pragma once

#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/base/fields.hpp"
#include "core/wire/leaves.hpp"

namespace evenclaw {

/// One leaf of a value type as a reader of the documentation needs it.
struct FieldDoc {
  std::string path;            // "feet[].findings[].degree"; [] marks a list
  std::string_view type_word;  // as leaf_word(): "word", "ISO day", "tenths of mm" ...
  bool may_be_absent;          // optional, or a list
  std::string_view doc;
  std::vector<std::string_view> words;  // the allowed words of an enum, else empty
};

namespace field_docs_detail {

template <class T>
struct Inner {
  using Type = T;
  static constexpr std::string_view mark = "";
  static constexpr bool may_be_absent = false;
};

template <class T>
struct Inner<std::optional<T>> {
  using Type = typename Inner<T>::Type;
  static constexpr std::string_view mark = Inner<T>::mark;
  static constexpr bool may_be_absent = true;
};

template <class T>
struct Inner<std::vector<T>> {
  using Type = typename Inner<T>::Type;
  static constexpr std::string_view mark = "[]";
  static constexpr bool may_be_absent = true;
};

template <HasFields T>
void append_docs(const std::string& prefix, std::vector<FieldDoc>& docs);

struct Collector {
  const std::string& prefix;
  std::vector<FieldDoc>& docs;

  template <class Owner, class Member>
  void operator()(std::string_view name, Member Owner::*, std::string_view doc) const {
    using In = Inner<Member>;
    using Type = typename In::Type;
    const std::string path = prefix + std::string(name) + std::string(In::mark);
    if constexpr (HasFields<Type>) {
      append_docs<Type>(path + ".", docs);
    } else {
      FieldDoc row{path, leaf_word<Type>(), In::may_be_absent, doc, {}};
      if constexpr (WordedEnum<Type>) {
        for (const auto& word : EnumWords<Type>::table) row.words.push_back(word.word);
      }
      docs.push_back(std::move(row));
    }
  }
};

template <HasFields T>
void append_docs(const std::string& prefix, std::vector<FieldDoc>& docs) {
  T::fields(Collector{prefix, docs});
}

}  // namespace field_docs_detail

/// Every leaf of T in the order of its fields, nested types opened in place.
template <HasFields T>
std::vector<FieldDoc> field_docs() {
  std::vector<FieldDoc> docs;
  field_docs_detail::append_docs<T>("", docs);
  return docs;
}

/// What it holds, in words: "ISO day"; of an enum all its words, "word: `LF`, `RF`".
inline std::string type_told(const FieldDoc& field) {
  std::string type(field.type_word);
  for (std::size_t i = 0; i < field.words.size(); ++i) {
    type += (i == 0 ? ": `" : ", `") + std::string(field.words[i]) + "`";
  }
  return type;
}

}  // namespace evenclaw
