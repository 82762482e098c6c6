#!/usr/bin/env bash
# Pages of docs/ that are made from the sources: docs/errors.md, docs/format/data-dictionary.md.
#
#   tools/generated_docs.sh BUILD          fails and says which page is out of date
#   tools/generated_docs.sh BUILD --write  writes them anew
set -euo pipefail
build=${1:?build folder, e.g. build/dev}
cd "$(dirname "$0")/.."
"$build/tools/docs_generator" "${2:---check}" docs

# The generator lists the bodies by hand: a kind it does not know must not go unsaid.
for kind in $(sed -n 's/.*std::string_view kind = "\([a-z_]*\)".*/\1/p' core/log/bodies.hpp); do
  grep -q "^### $kind, version" docs/format/data-dictionary.md || {
    echo "tools/docs_generator.cpp does not list the kind '$kind'" >&2
    exit 1
  }
done
