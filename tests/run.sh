#!/usr/bin/env bash
# Installs what the tests need, builds with warnings as errors and runs every test.
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/install.sh
install_packages "${build_packages[@]}" "${test_packages[@]}"
echo "== building, warnings are errors"
mkdir -p build/tests
cmake -S . -B build/tests -DCMAKE_BUILD_TYPE=RelWithDebInfo -DDYELEAF_WERROR=ON -DDYELEAF_TESTS=ON \
    >build/tests/configure.log 2>&1 || { cat build/tests/configure.log; exit 1; }
cmake --build build/tests --parallel "$(nproc)"
echo "== testing"
ctest --test-dir build/tests --parallel "$(nproc)" --output-on-failure "$@"
