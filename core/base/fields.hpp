// How a value type names its members once, so that JSON, SQL, the TypeScript contract and the data
// dictionary all come from that one list.
#pragma once

#include <concepts>
#include <string_view>
#include <type_traits>

namespace evenclaw {

// A value type T has
//   template <class Visitor> static void fields(Visitor&& visit) {
//     visit("number", &T::number, "herd number as printed on the cow");
//   }
// in the order in which columns are to appear; names are snake_case and never change once stored.

namespace fields_detail {
struct AnyVisitor {
  template <class Owner, class Member>
  void operator()(std::string_view, Member Owner::*, std::string_view) const {}
};
}  // namespace fields_detail

template <class T>
concept HasFields = std::is_class_v<T> && requires {
  T::fields(fields_detail::AnyVisitor{});
};

/// Calls f(name, member, doc) for every field of `value`, in order.
template <HasFields T, class F>
void for_each_field(T& value, F&& f) {
  std::remove_const_t<T>::fields([&](std::string_view name, auto member, std::string_view doc) {
    f(name, value.*member, doc);
  });
}

}  // namespace evenclaw
