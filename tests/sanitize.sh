#!/bin/sh
# All tests that need no office, under the address, leak and undefined-behaviour sanitizers.
#   sh tests/sanitize.sh
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh
need_packages $build_packages $test_packages
programs="units_test calc_test addin_test audit_test fuzz_replay_test"
cmake -B build/sanitize -DUNDERCROFT_SANITIZE=ON > /dev/null
cmake --build build/sanitize -j "$(nproc)" --target $programs > build/sanitize/build.log 2>&1 || { tail -40 build/sanitize/build.log >&2; exit 1; }
export ASAN_OPTIONS=detect_leaks=1:strict_string_checks=1:detect_stack_use_after_return=1
export UBSAN_OPTIONS=print_stacktrace=1
# The sweep with hostile values takes as long as all else, so it runs beside it.
start() {
  log=build/sanitize/$1.log
  shift
  "$@" > "$log" 2>&1 || { echo "$log" >> build/sanitize/failed; }
  echo "$(basename "$log" .log): $(tail -n 2 "$log" | tr -d '\n')"
}
rm -f build/sanitize/failed
start sweep build/sanitize/tests/addin_test "hostile values*" &
start units build/sanitize/tests/units_test
start calc build/sanitize/tests/calc_test
start audit build/sanitize/tests/audit_test "~[workbooks]"
start fuzz build/sanitize/tests/fuzz_replay_test
start addin build/sanitize/tests/addin_test "~hostile values*"
wait
[ -e build/sanitize/failed ] || exit 0
grep -hE -A20 'ERROR: |runtime error|FAILED:' $(cat build/sanitize/failed) | head -80 >&2
exit 1
