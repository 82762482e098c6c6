#!/usr/bin/env bash
# 10,000 seeded histories of several devices: merging is a union, the picture does not depend on
# who arrived first, rebuilt equals incremental.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

export EVENCLAW_HISTORIES=${EVENCLAW_HISTORIES:-10000}
prepared bench
result_page histories "$EVENCLAW_HISTORIES seeded histories"
status=0
ctest --test-dir build/bench -R '^histories$' --timeout 36000 -V >build/bench/histories.log 2>&1 ||
  status=$?
{
  echo '```'
  grep -E 'histor|test cases|assertions|tests passed|ERROR' build/bench/histories.log |
    sed 's/^[0-9]*: //'
  echo '```'
} >>"$page"
exit $status
