#!/bin/sh
# Fuzzes every reader of text with libFuzzer under the sanitizers, from the texts that there are.
#   sh tests/fuzz.sh [SECONDS [TARGET...]]     30 seconds each, all targets; FUZZ_JOBS=5 for as many side by side
# What it finds is kept in build/fuzz/found/; after the mistake is put right it goes into tests/data/fuzz/.
set -eu
cd "$(dirname "$0")/.."

if [ "${1:-}" = --one ]; then
  target=$3
  mkdir -p "build/fuzz/corpus/$target"
  dictionary=
  [ -f "tests/fuzz/$target.dict" ] && dictionary="-dict=tests/fuzz/$target.dict"
  log=build/fuzz/$target.log
  status=0
  "build/fuzz/tests/fuzz/fuzz_$target" -max_total_time="$2" -timeout=5 -rss_limit_mb=2048 -print_funcs=0 \
    -max_len=2000 -print_final_stats=1 $dictionary -artifact_prefix="build/fuzz/found/$target-" \
    "build/fuzz/corpus/$target" "build/fuzz/seeds/$target" "tests/data/fuzz/$target" > "$log" 2>&1 || status=$?
  echo "$target: $(sed -n 's/^stat::number_of_executed_units: *//p' "$log") inputs in $2 s"
  [ $status = 0 ] && exit 0
  tail -40 "$log"
  echo "$target: see build/fuzz/found/" >&2
  exit 1
fi

. tests/setup.sh
need_packages $build_packages $test_packages $sanitizer_packages
seconds=${1:-30}
[ $# -gt 0 ] && shift
[ $# -gt 0 ] || set -- units tables sheet_text formulas stored_values
cmake -B build/fuzz -DCMAKE_CXX_COMPILER=clang++ -DUNDERCROFT_FUZZ=ON -DUNDERCROFT_SANITIZE=ON -DCMAKE_UNITY_BUILD=OFF > /dev/null
cmake --build build/fuzz -j "$(nproc)" --target $(printf 'fuzz_%s ' "$@") > build/fuzz/build.log 2>&1 ||
  { tail -n 40 build/fuzz/build.log >&2; exit 1; }
sh tests/fuzz/seeds.sh build/fuzz/seeds
mkdir -p build/fuzz/found
printf '%s\n' "$@" | xargs -P "${FUZZ_JOBS:-$(nproc)}" -n 1 sh tests/fuzz.sh --one "$seconds"
