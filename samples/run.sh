#!/usr/bin/env bash
# Sets up, builds and plans the main sample: a walnut library table on a welded steel trestle.
set -euo pipefail
cd "$(dirname "$0")/.."
. samples/packages.sh

install_packages "${build_packages[@]}"
echo "Building build/coatday (the first time takes a few minutes) ..."
mkdir -p build
cmake --preset release -DCOATDAY_TESTS=OFF >build/build.log 2>&1 || { cat build/build.log; exit 1; }
cmake --build --preset release --target coatday >build/build.log 2>&1 || { cat build/build.log; exit 1; }
echo "Running: build/coatday plan samples/library-table/order.yaml"
echo
build/coatday plan samples/library-table/order.yaml
