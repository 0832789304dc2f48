#!/usr/bin/env bash
# Plans random orders in every way, and mutates their files: tests/soak.sh MINUTES [SEED], or --help for more.
# It sets up and builds what it needs. A find is shrunk and written into build/soak/finds/; then the exit status is 1.
set -uo pipefail
cd "$(dirname "$0")/.."
. samples/packages.sh

install_packages "${build_packages[@]}" "${test_packages[@]}" || exit 2
mkdir -p build/soak
log=build/soak/build.log
echo "Building: release ..."
if ! { cmake --preset release -DCOATDAY_TESTS=ON && cmake --build --preset release --target coatday coatday_soaks; } >"$log" 2>&1; then
  grep -E "error|FAILED|warning" "$log" | head -40 || true
  echo "The build failed; all of it stands in $log."
  exit 2
fi
exec build/tests/soak/coatday_soaks "$@"
