#!/usr/bin/env bash
# Pages of docs/ that are made from the sources: docs/errors.md, docs/format/data-dictionary.md,
# docs/format/vocabulary.md, docs/format/demo-truth.md, docs/method/demo-parameters.md,
# docs/method/demo-figures.md with its drawings.
#
#   tools/generated_docs.sh BUILD          fails and says which page is out of date
#   tools/generated_docs.sh BUILD --write  writes them anew
set -euo pipefail
build=${1:?build folder, e.g. build/dev}
cd "$(dirname "$0")/.."
exec "$build/tools/docs_generator" "${2:---check}" docs
