#!/usr/bin/env bash
# Installs what the tests need, builds with warnings as errors and runs every test under sanitizers; then a short
# benchmark and hostile input in a build without them, clang-tidy and, for some seconds each, the fuzzers.
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/install.sh
install_packages "${build_packages[@]}" "${test_packages[@]}"

configure() { # FOLDER OPTION...
    local folder=$1
    mkdir -p "$folder"
    cmake -S . -B "$folder" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG="-O1 -g1" -DCMAKE_UNITY_BUILD=ON \
        -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=lld -DDYELEAF_WERROR=ON -DDYELEAF_TESTS=ON -DDYELEAF_SANITIZE=ON "${@:2}" \
        >"$folder/configure.log" 2>&1 || { cat "$folder/configure.log"; exit 1; }
}
run_tests() { ctest --parallel "$(nproc)" --output-on-failure --test-dir "$@"; }

echo "== building with sanitizers, warnings are errors"
configure build/tests
cmake --build build/tests --parallel "$(nproc)"
echo "== testing"
run_tests build/tests "$@"

echo "== benchmark, and hostile input within its true bounds"
configure build/bench -DCMAKE_BUILD_TYPE=Release -DDYELEAF_SANITIZE=OFF
cmake --build build/bench --parallel "$(nproc)" --target dyeleaf bench_floor bench_drawing_list
run_tests build/bench --tests-regex '^bench|hostile' --verbose

echo "== building the fuzzers"
configure build/fuzz -DCMAKE_CXX_COMPILER=clang++ -DDYELEAF_FUZZ=ON -DDYELEAF_FUZZ_SECONDS=10
cmake --build build/fuzz --parallel "$(nproc)" --target fuzzers
echo "== clang-tidy"
tests/tidy.sh build/fuzz
echo "== fuzzing"
run_tests build/fuzz --tests-regex '^fuzz'
