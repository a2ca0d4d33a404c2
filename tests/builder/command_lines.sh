#!/bin/sh
# Each tool explains itself, and refuses a command line that it cannot read with status 2: command_lines.sh TOOL...
set -eu
said=$(mktemp)
trap 'rm -f "$said"' EXIT

# STATUS WORDS TOOL ARGUMENT...: what is said holds the words, and the tool ends with the status.
expect() {
  wanted=$1 words=$2
  shift 2
  status=0
  "$@" > "$said" 2>&1 || status=$?
  if [ $status != "$wanted" ] || ! grep -q -- "$words" "$said"; then
    echo "$*: ended with $status, wanted $wanted and '$words'; said:" >&2
    cat "$said" >&2
    exit 1
  fi
}

for tool in "$@"; do
  name=$(basename "$tool")
  expect 0 "Usage: $name" "$tool" --help
  expect 2 'Run with --help' "$tool"
  expect 2 'Run with --help' "$tool" --nonsense
  case $name in
    build_sheets) expect 2 'EXAMPLES: File does not exist: /none' "$tool" / "$0" /none /tmp ;;
    generate_addin)
      expect 2 'wanted: DIR, --reference or --renew' "$tool"
      expect 2 'excludes' "$tool" / --renew / ;;
    sheet_office)
      expect 2 'each workbook wants the file that it becomes' "$tool" / --last Routing --last Drawing one.fods
      expect 2 'one.ods must not be another of the files' "$tool" / one.fods one.ods one.ods two.ods
      expect 2 'two.ods must not be another of the files' "$tool" / one.fods two.ods three.fods ./two.ods
      expect 2 'cannot save a file that ends in .txt' "$tool" / one.fods one.txt
      expect 2 'EXTENSIONS: Directory does not exist: /none' "$tool" /none a b ;;
    audit_file)
      expect 2 '--print requires --out' "$tool" / a --print b.pdf
      expect 2 '--csv: goes with one file' "$tool" / a b --csv c.csv
      expect 2 '--out: must not be the file under audit' "$tool" / "$0" --out "$0"
      expect 2 '--csv: must not be the file under audit' "$tool" / "$0" --csv "$(dirname "$0")/./$(basename "$0")"
      expect 2 '--out: must not be the template' "$tool" / a --against "$0" --out "$0"
      expect 2 '--csv: must not be the template' "$tool" / a --against "$0" --csv "$0"
      expect 2 'must not be the file of --out' "$tool" / a --csv new.ods --out ./new.ods
      expect 2 'must not be the file of' "$tool" / a --out new.ods --print ./new.ods
      expect 2 '--csv: there is no folder /none' "$tool" / a --csv /none/b.csv
      expect 2 '--csv: it is a folder' "$tool" / a --csv /tmp
      expect 2 '--out: must end in .ods' "$tool" / a --out new.xls
      expect 2 '--seconds' "$tool" / a --seconds 0
      expect 2 '--against: File does not exist: /none' "$tool" / a --against /none ;;
    take_pictures) expect 2 "'menu' is no NAME=SHEET!CELL" "$tool" / "$0" / menu ;;
    write_points) expect 2 'OUT: must end in .csv' "$tool" / a b.txt ;;
    write_units) expect 2 'OUT: must not be the file itself' "$tool" / "$0" "$0" ;;
    run_job) expect 2 'JOB: File does not exist: /none' "$tool" / / /none / / storage ;;
  esac
done
