#!/bin/sh
# The arrows of the house: which room may include headers of which, and where the office's own may stand. Prints FILE:LINE
# of each include that goes the wrong way, and fails then.
#   sh tests/arrows.sh [FOLDER]    the sources in that folder (this project)
#   sh tests/arrows.sh --itself    whether it notices wrong arrows
set -eu

if [ "${1:-}" = --itself ]; then
  tree=$(mktemp -d)
  trap 'rm -rf "$tree"' EXIT
  mkdir -p "$tree/calc/bed" "$tree/addin/audit/book" "$tree/sheets/builder" "$tree/addin/uno" "$tree/attic"
  plant() { printf '%s\n' '#pragma once' "#include $2" >> "$tree/$1"; }
  plant calc/bed/right.hpp '"units/types.hpp"'
  plant addin/uno/right.cpp '<com/sun/star/uno/Any.hxx>'
  sh "$0" "$tree" > "$tree/said" || { cat "$tree/said"; echo "right arrows are taken for wrong"; exit 1; }
  plant calc/bed/wrong.hpp '"addin/catalogue/cell.hpp"'
  plant addin/audit/book/wrong.hpp '"addin/audit/findings/finding.hpp"'
  plant sheets/builder/wrong.cpp '"addin/audit/book/book.hpp"'
  plant addin/audit/book/office.cpp '<com/sun/star/uno/Any.hxx>'
  plant attic/stray.cpp '<vector>'
  plant calc/bed/stray.cpp '"stray.hpp"'
  if sh "$0" "$tree" > "$tree/said"; then echo "wrong arrows are not noticed"; exit 1; fi
  for wrong in calc/bed/wrong.hpp:2 addin/audit/book/wrong.hpp:2 sheets/builder/wrong.cpp:2 addin/audit/book/office.cpp:2 \
    attic/stray.cpp:2 calc/bed/stray.cpp:2; do
    grep -q "^$wrong: " "$tree/said" || { cat "$tree/said"; echo "$wrong is not noticed"; exit 1; }
  done
  [ "$(wc -l < "$tree/said")" -eq 6 ] || { cat "$tree/said"; echo "more is told than is wrong"; exit 1; }
  exit 0
fi

cd "${1:-$(dirname "$0")/..}"
find . -path ./build -prune -o \( -name '*.cpp' -o -name '*.hpp' \) -print | sed 's|^\./||' | sort | xargs awk '
  # A room, and the rooms whose headers it may include beside its own.
  function room(name, includes) { may[name] = " " name " " includes " " }
  BEGIN {
    trade = "units calc"
    room("units", "")
    room("calc", "units")
    room("addin", "units")
    room("addin/catalogue", trade)
    room("addin/generate", trade " addin addin/catalogue addin/formula")
    room("addin/formula", trade " addin/catalogue")
    below = trade " addin addin/catalogue addin/formula"
    room("addin/audit/book", below)
    room("addin/audit/units", below " addin/audit/book")
    room("addin/audit/findings", below " addin/audit/book addin/audit/units")
    room("addin/audit/report", below " addin/audit/book addin/audit/units addin/audit/findings")
    audit = "addin/audit/book addin/audit/units addin/audit/findings addin/audit/report"
    room("addin/uno", below " " audit)
    room("sheets/builder", "units addin")
    room("sheets/office", "units addin sheets/builder addin/catalogue addin/formula")
    room("tests", below " " audit " addin/generate addin/uno sheets/builder sheets/office")
    offices = " addin/uno sheets/office tests "
  }
  # The room of a path: the longest that it begins with.
  function room_of(path,    name) {
    name = path
    while (sub("/[^/]*$", "", name)) if (name in may) return name
    return ""
  }
  function wrong(what) { print FILENAME ":" FNR ": " what; ++mistakes }
  /^ *# *include/ {
    from = room_of(FILENAME)
    if (from == "") { wrong("stands in no room of the house"); next }
    match($0, /["<][^">]*[">]/)
    path = substr($0, RSTART + 1, RLENGTH - 2)
    if (substr($0, RSTART, 1) == "<") {
      office = path ~ "^(com/sun|cppu|cppuhelper|osl|rtl|sal|salhelper|typelib|undercroft|undercroftbench|uno)/"
      if (office && !index(offices, " " from " ")) wrong(from " includes a header of the office, " path)
      next
    }
    if (path !~ "/") { if (path !~ /\.inc$/) wrong("includes " path " without its room"); next }
    to = room_of(path)
    if (to == "") wrong(from " includes " path ", which is in no room of the house")
    else if (!index(may[from], " " to " ")) wrong(from " includes " path)
  }
  END { exit mistakes > 0 }'
