#!/usr/bin/env bash
# Every fuzz target for EVENCLAW_FUZZ_SECONDS (an hour), and the inputs worth keeping of each.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

seconds=${EVENCLAW_FUZZ_SECONDS:-3600}
result_page fuzz "Fuzzing, $seconds seconds per target"
{
  echo "$(clang++ --version | head -1), address and undefined behaviour sanitizers, one process."
  echo
  echo "| target | executions | edges reached | slowest input | faults |"
  echo "|---|---|---|---|---|"
} >>"$page"
status=0
for source in tests/fuzz/*_fuzz.cpp; do
  target=$(basename "$source" _fuzz.cpp)
  smallest=build/fuzz/smallest/$target
  bash tools/fuzz.sh "$seconds" "$target" >>"$page" || status=1
  # As few inputs as reach every edge that all of them together reach.
  rm -rf "$smallest" && mkdir -p "$smallest"
  "build/fuzz/tests/fuzz/fuzz_$target" -merge=1 -use_counters=0 -max_len=4096 "$smallest" \
    "build/fuzz/corpus/$target" "tests/fuzz/seeds/$target" >"build/fuzz/$target.merge.log" 2>&1
  python3 tools/fuzz_corpus.py pack "$smallest" "tests/fuzz/corpus/$target.txt"
done
exit $status
