#!/usr/bin/env bash
# One fuzzer for some seconds: run.sh SUBJECT PROGRAM SECONDS. What it finds is left beside the program, with its name;
# mended, it is kept in tests/fuzz/found/SUBJECT, from where every later run starts.
set -euo pipefail
subject=$1 program=$2 seconds=$3
work=$(dirname "$program")/fuzz/$subject
python3 "$(dirname "$0")/seeds.py" "$subject" "$work/seeds"
mkdir -p "$work/corpus" "$work/faults"
export ASAN_OPTIONS=detect_leaks=0:allocator_may_return_null=1:quarantine_size_mb=64
"$program" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=1500 -print_final_stats=1 \
    -verbosity=1 -artifact_prefix="$work/faults/" "$work/corpus" "$work/seeds" 2>"$work/log" ||
    { tail -60 "$work/log"; exit 1; }
