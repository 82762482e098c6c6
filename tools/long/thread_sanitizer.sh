#!/usr/bin/env bash
# The native tests under the thread sanitizer.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

prepared tsan
result_page thread-sanitizer "Tests under the thread sanitizer"
status=0
ctest --test-dir build/tsan --output-on-failure | tee build/tsan/long.log || status=$?
{
  echo '```'
  grep -E '^ *[0-9]+/[0-9]+ Test|tests passed' build/tsan/long.log
  echo '```'
} >>"$page"
exit $status
