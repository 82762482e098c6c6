// The command line program as a test runs it: a process of its own in a folder of its own.
#pragma once

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "tests/store/temporary_folder.hpp"

namespace evenclaw::test {

/// What a finished run left behind.
struct Ran {
  int exit = -1;   // -1 when a signal ended it
  int signal = 0;  // 0 when it ended by itself
  std::string out;
  std::string err;
};

/// The text says these words.
inline bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

/// Argument vectors of C, which want pointers that can be written through.
class PointerList {
 public:
  explicit PointerList(std::vector<std::string> texts) : texts_(std::move(texts)) {
    for (std::string& text : texts_) pointers_.push_back(text.data());
    pointers_.push_back(nullptr);
  }

  [[nodiscard]] char* const* get() const { return pointers_.data(); }

 private:
  std::vector<std::string> texts_;
  std::vector<char*> pointers_;
};

inline std::string binary() {
  const char* named = std::getenv("EVENCLAW_BINARY");
  return named == nullptr ? std::string("build/dev/cli/evenclaw") : std::string(named);
}

/// One user with a home of his own: nothing of the machine's environment reaches the program but
/// what a sanitizer needs.
class Workshop {
 public:
  [[nodiscard]] std::string file(const std::string& name) const { return folder_.file(name); }

  [[nodiscard]] std::string records() const { return file("evenclaw/evenclaw.db"); }

  [[nodiscard]] std::vector<std::string> environment() const {
    std::vector<std::string> all = extra_environment;  // of two alike the first one counts
    for (const std::string& usual : {"HOME=" + folder_.name(), "XDG_DATA_HOME=" + folder_.name(),
                                     std::string("TZ=UTC"), std::string("LC_ALL=C.UTF-8")}) {
      all.push_back(usual);
    }
    for (const char* name : {"ASAN_OPTIONS", "LSAN_OPTIONS", "UBSAN_OPTIONS", "TSAN_OPTIONS"}) {
      if (const char* value = std::getenv(name)) all.push_back(std::string(name) + "=" + value);
    }
    return all;
  }

  /// Runs to the end with `input` on standard input, through files so that nothing can jam.
  [[nodiscard]] Ran run(const std::vector<std::string>& words,
                        const std::string& input = "") const {
    const std::string in = file("stdin");
    const std::string out = file("stdout");
    const std::string err = file("stderr");
    write_bytes(in, input);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, in.c_str(), O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO,
                                     stdout_to.empty() ? out.c_str() : stdout_to.c_str(),
                                     O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, err.c_str(),
                                     O_WRONLY | O_CREAT | O_TRUNC, 0600);
    const pid_t pid = spawn(words, actions);
    posix_spawn_file_actions_destroy(&actions);
    Ran ran = waited_for(pid);
    if (stdout_to.empty()) ran.out = bytes_of(out);
    ran.err = bytes_of(err);
    return ran;
  }

  /// Starts the program with the given actions on its descriptors; -1 when that failed.
  [[nodiscard]] pid_t spawn(const std::vector<std::string>& words,
                            const posix_spawn_file_actions_t& actions) const {
    std::vector<std::string> all = {binary()};
    all.insert(all.end(), words.begin(), words.end());
    const PointerList arguments(std::move(all));
    const PointerList variables(environment());
    // What this process ignores would be ignored by the program too.
    sigset_t as_usual;
    sigemptyset(&as_usual);
    sigaddset(&as_usual, SIGPIPE);
    sigaddset(&as_usual, SIGXFSZ);
    posix_spawnattr_t attributes;
    posix_spawnattr_init(&attributes);
    posix_spawnattr_setsigdefault(&attributes, &as_usual);
    posix_spawnattr_setflags(&attributes, POSIX_SPAWN_SETSIGDEF);
    pid_t pid = -1;
    const int failed = posix_spawn(&pid, binary().c_str(), &actions, &attributes, arguments.get(),
                                   variables.get());
    posix_spawnattr_destroy(&attributes);
    return failed == 0 ? pid : -1;
  }

  static Ran waited_for(pid_t pid) {
    Ran ran;
    int status = 0;
    if (pid < 0 || waitpid(pid, &status, 0) != pid) return ran;
    if (WIFEXITED(status)) ran.exit = WEXITSTATUS(status);
    if (WIFSIGNALED(status)) ran.signal = WTERMSIG(status);
    return ran;
  }

  std::vector<std::string> extra_environment;
  std::string stdout_to;  // a device instead of a file

 private:
  TemporaryFolder folder_;
};

/// A run that is talked to: what it answers is read while it goes on.
class Conversation {
 public:
  Conversation(const Workshop& workshop, const std::vector<std::string>& words) {
    signal(SIGPIPE, SIG_IGN);  // writing to one that was killed must not end the test
    int to[2];
    int from[2];
    if (pipe2(to, O_CLOEXEC) != 0 || pipe2(from, O_CLOEXEC) != 0) return;
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, to[0], STDIN_FILENO);
    posix_spawn_file_actions_adddup2(&actions, from[1], STDOUT_FILENO);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    pid_ = workshop.spawn(words, actions);
    posix_spawn_file_actions_destroy(&actions);
    close(to[0]);
    close(from[1]);
    to_ = to[1];
    from_ = from[0];
    fcntl(to_, F_SETFL, O_NONBLOCK);
    fcntl(from_, F_SETFL, O_NONBLOCK);
  }

  Conversation(const Conversation&) = delete;
  Conversation& operator=(const Conversation&) = delete;

  ~Conversation() {
    if (pid_ > 0) static_cast<void>(killed());
    close(from_);
  }

  [[nodiscard]] bool is_running() const { return pid_ > 0; }

  /// Writes what the pipe takes now and says how much that was; 0 when the other end is gone.
  std::size_t write_some(std::string_view text) const {
    const ssize_t written = write(to_, text.data(), text.size());
    return written > 0 ? static_cast<std::size_t>(written) : 0;
  }

  /// Reads what there is, waiting at most so long for something; false at the end of the output.
  bool read_for(int milliseconds) {
    pollfd waiting{from_, POLLIN, 0};
    if (poll(&waiting, 1, milliseconds) <= 0) return true;
    char chunk[4096];
    const ssize_t got = read(from_, chunk, sizeof chunk);
    if (got > 0) heard_.append(chunk, static_cast<std::size_t>(got));
    return got != 0;
  }

  /// Waits until `words` were answered; false when they were not within ten seconds.
  [[nodiscard]] bool hears(std::string_view words) {
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(10);
    while (heard_.find(words) == std::string::npos) {
      if (std::chrono::steady_clock::now() > end || !read_for(100)) break;
    }
    return heard_.find(words) != std::string::npos;
  }

  [[nodiscard]] const std::string& heard() const { return heard_; }

  /// Closes its input, reads the rest and waits for it.
  Ran ended() {
    hang_up();
    while (read_for(10'000)) {
    }
    return waited();
  }

  /// Kills it on the spot; what it had said before is still read.
  Ran killed() {
    kill(pid_, SIGKILL);
    while (read_for(10'000)) {
    }
    hang_up();
    return waited();
  }

 private:
  void hang_up() {
    if (to_ >= 0) close(to_);
    to_ = -1;
  }

  Ran waited() {
    Ran ran = Workshop::waited_for(pid_);
    pid_ = -1;
    ran.out = heard_;
    return ran;
  }

  pid_t pid_ = -1;
  int to_ = -1;
  int from_ = -1;
  std::string heard_;
};

}  // namespace evenclaw::test
