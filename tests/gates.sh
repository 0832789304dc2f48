#!/usr/bin/env bash
# What needs no build: the layout of the sources, the messages of new commits, and clang-tidy over what changed.
set -uo pipefail
cd "$(dirname "$0")/.."
. samples/packages.sh
install_packages "${build_packages[@]}" "${gate_packages[@]}" || exit 1
failed=0

# New is what came within five hours of the last commit: what came before has been looked at with an earlier one.
base=$(git rev-list -1 --before="$(($(git log -1 --format=%ct) - 18000))" HEAD)
[ -n "$base" ] || base=$(git rev-list --max-parents=0 HEAD | tail -1)

echo "Gate: layout"
git ls-files -z '*.cpp' '*.h' | xargs -0 clang-format-14 --dry-run -Werror || failed=1

echo "Gate: messages of commits since ${base:0:7}"
while read -r commit subject; do
  if [ ${#subject} -gt 60 ] || ! [[ $subject =~ ^[a-z_/]+(,\ [a-z_/]+)*:\ [a-z].*[^.]$ ]]; then
    echo "${commit:0:7}: \"$subject\"; expected \"room: verb object\", at most 60 characters, no full stop"
    failed=1
  fi
done < <(git log --no-merges --format='%H %s' "$base"..HEAD)

echo "Gate: clang-tidy over what changed"
changed=$(git diff --name-only --diff-filter=d "$base" HEAD -- 'src/*.cpp' 'src/*.h' | sed 's/\.h$/.cpp/' | sort -u)
sources=()
for file in $changed; do [ -f "$file" ] && sources+=("$file"); done
if [ ${#sources[@]} -gt 0 ]; then
  mkdir -p build
  cmake --preset tidy >build/tidy.log 2>&1 || { cat build/tidy.log; exit 1; }
  printf '%s\0' "${sources[@]}" | xargs -0 -n 4 -P "$(nproc)" clang-tidy-14 --quiet -p build/tidy 2>/dev/null || failed=1
fi

exit "$failed"
