#!/bin/sh
# All tests, from a bare Debian machine: installs what is missing, builds with warnings as errors, runs CTest.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/4  Packages"
need_packages $build_packages $test_packages clang
say "2/4  Building, warnings are errors"
build_project -DUNDERCROFT_WERROR=ON
say "3/4  Tests"
(cd build && ctest --no-tests=error --output-on-failure -j "$(nproc)")
say "4/4  Sanitizers, and half a minute of fuzzing each reader"
sh tests/sanitize.sh
sh tests/fuzz.sh 30
