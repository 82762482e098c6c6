#!/usr/bin/env bash
# Which lines and branches of core/ the tests reach.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

prepared coverage
find build/coverage -name '*.gcda' -delete
ctest --test-dir build/coverage --output-on-failure -j "$(nproc)"
result_page coverage "Line coverage of core/ and store/"
{
  echo '```'
  gcovr --root . --object-directory build/coverage --filter 'core/' --filter 'store/' \
    --exclude-unreachable-branches --exclude-throw-branches 2>/dev/null | sed "s|$PWD/||"
  echo '```'
} >>"$page"
