#!/bin/sh
# The same sources are twice the same bytes: a template made anew, and the package packed anew.
#   same_bytes.sh BUILD_FOLDER PROJECT_FOLDER
set -eu
build=$1 project=$2
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
"$build/sheets/sheet_office" "$build/extensions" --last Planes "$build/sheets/excavation.fods" "$made/excavation.ots"
cmp "$build/sheets/excavation.ots" "$made/excavation.ots"
sh "$project/addin/package/pack.sh" "$build/extensions/undercroft" "$made/undercroft.oxt"
cmp "$build/undercroft.oxt" "$made/undercroft.oxt"
# Nor is anything in it of the folder that it was made in.
! grep -rlF -e "$build" -e "$project" "$build/extensions/undercroft" | grep .
