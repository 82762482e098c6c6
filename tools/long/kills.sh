#!/usr/bin/env bash
# Records while being killed, 3,000 times: nothing acknowledged may be lost or doubled.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

export EVENCLAW_KILLS=${EVENCLAW_KILLS:-3000}
prepared bench evenclaw test_fault
result_page kills "$EVENCLAW_KILLS kills at random points while recording"
status=0
# Not through ctest: the time it gives a test is meant for a sample.
EVENCLAW_BINARY=$PWD/build/bench/cli/evenclaw build/bench/tests/test_fault --no-colors=true \
  >build/bench/kills.log 2>&1 || status=$?
{
  echo '```'
  grep -E 'kills|test cases|assertions|ERROR' build/bench/kills.log
  echo '```'
} >>"$page"
exit $status
