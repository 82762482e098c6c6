#!/usr/bin/env bash
# Records while being killed, 3,000 times: nothing acknowledged may be lost or doubled.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

export EVENCLAW_KILLS=${EVENCLAW_KILLS:-3000}
prepared bench evenclaw test_fault
result_page kills "$EVENCLAW_KILLS kills at random points while recording"
status=0
ctest --test-dir build/bench -L fault --timeout 36000 -V >build/bench/kills.log 2>&1 || status=$?
{
  echo '```'
  grep -E 'kills|test cases|assertions|tests passed|ERROR' build/bench/kills.log |
    sed 's/^[0-9]*: //'
  echo '```'
} >>"$page"
exit $status
