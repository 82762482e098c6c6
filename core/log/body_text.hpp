// The bytes of an entry's body, shared by every copy of the entry, with what was read from them.
#pragma once

#include <any>
#include <atomic>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>

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
    for (const Read* read = kept_->newest; read != nullptr; read = read->before) {
      const What* what = read->version == version ? std::any_cast<What>(&read->what) : nullptr;
      if (what != nullptr) return *what;
    }
    return std::nullopt;
  }

  /// `what` must follow from the bytes and the version alone.
  template <class What>
  void remember(std::int32_t version, What what) const {
    Read* read = new Read{version, std::move(what), kept_->newest};
    while (!kept_->newest.compare_exchange_weak(read->before, read)) {
    }
  }

  /// By the bytes: what was read follows from them.
  friend bool operator==(const BodyText& a, const BodyText& b) { return a.bytes() == b.bytes(); }

 private:
  /// Once it is the newest nothing of it changes, so it is read without a lock.
  struct Read {
    std::int32_t version;
    std::any what;
    Read* before;
  };

  struct Kept {
    explicit Kept(std::string of) : bytes(std::move(of)) {}

    Kept(const Kept&) = delete;
    Kept& operator=(const Kept&) = delete;

    ~Kept() {
      for (Read* read = newest; read != nullptr;) delete std::exchange(read, read->before);
    }

    const std::string bytes;
    std::atomic<Read*> newest = nullptr;
  };

  std::shared_ptr<Kept> kept_;
};

}  // namespace evenclaw
