#!/usr/bin/env bash
# 10,000 seeded histories of several devices: merging is a union, the picture does not depend on
# who arrived first, rebuilt equals incremental.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

export EVENCLAW_HISTORIES=${EVENCLAW_HISTORIES:-10000}
prepared bench test_core_log
result_page histories "$EVENCLAW_HISTORIES seeded histories"
status=0
begin=$SECONDS
build/bench/tests/test_core_log --no-colors=true --source-file='*histories_test.cpp' \
  >build/bench/histories.log 2>&1 || status=$?
{
  echo "Seeds 1 to $EVENCLAW_HISTORIES, in $((SECONDS - begin)) s."
  echo
  echo '```'
  cat build/bench/histories.log
  echo '```'
} >>"$page"
exit $status
