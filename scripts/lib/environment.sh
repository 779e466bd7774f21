# Shared by scripts/test, scripts/demo and scripts/bench: finds the tools of the machine and keeps
# one Python environment in .venv. Sourced, with `set -euo pipefail` in force.
#
# What is done once leaves a stamp in .venv/stamps with the hash of what it was done from, so that a
# second run goes straight on.

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"
venv="$root/.venv"
cd "$root"
unset PYTHONPATH PYTHONHOME
export PIP_DISABLE_PIP_VERSION_CHECK=1

heading() {
  printf '\n=== %s (after %d s)\n' "$*" "$SECONDS"
}

fail() {
  printf 'error: %s\n' "$*" >&2
  exit 1
}

# A Python of version 3.11 or later that can make environments and build extension modules.
find_python() {
  local candidate
  for candidate in python3.13 python3.12 python3.11 python3; do
    if "$candidate" - >/dev/null 2>&1 <<'PYTHON'; then
import ensurepip, pathlib, sys, sysconfig, venv
header = pathlib.Path(sysconfig.get_path("include"), "Python.h")
sys.exit(sys.version_info < (3, 11) or not header.exists())
PYTHON
      command -v "$candidate"
      return
    fi
  done
  fail "no Python 3.11 or later with venv and its headers was found." \
    "Install one (Debian, Ubuntu: apt-get install python3 python3-venv python3-dev)."
}

require_compiler() {
  local candidate
  for candidate in "${CXX:-}" c++ g++ clang++; do
    if [ -n "$candidate" ] && command -v "$candidate" >/dev/null; then
      return
    fi
  done
  fail "no C++ compiler was found. Install GCC 12 or Clang 16 or later" \
    "(Debian, Ubuntu: apt-get install g++), or name one in the variable CXX."
}

# Hash of files and of everything in folders, without what tools leave there.
fingerprint() {
  find "$@" -type f ! -path '*/__pycache__/*' ! -name '*.so' -print0 | LC_ALL=C sort -z |
    xargs -0 sha256sum | sha256sum | cut -d ' ' -f 1
}

# done_before NAME HASH: true if NAME was done from just this.
done_before() {
  [ "$(cat "$venv/stamps/$1" 2>/dev/null)" = "$2" ]
}

remember() {
  mkdir -p "$venv/stamps"
  printf '%s\n' "$2" >"$venv/stamps/$1"
}

make_environment() {
  if [ ! -x "$venv/bin/python" ]; then
    local python
    python="$(find_python)"
    echo "making .venv with $("$python" --version)"
    "$python" -m venv "$venv"
  fi
  export VIRTUAL_ENV="$venv" PATH="$venv/bin:$PATH"
}

# install_requirements GROUP...: groups as scripts/requirements.py knows them.
install_requirements() {
  local name="requirements" hash
  name="requirements-$(tr ' ' '-' <<<"$*")"
  hash="$(fingerprint pyproject.toml)"
  if ! done_before "$name" "$hash"; then
    echo "installing into .venv: requirements for $*"
    python scripts/requirements.py "$@" >"$venv/$name.txt"
    python -m pip install --quiet --requirement "$venv/$name.txt"
    remember "$name" "$hash"
  fi
}

# Builds the package from this clone and installs it into .venv, if its sources have changed.
# Arguments go to pip; without any it builds in build/wheel. The requirements `build` and `run` are
# there already.
install_package() {
  local hash
  hash="$(fingerprint pyproject.toml CMakeLists.txt LICENSE README.md cpp python) $*"
  if ! done_before package "$hash"; then
    echo "building the package and installing it into .venv"
    rm -f "$venv/stamps/package"
    python -m pip install --quiet --no-deps --no-build-isolation --force-reinstall \
      "${@:---config-settings=build-dir=build/wheel}" .
    remember package "$hash"
  fi
}

# Debian packages of the C++ test tools. Without the right to install them CMake fetches the tools.
install_system_packages() {
  local package missing=()
  if ! command -v dpkg-query >/dev/null; then
    echo "not a Debian system: CMake looks for $* and fetches what is missing"
    return
  fi
  for package in "$@"; do
    if ! dpkg-query --show --showformat='${Status}' "$package" 2>/dev/null |
      grep -q 'ok installed'; then
      missing+=("$package")
    fi
  done
  if [ "${#missing[@]}" -eq 0 ]; then
    return
  fi
  if [ "$(id -u)" -eq 0 ] && command -v apt-get >/dev/null; then
    echo "installing system packages: ${missing[*]}"
    apt-get update -qq
    DEBIAN_FRONTEND=noninteractive apt-get install -qq --yes "${missing[@]}" >/dev/null
  else
    echo "not installed, CMake fetches instead: ${missing[*]}"
  fi
}
