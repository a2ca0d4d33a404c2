# Shared by the demo and the tests: packages and the build. Sourced from the project's folder.

# Of the two versions of Boost in Debian 12 the plain name is one from before its JSON.
boost=libboost-dev
if grep -qs '^VERSION_ID="12"' /etc/os-release; then boost=libboost1.81-dev; fi
build_packages="g++ cmake make libreoffice-calc libreoffice-dev $boost libpugixml-dev libcli11-dev libzip-dev zip fonts-liberation"
test_packages="catch2 units libudunits2-dev libgsl-dev unzip parallel locales"
sanitizer_packages="clang libclang-rt-dev"

say() { printf '\n== %s\n' "$1"; }

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"
  elif command -v sudo > /dev/null 2>&1; then sudo "$@"
  else echo "This needs root or sudo: $*" >&2; exit 1
  fi
}

# Installs those of the named Debian packages that are not there.
need_packages() {
  missing=
  for package in "$@"; do
    state=$(dpkg-query -W -f '${db:Status-Abbrev}' "$package" 2> /dev/null || true)
    case $state in ii*) ;; *) missing="$missing $package" ;; esac
  done
  if [ -z "$missing" ]; then echo "All there."; return; fi
  echo "Installing:$missing"
  as_root apt-get update -qq
  as_root apt-get install --assume-no --no-install-recommends $missing 2> /dev/null |
    sed -n 's/^Need to get \(.*\) of archives.*/  \1 to download/p; s/^After this operation, \(.*\) of .*/  \1 on the disk/p'
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing > build-packages.log 2>&1 \
    || { cat build-packages.log >&2; exit 1; }
  rm -f build-packages.log
}

# Configures with the options given, if it was not, and builds.
build_project() {
  cmake -B build "$@" > /dev/null
  cmake --build build -j "$(nproc)" | grep --line-buffered -E '^\[ *[0-9]*%\] (Built|Building|Linking|[A-Z][a-z]+.*Calc)' || true
  cmake --build build > /dev/null
}

# Builds what the commands of sheets/ run, where it is not there yet.
need_build() {
  [ -x build/sheets/audit_file ] && [ -e build/undercroft.oxt ] && return
  need_packages $build_packages
  build_project
}

# A tool of ours that starts the office, which wants a home folder it can write to. It ends with the script that runs it.
run_in_calc() { env HOME="${HOME:-/tmp}" setpriv --pdeathsig KILL "$@"; }
