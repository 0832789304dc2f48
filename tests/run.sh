#!/usr/bin/env bash
# Sets up, builds and runs all tests: plain, then under AddressSanitizer and UndefinedBehaviorSanitizer.
set -uo pipefail
cd "$(dirname "$0")/.."
. samples/packages.sh

# Libraries of the npm registry that results are compared with: exact versions, checked by their hashes.
install_peers() {
  mkdir -p build/peers
  [ -d build/peers/node_modules ] && cmp -s tests/peers/package-lock.json build/peers/installed-lock.json && return
  echo "Packages: installing the libraries to compare with ..."
  cp tests/peers/package.json tests/peers/package-lock.json build/peers/
  (cd build/peers && npm ci --no-audit --no-fund --loglevel=error) || return 1
  cp tests/peers/package-lock.json build/peers/installed-lock.json
}

install_packages "${build_packages[@]}" "${test_packages[@]}" || exit 1
install_peers || exit 1
passed=0
failed=0
for preset in release sanitizers; do
  log="build/$preset.log"
  mkdir -p build
  echo "Building: $preset ..."
  if ! { cmake --preset "$preset" -DCOATDAY_TESTS=ON && cmake --build --preset "$preset"; } >"$log" 2>&1; then
    grep -E "error|FAILED|warning" "$log" | head -40 || true
    echo "The $preset build failed; all of it stands in $log."
    failed=$((failed + 1))
    continue
  fi
  echo "Testing: $preset ..."
  ctest --preset "$preset" -j "$(nproc)" >"$log" 2>&1
  grep -E "\*\*\*|^The following tests FAILED|^[[:space:]]+[0-9]+ - " "$log" || true
  tests=$(sed -n 's/.*% tests passed, \([0-9]*\) tests failed out of \([0-9]*\)/\1 \2/p' "$log")
  if [ -z "$tests" ]; then
    cat "$log"
    failed=$((failed + 1))
    continue
  fi
  passed=$((passed + ${tests#* } - ${tests% *}))
  failed=$((failed + ${tests% *}))
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
