#!/bin/sh
# run.sh COMPILER SOURCE_FOLDER: every case fails as the mistake it is, and passes without it.
set -eu
compiler=$1
folder=$2
cases=$(grep -cE '^#(if|elif) CASE == [0-9]+' "$folder/tests/compile_fail/cases.cpp")
[ "$cases" -gt 0 ]
n=1
while [ "$n" -le "$cases" ]; do
  compile() { "$compiler" -std=c++20 -fsyntax-only -I"$folder" -DCASE="$n" "$@" "$folder/tests/compile_fail/cases.cpp" 2> /dev/null; }
  compile -DGOOD || { echo "case $n: the good twin does not compile" >&2; exit 1; }
  if compile; then echo "case $n: the mistake compiles" >&2; exit 1; fi
  n=$((n + 1))
done
echo "$cases cases"
