#!/usr/bin/env bash
# tools/fuzz.sh SECONDS TARGET: feeds a target of tests/fuzz for that long, with sanitizers,
# starting from its seeds and from what was kept in tests/fuzz/corpus. Prints one row of a table;
# what broke it lies in build/fuzz/found and belongs into a test.
set -euo pipefail
cd "$(dirname "$0")/.."

seconds=${1:?how many seconds} target=${2:?which target, e.g. call_line}
corpus=build/fuzz/corpus/$target log=build/fuzz/$target.log faults=0
mkdir -p build/fuzz/found
{
  cmake --preset fuzz -Wno-dev && ninja -C build/fuzz "fuzz_$target" &&
    python3 tools/fuzz_corpus.py unpack "tests/fuzz/corpus/$target.txt" "$corpus" &&
    python3 tools/fuzz_corpus.py words docs/format/call-line{,-de}.md build/fuzz/words
} >"$log" 2>&1 || { tail -30 "$log" >&2; exit 1; }
words=()
[[ $target == call_line ]] && words=(-dict=build/fuzz/words)
"build/fuzz/tests/fuzz/fuzz_$target" "${words[@]}" -max_total_time="$seconds" -max_len=4096 \
  -timeout=10 -artifact_prefix="build/fuzz/found/$target-" -print_final_stats=1 \
  "$corpus" "tests/fuzz/seeds/$target" >"$log" 2>&1 || faults=1
runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
slowest=$(sed -n 's/^stat::slowest_unit_time_sec: *//p' "$log")
edges=$(sed -n 's/.* cov: \([0-9]*\).*/\1/p' "$log" | tail -1)
echo "| $target | ${runs:-?} | ${edges:-?} | ${slowest:-?} s | $faults |"
((faults == 0)) || { tail -40 "$log" >&2; exit 1; }
