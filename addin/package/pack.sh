#!/bin/sh
# Packs a folder into a package, its files in the order of their names, without times, owners or the builder's rights: twice the same
# folder is twice the same bytes.
#   pack.sh FOLDER PACKAGE
set -eu
folder=$1 package=$2
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
cp -R "$folder" "$made/package"
chmod -R u=rwX,go=rX "$made/package"
find "$made/package" -exec touch -d '1980-01-01 00:00:00 UTC' {} +
(cd "$made/package" && find . -type f | sed 's|^\./||' | LC_ALL=C sort | TZ=UTC zip -X -q "$made/made.zip" -@)
mv "$made/made.zip" "$package"
