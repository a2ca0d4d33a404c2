#!/bin/sh
# The demo: a small job on an invented site, computed in a real LibreOffice Calc by our functions.
# Installs what is missing, builds, computes, and writes the filled workbooks under build/demo/.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/4  Packages"
need_packages $build_packages
say "2/4  Building (some minutes the first time)"
build_project
say "3/4  Computing the demo job in Calc"
run_in_calc build/sheets/run_job build/extensions sheets/text sheets/demo/car-park.txt build/sheets build/demo \
  storage excavation takeoff
say "4/4  Published worked examples through the same functions"
run_in_calc build/sheets/sheet_office build/extensions build/sheets/worked-examples.ots build/demo/worked-examples.ods \
  build/sheets/worked-examples.ots build/demo/worked-examples.pdf
echo
echo "Done. Open build/demo/*.ods in Calc with the extension build/undercroft.oxt installed, or read build/demo/*.pdf."
