#!/bin/sh
# Benchmarks: measures everything that tests/BENCH.md lists and writes that page anew. Takes some minutes, more with
#   sh tests/bench.sh --build     which also times a clean build of a copy and a rebuild
# Figures are ratios of runs that take turns, so that a busy machine slows both sides; the rest is what was here.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/5  Packages and build"
need_packages $build_packages $test_packages valgrind python3-uno python3-pint libreoffice-script-provider-python
build_project
cmake --build build -j "$(nproc)" --target bench > /dev/null
bin=build/tests/bench
extensions=$bin/extensions
results=$bin/results.tsv
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
[ "${1:-}" = --build ] || grep '^build\.' "$results" > "$scratch/build" 2> /dev/null || true

say "2/5  The core, in instructions, and in time"
$bin/core_bench
valgrind -q --tool=callgrind --collect-atstart=no --callgrind-out-file="$scratch/profile" $bin/core_bench 2> /dev/null
awk '/^desc: Trigger/ { name = $0; sub(/^desc: Trigger: (Client Request: )?/, "", name) }
     /^totals:/ && name ~ /^route / { steps = substr(name, 7); each = $2 / steps; size = int(log(steps) / log(10) + 0.5)
                                      printf "route.1e%d.instructions\t%.1f\n", size, each }' \
  "$scratch"/profile.* | sort > "$scratch/routing"
awk '/^desc: Trigger/ { name = $0; sub(/^desc: Trigger: (Client Request: )?/, "", name) }
     /^totals:/ { count[name] = $2 }
     END { floor = count["nothing"]; calls = 1000
           for (name in count) if (name ~ /^typed /) {
             what = substr(name, 7); typed = count[name] - floor; plain = count["plain " what] - floor
             printf "core.%s\t%.0f\t%.0f\t%.3f\n", what, typed / calls, plain / calls, typed / plain } }' \
  "$scratch"/profile.* | sort > "$scratch/core"
{
  $bin/route_bench
  $bin/options_bench
  $bin/water_bench
  $bin/unit_text_bench
  cat "$scratch/routing"
} > "$scratch/figures"

say "3/5  In a running Calc"
run_in_calc $bin/calc_bench functions $extensions >> "$scratch/figures"
[ -e build/demo/car-park/whole-job.ods ] || run_in_calc build/sheets/run_job build/extensions sheets/text \
  sheets/demo/car-park.txt build/sheets build/demo whole-job > /dev/null
run_in_calc $bin/calc_bench job $extensions build/demo/car-park/whole-job.ods >> "$scratch/figures"
run_in_calc $bin/calc_bench takeoff $extensions "$scratch" >> "$scratch/figures"
mkdir "$scratch/none"
run_in_calc $bin/start_bench build/extensions "$scratch/none" >> "$scratch/figures"

say "4/5  Forty workbooks, one and two at a time"
mkdir "$scratch/books"
i=0
while [ $i -lt 10 ]; do
  for name in storage excavation storage-us excavation-us; do cp build/sheets/$name.ots "$scratch/books/$name-$i.ots"; done
  i=$((i + 1))
done
time_batch() {  # JOBS OUT
  start=$(date +%s.%N)
  BATCH_JOBS=$1 sh sheets/batch.sh "$scratch/books" "$2" > /dev/null || true
  echo "$start $(date +%s.%N)" | awk '{ printf "%.1f", $2 - $1 }'
}
one=$(time_batch 1 "$scratch/one")
two=$(time_batch 2 "$scratch/two")
again=$(time_batch 2 "$scratch/two")
printf 'batch.one.s\t%s\nbatch.two.s\t%s\nbatch.again.s\t%s\n' "$one" "$two" "$again" >> "$scratch/figures"

say "5/5  Build and page"
if [ "${1:-}" = --build ]; then
  mkdir "$scratch/copy"
  git ls-files -z | xargs -0 cp --parents -t "$scratch/copy"
  seconds_of() { start=$(date +%s); "$@" > /dev/null 2>&1; echo $(($(date +%s) - start)); }
  clean() { (cd "$scratch/copy" && cmake -B build && cmake --build build -j 2); }
  touched() { (cd "$scratch/copy" && touch calc/water/outlet.cpp && cmake --build build -j 2); }
  printf 'build.clean.s\t%s\n' "$(seconds_of clean)" > "$scratch/build"
  printf 'build.touched.s\t%s\n' "$(seconds_of touched)" >> "$scratch/build"
fi
cat "$scratch/figures" "$scratch/build" > "$results"
sh tests/bench/page.sh "$results" "$scratch/core" > tests/BENCH.md
echo "Written: tests/BENCH.md"
