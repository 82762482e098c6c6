#include "core/wire/json.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cstddef>
#include <exception>
#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>

#include "core/base/hex.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t max_depth = 64;
constexpr std::size_t usual_depth = 8;
constexpr std::size_t max_token_characters = 40;

bool is_lead_of_four(std::uint8_t byte) {
  return byte >= 0xF0;
}

bool is_lead_above_surrogates(std::uint8_t byte) {
  return byte == 0xEE || byte == 0xEF;
}

// ---- writing

void write_escaped(std::string& out, char c) {
  switch (c) {
    case '"':
      out += "\\\"";
      return;
    case '\\':
      out += "\\\\";
      return;
    case '\b':
      out += "\\b";
      return;
    case '\t':
      out += "\\t";
      return;
    case '\n':
      out += "\\n";
      return;
    case '\f':
      out += "\\f";
      return;
    case '\r':
      out += "\\r";
      return;
    default:
      break;
  }
  if (static_cast<std::uint8_t>(c) < 0x20) {
    out += "\\u00";
    append_hex(out, static_cast<std::uint8_t>(c));
  } else {
    out += c;
  }
}

bool needs_escape(char c) {
  return c == '"' || c == '\\' || static_cast<std::uint8_t>(c) < 0x20;
}

/// Whole runs at once: hardly a character of a log needs an escape.
void write_escaped(std::string& out, std::string_view text) {
  while (!text.empty()) {
    const auto run = std::find_if(text.begin(), text.end(), needs_escape) - text.begin();
    out.append(text.substr(0, static_cast<std::size_t>(run)));
    text.remove_prefix(static_cast<std::size_t>(run));
    if (text.empty()) return;
    write_escaped(out, text.front());
    text.remove_prefix(1);
  }
}

void write_string(std::string& out, std::string_view text) {
  out += '"';
  if (is_utf8(text)) {
    write_escaped(out, text);
  } else {
    write_escaped(out, valid_utf8(text));
  }
  out += '"';
}

// Writes both forms: a canonical one never breaks lines, a pretty one after every member.
class Writer {
 public:
  explicit Writer(bool is_pretty) : is_pretty_(is_pretty) {}

  void write(const Json& json) {
    if (const bool* truth = json.as_bool()) {
      out_ += *truth ? "true" : "false";
    } else if (const std::int64_t* integer = json.as_integer()) {
      assert(*integer <= max_json_integer && *integer >= -max_json_integer);
      out_ += std::to_string(*integer);
    } else if (const std::string* text = json.as_string()) {
      write_string(out_, *text);
    } else if (const JsonArray* array = json.as_array()) {
      write_array(*array);
    } else if (const JsonObject* object = json.as_object()) {
      write_object(*object);
    } else {
      out_ += "null";
    }
  }

  std::string take() && { return std::move(out_); }

 private:
  void write_array(const JsonArray& array) {
    open('[');
    bool is_first = true;
    for (const Json& element : array) {
      separate(is_first);
      write(element);
    }
    close(']', array.empty());
  }

  void write_object(const JsonObject& object) {
    open('{');
    bool is_first = true;
    for (const auto& member : object) {
      separate(is_first);
      write_string(out_, member.first);
      out_ += is_pretty_ ? ": " : ":";
      write(member.second);
    }
    close('}', object.empty());
  }

  void open(char bracket) {
    out_ += bracket;
    ++level_;
  }

  void close(char bracket, bool is_empty) {
    --level_;
    if (!is_empty) break_line();
    out_ += bracket;
  }

  void separate(bool& is_first) {
    if (!is_first) out_ += ',';
    is_first = false;
    break_line();
  }

  void break_line() {
    if (!is_pretty_) return;
    out_ += '\n';
    out_.append(2 * level_, ' ');
  }

  bool is_pretty_;
  std::size_t level_ = 0;
  std::string out_;
};

// ---- reading

// The library tells its callbacks no place; so the bytes it takes are counted as it takes them.
class CountedByte {
 public:
  using iterator_category = std::input_iterator_tag;
  using value_type = char;
  using difference_type = std::ptrdiff_t;
  using pointer = const char*;
  using reference = const char&;

  CountedByte(const char* at, std::size_t* taken) : at_(at), taken_(taken) {}

  reference operator*() const { return *at_; }

  CountedByte& operator++() {
    ++at_;
    ++*taken_;
    return *this;
  }

  CountedByte operator++(int) {
    CountedByte before = *this;
    ++*this;
    return before;
  }

  // Which of the two the library asks for depends on the compiler; != is made from ==.
  bool operator==(const CountedByte& other) const { return at_ == other.at_; }

 private:
  const char* at_;
  std::size_t* taken_;
};

bool belongs_to_number(char c) {
  return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.' || c == 'e' || c == 'E';
}

// Where the number begins that ends at or, with one byte looked ahead, just before `end`.
std::size_t start_of_number(std::string_view text, std::size_t end) {
  if (end > 0 && !belongs_to_number(text[end - 1])) --end;
  while (end > 0 && belongs_to_number(text[end - 1])) --end;
  return end;
}

// Where the string begins whose closing quote stands just before `end`.
std::size_t start_of_string(std::string_view text, std::size_t end) {
  std::size_t at = end - 1;
  while (at > 0) {
    --at;
    if (text[at] != '"') continue;
    std::size_t backslashes = 0;
    while (backslashes < at && text[at - 1 - backslashes] == '\\') ++backslashes;
    if (backslashes % 2 == 0) return at;
  }
  return 0;
}

std::string quotable(std::string_view token) {
  return shortened(valid_utf8(token), max_token_characters);
}

// Builds the value from the library's events and stops at the first thing the log does not allow.
class Builder {
 public:
  Builder(std::string_view text, const std::size_t* taken) : text_(text), taken_(taken) {
    open_.reserve(usual_depth);
    open_.push_back(Open{Json(JsonArray{}), {}});  // takes the outermost value
  }

  bool null() { return add(Json()); }

  bool boolean(bool value) { return add(Json(value)); }

  bool number_integer(std::int64_t value) {
    if (value < -max_json_integer) return refuse_number("a whole number is too far below zero");
    return add(Json(value));
  }

  bool number_unsigned(std::uint64_t value) {
    const bool is_exact = value <= std::uint64_t{max_json_integer};
    if (!is_exact) return refuse_number("a whole number is too large");
    return add(Json(static_cast<std::int64_t>(value)));
  }

  bool number_float(double, const std::string& token) {
    const bool is_whole = token.find_first_of(".eE") == std::string::npos;
    return refuse_number(is_whole ? "a whole number is too large"
                                  : "a number has a fraction or an exponent");
  }

  bool string(std::string& value) { return add(Json(std::move(value))); }

  // No text holds any; should the library say so all the same, it is no value of ours.
  bool binary(nlohmann::json::binary_t&) { return refuse("this is no JSON", "", *taken_); }

  bool start_object(std::size_t) { return open(Json(JsonObject{})); }

  bool start_array(std::size_t) { return open(Json(JsonArray{})); }

  bool end_object() { return close(); }

  bool end_array() { return close(); }

  bool key(std::string& name) {
    JsonObject& object = *open_.back().value.as_object();
    const auto place = object.lower_bound(name);
    if (place != object.end() && place->first == name) {
      const std::size_t start = start_of_string(text_, *taken_);
      return refuse("a name stands twice in one object", name, start);
    }
    open_.back().name = std::move(name);
    return true;
  }

  bool parse_error(std::size_t position, const std::string&, const std::exception&) {
    const std::size_t start = position == 0 ? 0 : position - 1;
    if (start >= text_.size()) return refuse("the text ends too early", "", text_.size());
    const std::size_t end = text_.find_first_of(" \t\r\n,:[]{}\"", start + 1);
    return refuse("this is no JSON", text_.substr(start, end - start), start);
  }

  Result<Json> result() && {
    if (fault_) return std::move(*fault_);
    return std::move(open_.front().value.as_array()->front());
  }

  void fail(std::string_view what) { refuse(what, "", *taken_); }

 private:
  struct Open {
    Json value;
    std::string name;  // of the member being read
  };

  bool add(Json value) {
    if (JsonObject* object = open_.back().value.as_object()) {
      object->emplace(std::move(open_.back().name), std::move(value));
    } else {
      open_.back().value.as_array()->push_back(std::move(value));
    }
    return true;
  }

  bool open(Json value) {
    if (open_.size() > max_depth) {
      return refuse("there are more than 64 levels of nesting", "", *taken_ - 1);
    }
    open_.push_back(Open{std::move(value), {}});
    return true;
  }

  bool close() {
    Json closed = std::move(open_.back().value);
    open_.pop_back();
    return add(std::move(closed));
  }

  bool refuse_number(std::string_view what) {
    const std::size_t start = start_of_number(text_, *taken_);
    std::size_t end = start;
    while (end < text_.size() && belongs_to_number(text_[end])) ++end;
    return refuse(what, text_.substr(start, end - start), start);
  }

  bool refuse(std::string_view what, std::string_view token, std::size_t start) {
    const std::string_view before = text_.substr(0, start);
    const std::size_t line_start = before.rfind('\n') + 1;  // npos + 1 is 0
    Fault fault{"json-unreadable", std::string(what), quotable(token)};
    fault.line = 1;
    for (const char c : before) fault.line += c == '\n' ? 1 : 0;
    fault.column = static_cast<int>(character_count(before.substr(line_start))) + 1;
    fault_ = std::move(fault);
    return false;
  }

  std::string_view text_;
  const std::size_t* taken_;
  std::vector<Open> open_;
  std::optional<Fault> fault_;
};

}  // namespace

bool JsonNameLess::operator()(std::string_view a, std::string_view b) const {
  const std::size_t shorter = a.size() < b.size() ? a.size() : b.size();
  std::size_t at = 0;
  while (at < shorter && a[at] == b[at]) ++at;
  if (at == shorter) return a.size() < b.size();
  const auto x = static_cast<std::uint8_t>(a[at]);
  const auto y = static_cast<std::uint8_t>(b[at]);
  // UTF-8 order is code point order; in UTF-16 the surrogates of U+10000 and beyond come before
  // U+E000 to U+FFFF.
  if (is_lead_of_four(x) && is_lead_above_surrogates(y)) return true;
  if (is_lead_of_four(y) && is_lead_above_surrogates(x)) return false;
  return x < y;
}

const Json* Json::member(std::string_view name) const {
  const JsonObject* object = as_object();
  if (object == nullptr) return nullptr;
  const auto found = object->find(name);
  return found == object->end() ? nullptr : &found->second;
}

std::string canonical_json(const Json& json) {
  Writer writer(false);
  writer.write(json);
  return std::move(writer).take();
}

std::string pretty_json(const Json& json) {
  Writer writer(true);
  writer.write(json);
  return std::move(writer).take();
}

Result<Json> json_from_text(std::string_view text) {
  std::size_t taken = 0;
  Builder builder(text, &taken);
  try {
    const CountedByte begin(text.data(), &taken);
    const CountedByte end(text.data() + text.size(), &taken);
    nlohmann::json::sax_parse(begin, end, &builder);
  } catch (const std::exception&) {
    builder.fail("the text is more than the memory can hold");
  }
  return std::move(builder).result();
}

}  // namespace evenclaw
