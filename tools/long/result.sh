# Sourced by the long tests: a dated page in docs/results that names machine and versions.

# result_page NAME TITLE: starts docs/results/DATE-NAME.md and leaves its path in $page.
result_page() {
  local name=$1 title=$2
  mkdir -p docs/results
  page=docs/results/$(date +%F)-$name.md
  {
    echo "# $title"
    echo
    echo "- Day: $(date +%F); commit $(git rev-parse --short HEAD 2>/dev/null || echo unknown)"
    echo "- Machine: $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(nproc) cores," \
      "$(awk '/^MemTotal/ { printf "%.0f GiB", $2 / 1048576 }' /proc/meminfo);" \
      "load before: $(cut -d' ' -f1 /proc/loadavg)"
    echo "- Versions: $(. /etc/os-release && echo "$PRETTY_NAME"); $(c++ --version | head -1);" \
      "SQLite $(sed -n 's/^#define SQLITE_VERSION  *"\(.*\)"/\1/p' /usr/include/sqlite3.h)"
    echo
  } >"$page"
  echo "   writing $page"
}

# prepared PRESET [TARGET...]: configures and builds, quietly.
prepared() {
  local preset=$1
  shift
  cmake --preset "$preset" >/dev/null && ninja -C "build/$preset" --quiet "$@"
}
