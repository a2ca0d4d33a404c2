#!/bin/sh
# A release, under build/release/: undercroft-VERSION.oxt, the reference, and their checksums. The same sources on the same system
# are twice the same bytes, in whatever folder. What is built on Debian 12 runs on later systems; not the other way round.
set -eu
cd "$(dirname "$0")/.."
. tests/setup.sh

say "1/3  Packages"
need_packages $build_packages
say "2/3  Building"
build_project
say "3/3  Release"
version=$(sed -n 's/^project(undercroft VERSION \([0-9.]*\).*/\1/p' CMakeLists.txt)
rm -rf build/release
mkdir build/release
cp build/undercroft.oxt "build/release/undercroft-$version.oxt"
cp build/extensions/undercroft/functions.html "build/release/undercroft-$version-functions.html"
(cd build/release && sha256sum ./*.oxt ./*.html > SHA256SUMS && cat SHA256SUMS)
library=build/extensions/undercroft/libundercroft.so
newest() { objdump -T "$library" | sed -n "s/.*($1_\([0-9.]*\)).*/\1/p" | sort -V | tail -1; }
echo "It needs glibc $(newest GLIBC) and libstdc++ with GLIBCXX_$(newest GLIBCXX), or later ones."
