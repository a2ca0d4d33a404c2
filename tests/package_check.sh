#!/bin/sh
# Whether addin/package/check.sh notices what it promises to: each mistake is planted in a copy of the package.
#   sh tests/package_check.sh undercroft.oxt XUC.idl
set -eu
oxt=$1
idl=$2
check=$(cd "$(dirname "$0")/.." && pwd)/addin/package/check.sh
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

sh "$check" "$oxt" "$idl"

# WHAT IT SAYS, and the commands that spoil the unpacked package.
notices() {
  rm -rf "$folder/package" "$folder/spoilt.oxt"
  mkdir "$folder/package"
  (cd "$folder/package" && cmake -E tar xf "$oxt" && eval "$2" && cmake -E tar cf "$folder/spoilt.oxt" --format=zip .)
  if sh "$check" "$folder/spoilt.oxt" "$idl" > "$folder/said" 2>&1; then
    echo "not noticed: $2" >&2
    exit 1
  fi
  grep -q "$1" "$folder/said" || { cat "$folder/said" >&2; echo "noticed for another reason: $2" >&2; exit 1; }
}

notices "does not name its arguments" "sed -i '0,/      <node oor:name=\"rise\"/s//      <node oor:name=\"height\"/' CalcAddIns.xcu"
notices "does not name its arguments" "sed -i '0,/  <node oor:name=\"archWidth\"/s//  <node oor:name=\"archBreadth\"/' CalcAddIns.xcu"
notices "does not name its arguments" "sed -i '/      <node oor:name=\"porosity\"/d' CalcAddIns.xcu"
notices "the manifest lists .*, which is not in the package" "rm ProtocolHandler.xcu"
notices "the manifest lists a path twice" "sed -i 's|\(.*full-path=\"CalcAddIns.xcu\".*\)|\1\n\1|' META-INF/manifest.xml"
notices "the menu names .*, which is not in the package" "rm template/Undercroft/storage.ots"
notices "the menu does not open own.ots" "cp template/Undercroft/storage.ots template/Undercroft/own.ots"
notices "the library exports" "sed -i 's/constructor=\"undercroft_audit\"/constructor=\"undercroft_other\"/' undercroft.components"
notices "the package brings a macro" "touch run.py"
