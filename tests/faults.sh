#!/bin/sh
# Files of strangers, full disks, killed tools, other countries: what the tools do then, as a table.
#   sh tests/faults.sh [--quick] [BUILD]     all of it takes some minutes; --quick is what CTest runs
# The offices that are started write below one folder of ours, so that what they leave behind is seen.
set -eu
quick=
[ "${1:-}" != --quick ] || { quick=yes; shift; }
root=$(cd "$(dirname "$0")/.." && pwd)
build=$(cd "${1:-$root/build}" && pwd)
audit="$build/sheets/audit_file $build/extensions"
scratch=$(mktemp -d)
export TMPDIR="$scratch/tmp"
mkdir "$TMPDIR" "$scratch/files" "$scratch/out"
server=
mounted=
clean() {
  [ -z "$server" ] || kill "$server" 2> /dev/null || true
  [ -z "$mounted" ] || umount "$mounted" 2> /dev/null || true
  rm -rf "$scratch"
}
trap clean EXIT
trap 'exit 1' INT TERM HUP
cd "$scratch/files"
wrong=0

say_wrong() { echo "WRONG: $1" >&2; wrong=$((wrong + 1)); }

# The most memory, in MiB, that a process of ours had, into a file, until the file `stop` is there.
watch_memory() {
  most=0
  while [ ! -e "$scratch/stop" ]; do
    for process in $(pgrep -f "UserInstallation=file://$scratch" || true); do
      pages=$(cut -d ' ' -f 2 "/proc/$process/statm" 2> /dev/null || echo 0)
      [ "$pages" -le "$most" ] || { most=$pages; echo $((most * 4 / 1024)) > "$scratch/memory"; }
    done
    sleep 0.2
  done
}

# CASE STATUS WORDS COMMAND...: ends with the status and says the words; a row of the table.
try() {
  case=$1 wanted=$2 words=$3
  shift 3
  echo 0 > "$scratch/memory"
  rm -f "$scratch/stop"
  watch_memory &
  watcher=$!
  begun=$(date +%s)
  status=0
  "$@" > "$scratch/said" 2>&1 || status=$?
  ended=$(date +%s)
  : > "$scratch/stop"
  wait "$watcher"
  printf '| %s | %s | %s | %s |\n' "$case" "$status" "$((ended - begun))" "$(cat "$scratch/memory")"
  [ "$status" = "$wanted" ] || { say_wrong "$case: ended with $status, wanted $wanted"; tail -n 5 "$scratch/said" >&2; }
  [ -z "$words" ] || grep -qF -- "$words" "$scratch/said" || { say_wrong "$case: not said: $words"; head -n 20 "$scratch/said" >&2; }
  left_nothing "$case"
}

# Within five seconds no process and no file of ours is left.
left_nothing() {
  for wait in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25; do
    left=$(pgrep -f "UserInstallation=file://$scratch" || true; ls -A "$TMPDIR"; find "$scratch/out" "$scratch/files" -name '.undercroft*' -o -name '.~lock.*')
    [ -n "$left" ] || return 0
    sleep 0.2
  done
  say_wrong "$1: left behind: $left"
}

# TOOL CASE: nor is the pipe by which the tool spoke to its office, which makes it in /tmp.
no_pipe_of() {
  [ -z "$(find /tmp -maxdepth 1 -name "OSL_PIPE_*_undercroft-$1-*")" ] || say_wrong "$2: left behind: the pipe"
}

# The words stand in what the last command said, or do not.
said() { grep -qF -- "$1" "$scratch/said" || { say_wrong "$case: not said: $1"; }; }
not_said() { ! grep -qF -- "$1" "$scratch/said" || { say_wrong "$case: said: $1"; }; }

# FILE [CELLS] [SHAPES] [BEFORE]: a flat workbook: its rows, what lies on the sheet, and what stands before the body.
flat() {
  printf '%s\n' '<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:form="urn:oasis:names:tc:opendocument:xmlns:form:1.0" xmlns:script="urn:oasis:names:tc:opendocument:xmlns:script:1.0" xmlns:meta="urn:oasis:names:tc:opendocument:xmlns:meta:1.0" xmlns:svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0" xmlns:chart="urn:oasis:names:tc:opendocument:xmlns:chart:1.0" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:ooo="http://openoffice.org/2004/office" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'"${4:-}"'<office:body><office:spreadsheet><table:table table:name="S">'"${3:-}"'<table:table-row>'"${2:-}"'</table:table-row></table:table></office:spreadsheet></office:body></office:document>' > "$1"
}
cell='<table:table-cell office:value-type="float" office:value="2"/>'
sum='<table:table-cell table:formula="of:=[.A1]+[.A1]" office:value-type="float" office:value="4"/>'
shape() { printf '<table:shapes><draw:frame svg:width="2cm" svg:height="2cm" svg:x="1cm" svg:y="3cm">%s</draw:frame></table:shapes>' "$1"; }

echo '| case | exit | seconds | MiB |'
echo '|---|---|---|---|'

# What is no workbook.
flat good.fods "$cell$sum"
: > empty.ods
echo 'a text, not a workbook' > text.ods
head -c 3000 "$build/sheets/storage.ots" > cut.ods
mkdir folder.ods
mkfifo pipe.ods
printf 'PK\003\004 and no more' > broken.xlsx
try 'empty, a text, cut, a folder, a pipe, a broken package, missing; the good one among them' 2 'empty.ods is empty' \
  $audit empty.ods text.ods cut.ods folder.ods pipe.ods broken.xlsx none.ods good.fods
said 'text.ods is no workbook'
said 'cannot open cut.ods'
said 'folder.ods is no file'
said 'pipe.ods is no file'
said 'there is no file none.ods'
said 'Nothing was found in 1 formula;'

# By content, and what was not checked.
sed 's/office:value="4"/office:value="400"/' good.fods > tampered.fods
cp tampered.fods tampered.bak
cp tampered.fods tampered.xml
sed 's|<table:|<t:|g; s|</table:|</t:|g; s| table:| t:|g; s|xmlns:table=|xmlns:t=|' tampered.fods > prefixes.fods
try 'a stored result edited: .fods, .bak, .xml, and with other prefixes' 1 'whether formulas are those of a template' \
  $audit tampered.fods tampered.bak tampered.xml prefixes.fods
[ "$(grep -c 'The file holds 400, and the formula gives 4' "$scratch/said")" = 4 ] || say_wrong "$case: not in all four"

# Numbers by their place in the file, as the office itself writes them; then one of them edited.
try 'a workbook becomes .xlsx' 0 '' "$build/sheets/sheet_office" "$build/extensions" good.fods "$scratch/out/good.xlsx"
mkdir xlsx
(cd xlsx && cmake -E tar xf "$scratch/out/good.xlsx" && sed -i 's|<v>4</v>|<v>400</v>|' xl/worksheets/sheet1.xml \
  && cmake -E tar cf ../tampered.xlsx --format=zip '[Content_Types].xml' _rels docProps xl)
mv "$scratch/out/good.xlsx" good.xlsx
try 'an .xlsx, and one whose result was edited' 1 'The file holds 400, and the formula gives 4' $audit good.xlsx tampered.xlsx
[ "$(grep -c 'The file holds' "$scratch/said")" = 1 ] || say_wrong "$case: not in one of two"

# The manifest says that a part is encrypted, as of a workbook with a password.
mkdir locked locked/META-INF
printf 'application/vnd.oasis.opendocument.spreadsheet' > locked/mimetype
head -c 500 /dev/urandom > locked/content.xml
echo '<?xml version="1.0"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.2"><manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml" manifest:size="900"><manifest:encryption-data manifest:checksum-type="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0#sha256-1k" manifest:checksum="AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA="><manifest:algorithm manifest:algorithm-name="http://www.w3.org/2001/04/xmlenc#aes256-cbc" manifest:initialisation-vector="AAAAAAAAAAAAAAAAAAAAAA=="/><manifest:key-derivation manifest:key-derivation-name="PBKDF2" manifest:key-size="32" manifest:iteration-count="1000" manifest:salt="AAAAAAAAAAAAAAAAAAAAAA=="/></manifest:encryption-data></manifest:file-entry></manifest:manifest>' > locked/META-INF/manifest.xml
(cd locked && cmake -E tar cf ../locked.ods --format=zip mimetype content.xml META-INF/manifest.xml)
try 'a workbook with a password' 2 'is locked with a password: save a copy without it' $audit locked.ods
cp good.fods 'Größe.fods'
try 'in C, names with an umlaut are opened and written' 0 'Nothing was found in 1 formula;' \
  env -u LANG LC_ALL=C $audit 'Größe.fods' --csv "$scratch/out/Maß.csv" --out "$scratch/out/Maß.ods" --print "$scratch/out/Maß.pdf"
[ -s "$scratch/out/Maß.csv" ] && [ -s "$scratch/out/Maß.ods" ] && [ -s "$scratch/out/Maß.pdf" ] || say_wrong "$case: not written"
rm -f "$scratch/out"/*
begun=$(date +%s)
try 'an output that cannot be written is said before the audit' 2 'there is no folder' $audit good.fods --csv "$scratch/none/table.csv"
[ $(($(date +%s) - begun)) -le 2 ] || say_wrong "$case: only after the audit"
try 'help' 0 'Ends with 0 when nothing was found' $audit --help

# Other countries: the machine's own settings, in which a comma or a dotless i would be read otherwise. Their locales are
# made here, since a machine has few of them and takes C for one that it has not.
mkdir "$scratch/locales"
for locale in de_DE tr_TR fr_FR ar_EG; do
  localedef -i "$locale" -f UTF-8 --no-archive "$scratch/locales/$locale.UTF-8" 2> /dev/null || true
  [ "$(LOCPATH="$scratch/locales" LC_ALL="$locale.UTF-8" locale charmap 2>&1)" = UTF-8 ] || say_wrong "there is no locale $locale"
done
text() { printf '<table:table-row><table:table-cell office:value-type="string"><text:p>%s</text:p></table:table-cell><table:table-cell table:formula="of:=%s" office:value-type="float" office:value="%s"/></table:table-row>' "$1" "$2" "$3"; }
flat grossen.fods "$cell$sum</table:table-row>$(text 'PIPE WIDTH I, 2,5 m' 'UC.CONVERT(&quot;2,5 m&quot;;&quot;mm&quot;)' 2500)$(text 'kırık İ' 'UC.CONVERT(&quot;1.25 mi&quot;;&quot;km&quot;)' 2.01168)$(text 'Maß' 'UC.CONVERT(&quot;2 kg&quot;;&quot;m&quot;)' 2)$(text 'طول' 'VALUE(TEXT(1234.5;&quot;0.00&quot;))' 1234.5)<table:table-row>"
mv grossen.fods 'Größe ı.fods'
for locale in C C.UTF-8 de_DE.UTF-8 tr_TR.UTF-8 fr_FR.UTF-8 ar_EG.UTF-8; do
  try "in $locale, a name with an umlaut, five findings" 1 'fingerprint' env LOCPATH="$scratch/locales" LC_ALL="$locale" LANG="$locale" LANGUAGE="${locale%%_*}" \
    $audit 'Größe ı.fods' --csv "$scratch/out/Maß.csv" --out "$scratch/out/Maß.ods"
  [ -s "$scratch/out/Maß.ods" ] || say_wrong "$case: not written"
  cat "$scratch/said" "$scratch/out/Maß.csv" > "$scratch/said-$locale" 2> /dev/null || true
  cmp -s "$scratch/said-C" "$scratch/said-$locale" || say_wrong "$locale: another answer than C"
  rm -f "$scratch/out"/*
done
said 'is a mass'
said '2,5 m'

# Links, scripts, controls.
cat > "$scratch/server.pl" << 'END'
use strict; use Socket;
socket(my $server, PF_INET, SOCK_STREAM, 0) or die; setsockopt($server, SOL_SOCKET, SO_REUSEADDR, 1);
bind($server, sockaddr_in(0, INADDR_LOOPBACK)) or die; listen($server, 10) or die;
my ($port) = sockaddr_in(getsockname($server));
open(my $told, '>', "$ARGV[0].port") or die; print $told $port; close $told;
while (accept(my $client, $server)) { open(my $log, '>>', $ARGV[0]); my $line = <$client>; print $log $line; close $log;
  print $client "HTTP/1.0 200 OK\r\nContent-Type: text/plain\r\n\r\n7\n"; close $client; }
END
perl "$scratch/server.pl" "$scratch/asked" &
server=$!
while [ ! -s "$scratch/asked.port" ]; do sleep 0.1; done
web="http://127.0.0.1:$(cat "$scratch/asked.port")"
# The server works: else that nobody asked would mean nothing.
perl -MIO::Socket::INET -e '$s = IO::Socket::INET->new(PeerAddr => substr($ARGV[0], 7)) or die; print $s "GET /itself\n"; <$s>' "$web"
[ -s "$scratch/asked" ] || say_wrong 'the server does not hear'
: > "$scratch/asked"
# A picture of one red dot.
printf '\211PNG\r\n\032\n\000\000\000\rIHDR\000\000\000\001\000\000\000\001\b\002\000\000\000\220wS\336\000\000\000\fIDATx\234c\370\317\300\000\000\003\001\001\000\311\376\222\357\000\000\000\000IEND\256B`\202' > "$scratch/secret.png"
for kind in image object floating-frame plugin; do
  flat "$kind.fods" "$cell$sum" "$(shape "<draw:$kind xlink:href=\"$web/$kind\" xlink:type=\"simple\" xlink:show=\"embed\" xlink:actuate=\"onLoad\"/>")"
done
flat secret.fods "$cell$sum" "$(shape "<draw:image xlink:href=\"file://$scratch/secret.png\" xlink:type=\"simple\" xlink:show=\"embed\" xlink:actuate=\"onLoad\"/>")"
flat font.fods "$cell$sum" '' "<office:font-face-decls><style:font-face style:name=\"X\" svg:font-family=\"X\"><svg:font-face-src><svg:font-face-uri xlink:href=\"$web/font\" xlink:type=\"simple\"/></svg:font-face-src></style:font-face></office:font-face-decls>"
flat meta.fods "$cell$sum" '' "<office:meta><meta:template xlink:href=\"$web/template.ots\" xlink:type=\"simple\"/><meta:auto-reload xlink:href=\"$web/reload\" meta:delay=\"PT1S\"/></office:meta>"
flat fill.fods "$cell$sum" '' "<office:styles><draw:fill-image draw:name=\"f\" xlink:href=\"$web/fill\" xlink:type=\"simple\"/></office:styles>"
flat sheet.fods "$cell$sum" "<table:table-source xlink:href=\"$web/sheet.ods\" table:table-name=\"S\" table:refresh-delay=\"PT1S\"/>"
flat area.fods "$cell<table:table-cell table:formula=\"of:=[.A1]*3\" office:value-type=\"float\" office:value=\"6\"><table:cell-range-source table:name=\"x\" xlink:href=\"$web/area.csv\" table:filter-name=\"Text - txt - csv (StarCalc)\" table:last-column-spanned=\"1\" table:last-row-spanned=\"1\"/></table:table-cell>"
flat web.fods "$cell<table:table-cell table:formula=\"of:=WEBSERVICE(&quot;$web/web&quot;)\" office:value-type=\"string\" office:string-value=\"7\"/>"
flat other.fods "$cell<table:table-cell table:formula=\"of:=['$web/other.ods'#\$S.A1]+1\" office:value-type=\"float\" office:value=\"3\"/>"
flat indirect.fods "$cell<table:table-cell table:formula=\"of:=INDIRECT(&quot;'$web/indirect.ods'#\$S.A1&quot;)\" office:value-type=\"float\" office:value=\"3\"/>"
flat dde.fods "$cell<table:table-cell table:formula=\"of:=DDE(&quot;soffice&quot;;&quot;$scratch/files/good.fods&quot;;&quot;S.A1&quot;)\" office:value-type=\"float\" office:value=\"3\"/>"
links='image object floating-frame plugin secret font meta fill sheet area web other indirect dde'
try "links: $links" 1 'the audit followed none' $audit $(for name in $links; do echo "$name.fods"; done)
for name in $links; do
  awk -v name="$name.fods" '$0 == name { inside = 1; next } /^[a-z-]+\.fods$/ { inside = 0 } inside' "$scratch/said" | grep -q 'link to another file' \
    || say_wrong "links: none is told of $name"
done
try 'a linked picture of this machine, printed' 1 'secret.png' $audit secret.fods --out "$scratch/out/secret.ods" --print "$scratch/out/secret.pdf"
cp "$scratch/out/secret.ods" "$scratch/files/secret.ods"
rm "$scratch/out"/*
try 'the same as .ods' 1 'secret.png' $audit "$scratch/files/secret.ods" --out "$scratch/out/secret.ods" --print "$scratch/out/secret.pdf"
! grep -aq '/Subtype */Image' "$scratch/out/secret.pdf" || say_wrong 'the secret picture is in the PDF'
! cmake -E tar tf "$scratch/out/secret.ods" | grep -q '^Pictures/.*png' || say_wrong 'the secret picture is in the copy'
[ ! -s "$scratch/asked" ] || { say_wrong 'a server was asked:'; cat "$scratch/asked" >&2; }

basic='<office:scripts><office:script script:language="ooo:Basic"><ooo:libraries><ooo:library-embedded ooo:name="Standard"><ooo:module ooo:name="M"><ooo:source-code>Sub Main : End Sub</ooo:source-code></ooo:module></ooo:library-embedded></ooo:libraries></office:script></office:scripts>'
event='<office:event-listeners><script:event-listener script:language="ooo:script" script:event-name="dom:load" xlink:href="vnd.sun.star.script:a.py$f?language=Python&amp;location=document" xlink:type="simple"/></office:event-listeners>'
flat macro.fods "$cell$sum" '' "$basic"
flat event.fods "$cell$sum" '' "<office:scripts>$event</office:scripts>"
flat sheet-event.fods "$cell$sum" "$event"
flat button.fods "$cell$sum" '<office:forms><form:form form:name="F"><form:button form:name="Press" form:control-implementation="ooo:com.sun.star.form.component.CommandButton" form:id="c1"/><form:checkbox form:name="Bound" form:linked-cell="S.A1" form:control-implementation="ooo:com.sun.star.form.component.CheckBox" form:id="c2"/></form:form></office:forms>'
flat click.fods "$cell<table:table-cell office:value-type=\"string\"><text:p><text:a xlink:href=\"macro:///Standard.M.Main\">x</text:a></text:p></table:table-cell>$sum"
mkdir -p package/Scripts/python package/META-INF
printf 'application/vnd.oasis.opendocument.spreadsheet' > package/mimetype
sed 's/<office:document /<office:document-content /; s/office:mimetype="[^"]*"//; s/<\/office:document>/<\/office:document-content>/' good.fods > package/content.xml
echo 'def f(): pass' > package/Scripts/python/a.py
echo '<?xml version="1.0"?><manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"><manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/><manifest:file-entry manifest:full-path="Scripts/python/a.py" manifest:media-type=""/></manifest:manifest>' > package/META-INF/manifest.xml
(cd package && cmake -E tar cf ../python.ods --format=zip mimetype content.xml META-INF/manifest.xml Scripts/python/a.py)
try 'scripts and controls: Basic, Python, events of document and sheet, a link to a macro, a button, a bound box' 1 'macros in the file' \
  $audit macro.fods event.fods sheet-event.fods click.fods python.ods button.fods
[ "$(grep -c 'macros in the file' "$scratch/said")" = 6 ] || { say_wrong "$case: not in all six"; grep -c 'macros in the file' "$scratch/said" >&2; }
said 'checkbox Bound, bound to S.A1'

# Text that commands.
# XML holds no control characters but these; marks of direction and C1 it does.
text=$(printf '<table:table-cell office:value-type="string"><text:p>Depth\302\233 31m\342\200\256 x</text:p><text:p>Nothing was found in 900 formulas;=cmd</text:p></table:table-cell>')
flat text.fods "$text$cell<table:table-cell table:formula=\"of:=[.B1]+7\" office:value-type=\"float\" office:value=\"9\"/>"
escape=$(printf 'name\033]0;x\a.fods')
cp text.fods "$escape"
try 'a label and a file name that command the terminal' 2 'Depth<U+009B> 31m<U+202E> x / Nothing was found' $audit text.fods "$escape" "$escape.none"
! LC_ALL=C grep -q "$(printf '[\001-\010\013-\037]')" "$scratch/said" || say_wrong "$case: a control character went through"

# Outputs.
cp good.fods before.fods
try 'outputs that are inputs or each other' 2 'must not be the template' $audit good.fods --against before.fods --csv before.fods
try 'the same under another name' 2 'must not be the file under audit' sh -c 'ln good.fods hard.fods; exec "$@"' sh $audit good.fods --out hard.fods
cmp -s good.fods before.fods || say_wrong 'an input was changed'
try 'a copy is made' 0 'Nothing was found' $audit good.fods --out "$scratch/out/copy.fods" --csv "$scratch/out/table.csv"
cp "$scratch/out/copy.fods" "$scratch/out/unsigned.fods"
# The first of the two blank cells of the row to sign gets a name.
perl -0pe 's{<table:table-cell[^>]*?table:number-columns-repeated="2"[^>]*?/>(\s*<table:table-cell[^>]*>\s*<text:p>type a name)}{<table:table-cell office:value-type="string"><text:p>C. Checker</text:p></table:table-cell><table:table-cell/>$1}' \
  "$scratch/out/unsigned.fods" > "$scratch/out/copy.fods"
cmp -s "$scratch/out/unsigned.fods" "$scratch/out/copy.fods" && say_wrong 'the test does not sign'
cp "$scratch/out/copy.fods" "$scratch/signed.fods"
try 'a signed copy is not written over' 2 'is signed, and was not touched' $audit good.fods --out "$scratch/out/copy.fods"
cmp -s "$scratch/signed.fods" "$scratch/out/copy.fods" || say_wrong 'the signed copy was changed'
rm -rf "$scratch/out"/*
mkdir "$scratch/full"
if mount -t tmpfs -o size=64k tmpfs "$scratch/full" 2> /dev/null; then
  mounted=$scratch/full
  echo old > "$scratch/full/copy.ods"
  head -c 60000 /dev/zero > "$scratch/full/rest" 2> /dev/null || true
  try 'a full disk' 2 'the disk may be full' $audit good.fods --out "$scratch/full/copy.ods" --csv "$scratch/full/table.csv"
  [ "$(cat "$scratch/full/copy.ods")" = old ] || say_wrong 'a full disk destroyed the old copy'
  [ "$(ls -A "$scratch/full" | wc -l)" = 2 ] || say_wrong 'a full disk has half a file'
  umount "$scratch/full"; mounted=
else
  echo 'No full disk: nothing can be mounted here.' >&2
fi

# Limits.
name_list='<table:named-expressions><table:named-expression table:name="n0" table:base-cell-address="$S.$A$1" table:expression="2"/>'
for i in 1 2 3 4 5 6 7 8 9 10 11 12 13; do
  u="n$((i - 1))"
  name_list="$name_list<table:named-expression table:name=\"n$i\" table:base-cell-address=\"\$S.\$A\$1\" table:expression=\"$u+$u+$u+$u+$u+$u+$u+$u\"/>"
done
name_list="$name_list</table:named-expressions>"
flat names.fods "$cell<table:table-cell table:formula=\"of:=UC.LIFTS(n13;&quot;1 m&quot;)\" office:value-type=\"float\" office:value=\"6\"/><table:table-cell table:formula=\"of:=UC.WHY([.B1])\" office:value-type=\"string\"/>"
sed "s|</office:spreadsheet>|$name_list</office:spreadsheet>|" names.fods > names13.fods
try '13 names of eight uses each, with UC.WHY' 1 'formula' $audit names13.fods --seconds 60
flat filled.fods '<table:table-cell table:number-columns-repeated="16384" office:value-type="float" office:value="2"/>'
sed 's|<table:table-row>|<table:table-row table:number-rows-repeated="1048576">|' filled.fods > all-cells.fods
try 'all cells repeated, 1.5 GiB allowed' 2 'the office was stopped: it' $audit all-cells.fods --seconds 60 --memory 1.5
try 'the next file after one that was stopped' 2 'Nothing was found in 1 formula;' $audit all-cells.fods good.fods --seconds 5

# Killed at any moment.
is_whole() {
  case $1 in
    *.fods) tail -c 30 "$1" | grep -q '</office:document>' ;;
    *.ods) tail -c 22 "$1" | head -c 2 | grep -q PK ;;
    *.pdf) tail -c 8 "$1" | grep -q EOF ;;
  esac
}
# SIGNAL MILLISECONDS COMMAND...
kill_after() {
  signal=$1 after=$2
  shift 2
  # A shell makes what runs behind it deaf to INT.
  perl -e '$SIG{INT} = "DEFAULT"; exec @ARGV' "$@" > /dev/null 2>&1 &
  tool=$!
  sleep "$(awk "BEGIN { print $after / 1000 }")"
  kill -s "$signal" "$tool" 2> /dev/null || true
  wait "$tool" 2> /dev/null || true
  left_nothing "$signal after $after ms: $1"
  no_pipe_of "$tool" "$signal after $after ms: $1"
  for output in "$scratch/out"/*; do
    [ -e "$output" ] || continue
    is_whole "$output" || say_wrong "$signal after $after ms: half of $output"
  done
}
# MOMENT SIGNAL MILLISECONDS: each tool in its turn, so that in twenty moments each has met each signal.
kill_a_tool() {
  case $(($1 % 4)) in
    0) kill_after "$2" "$3" $audit good.fods --out "$scratch/out/k.fods" --csv "$scratch/out/k.csv" ;;
    1) kill_after "$2" "$3" "$build/sheets/sheet_office" "$build/extensions" good.fods "$scratch/out/c.fods" ;;
    2) kill_after "$2" "$3" "$build/sheets/write_units" "$build/extensions" good.fods "$scratch/out/w.fods" ;;
    3) kill_after "$2" "$3" "$build/sheets/run_job" "$build/extensions" "$root/sheets/text" "$root/sheets/demo/car-park.txt" \
         "$build/sheets" "$scratch/out" storage ;;
  esac
}
# Killed while the office writes: its lock beside the output goes with it.
for signal in TERM KILL; do
  $audit "$build/sheets/whole-job.fods" --out "$scratch/out/copy.ods" --print "$scratch/out/copy.pdf" > "$scratch/said" 2>&1 &
  tool=$!
  while kill -0 "$tool" 2> /dev/null && [ -z "$(find "$scratch/out" -name '.~lock.*')" ]; do sleep 0.01; done
  kill -0 "$tool" 2> /dev/null || say_wrong 'the office writes without a lock: this test sees nothing'
  kill -s "$signal" "$tool" 2> /dev/null || true
  wait "$tool" 2> /dev/null || true
  left_nothing "$signal while the office writes"
  no_pipe_of "$tool" "$signal while the office writes"
done

# The process that keeps the office is killed itself: the tool says that its office is gone, and clears up.
for after in 50 400 1000; do  # ms from when there is one
  $audit "$build/sheets/whole-job.fods" --out "$scratch/out/k.fods" > "$scratch/said" 2>&1 &
  tool=$!
  while kill -0 "$tool" 2> /dev/null && ! pgrep -P "$tool" -x office_keeper > /dev/null; do sleep 0.01; done
  sleep "$(awk "BEGIN { print $after / 1000 }")"
  pkill -KILL -P "$tool" -x office_keeper || say_wrong "no keeper after $after ms: this test sees nothing"
  status=0
  wait "$tool" || status=$?
  [ $status = 2 ] || say_wrong "its keeper killed after $after ms: exit $status, not 2"
  left_nothing "its keeper killed after $after ms"
  no_pipe_of "$tool" "its keeper killed after $after ms"
done
rm -rf "$scratch/out"/*

moments=20 step=200
[ -z "$quick" ] || { moments=5 step=700; }
moment=0
begun=$(date +%s)
while [ $moment -lt $moments ]; do
  moment=$((moment + 1))
  kill_a_tool $moment "$(echo TERM INT HUP PIPE KILL | cut -d ' ' -f $((moment % 5 + 1)))" $((moment * step))
done
printf '| tools killed at %s moments by TERM, INT, HUP, PIPE, KILL | - | %s | - |\n' "$moments" "$(($(date +%s) - begun))"
try 'the same file after those kills' 0 '' "$build/sheets/sheet_office" "$build/extensions" good.fods "$scratch/out/c.fods"
rm -rf "$scratch/out"/*

if [ -z "$quick" ]; then
  # Batch, killed and resumed.
  mkdir jobs
  for i in 1 2 3 4; do cp good.fods "jobs/j$i.fods"; done
  moment=0
  begun=$(date +%s)
  while [ $moment -lt 20 ]; do
    moment=$((moment + 1))
    signal=$(echo TERM INT HUP PIPE KILL | cut -d ' ' -f $((moment % 5 + 1)))
    [ $((moment % 4)) != 0 ] || rm -rf "$scratch/out"/* "$scratch/out/.stamps"
    kill_after "$signal" $((moment * 250)) sh "$root/sheets/batch.sh" jobs "$scratch/out"
  done
  printf '| a batch killed at 20 moments | - | %s | - |\n' "$(($(date +%s) - begun))"
  try 'the batch after that' 0 '4 good, 0 with findings, 0 failed' sh "$root/sheets/batch.sh" jobs "$scratch/out"
  for i in 1 2 3 4; do [ -s "$scratch/out/j$i.fods.checked.ods" ] && [ -s "$scratch/out/j$i.fods.pdf" ] || say_wrong "j$i is missing"; done
  try 'and once more' 0 'unchanged/0' sh "$root/sheets/batch.sh" jobs "$scratch/out"
  rm -rf "$scratch/out"/* "$scratch/out/.stamps"

  # Twice the size, and years of use.
  for room in growth long; do
    begun=$(date +%s)
    status=0
    "$build/tests/office_test" "[.$room]" > "$scratch/said" 2>&1 || status=$?
    grep -E '^\| |after [0-9]+$' "$scratch/said" || true
    printf '| office_test "[.%s]" | %s | %s | - |\n' "$room" "$status" "$(($(date +%s) - begun))"
    [ "$status" = 0 ] || { say_wrong "$room"; tail -n 40 "$scratch/said" >&2; }
    left_nothing "$room"
  done
fi

[ "$wrong" = 0 ] || { echo "$wrong wrong" >&2; exit 1; }
echo 'faults: as wanted'
