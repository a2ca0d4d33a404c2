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


tiny() {  # VALUE FILE: a workbook of one formula
  sed "s/%VALUE%/$1/" > "$2" << 'END'
<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="S"><table:table-row><table:table-cell office:value-type="float" office:value="%VALUE%"/><table:table-cell table:formula="of:=[.A1]+[.A1]" office:value-type="float"/></table:table-row></table:table></office:spreadsheet></office:body></office:document>
END
}
has() { grep -q "$1" "$scratch/said" || fail "not said: $1"; }
made="$folder/checked"

run
[ "$status" = 2 ] || fail "exit status $status where 2 is wanted"
has '^FAILED *damaged.ods: .'
for made_file in storage.fods.checked.ods storage.fods.pdf storage.fods.txt "a dig.ots.checked.ods" "a dig.ots.pdf"; do
  [ -s "$made/$made_file" ] || fail "$made_file is not there"
done
[ ! -e "$made/damaged.ods.pdf" ] || fail "a damaged workbook was printed"

rm "$folder/damaged.ods"
tiny 3 "$folder/tiny.FODS"
echo text > "$folder/notes.txt"
run
[ "$status" -le 1 ] || fail "exit status $status of a run with nothing left to do"
[ "$(grep -c '^unchanged' "$scratch/said")" = 2 ] || fail "what did not change was done again"
has '^passed over *notes.txt'
[ -s "$made/tiny.FODS.pdf" ] || fail "an ending in capitals was passed over"

# What is gone, cut or changed is done again.
rm "$made/storage.fods.pdf"
head -c 900 "$made/a dig.ots.pdf" > "$made/x" && mv "$made/x" "$made/a dig.ots.pdf"
tiny 4 "$folder/tiny.FODS"
run
! grep -q '^unchanged' "$scratch/said" || fail "outputs that were deleted or cut are taken for done"
[ -s "$made/storage.fods.pdf" ] || fail "a deleted output was not made again"
tail -c 20 "$made/a dig.ots.pdf" | grep -q EOF || fail "a cut output was not made again"

# Beside a failure no older output stays.
echo broken > "$folder/tiny.FODS"
run
[ "$status" = 2 ] || fail "exit status $status after a workbook broke"
has '^FAILED *tiny.FODS: .'
[ ! -e "$made/tiny.FODS.pdf" ] && [ ! -e "$made/tiny.FODS.checked.ods" ] || fail "older outputs stay beside a failure"

status=0; sh "$root/sheets/batch.sh" "$folder" "$folder" > "$scratch/said" 2>&1 || status=$?
[ "$status" = 2 ] || fail "exit status $status where the outputs go among the workbooks"
mkdir "$scratch/empty"
status=0; sh "$root/sheets/batch.sh" "$scratch/empty" > "$scratch/said" 2>&1 || status=$?
[ "$status" = 2 ] || fail "exit status $status without any workbook"
has 'no workbook'
echo "batch: as wanted"
