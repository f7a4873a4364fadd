#!/usr/bin/env bash
# Installs what dyeleaf needs, builds it and prints the example studio's papers into build/try.
set -euo pipefail
cd "$(dirname "$0")/.."
. tests/install.sh
install_packages "${build_packages[@]}" poppler-utils
echo "== building"
mkdir -p build
cmake -S . -B build -DCMAKE_BUILD_TYPE=Release -DCMAKE_UNITY_BUILD=ON >build/configure.log 2>&1 || { cat build/configure.log; exit 1; }
cmake --build build --parallel "$(nproc)"
echo "== printing the example studio (invented)"
mkdir -p build/try
build/dyeleaf check examples/studio
build/dyeleaf render dye-cards examples/studio -o build/try/cards.pdf
build/dyeleaf render jar-wrap examples/studio -o build/try/jars.pdf
build/dyeleaf render hang-tag examples/studio -o build/try/tags.pdf
for paper in cards jars tags; do
    pdftoppm -r 110 -f 1 -l 1 -singlefile -png "build/try/$paper.pdf" "build/try/$paper"
done
echo "== done; look at"
for paper in cards jars tags; do
    echo "   $PWD/build/try/$paper.pdf   first page: $PWD/build/try/$paper.png"
done
