#!/bin/sh
# The tests that need no office again, under the sanitizers, and the fuzzer, from a bare Debian machine.
#   sh tests/harden.sh
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/3  Packages"
need_packages $build_packages $test_packages $sanitizer_packages
say "2/3  The tests that need no office, under the sanitizers"
sh tests/sanitize.sh
say "3/3  Fuzzing, 30 seconds a reader"
sh tests/fuzz.sh 30
