#!/usr/bin/env bash
# What the release build does per second, on this machine, today.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

entries=${EVENCLAW_BENCH_ENTRIES:-1000000}
lines=${EVENCLAW_BENCH_LINES:-200000}
prepared bench evenclaw call_line_bench store_bench picture_bench import_bench sheet_bench pdf_bench
prepared wasm-bench sheet_bench
# On the disk the project lies on: a file system in memory would acknowledge what is not durable.
folder=$(mktemp -d -p build/bench)
trap 'rm -rf "$folder"' EXIT
result_page benchmarks "Benchmarks of the release build"
{
  echo "Median, and the least and the most of the repeats named; one thread."
  echo
  echo "| what | median | spread | conditions |"
  echo "|---|---|---|---|"
  build/bench/bench/call_line_bench
  build/bench/bench/store_bench "$folder"
  build/bench/bench/import_bench "$folder" "$lines"
  build/bench/bench/pdf_bench
  build/bench/bench/sheet_bench
  node --no-experimental-fetch build/wasm-bench/bench/sheet_bench.js
  TMPDIR=$PWD/$folder python3 bench/scenarios/command_line.py build/bench/cli/evenclaw
  TMPDIR=$PWD/$folder python3 bench/scenarios/printing.py build/bench/cli/evenclaw
  TMPDIR=$PWD/$folder python3 bench/scenarios/demo_business.py build/bench/cli/evenclaw
} >>"$page"
build/bench/bench/picture_bench "$folder/log.db" "$entries" write
build/bench/bench/picture_bench "$folder/log.db" "$entries" rebuild >>"$page"
tail -8 "$page"
