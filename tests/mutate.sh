#!/bin/sh
# Breaks functions in one place at a time - a sign, a factor, a bound; outside of calc/ a condition, an early return or
# a word that is looked up too - and lists the breaks that no test without an office notices. Works on copies in
# build/mutate/, with a build of its own; the sources are not touched.
#   sh tests/mutate.sh [EVERY [FILE...]]     every EVERYth break (1: all) of the files (all of calc/); EVERY:FIRST begins
#                                            with the FIRSTth, for another sample
set -eu
cd "$(dirname "$0")/.."
scratch=build/mutate
tree=build/mutate-build

# What looks after a file: TESTS TAGS, the test programs and which of their tests.
tests_of() {
  case $1 in
    sheets/builder/*) echo "builder_test *" ;;
    addin/audit/*) echo "audit_test ~[workbooks]~[timing]" ;;
    addin/formula/*) echo "addin_test,audit_test ~[sweep]~[differential]~[workbooks]~[timing]" ;;
    addin/catalogue/*) echo "addin_test,audit_test ~[sweep]~[differential]~[workbooks]~[timing]" ;;
    units/*) echo "units_test,addin_test ~[sweep]~[differential]~[timing]" ;;
    *) echo "calc_test,addin_test ~[sweep]~[differential]" ;;
  esac
}
programs_of() { tests_of "$1" | cut -d ' ' -f 1 | tr ',' ' '; }
tags_of() { tests_of "$1" | cut -d ' ' -f 2-; }
name_of() { printf '%s' "${1%.cpp}" | tr / -; }

# One break: FILE NUMBER. Its mutant is line NUMBER of the list of the file.
if [ "${1:-}" = --one ]; then
  name=$(name_of "$2")
  made=$scratch/$name-$3
  result=$scratch/results/$name-$3
  mutant=$(sed -n "$3p" "$scratch/$name.mutants")
  place=$(printf '%s' "$mutant" | cut -f 1)
  mkdir -p "$made"
  MUTANT=$(printf '%s' "$mutant" | cut -f 3-) awk -v place="$place" \
    'NR == place { print ENVIRON["MUTANT"]; next } { print }' "$2" > "$made/$name.cpp"
  say() { printf '%s\t%s:%s\n' "$1" "$2" "$mutant" > "$result"; rm -rf "$made"; exit 0; }
  g++ -std=c++20 -I. -DUNDERCROFT_VERSION='"0.0.0"' -O0 -w -c "$made/$name.cpp" -o "$made/mutant.o" 2> /dev/null || say "no build" "$2"
  for program in $(programs_of "$2"); do
    # The mutant stands before the library, so that the library's own object is not taken.
    link=$(sed "s| -o $program | $PWD/$made/mutant.o -o $PWD/$made/$program |" $tree/tests/CMakeFiles/$program.dir/link.txt)
    (cd $tree/tests && eval "$link") > /dev/null 2>&1 || say "no link" "$2"
    status=0
    timeout 120 "$made/$program" --abort "$(tags_of "$2")" > /dev/null 2>&1 || status=$?
    [ $status != 124 ] || say "endless" "$2"
    [ $status = 0 ] || say "noticed" "$2"
    # What no short test of the audit noticed meets the filled jobs and the mistakes planted in them.
    case $2 in addin/audit/*) ;; *) continue ;; esac
    timeout 900 "$made/$program" --abort "[workbooks]" > /dev/null 2>&1 || status=$?
    [ $status = 0 ] || say "noticed" "$2"
  done
  say "SURVIVED" "$2"
fi

every=${1:-1}
[ $# -gt 0 ] && shift
[ $# -gt 0 ] || set -- $(find calc -name "*.cpp" | sort)
programs=$(for file in "$@"; do programs_of "$file"; done | tr ' ' '\n' | sort -u)
cmake -B $tree -G "Unix Makefiles" -DCMAKE_UNITY_BUILD=OFF > /dev/null
cmake --build $tree -j "$(nproc)" --target $programs > /dev/null
for file in "$@"; do
  for program in $(programs_of "$file"); do echo "$program $(tags_of "$file")"; done
done | sort -u | while read -r program tags; do
  $tree/tests/$program "$tags" > /dev/null || { echo "the tests of $program do not pass unbroken" >&2; exit 1; }
done
# The workbooks that the audit's longer tests read: made by the usual build and its jobs (ctest -R "office: the job").
case "$*" in
  *addin/audit/*)
    ls build/tests/jobs/*/whole-job.ods > /dev/null || { echo "no filled jobs: ctest -R 'office: the job'" >&2; exit 1; }
    ln -sfn "$PWD/build/tests/jobs" $tree/tests/jobs
    mkdir -p $tree/sheets && cp -r build/sheets/*.ots $tree/sheets/
    $tree/tests/audit_test "[workbooks]" > /dev/null || { echo "the tests of filled jobs do not pass unbroken" >&2; exit 1; }
    ;;
esac
rm -rf $scratch
mkdir -p $scratch/results
for file in "$@"; do
  name=$(name_of "$file")
  case $file in calc/*) kind=trade ;; *) kind=program ;; esac
  awk -v kind=$kind -f tests/mutants.awk "$file" > "$scratch/$name.mutants"
  awk -v file="$file" '{ print file, NR }' "$scratch/$name.mutants"
done | awk -v every="${every%:*}" -v first="${every#*:}" '(NR - first) % every == 0' > $scratch/list
xargs -P "$(nproc)" -L 1 sh tests/mutate.sh --one < $scratch/list
cat $scratch/results/* | sort -t ':' -k 1,1 -k 2,2n > $scratch/all
grep '^SURVIVED' $scratch/all || true
awk -F '\t' '{ ++n[$1] } END {
  tried = n["noticed"] + n["endless"] + n["SURVIVED"]
  printf "%d breaks: %d no longer compile, %d ran, %d noticed, %d never ended, %d survived: %.1f %%\n",
         NR, n["no build"], tried, n["noticed"], n["endless"], n["SURVIVED"],
         tried ? 100 * (tried - n["SURVIVED"]) / tried : 100
  if (n["no link"]) print n["no link"] " could not be linked"
}' $scratch/all
