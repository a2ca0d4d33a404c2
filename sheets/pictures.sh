#!/bin/sh
# Makes the pictures of the guide anew, from the real program on a screen of its own: sh sheets/pictures.sh
# To be run after sheets/demo.sh.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

need_packages xvfb imagemagick xdotool
screen=:97
setpriv --pdeathsig KILL Xvfb $screen -screen 0 1080x700x24 > /dev/null 2>&1 &
display=$!
trap 'kill "$display" 2> /dev/null || true' EXIT
sleep 1
mkdir -p sheets/pictures
run_in_calc env DISPLAY=$screen SAL_USE_VCLPLUGIN=gen build/sheets/take_pictures build/extensions \
  build/demo/car-park/whole-job.ods sheets/pictures \
  dashboard="Job!A15@90" inputs="Site!G10@90" section="Job!A131@90" storm="Flow!A171@90" checks="Ground!A36@90" audit="Audit!A1@80" menu=menu
