// The bytes of an entry's body, shared by every copy of the entry, with what was read from them.
#pragma once

#include <any>
#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace evenclaw {

/// Bytes that never change. A picture is made of the same entries again and again, and most of that
/// time went into reading the same JSON: what was read once is remembered beside the bytes, as long
/// as one copy of the entry lives. Several threads may read one body.
class BodyText {
 public:
  explicit BodyText(std::string bytes) : kept_(std::make_shared<Kept>(std::move(bytes))) {}

  [[nodiscard]] const std::string& bytes() const { return kept_->bytes; }

  /// What remember() was given of that type for a body of that version, if it was.
  template <class What>
  [[nodiscard]] std::optional<What> remembered(std::int32_t version) const {
    const std::lock_guard lock(kept_->reading);
    for (const Read& read : kept_->read) {
      const What* what = read.version == version ? std::any_cast<What>(&read.what) : nullptr;
      if (what != nullptr) return *what;
    }
    return std::nullopt;
  }

  /// `what` must follow from the bytes and the version alone.
  template <class What>
  void remember(std::int32_t version, What what) const {
    if (remembered<What>(version)) return;
    const std::lock_guard lock(kept_->reading);
    kept_->read.push_back({version, std::move(what)});
  }

  /// By the bytes: what was read follows from them.
  friend bool operator==(const BodyText& a, const BodyText& b) { return a.bytes() == b.bytes(); }

 private:
  struct Read {
    std::int32_t version;
    std::any what;
  };

  struct Kept {
    explicit Kept(std::string of) : bytes(std::move(of)) {}

    const std::string bytes;
    std::mutex reading;
    std::vector<Read> read;
  };

  std::shared_ptr<Kept> kept_;
};

}  // namespace evenclaw
