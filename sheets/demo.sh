#!/bin/sh
# The demo: a small job on an invented site, computed in a real LibreOffice Calc by our functions.
# Installs what is missing, builds, computes, and writes the filled workbooks under build/demo/.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/5  Packages"
need_packages $build_packages
say "2/5  Building (some minutes the first time)"
build_project
mkdir -p build/demo
compute() {  # JOB WORKBOOK...
  job=$1
  shift
  status=0
  run_in_calc build/sheets/run_job build/extensions sheets/text "sheets/demo/$job.txt" build/sheets build/demo "$@" \
    > "build/demo/$job.log" || status=$?
  cat "build/demo/$job.log"
  jobs="$jobs $job"
  return $status
}
jobs=
say "3/5  A car park's detention bed, by the single workbooks and by the whole job"
compute car-park whole-job storage excavation takeoff
compute car-park-release release
say "4/5  A school's field in US customary units, retention and its reuse, the beds that fit a yard, infiltration, and a job that must fail its checks"
compute school-field-us whole-job-us
compute meadow-retention whole-job
compute meadow-reuse whole-job reuse
compute yard-options options
compute field-infiltration whole-job design
compute car-park-fails whole-job
say "5/5  Published worked examples through the same functions"
run_in_calc build/sheets/sheet_office build/extensions build/sheets/worked-examples.ots build/demo/worked-examples.ods \
  build/sheets/worked-examples.ots build/demo/worked-examples.pdf
say "What came out"
for job in $jobs; do
  awk -v job="$job" '
    function told() {
      if (book == "") return
      printf "%s, %s: %d checks pass, %d fail, %d wait for an answer\n", job, book, passed, fails, open
      for (i = 1; i <= fails; ++i) print "    " failed[i]
      passed = fails = open = 0
    }
    /^[a-z-]+: filling in/ { told(); book = substr($1, 1, length($1) - 1) }
    /^  PASS / { ++passed }
    /^  FAIL / { failed[++fails] = substr($0, 15) }
    /^  open / { ++open }
    END { told() }' "build/demo/$job.log"
done
(cd build/demo && cmake -E tar xf worked-examples.ods content.xml && grep -o '[0-9][0-9]* of [0-9]* rows agree' content.xml | head -1 |
  sed 's/^/worked examples: /'; rm -f content.xml)
echo
echo "Done. Open build/demo/*/*.ods in Calc with the extension build/undercroft.oxt installed, or read build/demo/*/*.pdf."
