#!/bin/sh
# All tests, from a bare Debian machine: installs what is missing, builds with warnings as errors, runs CTest.
# The sanitizers and the fuzzer are tests/harden.sh.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/3  Packages"
need_packages $build_packages $test_packages
say "2/3  Building, warnings are errors"
build_project -DUNDERCROFT_WERROR=ON
say "3/3  Tests"
(cd build && ctest --no-tests=error --output-on-failure -j "$(nproc)") && exit
status=$?
say "What failed, once more"
awk '
  function told() { if (lines && !passed) for (i = (lines > 60 ? lines - 60 : 0); i < lines; i++) print block[i] }
  /^[0-9]+\/[0-9]+ Testing: / { told(); lines = passed = 0; begun = 1 }
  /^Test Passed\.$/ { passed = 1 }
  begun { block[lines++] = $0 }
  END { told() }' build/Testing/Temporary/LastTest.log
exit "$status"
