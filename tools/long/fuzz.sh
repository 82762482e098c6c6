#!/usr/bin/env bash
# Every fuzz target for EVENCLAW_FUZZ_SECONDS (an hour) with sanitizers; what it finds is kept in
# build/fuzz/found and belongs into tests/regress as a test.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

seconds=${EVENCLAW_FUZZ_SECONDS:-3600}
targets=()
for source in tests/fuzz/*_fuzz.cpp; do
  targets+=("$(basename "$source" _fuzz.cpp)")
done
prepared fuzz "${targets[@]/#/fuzz_}"
result_page fuzz "Fuzzing, $seconds seconds per target"
mkdir -p build/fuzz/found
{
  echo "$(clang++ --version | head -1), address and undefined behaviour sanitizers, one process."
  echo
  echo "| target | executions | edges reached | slowest input | faults |"
  echo "|---|---|---|---|---|"
} >>"$page"
status=0
for target in "${targets[@]}"; do
  # What was reached before is the start of the next run; it lies outside the project's files.
  corpus=build/fuzz/corpus/$target log=build/fuzz/$target.log faults=0
  mkdir -p "$corpus"
  "build/fuzz/tests/fuzz/fuzz_$target" -max_total_time="$seconds" -max_len=4096 -timeout=10 \
    -artifact_prefix="build/fuzz/found/$target-" -print_final_stats=1 \
    "$corpus" "tests/fuzz/seeds/$target" >"$log" 2>&1 || faults=1
  runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
  slowest=$(sed -n 's/^stat::slowest_unit_time_sec: *//p' "$log")
  edges=$(sed -n 's/.* cov: \([0-9]*\).*/\1/p' "$log" | tail -1)
  echo "| $target | ${runs:-?} | ${edges:-?} | ${slowest:-?} s | $faults |" >>"$page"
  ((faults == 0)) || { tail -30 "$log"; status=1; }
done
exit $status
