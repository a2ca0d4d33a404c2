#!/bin/sh
# Formatting and static checks of all sources: clang-format against .clang-format, clang-tidy against .clang-tidy.
#   sh tests/lint.sh          all files
#   sh tests/lint.sh FILE...  these files
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh
need_packages $build_packages $test_packages clang-format clang-tidy
# Every file by itself: what a header forgets to include must not come from a precompiled one.
cmake -B build/lint -DCMAKE_UNITY_BUILD=OFF -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON > /dev/null
cmake --build build/lint -j "$(nproc)" --target made_headers > /dev/null
# Not what no compile command of the build stands for: mistakes made on purpose, the fuzzer's, a benchmark's.
if [ $# -eq 0 ]; then
  set -- $(git ls-files '*.cpp' ':!tests/compile_fail' ':!tests/fuzz/main.cpp' ':!tests/bench/extension')
fi
clang-format --dry-run --Werror $(git ls-files '*.hpp') "$@"
status=0
printf '%s\n' "$@" | xargs -P "$(nproc)" -n 4 clang-tidy -p build/lint --quiet 2> /dev/null || status=1
[ $status = 0 ] && echo "lint: clean"
exit $status
