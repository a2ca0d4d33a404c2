#!/bin/sh
# Seeds for the fuzzer from the project's own texts: sh tests/fuzz/seeds.sh FOLDER
set -eu
folder=$1
for target in units tables sheet_text formulas stored_values; do
  rm -rf "${folder:?}/$target"
  mkdir -p "$folder/$target"
done
# One line of the input a seed.
one_a_line() {
  awk -v folder="$1" '{ file = folder "/" NR; printf "%s", $0 > file; close(file) }'
}
# Spellings of the unit table, and the quantities of the worked examples.
{
  sed -n 's/^ *{"\([^"]*\)", "\([^"]*\)", {.*/\1|\2/p' units/unit_table.cpp | tr '|' '\n' | sed '/^$/d'
  grep -o '"[^"]*"' sheets/worked-examples.txt | tr -d '"'
} | sort -u | one_a_line "$folder/units"
grep '^UC\.' sheets/worked-examples.txt | sed 's/ | .*//' | sort -u | one_a_line "$folder/formulas"
grep -ho '=[^|]*' sheets/text/*.txt | sed 's/ *$//' | sort -u | head -300 | sed 's/^/=/' | sed 's/^==/=/' > "$folder/lines"
awk -v folder="$folder/formulas" '{ file = folder "/sheet-" NR; printf "%s", $0 > file; close(file) }' "$folder/lines"
rm "$folder/lines"
cp sheets/text/*.txt sheets/demo/*.txt "$folder/sheet_text"
# Arrays of the worked examples: numbers get a '#', columns a tab, rows a line.
grep -o '{[^}]*}' sheets/worked-examples.txt | sort -u | tr -d '{}' | awk -v folder="$folder/tables" '{
  text = ""; rows = split($0, row, "|")
  for (r = 1; r <= rows; ++r) {
    cells = split(row[r], cell, ";")
    for (c = 1; c <= cells; ++c) {
      value = cell[c]
      if (value !~ /"/) value = "#" value
      gsub(/"/, "", value)
      text = text value (c < cells ? "\t" : "")
    }
    text = text (r < rows ? "\n" : "")
  }
  file = folder "/" NR; printf "%s", text > file; close(file)
}'
cp tests/data/fuzz/stored_values/* "$folder/stored_values"
