#!/bin/sh
# All tests that need no office, under the address, leak and undefined-behaviour sanitizers. Built by clang, which is
# quicker at it, and so sees the sources with another compiler's eyes too.
#   sh tests/sanitize.sh
set -eu
cd "$(dirname "$0")/.."
made=build/sanitize

# One part of the tests: NAME PROGRAM FILTER
if [ "${1:-}" = --one ]; then
  log=$made/$2.log
  status=0
  "$made/tests/$3" "$4" > "$log" 2>&1 || status=$?
  echo "$2: $(tail -n 2 "$log" | tr -d '\n')"
  [ $status = 0 ] || grep -hE -A20 'ERROR: |runtime error|FAILED:' "$log" | head -60 >&2
  exit $status
fi

. tests/setup.sh
need_packages $build_packages $test_packages $sanitizer_packages
cmake -B $made -DCMAKE_CXX_COMPILER=clang++ -DUNDERCROFT_SANITIZE=ON > /dev/null
cmake --build $made -j "$(nproc)" --target units_test calc_test addin_test audit_test fuzz_replay_test > $made/build.log 2>&1 \
  || { tail -40 $made/build.log >&2; exit 1; }
export ASAN_OPTIONS=detect_leaks=1:strict_string_checks=1:detect_stack_use_after_return=1
export UNDERCROFT_CALLS=30000
export UBSAN_OPTIONS=print_stacktrace=1
# The longest first, side by side. What measures time measures nothing here.
xargs -P "$(nproc)" -L 1 sh tests/sanitize.sh --one << 'PARTS'
derivations addin_test "the derivation refuses*"
sweep addin_test "hostile values*"
calc calc_test "~[timing]"
audit audit_test "~[workbooks]~[timing]"
units units_test "~[timing]"
spoilt addin_test "a spoilt table*"
fuzz fuzz_replay_test "~[timing]"
addin addin_test "~[sweep]"
PARTS
