#!/usr/bin/env bash
# Fails when a source file is not as clang-format would leave it.
set -euo pipefail
cd "$(dirname "$0")/.."
mapfile -t files < <(find src tests -name '*.h' -o -name '*.cpp' | sort)
[ ${#files[@]} -gt 100 ] || { echo "only ${#files[@]} files found: the check itself is broken"; exit 1; }
clang-format --dry-run --Werror "${files[@]}"
echo "${#files[@]} files checked"
