#!/usr/bin/env bash
# Which lines of core/ and store/ the tests reach.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

prepared coverage
find build/coverage -name '*.gcda' -delete
status=0
ctest --test-dir build/coverage --output-on-failure -j "$(nproc)" >build/coverage/long.log 2>&1 ||
  status=$?
result_page coverage "Lines that the native tests reach"
{
  echo "$(gcovr --version | head -1); $(grep 'tests passed' build/coverage/long.log)."
  echo
  gcovr --root . --object-directory build/coverage --filter 'core/' --filter 'store/' \
    --json-summary 2>build/coverage/gcovr.log | python3 tools/coverage_table.py
} >>"$page"
((status == 0)) || tail -40 build/coverage/long.log
exit $status
