#!/bin/sh
# sheets/batch.sh on three workbooks, one of them damaged, in a folder with a space in its name: batch.sh WORKBOOKS
set -eu
workbooks=$1
root=$(cd "$(dirname "$0")/../.." && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
folder="$scratch/two jobs"
mkdir "$folder"
cp "$workbooks/storage.fods" "$folder/storage.fods"
cp "$workbooks/excavation.ots" "$folder/a dig.ots"
head -c 4000 "$workbooks/storage.ots" > "$folder/damaged.ods"

fail() { echo "$1" >&2; cat "$scratch/said" >&2; exit 1; }
run() { status=0; sh "$root/sheets/batch.sh" "$folder" > "$scratch/said" 2>&1 || status=$?; }

run
[ "$status" = 2 ] || fail "exit status $status where 2 is wanted"
grep -q '^FAILED *damaged.ods' "$scratch/said" || fail "the damaged workbook is not reported"
for made in storage.fods.checked.ods storage.fods.pdf storage.fods.txt "a dig.ots.checked.ods" "a dig.ots.pdf"; do
  [ -s "$folder/checked/$made" ] || fail "$made is not there"
done
[ ! -e "$folder/checked/damaged.ods.pdf" ] || fail "a damaged workbook was printed"

rm "$folder/damaged.ods"
run
[ "$status" -le 1 ] || fail "exit status $status of a run with nothing left to do"
[ "$(grep -c '^unchanged' "$scratch/said")" = 2 ] || fail "what did not change was done again"

printf '\n<!-- changed -->\n' >> "$folder/storage.fods"
run
[ "$(grep -c '^unchanged' "$scratch/said")" = 1 ] || fail "a changed workbook was passed over"
echo "batch: as wanted"
