#!/bin/sh
# Recalculates, audits and prints every workbook of a folder, several at a time: sh sheets/batch.sh DIR [OUT]
# For each .ods, .ots, .fods or .xlsx, OUT (default DIR/checked) gets the recalculated workbook with its sheet Audit,
# the PDF, and what was said. A workbook that fails is reported and the others go on; a second run does only what
# changed. Exit status 0 when nothing was found, 1 when something was, 2 when a workbook failed.
#   BATCH_JOBS=2        workbooks at a time (default: the processors)
#   BATCH_SSH=HOST,...  also on these hosts, by ssh, which see the same folders and this build at the same paths
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)

# One workbook: FILE OUT. The stamp holds what was read and with what, and the answer.
check_one() {
  file=$1 out=$2
  name=$(basename "$file")
  log=$out/$name.txt
  stamp=$out/.stamps/$name
  now=$(cat "$file" "$root/build/undercroft.oxt" | sha256sum | cut -d ' ' -f 1)
  if [ -e "$stamp" ] && [ "$(cut -d ' ' -f 1 "$stamp")" = "$now" ]; then
    status=$(cut -d ' ' -f 2 "$stamp")
    printf '%-12s %s\n' "unchanged/$status" "$name"
    return "$status"
  fi
  rm -f "$stamp"
  status=0
  timeout "${BATCH_TIMEOUT:-600}" "$root/build/sheets/audit_file" "$root/build/extensions" "$file" \
    --out "$out/$name.checked.ods" --print "$out/$name.pdf" > "$log" 2>&1 || status=$?
  case $status in
    0) echo "good         $name" ;;
    1) echo "findings     $name: see $log" ;;
    *) status=2; echo "FAILED       $name: $(tail -n 1 "$log")" ;;
  esac
  # What failed is tried again by the next run.
  [ "$status" = 2 ] || echo "$now $status" > "$stamp"
  return "$status"
}

if [ "${1:-}" = --one ]; then check_one "$2" "$3"; exit; fi

[ $# -ge 1 ] && [ -d "$1" ] || { echo "usage: sh sheets/batch.sh DIR [OUT]" >&2; exit 2; }
folder=$(cd "$1" && pwd)
mkdir -p "${2:-$folder/checked}/.stamps"
out=$(cd "${2:-$folder/checked}" && pwd)
(cd "$root" && . tests/setup.sh && need_build && { command -v parallel > /dev/null || need_packages parallel; }) >&2 || exit 2

hosts=
[ -z "${BATCH_SSH:-}" ] || hosts="--sshlogin $BATCH_SSH,:"
jobs=$out/.stamps/jobs
status=0
find "$folder" -maxdepth 1 -type f \( -name '*.ods' -o -name '*.ots' -o -name '*.fods' -o -name '*.xlsx' \) \
  ! -name '.*' -print0 | sort -z \
  | parallel --null --quote --will-cite --jobs "${BATCH_JOBS:-100%}" --joblog "$jobs" $hosts \
      sh "$root/sheets/batch.sh" --one {} "$out" || status=$?
[ -s "$jobs" ] || { echo "parallel could not run" >&2; exit 2; }
awk 'NR > 1 { n[$8 ? 2 : $7 > 1 ? 2 : $7]++ }
     END { printf "%d good, %d with findings, %d failed\n", n[0], n[1], n[2]; exit n[2] ? 2 : n[1] ? 1 : 0 }' "$jobs"
