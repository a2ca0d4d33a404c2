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
failed=0
for program in $programs; do
  build/sanitize/tests/$program "~[workbooks]" > build/sanitize/$program.log 2>&1 &
  eval "pid_$program=$!"
done
for program in $programs; do
  eval "wait \$pid_$program" || failed=1
  echo "$program: $(tail -n 2 build/sanitize/$program.log | tr -d '\n')"
done
[ $failed = 0 ] || { grep -hE -A20 'ERROR: |runtime error|FAILED:' build/sanitize/*.log | head -80 >&2; exit 1; }
