# Sourced by samples/run.sh and tests/run.sh: installs the Debian packages that are missing, as root or with sudo.

install_packages() {
  local missing=() package
  for package in "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
  done
  if [ ${#missing[@]} -eq 0 ]; then
    echo "Packages: all there."
    return
  fi
  echo "Packages: installing ${missing[*]}"
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { echo "Run this as root, or install sudo: packages are missing." >&2; exit 1; }
    as_root=(sudo)
  fi
  "${as_root[@]}" apt-get update -qq
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

build_packages=(g++ cmake ninja-build libhowardhinnant-date-dev libfmt-dev libcli11-dev libyaml-cpp-dev libpugixml-dev nlohmann-json3-dev
                libexpected-dev libical-dev tzdata)
test_packages=(libgtest-dev libgmock-dev librapidcheck-dev libbenchmark-dev flatzinc python3 chromium poppler-utils fonts-liberation)
command -v npm >/dev/null || test_packages+=(nodejs npm)  # where node has come another way, it is kept
gate_packages=(git clang-14 clang-tidy-14 clang-format-14)
