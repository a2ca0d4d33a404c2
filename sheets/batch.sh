#!/bin/sh
# Recalculates, audits and prints every workbook of a folder, several at a time: sh sheets/batch.sh DIR [OUT]
# For each .ods, .ots, .fods, .xlsx, .xlsm or .xls, OUT (default DIR/checked) gets the recalculated workbook with its
# sheet Audit, the PDF, and what was said; what else lies in DIR is named as passed over. A workbook that fails is
# reported and the others go on. A second run does what changed, what is not there any more, and what failed. A copy
# that was signed is never written again. Exit status 0 when nothing was found, 1 when something was, 2 when a workbook
# failed or there is none.
#   BATCH_JOBS=2        workbooks at a time (default: the processors)
#   BATCH_TIMEOUT=600   seconds that one workbook may take; BATCH_MEMORY=4 GiB
#   BATCH_SSH=HOST,...  also on these hosts, by ssh, which see the same folders and this build at the same paths
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)

# A name as it may be shown on a terminal.
shown() { printf '%s' "$1" | LC_ALL=C sed 's/\xc2[\x80-\x9f]/?/g; s/\xe2\x80[\xa8-\xae]/?/g' | LC_ALL=C tr '\000-\037\177' '?'; }

digest() { if [ -f "$1" ]; then sha256sum < "$1" | cut -d ' ' -f 1; else echo none; fi; }

# One workbook: FILE OUT. The stamp holds what was read and with what, the answer, and what was written.
check_one() {
  file=$1 out=$2
  name=$(basename "$file")
  shown=$(shown "$name")
  copy=$out/$name.checked.ods pages=$out/$name.pdf log=$out/$name.txt
  stamp=$out/.stamps/$name
  now=$(cat "$file" "$root/build/undercroft.oxt" | sha256sum | cut -d ' ' -f 1)
  then= answer= copy_then= pages_then= log_then=
  [ ! -f "$stamp" ] || read -r then answer copy_then pages_then log_then < "$stamp" || true
  if [ "$then" = "$now" ] && [ "$(digest "$copy") $(digest "$pages") $(digest "$log")" = "$copy_then $pages_then $log_then" ]
  then
    printf '%-12s %s\n' "unchanged/$answer" "$shown"
    return "$answer"
  fi
  status=0
  said=$out/.stamps/$name.said
  setpriv --pdeathsig KILL "$root/build/sheets/audit_file" "$root/build/extensions" "$file" \
    --seconds "${BATCH_TIMEOUT:-600}" --memory "${BATCH_MEMORY:-4}" --out "$copy" --print "$pages" > "$said" 2>&1 || status=$?
  if [ "$status" -gt 1 ] && grep -q 'is signed, and was not touched' "$said"; then
    rm -f "$said"
    [ "$then" = "$now" ] && [ -n "$answer" ] || { echo "FAILED       $shown: it changed, but its copy in OUT is signed; move that away"; return 2; }
    printf '%-12s %s\n' "signed/$answer" "$shown"
    return "$answer"
  fi
  if [ "$status" -gt 1 ]; then
    # What an earlier run made does not stay beside a failure; what somebody changed since does.
    [ "$(digest "$copy")" != "$copy_then" ] || rm -f "$copy"
    [ "$(digest "$pages")" != "$pages_then" ] || rm -f "$pages"
    rm -f "$stamp"
    mv "$said" "$log"
    reason=$(tail -n 1 "$log")
    echo "FAILED       $shown: ${reason:-it ended with $status}"
    return 2
  fi
  mv "$said" "$log"
  echo "$now $status $(digest "$copy") $(digest "$pages") $(digest "$log")" > "$stamp.new" && mv "$stamp.new" "$stamp"
  case $status in
    0) echo "good         $shown" ;;
    1) echo "findings     $shown: see $(shown "$log")" ;;
  esac
  return "$status"
}

if [ "${1:-}" = --one ]; then
  status=0
  check_one "$2" "$3" || status=$?
  exit "$status"
fi

if [ "${1:-}" = --passed-over ]; then
  echo "passed over  $(shown "$(basename "$2")"): no workbook by its name"
  exit
fi

usage="usage: sh sheets/batch.sh DIR [OUT]"
case ${1:-} in --help | -h) sed -n '2,/^set/{/^#/p}' "$0" | sed 's/^# *//'; exit 0 ;; esac
[ $# -ge 1 ] && [ $# -le 2 ] && [ -d "$1" ] || { echo "$usage" >&2; exit 2; }
folder=$(cd "$1" && pwd -P)
mkdir -p "${2:-$folder/checked}/.stamps" || exit 2
out=$(cd "${2:-$folder/checked}" && pwd -P)
[ "$out" != "$folder" ] || { echo "OUT must be another folder than DIR, whose workbooks it would be taken for" >&2; exit 2; }
(cd "$root" && . tests/setup.sh && need_build && { command -v parallel > /dev/null || need_packages parallel; }) >&2 || exit 2

is_workbook="-iname *.ods -o -iname *.ots -o -iname *.fods -o -iname *.xlsx -o -iname *.xlsm -o -iname *.xls"
set -f  # the patterns are find's
find -L "$folder" -mindepth 1 -maxdepth 1 ! -type d ! -name '.~lock.*' \( ! -type f -o -name '.*' -o ! \( $is_workbook \) \) -print0 \
  | sort -z | xargs -0 -r -n 1 sh "$root/sheets/batch.sh" --passed-over

hosts=
[ -z "${BATCH_SSH:-}" ] || hosts="--sshlogin $BATCH_SSH,:"
jobs=$out/.stamps/jobs
rm -f "$jobs"
status=0
find -L "$folder" -maxdepth 1 -type f ! -name '.*' \( $is_workbook \) -print0 | sort -z \
  | PARALLEL_SHELL=/bin/sh setpriv --pdeathsig KILL parallel --null --quote --will-cite --ungroup --jobs "${BATCH_JOBS:-100%}" \
      --joblog "$jobs" $hosts exec setpriv --pdeathsig KILL sh "$root/sheets/batch.sh" --one {} "$out" || status=$?
[ -s "$jobs" ] || { echo "parallel could not run" >&2; exit 2; }
awk 'NR > 1 { n[$8 ? 2 : $7 > 1 ? 2 : $7]++; all++ }
     END { printf "%d good, %d with findings, %d failed\n", n[0], n[1], n[2]
           if (!all) { print "there is no workbook in the folder"; exit 2 }
           exit n[2] ? 2 : n[1] ? 1 : 0 }' "$jobs"
