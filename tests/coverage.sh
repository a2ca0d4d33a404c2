#!/bin/sh
# Which lines of the product the tests run: a share for each room, and for all. Built unoptimized, by itself.
#   sh tests/coverage.sh             the tests that need no office
#   sh tests/coverage.sh --office    those in a real Calc too, and with them the rooms that include the office's headers
# Each line that no test runs stands in build/coverage/lines.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh
made=build/coverage
programs="units_test calc_test addin_test audit_test builder_test fuzz_replay_test"
office=
for word in "$@"; do
  case $word in
    --office) office=yes ;;
    *) echo "coverage.sh knows --office, not $word" >&2; exit 2 ;;
  esac
done

need_packages $build_packages $test_packages gcovr
cmake -B $made -DCMAKE_BUILD_TYPE=Coverage -DCMAKE_CXX_FLAGS_COVERAGE="-O0 -g1 --coverage" -DCMAKE_UNITY_BUILD=OFF > /dev/null
cmake --build $made -j "$(nproc)" --target $programs ${office:+office_test run_job build_sheets templates} > $made/build.log 2>&1 \
  || { tail -40 $made/build.log >&2; exit 1; }
find $made -name '*.gcda' -delete

# What measures time measures nothing here. The sweeps run the same lines again and again.
status=0
for program in $programs; do
  $made/tests/$program "~[timing]~[workbooks]~[sweep]~[differential]" > $made/$program.log 2>&1 || { tail -20 $made/$program.log >&2; status=1; }
done
if [ -n "$office" ]; then
  ctest --test-dir $made -R 'office: in a real|office: \[|office: the job|audit: filled' > $made/office.log 2>&1 \
    || { tail -20 $made/office.log >&2; status=1; }
fi
[ $status = 0 ] || echo "some tests did not pass; the lines that they ran are counted all the same" >&2

gcovr -j "$(nproc)" --root . --object-directory $made --filter 'units/' --filter 'calc/' --filter 'addin/' --filter 'sheets/' \
  --gcov-ignore-parse-errors --csv $made/lines.csv --txt $made/lines > $made/gcovr.log 2>&1 || { tail -5 $made/gcovr.log >&2; exit 1; }
awk -F , 'NR > 1 {
    room = $1
    sub("/[^/]*$", "", room)
    total[room] += $2; run[room] += $3; all += $2; all_run += $3
  }
  END {
    for (room in total) printf "%-24s %6d lines %6.1f %%\n", room, total[room], 100 * run[room] / total[room] | "sort"
    close("sort")
    printf "%-24s %6d lines %6.1f %%\n", "all", all, 100 * all_run / all
  }' $made/lines.csv
exit $status
