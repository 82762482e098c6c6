// Work done in a process of its own, so that limits, rights and kills do not touch the test.
#pragma once

#include <doctest/doctest.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <string>
#include <thread>

namespace evenclaw {

/// What `work` returned, as text; it must not use the test's own checks.
template <class Work>
std::string in_child(Work&& work) {
  int ends[2];
  REQUIRE(::pipe(ends) == 0);
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const std::string said = work();
    const bool wrote = ::write(ends[1], said.data(), said.size()) >= 0;
    ::_exit(wrote ? 0 : 1);
  }
  ::close(ends[1]);
  std::string said;
  char buffer[4096];
  for (ssize_t n = 0; (n = ::read(ends[0], buffer, sizeof buffer)) > 0;) {
    said.append(buffer, static_cast<std::size_t>(n));
  }
  ::close(ends[0]);
  int status = 0;
  ::waitpid(child, &status, 0);
  CHECK(WIFEXITED(status));
  return said;
}

/// Starts `work` and kills it a while after `is_under_way` says so, however slow the machine is; it
/// may also have come to its end before.
template <class UnderWay, class Work>
void killed_after(std::chrono::microseconds delay, UnderWay&& is_under_way, Work&& work) {
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    work();
    ::_exit(0);
  }
  constexpr int most_looks = 10'000;
  for (int look = 0; look < most_looks && !is_under_way(); ++look) {
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  }
  std::this_thread::sleep_for(delay);
  ::kill(child, SIGKILL);
  int status = 0;
  ::waitpid(child, &status, 0);
}

/// No file of this process may grow beyond this; a write that tries fails as on a full disk.
inline void limit_file_size(rlim_t bytes) {
  ::signal(SIGXFSZ, SIG_IGN);
  const rlimit limit{bytes, bytes};
  ::setrlimit(RLIMIT_FSIZE, &limit);
}

/// Gives up the rights of the superuser, for whom no file is read-only. Others stay who they are.
inline void become_nobody() {
  constexpr uid_t nobody = 65534;
  if (::geteuid() == 0 && ::setresuid(nobody, nobody, nobody) != 0) ::_exit(1);
}

}  // namespace evenclaw
