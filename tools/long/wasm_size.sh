#!/usr/bin/env bash
# What a tablet would load at most.
set -euo pipefail
cd "$(dirname "$0")/../.."
. tools/long/result.sh

result_page wasm-size "Size of the WebAssembly core"
tools/wasm_size.sh >>"$page"
tail -1 "$page"
