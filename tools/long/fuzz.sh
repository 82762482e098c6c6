#!/usr/bin/env bash
# Every fuzz target for EVENCLAW_FUZZ_SECONDS (an hour) with sanitizers; what it finds is kept in
# build/fuzz/found and belongs into tests/regress as a test.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

seconds=${EVENCLAW_FUZZ_SECONDS:-3600}
prepared fuzz
result_page fuzz "Fuzzing, $seconds seconds per target"
mkdir -p build/fuzz/found
status=0
{
  echo "| target | executions | edges reached | faults |"
  echo "|---|---|---|---|"
} >>"$page"
for target in build/fuzz/tests/fuzz/fuzz_*; do
  [[ -x $target ]] || continue
  name=$(basename "$target")
  corpus=build/fuzz/corpus/$name
  mkdir -p "$corpus"
  faults=0
  "$target" -max_total_time="$seconds" -artifact_prefix="build/fuzz/found/$name-" -max_len=4096 \
    -print_final_stats=1 "$corpus" "tests/fuzz/seeds/${name#fuzz_}" >"build/fuzz/$name.log" 2>&1 ||
    faults=1
  runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "build/fuzz/$name.log")
  edges=$(sed -n 's/.* cov: \([0-9]*\).*/\1/p' "build/fuzz/$name.log" | tail -1)
  echo "| $name | ${runs:-?} | ${edges:-?} | $faults |" >>"$page"
  ((faults == 0)) || { tail -30 "build/fuzz/$name.log"; status=1; }
done
exit $status
