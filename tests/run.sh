#!/bin/sh
# All tests, from a bare Debian machine: installs what is missing, builds with warnings as errors, runs CTest,
# then the tests again under the sanitizers and the fuzzer: 13 minutes on two cores the first time.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/5  Packages"
need_packages $build_packages $test_packages $sanitizer_packages
say "2/5  Building, warnings are errors"
build_project -DUNDERCROFT_WERROR=ON
say "3/5  Tests"
(cd build && ctest --no-tests=error --output-on-failure -j "$(nproc)")
say "4/5  The tests that need no office, under the sanitizers"
sh tests/sanitize.sh
say "5/5  Fuzzing, 30 seconds a reader"
sh tests/fuzz.sh 30
