#!/usr/bin/env bash
# What clang-tidy has to say of the program: tidy.sh BUILD, a folder configured with clang++ and CMAKE_UNITY_BUILD. Whole
# floors are looked at in one go, which takes a quarter of the time; one check is left out that the joining itself sets off.
set -euo pipefail
build=$1
source=$(realpath "$(dirname "$0")/../src")
{ find "$build/src" -path '*/Unity/*.cxx' && ls "$source"/{text/typesetter,finish/write_file}.cpp; } |
    xargs -P "$(nproc)" -n 1 clang-tidy -p "$build" --quiet --checks=-bugprone-suspicious-include 2>"$build/tidy.log" ||
    { grep -v 'warnings generated\|^Suppressed\|^Use -' "$build/tidy.log"; exit 1; }
