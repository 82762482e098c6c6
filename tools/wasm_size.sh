#!/usr/bin/env bash
# Size of the whole core and the memory store as one WebAssembly file, nothing dropped.
set -euo pipefail
cd "$(dirname "$0")/.."

cmake --preset wasm-release >/dev/null
ninja -C build/wasm-release --quiet whole_core
file=build/wasm-release/whole_core.wasm
echo "whole core: $(stat -c %s $file) bytes, $(gzip -9c $file | wc -c) gzipped;" \
  "emcc $(em++ --version | grep -om1 '[0-9]*\.[0-9]*\.[0-9]*' | head -1)"
