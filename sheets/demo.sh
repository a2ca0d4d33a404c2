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
compute() {  # JOB WORKBOOK...
  job=$1
  shift
  run_in_calc build/sheets/run_job build/extensions sheets/text "sheets/demo/$job.txt" build/sheets build/demo "$@"
}
say "3/5  A car park's detention bed, by the single workbooks and by the whole job"
compute car-park whole-job storage excavation takeoff
say "4/5  A school's field in US customary units, retention and its reuse, infiltration, and a job that must fail its checks"
compute school-field-us whole-job-us
compute meadow-retention whole-job
compute meadow-reuse whole-job reuse
compute field-infiltration whole-job
compute car-park-fails whole-job
say "5/5  Published worked examples through the same functions"
run_in_calc build/sheets/sheet_office build/extensions build/sheets/worked-examples.ots build/demo/worked-examples.ods \
  build/sheets/worked-examples.ots build/demo/worked-examples.pdf
echo
echo "Done. Open build/demo/*/*.ods in Calc with the extension build/undercroft.oxt installed, or read build/demo/*/*.pdf."
