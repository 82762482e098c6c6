#!/usr/bin/env bash
# Cuts the power 1,000 times while recording, and refuses every call to the disk of a day once with
# either error: nothing acknowledged may be lost, doubled or half there.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

export EVENCLAW_CUTS=${EVENCLAW_CUTS:-1000} EVENCLAW_REFUSALS=${EVENCLAW_REFUSALS:-all}
prepared bench evenclaw test_fault
result_page cuts "$EVENCLAW_CUTS power cuts while recording, and every call refused"
status=0
begin=$SECONDS
# Not through ctest: the time it gives a test is meant for a sample.
EVENCLAW_BINARY=$PWD/build/bench/cli/evenclaw build/bench/tests/test_fault --no-colors=true \
  --source-file='*/power_cut_test.cpp,*/refused_call_test.cpp,*/cut_short_test.cpp' \
  >build/bench/cuts.log 2>&1 || status=$?
{
  echo "In $((SECONDS - begin)) s. What is played: [how records stay](../method/durability.md)."
  echo
  echo '```'
  grep -E 'power cuts|refus|test cases|assertions|ERROR' build/bench/cuts.log
  echo '```'
} >>"$page"
exit $status
